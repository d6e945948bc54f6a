package starchfilm.request;

import static starchfilm.files.amount.Dimension.LENGTH;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import starchfilm.files.amount.MistypedException;
import starchfilm.planning.Pieces;

/** Pieces of film as written: {@code 40 of 60x90 mm}, or an area such as {@code 0.5 m2}. */
final class WrittenPieces {

  private static final String ALLOWED = "pieces such as 40 of 60x90 mm, or an area such as 0.5 m2";
  private static final String NUMBER = "([0-9]+(?:[.,][0-9]+)?)";
  private static final Pattern SIDES =
      Pattern.compile(
          "([0-9]{1,7})\\s*(?:pieces?\\s*)?(?:of|x|\u00D7|\u00E0|@)\\s*N\\s*(mm|cm|m|in)?\\s*[x\u00D7*]\\s*N\\s*(mm|cm|m|in)"
              .replace("N", NUMBER),
          Pattern.CASE_INSENSITIVE);
  private static final Pattern AREA =
      Pattern.compile(NUMBER + "\\s*(mm|cm|dm|m)(?:2|\u00B2)", Pattern.CASE_INSENSITIVE);

  private WrittenPieces() {}

  static Optional<Pieces> read(EntryReader in) {
    return in.made(() -> in.one("pieces.pieces", WrittenPieces::pieces)).flatMap(pieces -> pieces);
  }

  private static Pieces pieces(String typed) {
    Matcher area = AREA.matcher(typed.strip());
    if (area.matches()) {
      double side = LENGTH.si("1 " + area.group(2).replace("dm", "cm"));
      double unit = area.group(2).equalsIgnoreCase("dm") ? 10 * side : side;
      return Pieces.area(number(area.group(1)) * unit * unit);
    }
    Matcher sides = SIDES.matcher(typed.strip());
    if (!sides.matches()) {
      throw new MistypedException(typed, ALLOWED, "write it like one of these");
    }
    String unit = sides.group(5);
    return new Pieces(
        Integer.parseInt(sides.group(1)),
        LENGTH.si(sides.group(2) + " " + (sides.group(3) == null ? unit : sides.group(3))),
        LENGTH.si(sides.group(4) + " " + unit),
        false);
  }

  private static double number(String digits) {
    return Double.parseDouble(digits.replace(',', '.'));
  }
}
