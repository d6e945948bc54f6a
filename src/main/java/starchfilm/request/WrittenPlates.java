package starchfilm.request;

import static java.util.stream.Collectors.joining;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import starchfilm.casting.Plate;
import starchfilm.casting.Plate.Outline;
import starchfilm.casting.PlateMaterial;
import starchfilm.files.amount.Dimension;
import starchfilm.files.amount.KnownName;
import starchfilm.files.amount.MistypedException;

/**
 * Plates of one size as people type them: {@code 4x300x200mm glass}, {@code 2 round steel plates 24
 * cm}, {@code 8x8 in glass}, {@code 30x20cm oval enamel}, {@code 450 cm2 wood}, {@code 200 g of
 * water 5 mm deep}, of which the area follows; {@code 2} or {@code baking tray} of the usual size.
 *
 * @param plate one of them, without a rim
 */
record WrittenPlates(Plate plate, int count) {
  static final String ALLOWED =
      "number, sides and material, such as 4x300x200mm glass or 2x 24cm round steel";

  /** A number of plates and one side look like this: {@code 2x 30cm}. */
  private static final double MOST_SLENDER = 10;

  private static final String USUAL_SIZE = "30x20cm";
  private static final int MOST = 1000;
  private static final double WATER_KG_PER_M3 = 998;
  private static final String NUMBER = "([0-9]+(?:[.,][0-9]+)?(?: [0-9]/[0-9])?)";
  private static final String UNIT = "(mm|cm|m|inches|inch|in|ft|\")";
  private static final String BY = "\\s*(?:x|\u00D7|\\*|by)\\s*";
  private static final Pattern SIDES =
      Pattern.compile(NUMBER + "\\s*" + UNIT + "?" + BY + NUMBER + "\\s*" + UNIT);
  private static final Pattern WATER =
      Pattern.compile(
          (NUMBER + "\\s*(g|kg|ml|oz)\\s*(?:of )?water,?\\s*" + NUMBER + "\\s*" + UNIT)
              + "(?: deep| high| thick)?");
  private static final Pattern AREA = Pattern.compile(NUMBER + "\\s*(cm2|cm\u00B2|m2|sq in|in2)");
  private static final Pattern LENGTH = Pattern.compile(NUMBER + "\\s*" + UNIT + "(?!\\p{L})");
  private static final Pattern ACROSS = Pattern.compile(NUMBER + "\\s*(?:cm|inch|in\\b|\")");
  private static final Pattern VESSEL =
      Pattern.compile("\\b(?:plates?|trays?|dish(?:es)?|pans?|glass|glas)\\b");
  private static final Pattern COUNT =
      Pattern.compile("^\\s*(\\d{1,7}|(?:one|two|three|four|five|six)\\b)\\s*(?:x|\u00D7|\\*)?");
  private static final Pattern COUNT_BY =
      Pattern.compile("^\\s*(\\d{1,7})\\s*(?:x|\u00D7|\\*)\\s*");
  private static final Pattern COUNT_BEFORE_SIDES =
      Pattern.compile(COUNT_BY.pattern() + "(?=" + SIDES.pattern() + ")");
  private static final Pattern COUNT_AND_WORDS =
      Pattern.compile(
          "(?:(\\d{1,7}|(?:one|two|three|four|five|six)\\b)\\s*(?:(?:x|\u00D7|\\*)(?=\\s+\\p{L}))?)?\\s*([\\p{L} -]*)");
  private static final Pattern METAL =
      Pattern.compile(
          "\\b(?:baking (?:tray|sheet|tin)|(?:sheet|baking) pan|backblech|blech|oven tray"
              + "|plaque(?: de four)?|bandeja(?: de horno)?)s?\\b");
  private static final Pattern ROUND =
      Pattern.compile("\\b(?:round|circular|dia(?:meter)?|rund\\w*|ronde?|redond[ao])\\b|\u00F8");
  private static final Pattern OVAL = Pattern.compile("\\b(?:oval\\w*|elliptic\\w*|ovalad[ao])\\b");
  private static final Pattern SQUARE =
      Pattern.compile("\\b(?:square|quadratisch|carr\u00E9e?)\\b");
  private static final Pattern IDLE =
      Pattern.compile(
          "\\b(?:plates?|trays?|dish(?:es)?|pans?|sheets?|lids?|of|an?|the|on|in|area|frames?|framed"
              + "|rectangular|thick|baking)\\b|[,;()]");
  private static final Map<String, Integer> IN_WORDS =
      Map.of("one", 1, "two", 2, "three", 3, "four", 4, "five", 5, "six", 6);

  /** What is left of a text while its parts are taken out. */
  private static final class Rest {
    private final String typed;
    private String text;

    Rest(String typed) {
      this.typed = typed;
      this.text =
          Normalizer.normalize(typed, Normalizer.Form.NFC)
              .strip()
              .toLowerCase(Locale.ROOT)
              .replace('\u2033', '"')
              .replace('\u201D', '"');
    }

    boolean take(Pattern part) {
      Matcher matcher = part.matcher(text);
      boolean found = matcher.find();
      text = matcher.replaceAll(" ");
      return found;
    }

    Matcher first(Pattern part) {
      Matcher matcher = part.matcher(text);
      if (matcher.find()) {
        text = text.substring(0, matcher.start()) + " " + text.substring(matcher.end());
      }
      return part.matcher(matcher.reset().find() ? matcher.group() : "");
    }

    MistypedException unreadable(String mend) {
      return new MistypedException(typed, ALLOWED, mend);
    }
  }

  /** Whether a text is of plates, well written or not. */
  static boolean isLike(String typed) {
    String text = typed.toLowerCase(Locale.ROOT);
    return Stream.of(SIDES, WATER, AREA).anyMatch(size -> size.matcher(text).find())
        || (ACROSS.matcher(text).find()
            && Stream.of(ROUND, OVAL, SQUARE, VESSEL).anyMatch(word -> word.matcher(text).find()))
        || (!COUNT.matcher(text).replaceFirst("").isBlank() && isSizeless(typed));
  }

  /** Whether only a number, a material or both are given of plates. */
  static boolean isSizeless(String typed) {
    String small = typed.strip().toLowerCase(Locale.ROOT);
    Matcher told = COUNT_AND_WORDS.matcher(small);
    if (small.isEmpty() || !told.matches()) {
      return false;
    }
    String words = METAL.matcher(told.group(2)).replaceAll(" ");
    String made = IDLE.matcher(words).replaceAll(" ").strip().replaceAll("\\s+", " ");
    return made.isEmpty()
        || KnownName.among(
                made, Stream.of(PlateMaterial.values()).map(PlateMaterial::tradeName).toList())
            .isPresent();
  }

  /** What is assumed of plates whose size is not given. */
  static String assumption(String typed) {
    return "\"%s\" as %s of 30 \u00D7 20 cm"
        .formatted(typed.strip(), parse(typed).plate().material().tradeName());
  }

  /** Reads plates of one size. */
  static WrittenPlates parse(String typed) {
    if (typed.length() > 100) {
      throw new MistypedException(typed, ALLOWED, "write it like one of these");
    }
    if (isSizeless(typed)) {
      Matcher told = COUNT_AND_WORDS.matcher(typed.strip().toLowerCase(Locale.ROOT));
      String count = told.matches() && told.group(1) != null ? told.group(1) + " x " : "";
      return parse(count + USUAL_SIZE + " " + told.group(2));
    }
    Rest rest = new Rest(typed);
    boolean metal = rest.take(METAL);
    boolean oval = rest.take(OVAL);
    boolean round = rest.take(ROUND);
    boolean square = rest.take(SQUARE);
    Outline outline = round || oval ? Outline.ELLIPSE : Outline.RECTANGLE;
    int count = 1;
    // With a side alone, what stands in front of the x is how many there are.
    if (round || square || COUNT_BEFORE_SIDES.matcher(rest.text).find()) {
      Matcher many = rest.first(COUNT_BY);
      count = many.matches() ? count(many.group(1), rest) : 1;
    }
    double[] sides = sides(rest, round || square, count);
    if (sides[1] == 0) {
      outline = Outline.FREE;
      sides = new double[] {Math.sqrt(sides[0]), Math.sqrt(sides[0])};
    }
    Matcher many = rest.first(COUNT);
    count = many.matches() ? count * count(many.group(1), rest) : count;
    Matcher thick = rest.first(LENGTH);
    double thicknessM = thick.matches() ? metres(thick.group(1), thick.group(2)) : 0;
    rest.take(IDLE);
    String made = rest.text.strip();
    PlateMaterial material = metal && made.isEmpty() ? PlateMaterial.STEEL : material(made);
    return new WrittenPlates(
        Plate.across(
            material,
            sides[0],
            sides[1],
            thicknessM > 0 ? thicknessM : material.usualThicknessM(),
            outline),
        count);
  }

  /** Both sides (m); an area (m2) and 0 where that is all that is known. */
  private static double[] sides(Rest rest, boolean oneSide, int count) {
    Matcher water = rest.first(WATER);
    if (water.matches()) {
      double kg = Quantities.massKg(water.group(1) + water.group(2), WATER_KG_PER_M3).value();
      return new double[] {kg / WATER_KG_PER_M3 / metres(water.group(3), water.group(4)), 0};
    }
    Matcher area = rest.first(AREA);
    if (area.matches()) {
      return new double[] {Dimension.AREA.si(area.group()), 0};
    }
    Matcher both = rest.first(SIDES);
    if (both.matches()) {
      String unit = both.group(4);
      double a = metres(both.group(1), both.group(2) == null ? unit : both.group(2));
      double b = metres(both.group(3), unit);
      if (count > metres(both.group(3), unit) / metres("1", unit)) {
        throw rest.unreadable(
            """
            is the first number how many there are? write 1x %s or the number, a blank and two \
            sides; give the height of a rim by itself"""
                .formatted(both.group()));
      }
      if (Math.max(a, b) > MOST_SLENDER * Math.min(a, b)) {
        throw whichShape(rest, both.group(1) + "x ", both.group(3) + unit);
      }
      return new double[] {a, b};
    }
    Matcher one = rest.first(LENGTH);
    if (!one.matches()) {
      throw rest.unreadable("write it like one of these");
    }
    if (!oneSide) {
      throw whichShape(rest, "", one.group());
    }
    double side = metres(one.group(1), one.group(2));
    return new double[] {side, side};
  }

  private static MistypedException whichShape(Rest rest, String count, String side) {
    String number = side.replaceAll("[^0-9.,].*", "");
    return rest.unreadable(
        "round or square? write %1$s%2$s round, or %1$s%3$sx%2$s for a square"
            .formatted(count, side, number));
  }

  private static int count(String typed, Rest rest) {
    int count = IN_WORDS.getOrDefault(typed, 0);
    count = count > 0 ? count : Integer.parseInt(typed);
    if (count < 1 || count > MOST) {
      throw rest.unreadable("1 to 1000 plates can be poured; check the number");
    }
    return count;
  }

  /** Plates whose parts were written one by one. */
  static WrittenPlates of(int count, double lengthM, double widthM, String typedMaterial) {
    PlateMaterial made = material(typedMaterial);
    return new WrittenPlates(
        Plate.across(made, lengthM, widthM, made.usualThicknessM(), Outline.RECTANGLE), count);
  }

  /** What is no slip of the pen for a known material is another one. */
  private static PlateMaterial material(String typed) {
    if (typed.isEmpty()) {
      return PlateMaterial.GLASS;
    }
    List<PlateMaterial> all = List.of(PlateMaterial.values());
    List<String> names = all.stream().map(PlateMaterial::tradeName).toList();
    boolean isKnown = KnownName.among(typed, names).isPresent();
    if (!isKnown && typed.matches("[\\p{L} -]+") && KnownName.whatThen(typed, names).isEmpty()) {
      return PlateMaterial.OTHER;
    }
    return KnownName.find(typed, all, known -> List.of(known.tradeName()));
  }

  /** What is to be said of an unknown material; empty for the known ones. */
  static String remark(Plate plate) {
    return switch (plate.material()) {
      case OTHER ->
          "The plate's material is not known here: it is counted as glass, and how film sticks to it"
              + " is unknown.";
      case WOOD -> "Bare wood takes up water, which is not modelled: the film may dry faster.";
      default -> "";
    };
  }

  /** Several sizes as so many plates of their mean size. */
  static WrittenPlates mean(List<WrittenPlates> sizes) {
    int count = sizes.stream().mapToInt(WrittenPlates::count).sum();
    if (sizes.size() == 1) {
      return sizes.get(0);
    }
    double areaM2 = sizes.stream().mapToDouble(size -> size.count * size.plate.areaM2()).sum();
    return new WrittenPlates(sizes.get(0).plate().ofArea(areaM2 / count), count);
  }

  /** What is to be said of several sizes. */
  static String remark(List<WrittenPlates> sizes) {
    String materials =
        sizes.stream()
            .map(size -> size.plate.material().tradeName())
            .distinct()
            .collect(joining(", "));
    return "Plates of several sizes are counted as so many of their mean size, poured equally thick"
        + (materials.contains(",") ? "; all as " + materials.replaceFirst(",.*", "") : "")
        + ".";
  }

  private static double metres(String number, String unit) {
    return Dimension.LENGTH.si(number + " " + unit);
  }
}
