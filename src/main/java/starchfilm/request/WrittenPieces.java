package starchfilm.request;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import starchfilm.files.amount.Dimension;
import starchfilm.files.amount.MistypedException;
import starchfilm.planning.Pieces;

/** Pieces of film as written: {@code 40 of 60x90 mm}, or an area such as {@code 0.5 m2}. */
final class WrittenPieces {

  private static final String ALLOWED = "pieces such as 40 of 60x90 mm, or an area such as 0.5 m2";
  private static final Pattern PIECES = WrittenPlates.TYPED.get("pieces");
  private static final Pattern AREA = WrittenPlates.TYPED.get("area of film");

  private WrittenPieces() {}

  static Optional<Pieces> read(EntryReader in) {
    return in.made(() -> in.one("pieces.pieces", WrittenPieces::pieces)).flatMap(pieces -> pieces);
  }

  private static Pieces pieces(String typed) {
    if (AREA.matcher(typed.strip()).matches()) {
      return Pieces.area(Dimension.AREA.si(typed));
    }
    Matcher sides = PIECES.matcher(WrittenPlates.sheets(typed.strip().toLowerCase(Locale.ROOT)));
    if (!sides.matches()) {
      throw new MistypedException(typed, ALLOWED, "write it like one of these");
    }
    String unit = sides.group(5);
    return new Pieces(
        Integer.parseInt(sides.group(1)),
        WrittenPlates.metres(sides.group(2), sides.group(3) == null ? unit : sides.group(3)),
        WrittenPlates.metres(sides.group(4), unit),
        false);
  }
}
