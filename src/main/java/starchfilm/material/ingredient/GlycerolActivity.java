package starchfilm.material.ingredient;

import java.util.List;
import starchfilm.numerics.evidence.Source;
import starchfilm.numerics.evidence.ValidRange;

/**
 * How glycerol and water share the air's moisture: water activity of aqueous glycerol, and back.
 *
 * <p>Water activity is the relative humidity of the air that neither gives water to the solution
 * nor takes it, as a ratio.
 */
public interface GlycerolActivity {
  /**
   * Water activity over a solution.
   *
   * @param waterKgPerKgGlycerol water held (kg per kg glycerol, 0 or more; infinity is pure water)
   * @return water activity (ratio, 0 to 1), rising with the water held
   */
  double activity(double waterKgPerKgGlycerol);

  /**
   * Water held at an activity, the inverse of {@link #activity}.
   *
   * @param activity water activity (ratio, 0 to 1)
   * @return water held (kg per kg glycerol); 0 at activity 0, positive infinity at activity 1
   * @throws IllegalArgumentException outside 0 to 1
   */
  double waterKgPerKgGlycerol(double activity);

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
