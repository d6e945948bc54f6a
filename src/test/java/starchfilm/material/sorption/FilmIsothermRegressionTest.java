package starchfilm.material.sorption;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * A tripwire, not evidence: a coarser rule of ours for an average starch, good to 15 % (judged).
 *
 * <p>{@code m = xi [GAB(a) + 1.2 * 0.196 g a/(1 - a)]} kg per kg dry starch, g kg glycerol per kg
 * dry starch, xi falling from 1 to 0.8 at g = 0.2; X_m 0.095, C 12, K 0.72; 20 to 75 % relative
 * humidity and g to 0.6.
 */
class FilmIsothermRegressionTest {
  private static final GabIsotherm AVERAGE =
      new GabIsotherm(0.095, 12, 0.72, new Source("judged, no source", Check.JUDGED));

  @Test
  void cornIsWithinATenthOfTheAverageStarch() {
    compare(StarchKind.CORN, 0.10);
  }

  /** Potato holds the most: 24 % above the average at 20 % relative humidity. */
  @ParameterizedTest
  @EnumSource(StarchKind.class)
  void everyKindIsWithinAQuarterOfTheAverageStarch(StarchKind kind) {
    compare(kind, 0.25);
  }

  private static void compare(StarchKind kind, double allowed) {
    for (double g = 0; g <= 0.6; g += 0.05) {
      FilmIsotherm isotherm = FilmIsotherm.of(Films.of(kind, g / (1 + g), 0));
      for (double activity = 0.2; activity <= 0.751; activity += 0.05) {
        double perStarch = isotherm.moisture(activity) * (1 + g);
        assertThat(perStarch / coarse(g, activity))
            .as("g %s, a %s", g, activity)
            .isCloseTo(1, within(allowed));
      }
    }
  }

  private static double coarse(double g, double activity) {
    double xi = 1 - 0.2 * Math.min(g / 0.2, 1);
    return xi * (AVERAGE.moisture(activity) + 1.2 * 0.196 * g * activity / (1 - activity));
  }
}
