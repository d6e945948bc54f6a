package starchfilm.files.amount;

import java.math.BigDecimal;
import java.math.MathContext;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import starchfilm.files.json.PackedPatterns;

/**
 * Takes a typed amount apart, from what surrounds it (how full a spoon is, {@code about}) to its
 * numbers and units.
 *
 * @param text as typed
 * @param bareUnit the unit of a number without one; empty where every number needs its unit
 * @param allowed what is allowed, for the sentence of a mistake
 * @param wanted what it may measure; empty for anything
 */
record AmountReader(String text, String bareUnit, String allowed, List<Dimension> wanted) {
  private static final int MAX_LENGTH = 60;
  private static final BigDecimal TWO = BigDecimal.valueOf(2);

  /** How far off a number that is called rough may be; judged, no source. */
  private static final BigDecimal ROUGHLY = new BigDecimal("0.1");

  private static final PackedPatterns TYPED =
      PackedPatterns.of(AmountReader.class, "amounts.patterns");

  private static final Pattern ONE = TYPED.get("one");
  private static final Pattern PAIR = TYPED.get("pair");
  private static final String GIVE_OR_TAKE = "\u00b1+";
  private static final Pattern PART = TYPED.get("part");
  private static final Pattern PARTS = TYPED.get("parts");
  private static final Pattern ROUGH = TYPED.get("rough");

  /** What most files hold, tens of thousands of times: it is read without looking for words. */
  private static final Pattern PLAINEST = Pattern.compile("([0-9]+(?:[.,][0-9]+)?)([A-Za-z]+)");

  private static final Pattern PLAIN = Pattern.compile("[0-9]+(?:[.,][0-9]+)?");
  private static final Pattern PERHAPS_GROUPED = Pattern.compile("[1-9][0-9]{0,2},[0-9]{3}");

  /** How full a spoon or cup is, as a share of one that is level; common practice, no source. */
  private static final List<Wording> FILLS = Wording.of("fill", "\\(?\\b(?:%s)(?![a-z])\\)?");

  private static final Pattern BETWEEN = Pattern.compile("^between (.*) and ");
  private static final Pattern FRACTION = Pattern.compile("([\u00bc-\u00be\u2150-\u215f\u2189])");
  private static final Pattern DASH = Pattern.compile("[\u2010-\u2015\u2212]");
  private static final Pattern BLANKS = Pattern.compile("\\s+");

  /**
   * Reads an amount.
   *
   * @throws MistypedException where it cannot be read
   */
  static TypedAmount read(String text, String bareUnit, String allowed, List<Dimension> wanted) {
    if (text.isBlank() || text.length() > MAX_LENGTH) {
      throw new MistypedException(text, allowed, "write one number with its unit");
    }
    TypedAmount amount = new AmountReader(text, bareUnit, allowed, wanted).amount();
    Dimension is = amount.unit().dimension();
    if (!wanted.isEmpty() && !wanted.contains(is)) {
      throw new MistypedException(
          text,
          allowed,
          "%s is a unit of %s; write %s"
              .formatted(
                  amount.unit().name(),
                  is.words().replaceFirst("^an? ", ""),
                  wanted.stream().map(Dimension::words).collect(Collectors.joining(" or "))));
    }
    return amount;
  }

  private TypedAmount amount() {
    Matcher plainest = PLAINEST.matcher(text);
    return plainest.matches()
        ? one("", plainest.group(1), plainest.group(2).toLowerCase(Locale.ROOT))
        : inAnyWords();
  }

  private TypedAmount inAnyWords() {
    Rest rest = new Rest(plain(text));
    String fill = rest.meaning(FILLS).orElse("");
    boolean isRough = rest.take(ROUGH).isPresent();
    String typed = Rest.inDigits(BETWEEN.matcher(rest.text()).replaceFirst("$1 to "));
    TypedAmount amount = filled(form(typed), fill);
    if (!isRough) {
      return amount;
    }
    BigDecimal off = amount.number().abs().multiply(ROUGHLY);
    return amount.within(amount.low().subtract(off), amount.high().add(off));
  }

  private TypedAmount form(String typed) {
    Matcher one = ONE.matcher(typed);
    if (one.matches()) {
      return one(one.group(1), one.group(2), one.group(3));
    }
    Matcher pair = PAIR.matcher(typed);
    if (!pair.matches()) {
      return parts(typed);
    }
    String first = pair.group(3);
    TypedAmount to =
        one(pair.group(5), pair.group(6), pair.group(7) == null ? first : pair.group(7));
    if (GIVE_OR_TAKE.contains(pair.group(4).substring(0, 1))) {
      // What stands behind the sign is in the unit of the middle, or a share of it.
      TypedAmount middle =
          one(pair.group(1), pair.group(2), first == null && !to.isShare() ? pair.group(7) : first);
      BigDecimal half =
          to.isShare() && !middle.isShare()
              ? middle.number().abs().multiply(to.number()).movePointLeft(2)
              : to.number();
      return middle.within(middle.number().subtract(half), middle.number().add(half));
    }
    TypedAmount from = one(pair.group(1), pair.group(2), first == null ? pair.group(7) : first);
    if (from.unit().dimension() != to.unit().dimension()) {
      throw mistyped("both ends of a range must measure the same");
    }
    return to.between(from.unit().to(to.unit(), from.number()), from.step().min(to.step()));
  }

  private TypedAmount parts(String typed) {
    if (!PARTS.matcher(typed).matches()) {
      throw mistyped("write one number with its unit");
    }
    return PART.matcher(typed)
        .results()
        .map(part -> one("", part.group(1), part.group(2).replaceFirst("\\s+(and|und)\\s*$", "")))
        .reduce(this::sum)
        .orElseThrow();
  }

  private TypedAmount sum(TypedAmount sum, TypedAmount next) {
    Unit unit = next.unit();
    if (!sum.is(unit.dimension()) || next.is(Dimension.TEMPERATURE)) {
      throw mistyped("write one amount, or parts that measure the same, such as 1d 6h");
    }
    return new TypedAmount(
        text,
        unit,
        next.number().add(sum.unit().to(unit, sum.number())),
        next.low().add(sum.unit().to(unit, sum.low())),
        next.high().add(sum.unit().to(unit, sum.high())),
        next.step(),
        false);
  }

  private TypedAmount one(String sign, String digits, @Nullable String word) {
    String bare = isNothing(digits) ? wanted.get(0).usualUnit() : bareUnit;
    if (word == null && bare.isEmpty()) {
      throw mistyped("add the unit");
    }
    String written = word == null ? bare : word.strip();
    if (written.equalsIgnoreCase("t")) {
      throw mistyped("t is a teaspoon for some and a tablespoon for others; write tsp or tbsp");
    }
    if (written.equalsIgnoreCase("c")
        && wanted.contains(Dimension.VOLUME)
        && !wanted.contains(Dimension.TEMPERATURE)) {
      throw mistyped("c is a cup for some and a degree Celsius for others; write cups or ml");
    }
    Unit unit =
        Unit.of(written, wanted)
            .orElseThrow(() -> mistyped("the unit " + shown(written) + " is not known here"));
    BigDecimal value = sign.equals("-") ? number(digits).negate() : number(digits);
    BigDecimal low = value.multiply(unit.least());
    return new TypedAmount(
        text, unit, value, low, value.multiply(unit.most()), step(digits, value, unit), false);
  }

  /** Nothing is as much in every unit, but for degrees. */
  private boolean isNothing(String digits) {
    return bareUnit.isEmpty()
        && digits.matches("0(?:[.,]0*)?")
        && !wanted.isEmpty()
        && !wanted.contains(Dimension.TEMPERATURE);
  }

  private static String shown(String unit) {
    return unit.matches("(?i)pints?|qts?|quarts?|gallons?|gal|sticks?")
        ? unit + " (of several sizes)"
        : unit;
  }

  private static BigDecimal step(String digits, BigDecimal value, Unit unit) {
    int slash = digits.indexOf('/');
    BigDecimal last =
        slash < 0
            ? BigDecimal.ONE.movePointLeft(Math.max(0, value.scale()))
            : BigDecimal.ONE.divide(
                new BigDecimal(digits.substring(slash + 1)).multiply(BigDecimal.valueOf(4)),
                MathContext.DECIMAL64);
    return last.min(unit.finest());
  }

  private TypedAmount filled(TypedAmount amount, String fill) {
    if (fill.isEmpty()) {
      return amount;
    }
    if (!amount.unit().isFilled()) {
      throw mistyped("only spoons and cups are heaped or level");
    }
    String[] ends = fill.split(" ", -1);
    BigDecimal low = amount.number().multiply(new BigDecimal(ends[0]));
    BigDecimal high = amount.number().multiply(new BigDecimal(ends[1]));
    return new TypedAmount(
        text, amount.unit(), low.add(high).divide(TWO), low, high, amount.step(), false);
  }

  private BigDecimal number(String digits) {
    if (digits.indexOf('/') >= 0) {
      String[] parts = digits.split("[ /-]", -1);
      int last = parts.length - 1;
      if (new BigDecimal(parts[last]).signum() == 0) {
        throw mistyped("nothing can be divided by 0");
      }
      BigDecimal fraction =
          new BigDecimal(parts[last - 1])
              .divide(new BigDecimal(parts[last]), MathContext.DECIMAL64);
      return last == 2 ? fraction.add(new BigDecimal(parts[0])) : fraction;
    }
    String ungrouped = digits.replace(" ", "");
    if (PERHAPS_GROUPED.matcher(ungrouped).matches()) {
      throw mistyped(
          "this could be %s or %s; write it with a point or without the comma"
              .formatted(ungrouped.replace(',', '.'), ungrouped.replace(",", "")));
    }
    if (!PLAIN.matcher(ungrouped).matches()) {
      throw mistyped("write the number with one point or comma and no grouping");
    }
    return new BigDecimal(ungrouped.replace(',', '.'));
  }

  private MistypedException mistyped(String mend) {
    return new MistypedException(text, allowed, mend);
  }

  /** Small letters, plain blanks and signs, fractions such as ½ as 1/2. */
  private static String plain(String text) {
    String apart = FRACTION.matcher(text).replaceAll(" $1");
    String plain = Normalizer.normalize(apart, Normalizer.Form.NFKC).replace('\u2044', '/');
    return BLANKS
        .matcher(DASH.matcher(plain).replaceAll("-"))
        .replaceAll(" ")
        .toLowerCase(Locale.ROOT)
        .strip();
  }
}
