package starchfilm.files.amount;

/** The quantity an amount measures, and how a sentence asks for it. */
public enum Dimension {
  /** A mass, in kg. */
  MASS("a mass", "412 g or 8 oz"),
  /** A volume, in m3. */
  VOLUME("a volume", "250 ml or 2 tbsp"),
  /** A length, in m. */
  LENGTH("a length", "2.5 mm or 1/8 in"),
  /** An area, in m2. */
  AREA("an area", "600 cm2"),
  /** A temperature, in K. */
  TEMPERATURE("a temperature", "20 C or 68 F"),
  /** A length of time, in s. */
  TIME("a time in min, h or d", "6h or 1d 12h"),
  /** A share of a whole, 0.05 for 5 %. */
  SHARE("a share in per cent", "55 %"),
  /** A force, in N. */
  FORCE("a force", "12 N"),
  /** A speed, in m/s. */
  SPEED("a speed", "0.1 m/s"),
  /** A strength, in Pa. */
  STRESS("a strength", "5 MPa"),
  /** A concentration, in mol/m3. */
  CONCENTRATION("a concentration", "0.5 mol/l"),
  /** A density, in kg/m3. */
  DENSITY("a density", "1.231 g/ml");

  private final String words;
  private final String example;

  Dimension(String words, String example) {
    this.words = words;
    this.example = example;
  }

  /**
   * The words for what is allowed where it is asked for.
   *
   * @return such as {@code a mass, such as 412 g or 8 oz}
   */
  public String allowed() {
    return words + ", such as " + example;
  }

  /**
   * Reads an amount of it, one number and no range.
   *
   * @param typed what was typed, with its unit
   * @return in the SI unit above
   * @throws MistypedException where it is no such amount
   */
  public double si(String typed) {
    return TypedAmount.of(this, typed).one();
  }

  /**
   * The dimension of a unit.
   *
   * @param unit a unit of a table or a file, such as {@code g}
   */
  public static Dimension ofUnit(String unit) {
    return Unit.named(unit).dimension();
  }

  /** The unit of the first example. */
  String usualUnit() {
    return example.replaceAll("^[0-9.]+ ?| or .*", "");
  }

  /** The name of the dimension. */
  String words() {
    return words.replaceFirst(" in .*", "");
  }
}
