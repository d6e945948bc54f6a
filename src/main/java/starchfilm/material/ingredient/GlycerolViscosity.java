package starchfilm.material.ingredient;

import java.util.List;
import starchfilm.numerics.evidence.Source;
import starchfilm.numerics.evidence.ValidRange;

/** How thick a mixture of glycerol and water flows. */
public interface GlycerolViscosity {
  /**
   * Dynamic viscosity of the mixture.
   *
   * @param glycerolFraction glycerol (kg per kg glycerol and water, 0 to 1)
   * @param temperatureK temperature (K)
   * @return dynamic viscosity (Pa s)
   */
  double pascalSeconds(double glycerolFraction, double temperatureK);

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
}
