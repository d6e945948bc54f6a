package starchfilm.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.Spot;
import starchfilm.drying.uncertainty.DrawnCases;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;

/** How the time of a thick spot hangs on each thing uncertain, one standard deviation at a time. */
class DryingSlopesTest {
  private static final ParameterDistribution TEXTBOOK = ParameterDistribution.textbook();
  private static final UncertainParameter[] PARAMETERS = UncertainParameter.values();

  private static double[] slopes(Casting casting, ParameterDistribution model) {
    return new LikelyCases(PreparedCase.of(casting), model, 1).slopes();
  }

  private static double logDryS(Casting casting, ParameterSample deviations) {
    return Math.log(
        SolvedPlates.spot(casting, Spot.THICK_SPOT, deviations).at(Milestone.DRY_THROUGH));
  }

  private static ParameterSample off(UncertainParameter parameter, double sds) {
    return ParameterSample.NONE.with(parameter, sds * parameter.spread());
  }

  @Test
  void areWhatOneStandardDeviationChanges() {
    double[] slopes = slopes(Castings.USUAL, TEXTBOOK);
    double middle = logDryS(Castings.USUAL, ParameterSample.NONE);
    for (UncertainParameter parameter : PARAMETERS) {
      assertThat(slopes[parameter.ordinal()])
          .as("%s", parameter)
          .isCloseTo(logDryS(Castings.USUAL, off(parameter, 1)) - middle, within(1e-6));
    }
    assertThat(slopes[UncertainParameter.AIR_SIDE.ordinal()]).isNegative();
    assertThat(slopes[UncertainParameter.THICKNESS.ordinal()]).isPositive();
    assertThat(slopes[UncertainParameter.PLASTICISER.ordinal()]).isCloseTo(0, within(1e-9));
  }

  /** Five points more of humidity keep this plate wet; five less tell what a point is worth. */
  @Test
  void areThoseOfTheStepBackWhereOneMoreKeepsThePlateWet() {
    Casting damp = Castings.plate(2, Castings.paste(0.08, 0.2), Castings.room(20, 92, 0.1), 20);
    UncertainParameter humidity = UncertainParameter.HUMIDITY;
    assertThat(logDryS(damp, off(humidity, 1))).isInfinite();
    double[] slopes = slopes(damp, TEXTBOOK);
    double middle = logDryS(damp, ParameterSample.NONE);
    assertThat(slopes[humidity.ordinal()])
        .isCloseTo(middle - logDryS(damp, off(humidity, -1)), within(1e-6))
        .isPositive();
    UncertainParameter air = UncertainParameter.AIR_SIDE;
    assertThat(slopes[air.ordinal()])
        .isCloseTo(logDryS(damp, off(air, 1)) - middle, within(1e-6))
        .isNegative();
    assertThat(new LikelyCases(PreparedCase.of(damp), TEXTBOOK, 16).cases())
        .isEqualTo(DrawnCases.of(TEXTBOOK, 48, slopes));
  }

  @Test
  void areNoneWhereNothingDriesOrNothingIsUncertain() {
    Casting wet = Castings.plate(3, Castings.paste(0.08, 0.4), Castings.room(20, 95, 0.1), 20);
    assertThat(slopes(wet, TEXTBOOK)).isEmpty();
    ParameterDistribution sure =
        ParameterDistribution.learnt(
            new double[PARAMETERS.length], new double[PARAMETERS.length][PARAMETERS.length]);
    LikelyCases alike = new LikelyCases(PreparedCase.of(Castings.USUAL), sure, 5);
    for (double slope : alike.slopes()) {
      assertThat(slope).isCloseTo(0, within(1e-6));
    }
    for (ParameterSample one : alike.cases()) {
      for (UncertainParameter parameter : PARAMETERS) {
        assertThat(one.of(parameter)).isCloseTo(0, within(1e-6));
      }
    }
  }
}
