package starchfilm.request;

import static java.util.stream.Collectors.joining;

import java.math.BigDecimal;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import starchfilm.casting.Plate;
import starchfilm.casting.Plate.Outline;
import starchfilm.casting.PlateMaterial;
import starchfilm.files.amount.Dimension;
import starchfilm.files.amount.KnownName;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.Rest;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.Member;
import starchfilm.files.json.Located.NumberValue;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.Located.Place;
import starchfilm.files.json.Located.TextValue;
import starchfilm.files.json.PackedPatterns;
import starchfilm.files.saving.CastingFields;
import starchfilm.material.recipe.Composition;

/**
 * Plates of one size as people type them: {@code 4x300x200mm glass}, {@code 2 round steel plates 24
 * cm}, {@code 8x8 in glass}, {@code 30x20cm oval enamel}, {@code 450 cm2 wood}, {@code 200 g of
 * water 5 mm deep}, of which the area follows; {@code 2} or {@code baking tray} of the usual size.
 *
 * @param plate one of them, without a rim
 * @param isMaterialGiven whether its material is written, and not taken as glass
 * @param isThicknessGiven whether its own thickness is written, and not that of its material
 */
record WrittenPlates(Plate plate, int count, boolean isMaterialGiven, boolean isThicknessGiven) {
  private static final String ALLOWED =
      "number, sides and material, such as 4x300x200mm glass or 2x 24cm round steel";

  private static final String LIKE_THESE = "write it like one of these";

  /** A number of plates and one side look like this: {@code 2x 30cm}. */
  private static final double MOST_SLENDER = 10;

  private static final int MOST = 1000;
  private static final List<String> MATERIALS =
      Stream.of(PlateMaterial.values()).map(PlateMaterial::tradeName).toList();

  /** How plates and pieces are written. */
  static final PackedPatterns TYPED = PackedPatterns.of(WrittenPlates.class, "plates.patterns");

  /** Between plates of several sizes: a semicolon, or a comma between two that have figures. */
  static final Pattern APART = TYPED.get("apart");

  private static final Pattern COUNT_AND_SIDES = TYPED.get("count and sides");

  /** Sizes of sheets, long side first: ISO 216:2007, table 1. */
  private static final Map<String, String> SHEETS =
      Map.of("3", "420x297 mm", "4", "297x210 mm", "5", "210x148 mm");

  private static final Pattern SHEET = TYPED.get("sheet");
  private static final Pattern LENGTH = TYPED.get("length");
  private static final Pattern WATER = TYPED.get("water");
  private static final Pattern AREA = TYPED.get("area");
  private static final Pattern ACROSS = TYPED.get("across");
  private static final Pattern VESSEL = TYPED.get("vessel");
  private static final Pattern COUNT = TYPED.get("count");
  private static final Pattern COUNT_AND_WORDS = TYPED.get("count and words");
  private static final Pattern METAL = TYPED.get("metal");
  private static final Pattern ROUND = TYPED.get("round");
  private static final Pattern OVAL = TYPED.get("oval");
  private static final Pattern SQUARE = TYPED.get("square");
  private static final Pattern IDLE = TYPED.get("idle");

  /** How large plates are (m), and how many where that is told by it. */
  private record WrittenSize(int count, double lengthM, double widthM, boolean isShapeless) {
    static final WrittenSize USUAL = new WrittenSize(1, 0.3, 0.2, false);

    static WrittenSize of(double areaM2) {
      return new WrittenSize(1, Math.sqrt(areaM2), Math.sqrt(areaM2), true);
    }
  }

  private static String plain(String typed) {
    String small =
        sheets(Normalizer.normalize(typed, Normalizer.Form.NFC).strip().toLowerCase(Locale.ROOT));
    // With a blank behind it, a number in words may stand alone.
    return Rest.inDigits(small.replace('\u2033', '"').replace('\u201D', '"') + " ").strip();
  }

  /** Sheets by their sides. */
  static String sheets(String small) {
    return SHEET.matcher(small).replaceAll(sheet -> SHEETS.getOrDefault(sheet.group(1), ""));
  }

  private static MistypedException unreadable(String typed, String mend) {
    return new MistypedException(typed, ALLOWED, mend);
  }

  /** Whether a text is of plates, well written or not. */
  static boolean isLike(String typed) {
    String text = plain(typed);
    return Stream.of(COUNT_AND_SIDES, WATER, AREA).anyMatch(size -> size.matcher(text).find())
        || (ACROSS.matcher(text).find()
            && Stream.of(ROUND, OVAL, SQUARE, VESSEL).anyMatch(word -> word.matcher(text).find()))
        || (!COUNT.matcher(text).replaceFirst("").isBlank() && isSizeless(typed));
  }

  /** Whether a text is of plates and nothing else, such as how deep they are filled. */
  static boolean isReadable(String typed) {
    try {
      parse(typed);
      return !typed.matches(".* (?:deep|wet|high)") || WATER.matcher(plain(typed)).find();
    } catch (MistypedException strange) {
      return false;
    }
  }

  /** Whether only a number, a material or both are given of plates. */
  static boolean isSizeless(String typed) {
    Matcher told = COUNT_AND_WORDS.matcher(plain(typed));
    if (typed.isBlank() || !told.matches()) {
      return false;
    }
    Rest words = new Rest(told.group(1));
    words.takeAll(METAL);
    words.takeAll(IDLE);
    String made = words.text().replaceAll("\\s+", " ");
    return made.isEmpty() || KnownName.among(made, MATERIALS).isPresent();
  }

  /**
   * What is assumed of plates whose size or material is not given; empty where both are.
   *
   * @param before the plate they take the place of, which they are like in what is not given
   */
  static Optional<String> assumption(String typed, Optional<Plate> before) {
    WrittenPlates plates = parse(typed);
    boolean sizeless = isSizeless(typed);
    if (!sizeless && plates.isMaterialGiven()) {
      return Optional.empty();
    }
    PlateMaterial material =
        before
            .filter(plate -> !plates.isMaterialGiven())
            .map(Plate::material)
            .orElse(plates.plate().material());
    String like =
        before.isPresent()
            ? sizeless ? " of the trial's size" : ", like the trial's"
            : sizeless ? " of 30 \u00D7 20 cm" : "";
    return Optional.of(
        "\u201C%s\u201D as %s%s".formatted(typed.strip(), material.tradeName(), like));
  }

  /** Reads plates of one size. */
  static WrittenPlates parse(String typed) {
    if (typed.length() > 100) {
      throw unreadable(typed, LIKE_THESE);
    }
    Rest rest = new Rest(plain(typed));
    boolean metal = rest.takeAll(METAL);
    boolean oval = rest.takeAll(OVAL);
    boolean round = rest.takeAll(ROUND);
    boolean square = rest.takeAll(SQUARE);
    WrittenSize size = isSizeless(typed) ? WrittenSize.USUAL : size(typed, rest, round || square);
    int count = size.count() * rest.take(COUNT).map(many -> count(typed, many.group(1))).orElse(1);
    double thicknessM =
        rest.take(LENGTH).map(thick -> metres(thick.group(1), thick.group(2))).orElse(0.0);
    rest.takeAll(IDLE);
    boolean isUntold = rest.text().isEmpty();
    PlateMaterial material =
        metal && isUntold ? PlateMaterial.STEEL : material(rest.text().replaceAll("\\s+", " "));
    return new WrittenPlates(
        Plate.across(
            material,
            size.lengthM(),
            size.widthM(),
            thicknessM > 0 ? thicknessM : material.usualThicknessM(),
            size.isShapeless()
                ? Outline.FREE
                : round || oval ? Outline.ELLIPSE : Outline.RECTANGLE),
        count,
        metal || !isUntold,
        thicknessM > 0);
  }

  private static WrittenSize size(String typed, Rest rest, boolean oneSide) {
    return rest.take(WATER)
        .map(WrittenPlates::underWater)
        .or(() -> rest.take(AREA).map(area -> WrittenSize.of(Dimension.AREA.si(area.group()))))
        .or(() -> rest.take(COUNT_AND_SIDES).map(sides -> size(typed, sides, oneSide)))
        .or(() -> rest.take(LENGTH).map(side -> size(typed, side.group(), oneSide)))
        .orElseThrow(() -> unreadable(typed, LIKE_THESE));
  }

  private static WrittenSize underWater(Matcher water) {
    double kg =
        Quantities.massKg(water.group(1) + water.group(2), Composition.WATER_AT_20C_KG_PER_M3)
            .value();
    return WrittenSize.of(
        kg / Composition.WATER_AT_20C_KG_PER_M3 / metres(water.group(3), water.group(4)));
  }

  private static WrittenSize size(String typed, String side, boolean oneSide) {
    if (!oneSide) {
      throw whichShape(typed, "", side);
    }
    double sideM = Dimension.LENGTH.si(side);
    return new WrittenSize(1, sideM, sideM, false);
  }

  private static WrittenSize size(String typed, Matcher sides, boolean oneSide) {
    String first = sides.group(2);
    String unit = sides.group(5);
    double widthM = metres(sides.group(4), unit);
    if (oneSide
        && sides.group(1) == null
        && sides.group(3) == null
        && first.matches("\\d{1,7}")
        && !first.equals(sides.group(4))) {
      // With a side alone, what stands in front of the x is how many there are.
      return new WrittenSize(count(typed, first), widthM, widthM, false);
    }
    int count = sides.group(1) == null ? 1 : count(typed, sides.group(1));
    double lengthM = metres(first, sides.group(3) == null ? unit : sides.group(3));
    if (count > widthM / metres("1", unit)) {
      throw unreadable(
          typed,
          """
          is the first number how many there are? write 1x %s or the number, a blank and two \
          sides; give the height of a rim by itself\
          """
              .formatted(sides.group().replaceFirst("^" + count + "\\s*[x\u00D7*]\\s*", "")));
    }
    if (Math.min(lengthM, widthM) <= 0) {
      throw unreadable(typed, "a plate has no side of 0; write both sides, such as 300x200mm");
    }
    if (Math.max(lengthM, widthM) > MOST_SLENDER * Math.min(lengthM, widthM)) {
      throw whichShape(typed, first + "x ", sides.group(4) + unit);
    }
    return new WrittenSize(count, lengthM, widthM, false);
  }

  private static MistypedException whichShape(String typed, String count, String side) {
    String number = side.replaceAll("[^0-9.,].*", "");
    return unreadable(
        typed,
        "round or square? write %1$s%2$s round, or %1$s%3$sx%2$s for a square"
            .formatted(count, side, number));
  }

  private static int count(String typed, String digits) {
    int count = Integer.parseInt(digits);
    if (count < 1 || count > MOST) {
      throw unreadable(typed, "1 to 1000 plates can be poured; check the number");
    }
    return count;
  }

  /** Plates whose parts were written one by one. */
  static WrittenPlates of(int count, double lengthM, double widthM, String typedMaterial) {
    PlateMaterial made = material(typedMaterial);
    return new WrittenPlates(
        Plate.across(made, lengthM, widthM, made.usualThicknessM(), Outline.RECTANGLE),
        count,
        !typedMaterial.isEmpty(),
        false);
  }

  /** What is no slip of the pen for a known material is another one. */
  private static PlateMaterial material(String typed) {
    if (typed.isEmpty()) {
      return PlateMaterial.GLASS;
    }
    boolean isKnown = KnownName.among(typed, MATERIALS).isPresent();
    if (!isKnown
        && typed.matches("[\\p{L} -]+")
        && KnownName.whatThen(typed, MATERIALS).isEmpty()) {
      return PlateMaterial.OTHER;
    }
    return KnownName.find(
        typed, List.of(PlateMaterial.values()), known -> List.of(known.tradeName()));
  }

  /** What is to be said of an unknown material; empty for the known ones. */
  static String remark(Plate plate) {
    return switch (plate.material()) {
      case OTHER ->
          "The plate's material is not known here: it is counted as glass, and how film sticks to"
              + " it is unknown.";
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
    return new WrittenPlates(sizes.get(0).plate().ofArea(areaM2 / count), count, true, false);
  }

  /** What is to be said of several sizes, which a plan counts by their mean. */
  static String remark(List<WrittenPlates> sizes, boolean mean) {
    String materials =
        sizes.stream()
            .map(size -> size.plate.material().tradeName())
            .distinct()
            .collect(joining(", "));
    return "Plates of several sizes are "
        + (mean ? "counted as so many of their mean size, " : "")
        + "poured equally thick"
        + (materials.contains(",")
            ? "; what they are made of is counted as %s for all of them, though %s were given"
                .formatted(
                    materials.replaceFirst(",.*", ""),
                    materials.replaceFirst(", ([^,]*)$", " and $1"))
            : "")
        + ".";
  }

  /**
   * A trial on these plates; material and thickness are noted where they are written, for who reads
   * the trial says what is assumed.
   *
   * @param isSized whether their size is given, too
   * @param at the place of a field that they fill
   */
  ObjectValue into(ObjectValue trial, boolean isSized, Function<String, Place> at) {
    ObjectValue on =
        count == 1
            ? trial
            : trial.with(
                "pour.plates", new NumberValue(at.apply("pour.plates"), BigDecimal.valueOf(count)));
    for (Map.Entry<String, Member> one : CastingFields.plate(plate, 0).members().entrySet()) {
      String path = "pour.plate." + one.getKey();
      Located value = one.getValue().value();
      if (one.getKey().equals("material") && !isMaterialGiven) {
        continue;
      }
      if (value instanceof TextValue words) {
        on = on.with(path, new TextValue(at.apply(path), words.text()));
      } else if (isSized && (isThicknessGiven || !one.getKey().equals("thickness_mm"))) {
        on = on.with(path, new NumberValue(at.apply(path), new BigDecimal(value.quoted())));
      }
    }
    return on;
  }

  static double metres(String number, String unit) {
    return Dimension.LENGTH.si(number + " " + unit);
  }
}
