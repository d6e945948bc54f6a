package starchfilm.jar.assay;

import starchfilm.numerics.evidence.Source;

/** A reading of a jar that depends on how much glycerol there is beside the water. */
public sealed interface JarReading permits DensityReading, RefractometerReading {
  /**
   * The way back from a reading to a mixture of glycerol and water.
   *
   * @return its table, at the reading's temperature
   */
  Inversion inversion();

  /**
   * The glycerol that one likely case of this reading means.
   *
   * @param table the table of {@link #inversion}
   * @param beside what else is in the jar
   * @param draws where the errors of the reading and of its rule come from
   * @return kg per kg jar; NaN where no mixture of glycerol and water reads so
   */
  double glycerol(Inversion table, Dissolved beside, Draws draws);

  /**
   * How much more or less glycerol the reading shows for something else in the jar.
   *
   * @param beside what is in the jar
   * @return kg glycerol shown too much, per kg jar; below 0 where it shows too little
   */
  double falseGlycerol(Dissolved beside);

  /**
   * Returns the refusal where no mixture of glycerol and water reads so.
   *
   * @return one sentence
   */
  String refusal();

  /**
   * Where the rule from reading to glycerol comes from.
   *
   * @return the source
   */
  Source source();
}
