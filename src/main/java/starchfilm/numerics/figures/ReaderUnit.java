package starchfilm.numerics.figures;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Arrays;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.evidence.Refusal;
import starchfilm.numerics.units.Units;

/** The units readers see; the only place where SI figures are turned into them. */
public enum ReaderUnit {
  /** Grams, from kilograms. */
  GRAM("g", 1e3, 0),
  /** Millimetres, from metres. */
  MILLIMETRE("mm", 1e3, 0),
  /** Litres, from cubic metres. */
  LITRE("l", 1e3, 0),
  /** Centimetres, from metres. */
  CENTIMETRE("cm", 1e2, 0),
  /** Micrometres, from metres. */
  MICROMETRE("µm", 1e6, 0),
  /** Degrees Celsius, from kelvin. */
  CELSIUS("°C", 1, -Units.ZERO_CELSIUS_K),
  /** Per cent, from ratios. */
  PERCENT("%", 1e2, 0),
  /** Megapascals, from pascals. */
  MEGAPASCAL("MPa", 1e-6, 0),
  /** Metres per second. */
  METRE_PER_SECOND("m/s", 1, 0),
  /** Newtons. */
  NEWTON("N", 1, 0),
  /** Minutes, from seconds. */
  MINUTE("min", 1 / Units.MINUTE_S, 0),
  /** Hours, from seconds. */
  HOUR("h", 1 / Units.HOUR_S, 0),
  /** Days, from seconds. */
  DAY("days", 1 / Units.DAY_S, 0),
  /** Water-vapour permeability as film makers quote it, from kg/(m s Pa). */
  PERMEABILITY("g mm/(m² d kPa)", 1e3 * 1e3 * Units.DAY_S * 1e3, 0);

  private static final double ROUNDING = 1e-9;

  private final String symbol;
  private final double scale;
  private final double offset;

  ReaderUnit(String symbol, double scale, double offset) {
    this.symbol = symbol;
    this.scale = scale;
    this.offset = offset;
  }

  /**
   * The unit as written behind a figure.
   *
   * @return such as {@code mm}
   */
  public String symbol() {
    return symbol;
  }

  /**
   * The unit of a symbol.
   *
   * @param symbol as written behind a figure, also {@code um} where only ASCII may stand
   * @return the unit
   */
  public static ReaderUnit called(String symbol) {
    return Arrays.stream(values())
        .filter(unit -> unit.symbol.replace('µ', 'u').equals(symbol))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no unit is called " + symbol));
  }

  /**
   * Converts a figure.
   *
   * @param si the figure in SI
   * @return the figure in this unit
   */
  public double of(double si) {
    return si * scale + offset;
  }

  /**
   * Converts a band.
   *
   * @param si in SI units
   * @return in this unit
   */
  public Band of(Band si) {
    return si.map(this::of);
  }

  /**
   * A forecast figure without its unit.
   *
   * @param si the figure in SI
   * @return two significant figures; whole degrees for a temperature
   */
  public String two(double si) {
    return this == CELSIUS ? Figures.whole(of(si)) : Figures.two(of(si));
  }

  /**
   * A figure to the nearest whole number, without its unit.
   *
   * @param si the figure in SI
   * @return such as {@code 12}
   */
  public String whole(double si) {
    return Figures.whole(of(si));
  }

  /**
   * A forecast figure with its unit.
   *
   * @param si the figure in SI units
   * @return such as {@code 3.2 mm}
   */
  public String figure(double si) {
    return two(si) + " " + symbol;
  }

  /**
   * A noted figure with its unit.
   *
   * @param si the figure in SI
   * @return such as {@code 46.25 g}
   */
  public String noted(double si) {
    return Figures.noted(of(si)) + " " + symbol;
  }

  /**
   * A figure in a clause, with its unit.
   *
   * @param si the figure in SI
   * @return two significant figures without zeros at the end, or whole degrees; such as {@code 3
   *     mm}
   */
  public String brief(double si) {
    return (this == CELSIUS ? whole(si) : Figures.brief(of(si))) + " " + symbol;
  }

  /**
   * A noted figure with its unit and, where it is not small, its standard uncertainty.
   *
   * @param si the figure in SI
   * @return such as {@code 46 g} or {@code 46 ± 3 g}
   */
  public String noted(Estimate si) {
    boolean uncertain = si.sd() > 0.02 * Math.abs(si.value());
    String value = Figures.noted(of(si.value()));
    return (uncertain ? value + " ± " + oneFigure(si.sd() * scale) : value) + " " + symbol;
  }

  /**
   * A forecast figure with unit and range.
   *
   * @param si the band in SI
   * @return such as {@code 6.1 MPa (2.6–14)}; without a range where its ends read the same
   */
  public String band(Band si) {
    return figure(si.middle()) + Figures.around(two(si.low()), two(si.high()));
  }

  /**
   * The range of a forecast figure, without unit.
   *
   * @param si the band in SI
   * @return such as {@code 2.6–14}
   */
  public String range(Band si) {
    return Figures.range(two(si.low()), two(si.high()));
  }

  /**
   * Refuses a figure outside its limits, in one sentence that states both in this unit.
   *
   * @param quantity what it is, in the trade's words
   * @param si the figure in SI units
   * @param from its lower limit in this unit, itself allowed
   * @param to its upper limit in this unit, itself allowed
   * @param fix what to do
   * @throws IllegalArgumentException where it lies outside
   */
  public void require(String quantity, double si, double from, double to, String fix) {
    double given = of(si);
    // A limit that was turned into SI units and back must not be refused.
    double rounding = ROUNDING * Math.max(Math.abs(from), Math.abs(to));
    if (!(given >= from - rounding && given <= to + rounding)) {
      refuse(quantity, si, Figures.of(from, 3) + " to " + Figures.of(to, 3) + " " + symbol, fix);
    }
  }

  /**
   * Refuses a figure that is negative or endless, in one such sentence.
   *
   * @param quantity what it is, in the trade's words
   * @param si the figure in SI units
   * @param fix what to do
   * @throws IllegalArgumentException where it is
   */
  public void requireNoneOrMore(String quantity, double si, String fix) {
    if (!(si >= 0 && Double.isFinite(si))) {
      refuse(quantity, si, "0 " + symbol + " or more", fix);
    }
  }

  /**
   * Refuses a figure that is not above 0, in one such sentence.
   *
   * @param quantity what it is, in the trade's words
   * @param si the figure in SI units
   * @param fix what to do
   * @throws IllegalArgumentException where it is not
   */
  public void requireSome(String quantity, double si, String fix) {
    if (!(si > 0)) {
      refuse(quantity, si, "more than 0 " + symbol, fix);
    }
  }

  /**
   * Refuses a figure that is not above 0 or lies beyond a limit, in one such sentence.
   *
   * @param quantity what it is, in the trade's words
   * @param si the figure in SI units
   * @param to its upper limit in this unit, itself allowed
   * @param fix what to do
   * @throws IllegalArgumentException where it lies outside
   */
  public void requireSome(String quantity, double si, double to, String fix) {
    if (!(si > 0 && of(si) <= to * (1 + ROUNDING))) {
      refuse(quantity, si, "more than 0 to " + Figures.of(to, 3) + " " + symbol, fix);
    }
  }

  private void refuse(String quantity, double si, String allowed, String fix) {
    String given = Figures.of(of(si), 3) + " " + symbol;
    Refusal.unless(false, quantity, given, allowed + "; " + fix);
  }

  private static String oneFigure(double value) {
    return Figures.noted(
        BigDecimal.valueOf(value).round(new MathContext(1, RoundingMode.HALF_UP)).doubleValue());
  }
}
