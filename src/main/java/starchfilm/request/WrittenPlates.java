package starchfilm.request;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import starchfilm.casting.Plate;
import starchfilm.casting.PlateMaterial;
import starchfilm.files.amount.MistypedException;

/**
 * Plates as people type them: {@code 4x300x200mm glass}, {@code 2 x 24cm round steel}, {@code
 * 300x200mm glass 4mm}.
 *
 * @param plate one of them, without a rim
 * @param count how many
 * @param isRound whether the plate stands for a round one of the same area
 */
record WrittenPlates(Plate plate, int count, boolean isRound) {
  private static final String ALLOWED =
      "number, sides and material, such as 4x300x200mm glass or 2x 24cm round steel";

  /** A number of plates and one side look like this: {@code 2x 30cm}. */
  private static final double MOST_SLENDER = 10;

  private static final String NUMBER = "([0-9]+(?:[.,][0-9]+)?)";
  private static final String UNIT = "(mm|cm|m)";
  private static final String BY = "\\s*[x\u00D7*]\\s*";
  private static final Pattern SIDES =
      Pattern.compile(
          "(?:(\\d{1,4})"
              + BY
              + ")?"
              + NUMBER
              + "\\s*"
              + UNIT
              + "?"
              + BY
              + NUMBER
              + "\\s*"
              + UNIT
              + "(?:\\s+(.*))?",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern ROUND =
      Pattern.compile(
          "(?:(\\d{1,4})" + BY + ")?" + NUMBER + "\\s*" + UNIT + "\\s+round(?:\\s+(.*))?",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern THICK =
      Pattern.compile("(.*?)\\s*" + NUMBER + "\\s*" + UNIT, Pattern.CASE_INSENSITIVE);

  /** The plate alone, of which there must be one. */
  Plate one() {
    if (count != 1) {
      throw new IllegalArgumentException("one plate is asked about, and " + count + " were given");
    }
    return plate;
  }

  /** Reads plates. */
  static WrittenPlates parse(String typed) {
    String text = typed.strip();
    Matcher round = ROUND.matcher(text);
    if (round.matches()) {
      // The model counts a round plate as the square of the same area.
      double side = Math.sqrt(Math.PI) / 2 * metres(round.group(2), round.group(3));
      return of(round.group(1), side, side, round.group(4), true);
    }
    Matcher sides = SIDES.matcher(text);
    if (!sides.matches()) {
      throw new MistypedException(typed, ALLOWED, "write it like one of these");
    }
    String unit = sides.group(5);
    double a = metres(sides.group(2), sides.group(3) == null ? unit : sides.group(3));
    double b = metres(sides.group(4), unit);
    if (Math.max(a, b) > MOST_SLENDER * Math.min(a, b)) {
      throw new MistypedException(
          typed, ALLOWED, "a plate has two sides, or one and the word round");
    }
    return of(sides.group(1), Math.max(a, b), Math.min(a, b), sides.group(6), false);
  }

  private static WrittenPlates of(
      @Nullable String count, double lengthM, double widthM, @Nullable String rest, boolean round) {
    String material = rest == null ? "" : rest.strip();
    Matcher thick = THICK.matcher(material);
    double thicknessM = 0;
    if (thick.matches()) {
      material = thick.group(1).strip();
      thicknessM = metres(thick.group(2), thick.group(3));
    }
    PlateMaterial made = material.isEmpty() ? PlateMaterial.GLASS : material(material);
    return new WrittenPlates(
        new Plate(made, lengthM, widthM, thicknessM > 0 ? thicknessM : usual(made), 0),
        count == null ? 1 : Integer.parseInt(count),
        round);
  }

  /** Plates whose parts were written one by one. */
  static WrittenPlates of(int count, double lengthM, double widthM, String typedMaterial) {
    PlateMaterial made = material(typedMaterial);
    return new WrittenPlates(
        new Plate(made, Math.max(lengthM, widthM), Math.min(lengthM, widthM), usual(made), 0),
        count,
        false);
  }

  private static PlateMaterial material(String typed) {
    return KnownName.find(
        typed, List.of(PlateMaterial.values()), known -> List.of(known.tradeName()));
  }

  /** The plate's own thickness where nobody gives it, as for a trial file; judged. */
  private static double usual(PlateMaterial material) {
    return switch (material) {
      case STEEL -> 1e-3;
      case GLASS -> 4e-3;
      default -> 2e-3;
    };
  }

  private static double metres(String number, String unit) {
    return Quantities.lengthM(number + " " + unit);
  }
}
