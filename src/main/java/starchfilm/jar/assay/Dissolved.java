package starchfilm.jar.assay;

import starchfilm.numerics.evidence.Estimate;

/**
 * What a jar holds beside glycerol and water, as far as it changes a reading.
 *
 * @param salt salt (kg per kg jar)
 * @param fatty soap and fatty acid (kg per kg jar)
 */
public record Dissolved(Estimate salt, Estimate fatty) {
  /** Nothing beside glycerol and water. */
  public static final Dissolved NOTHING = new Dissolved(Estimate.exact(0), Estimate.exact(0));

  private static final double MOST = 0.5;

  /** Checks the fractions. */
  public Dissolved {
    if (!(salt.value() >= 0 && fatty.value() >= 0 && salt.value() + fatty.value() <= MOST)) {
      throw new IllegalArgumentException(
          "salt and soap in the jar: "
              + salt.value() * 100
              + " and "
              + fatty.value() * 100
              + " % given, allowed 0 to 50 % together; a jar with more is no glycerol to cast with");
    }
  }

  /**
   * Only salt.
   *
   * @param salt salt (kg per kg jar)
   * @return salt and nothing fatty
   */
  public static Dissolved salt(Estimate salt) {
    return new Dissolved(salt, Estimate.exact(0));
  }

  /**
   * All that stays in a film.
   *
   * @return kg per kg jar
   */
  public Estimate stays() {
    return salt.plus(fatty);
  }
}
