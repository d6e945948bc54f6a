package starchfilm.files.amount;

/** A number with its unit, in SI. */
public sealed interface Measure {
  /**
   * A mass.
   *
   * @param kg kilograms
   */
  record Mass(double kg) implements Measure {}

  /**
   * A volume.
   *
   * @param m3 cubic metres
   */
  record Volume(double m3) implements Measure {}

  /**
   * A length.
   *
   * @param m metres
   */
  record Length(double m) implements Measure {}

  /**
   * An area.
   *
   * @param m2 square metres
   */
  record Area(double m2) implements Measure {}

  /**
   * A temperature.
   *
   * @param k kelvins
   */
  record Temperature(double k) implements Measure {}

  /**
   * A length of time.
   *
   * @param s seconds
   */
  record Span(double s) implements Measure {}

  /**
   * A share of a whole.
   *
   * @param fraction 0.05 for 5 %
   */
  record Share(double fraction) implements Measure {}

  /**
   * A force.
   *
   * @param n newtons
   */
  record Force(double n) implements Measure {}

  /**
   * Reads a number with its unit.
   *
   * @param text such as {@code 1,5 g} or {@code 1d 6h}
   * @return the measure
   * @throws MistypedException where the text is no such thing
   */
  static Measure parse(String text) {
    return MeasureParser.parse(text);
  }

  /**
   * Reads a mass.
   *
   * @param text such as {@code 412 g}
   * @return the mass
   * @throws MistypedException where the text is no mass
   */
  static Mass mass(String text) {
    return MeasureParser.parse(text, Mass.class, "a mass in mg, g or kg, such as 412 g");
  }

  /**
   * Reads a volume.
   *
   * @param text such as {@code 250 ml}
   * @return the volume
   * @throws MistypedException where the text is no volume
   */
  static Volume volume(String text) {
    return MeasureParser.parse(text, Volume.class, "a volume in ml or l, such as 250 ml");
  }

  /**
   * Reads a length.
   *
   * @param text such as {@code 2.5 mm}
   * @return the length
   * @throws MistypedException where the text is no length
   */
  static Length length(String text) {
    return MeasureParser.parse(text, Length.class, "a length in um, mm, cm or m, such as 2.5 mm");
  }

  /**
   * Reads an area.
   *
   * @param text such as {@code 600 cm2}
   * @return the area
   * @throws MistypedException where the text is no area
   */
  static Area area(String text) {
    return MeasureParser.parse(text, Area.class, "an area in cm2 or m2, such as 600 cm2");
  }

  /**
   * Reads a temperature.
   *
   * @param text such as {@code 20 C}
   * @return the temperature
   * @throws MistypedException where the text is no temperature
   */
  static Temperature temperature(String text) {
    return MeasureParser.parse(
        text, Temperature.class, "a temperature in degrees Celsius, such as 20 C");
  }

  /**
   * Reads a length of time.
   *
   * @param text such as {@code 90 min} or {@code 1d 6h}
   * @return the span
   * @throws MistypedException where the text is no span
   */
  static Span span(String text) {
    return MeasureParser.parse(text, Span.class, "a time in min, h or d, such as 6h or 1d 12h");
  }

  /**
   * Reads a share.
   *
   * @param text such as {@code 55 %}
   * @return the share
   * @throws MistypedException where the text is no share
   */
  static Share share(String text) {
    return MeasureParser.parse(text, Share.class, "a share in per cent, such as 55 %");
  }

  /**
   * Reads a force.
   *
   * @param text such as {@code 12 N}
   * @return the force
   * @throws MistypedException where the text is no force
   */
  static Force force(String text) {
    return MeasureParser.parse(text, Force.class, "a force in N, such as 12 N");
  }
}
