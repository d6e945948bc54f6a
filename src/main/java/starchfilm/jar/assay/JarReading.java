package starchfilm.jar.assay;

import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Source;

/** One reading of a jar that tells glycerol from water. */
public sealed interface JarReading permits DensityReading, RefractometerReading {
  /**
   * Glycerol in glycerol and water, the part of salt and soap in the reading taken off.
   *
   * @param dissolved what else is in the jar
   * @return kg per kg glycerol and water: the best value, with the range that the errors of
   *     reading, temperature, salt, soap and rule give
   * @throws IllegalArgumentException if no mixture of glycerol and water can read so
   */
  Band glycerolInMixture(Dissolved dissolved);

  /**
   * How much more glycerol one per cent of salt makes this reading show.
   *
   * @return kg glycerol per kg mixture and kg salt per kg jar, such as 2.5
   */
  double falseGlycerolPerSalt();

  /**
   * Where the rule comes from.
   *
   * @return the citation
   */
  Source source();
}
