package starchfilm.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import starchfilm.casting.Castings;
import starchfilm.casting.Spot;
import starchfilm.drying.uncertainty.ParameterSample;

/** How a plate is looked at from the pour until its thick spot is dry. */
class PlateCourseTest {
  /**
   * Forty steps that grow from the pour on, to a little past dry-through: t_i = t_end (i/40)^1.5.
   */
  @Test
  void liesCloserTogetherAtFirst() {
    PlateCourse course =
        PlateCourse.of(Castings.USUAL, ParameterSample.NONE, DryingForecaster.HORIZON_S);
    double dryS =
        SolvedPlates.spot(Castings.USUAL, Spot.THICK_SPOT, ParameterSample.NONE)
            .at(Milestone.DRY_THROUGH);
    assertThat(course.thick()).hasSize(41);
    assertThat(course.edge()).hasSize(41);
    assertThat(course.thick().get(40).timeS()).isCloseTo(1.02 * dryS, within(1e-6 * dryS));
    for (int i : new int[] {0, 1, 10, 20, 30}) {
      assertThat(course.thick().get(i).timeS())
          .isCloseTo(1.02 * dryS * Math.pow(i / 40.0, 1.5), within(1e-6 * dryS));
      assertThat(course.edge().get(i).timeS()).isEqualTo(course.thick().get(i).timeS());
    }
    assertThat(course.edge().get(30).coreMoisture())
        .isLessThan(course.thick().get(30).coreMoisture());
  }

  @Test
  void goesToTheHorizonWhereThePlateIsNotDryBefore() {
    PlateCourse course = PlateCourse.of(Castings.USUAL, ParameterSample.NONE, 36_000);
    assertThat(course.thick().get(40).timeS()).isEqualTo(36_000);
    assertThat(course.thick().get(40).coreMoisture()).isGreaterThan(1);
  }
}
