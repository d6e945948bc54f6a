package starchfilm.material.ingredient;

import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import starchfilm.numerics.evidence.Source;
import starchfilm.numerics.evidence.ValidRange;

/** How heavy a litre of glycerol and water is, and back from there to the mixture. */
public interface GlycerolDensity {
  /**
   * Density of the mixture.
   *
   * @param glycerolFraction glycerol (kg per kg glycerol and water, 0 to 1)
   * @param temperatureK temperature (K)
   * @return density (kg/m3)
   */
  double kgPerM3(double glycerolFraction, double temperatureK);

  /**
   * Standard uncertainty of {@link #kgPerM3}.
   *
   * @return density (kg/m3)
   */
  double kgPerM3Sd();

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
   * The mixture that has a density, the inverse of {@link #kgPerM3}.
   *
   * @param densityKgPerM3 density (kg/m3)
   * @param temperatureK temperature (K)
   * @return glycerol (kg per kg glycerol and water, 0 to 1)
   * @throws IllegalArgumentException if no mixture of glycerol and water has this density at this
   *     temperature
   */
  default double glycerolFraction(double densityKgPerM3, double temperatureK) {
    double water = kgPerM3(0, temperatureK);
    double glycerol = kgPerM3(1, temperatureK);
    if (!(densityKgPerM3 >= water && densityKgPerM3 <= glycerol)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "density: %.1f kg/m3 given, allowed %.1f kg/m3 (water) to %.1f kg/m3"
                  + " (pure glycerol) at %.1f °C; weigh the volume again; note that"
                  + " dissolved salt or soap makes it heavier and alcohol lighter",
              densityKgPerM3,
              water,
              glycerol,
              temperatureK - 273.15));
    }
    double accuracy = 1e-12;
    int mostSteps = 200;
    return new BrentSolver(accuracy)
        .solve(mostSteps, w -> kgPerM3(w, temperatureK) - densityKgPerM3, 0, 1);
  }
}
