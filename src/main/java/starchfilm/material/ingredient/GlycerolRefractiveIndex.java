package starchfilm.material.ingredient;

import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import starchfilm.numerics.evidence.Source;
import starchfilm.numerics.evidence.ValidRange;

/** How glycerol and water bend the yellow light of sodium, and back from there to the mixture. */
public interface GlycerolRefractiveIndex {
  /**
   * Refractive index of the mixture at 589 nm.
   *
   * @param glycerolFraction glycerol (kg per kg glycerol and water, 0 to 1)
   * @param temperatureK temperature (K)
   * @return refractive index (ratio)
   */
  double index(double glycerolFraction, double temperatureK);

  /**
   * Standard uncertainty of {@link #index}.
   *
   * @param glycerolFraction glycerol (kg per kg glycerol and water, 0 to 1)
   * @param temperatureK temperature (K)
   * @return refractive index (ratio)
   */
  double indexSd(double glycerolFraction, double temperatureK);

  /**
   * Where the rule comes from.
   *
   * @return the citation
   */
  Source source();

  /**
   * What the rule is known to hold for.
   *
   * @return one range a quantity
   */
  List<ValidRange> ranges();

  /**
   * The mixture that has a refractive index, the inverse of {@link #index}.
   *
   * @param index refractive index at 589 nm (ratio)
   * @param temperatureK temperature (K)
   * @return glycerol (kg per kg glycerol and water, 0 to 1)
   * @throws IllegalArgumentException if no mixture has this index at this temperature
   */
  default double glycerolFraction(double index, double temperatureK) {
    double water = index(0, temperatureK);
    double glycerol = index(1, temperatureK);
    if (!(index >= water && index <= glycerol)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "refractive index: %.4f given, allowed %.4f (water) to %.4f (pure glycerol) at"
                  + " %.1f °C; wipe the prism, set the zero with water and read again",
              index,
              water,
              glycerol,
              temperatureK - 273.15));
    }
    double accuracy = 1e-12;
    int mostSteps = 200;
    return new BrentSolver(accuracy).solve(mostSteps, w -> index(w, temperatureK) - index, 0, 1);
  }
}
