package starchfilm.material.sorption;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import starchfilm.material.ingredient.FittedGlycerolActivity;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Extrapolation;
import starchfilm.numerics.evidence.Source;

class FilmIsothermTest {
  static Stream<Composition> films() {
    return FilmCompositions.drawn();
  }

  @ParameterizedTest
  @MethodSource("films")
  void goingToMoistureAndBackReturnsTheActivity(Composition film) {
    FilmIsotherm isotherm = FilmIsotherm.of(film);
    for (double q = 1e-6; q < 3e5; q *= 1.05) {
      double activity = q / (1 + q);
      assertThat(isotherm.activity(isotherm.moisture(activity)))
          .as("%s at %s", film, activity)
          .isCloseTo(activity, within(1e-5));
    }
  }

  /** The slope against a central difference of the rule itself; 1 % wanted, 0.3 % kept. */
  @ParameterizedTest
  @MethodSource("films")
  void slopeIsThatOfTheRule(Composition film) {
    FilmIsotherm isotherm = FilmIsotherm.of(film);
    for (double q = 1e-3; q < 3e5; q *= 1.05) {
      double above = q * (1 + 1e-4) / (1 + q * (1 + 1e-4));
      double below = q * (1 - 1e-4) / (1 + q * (1 - 1e-4));
      double moistAbove = isotherm.moisture(above);
      double moistBelow = isotherm.moisture(below);
      double activityRise = 2e-4 * q / ((1 + q * (1 + 1e-4)) * (1 + q * (1 - 1e-4)));
      double slope = activityRise / (moistAbove - moistBelow);
      assertThat(isotherm.activitySlope((moistAbove + moistBelow) / 2) / slope)
          .as("%s at q %s", film, q)
          .isCloseTo(1, within(3e-3));
    }
  }

  @ParameterizedTest
  @MethodSource("films")
  void activityRisesAndStaysBelowOne(Composition film) {
    FilmIsotherm isotherm = FilmIsotherm.of(film);
    double last = -1;
    for (double moisture = 0; moisture < 1e6; moisture = moisture * 1.01 + 1e-4) {
      double activity = isotherm.activity(moisture);
      assertThat(activity).as("X %s", moisture).isGreaterThan(last).isLessThan(1);
      assertThat(isotherm.activitySlope(moisture)).as("X %s", moisture).isPositive();
      last = activity;
    }
  }

  /** The derivative's own integral, so value and slope belong to one another to rounding. */
  @ParameterizedTest
  @MethodSource("films")
  void slopeIsTheDerivativeOfTheTable(Composition film) {
    FilmIsotherm isotherm = FilmIsotherm.of(film);
    for (double moisture = 1e-3; moisture < 200; moisture *= 1.1) {
      double step = 1e-5 * moisture;
      double difference =
          (isotherm.activity(moisture + step) - isotherm.activity(moisture - step)) / (2 * step);
      double slope = isotherm.activitySlope(moisture);
      assertThat(difference).as("X %s", moisture).isCloseTo(slope, within(1e-4 * slope + 1e-9));
    }
  }

  @Test
  void dryFilmHasNoActivityAndGoesOnStraightBelow() {
    FilmIsotherm isotherm = FilmIsotherm.of(FilmCompositions.of(StarchKind.POTATO, 0.2, 0));
    assertThat(isotherm.activity(0)).isEqualTo(0);
    assertThat(isotherm.moisture(0)).isEqualTo(0);
    assertThat(isotherm.activity(-1e-3)).isNegative();
    assertThat(isotherm.activitySlope(-1e-3)).isEqualTo(isotherm.activitySlope(0));
    assertThat(isotherm.activity(Double.NaN)).isNaN();
    assertThat(isotherm.activity(1e300)).isLessThanOrEqualTo(1);
  }

  @Test
  void withoutGlycerolItIsTheStarchAlone() {
    FilmIsotherm isotherm = FilmIsotherm.of(FilmCompositions.of(StarchKind.WHEAT, 0, 0));
    double starch = StarchIsotherms.of(StarchKind.WHEAT).moisture(0.6);
    assertThat(isotherm.moisture(0.6)).isCloseTo(starch + 0.001 * 1.5, within(1e-12));
    assertThat(isotherm.sources()).hasSize(2);
  }

  @Test
  void withoutStarchItIsFourFifthsOfTheGlycerol() {
    FilmIsotherm isotherm = FilmIsotherm.of(FilmCompositions.of(Map.of(), 1, 0));
    double glycerol = new FittedGlycerolActivity().waterKgPerKgGlycerol(0.6);
    assertThat(isotherm.moisture(0.6)).isCloseTo(0.8 * glycerol + 0.001 * 1.5, within(1e-12));
  }

  @Test
  void kindsMixByDryMass() {
    double potato = FilmIsotherm.of(FilmCompositions.of(StarchKind.POTATO, 0.2, 0)).moisture(0.5);
    double rice = FilmIsotherm.of(FilmCompositions.of(StarchKind.RICE, 0.2, 0)).moisture(0.5);
    Map<StarchKind, Double> shares = Map.of(StarchKind.POTATO, 0.25, StarchKind.RICE, 0.75);
    assertThat(FilmIsotherm.of(FilmCompositions.of(shares, 0.2, 0)).moisture(0.5))
        .isCloseTo(0.25 * potato + 0.75 * rice, within(1e-12));
  }

  @Test
  void saltTakesPlaceAndIsFlagged() {
    FilmIsotherm clean = FilmIsotherm.of(FilmCompositions.of(StarchKind.CORN, 0.2, 0));
    FilmIsotherm salty = FilmIsotherm.of(FilmCompositions.of(StarchKind.CORN, 0.2, 0.03));
    assertThat(salty.moisture(0.5) - 0.001)
        .isCloseTo(0.97 * (clean.moisture(0.5) - 0.001), within(1e-12));
    assertThat(clean.extrapolations(0.5, 298.15)).isEmpty();
    assertThat(salty.extrapolations(0.5, 298.15))
        .singleElement()
        .extracting(Extrapolation::given)
        .isEqualTo(3.0);
    assertThat(clean.bandFactor(0.7)).isEqualTo(1);
    assertThat(salty.bandFactor(0.7)).isEqualTo(1);
    assertThat(clean.bandFactor(0.85)).isCloseTo(1.5, within(1e-12));
    assertThat(salty.bandFactor(0.85)).isGreaterThan(clean.bandFactor(0.85));
  }

  /**
   * 1 to 75 %, 2 from 95 % on. With salt, at 90 % (q = 9): parting 1.75, and two ions a molecule
   * hold {@code 2 * 18.015/58.44 * 0.03 * 9} kg/kg, a share of X over the spread of 0.15.
   */
  @Test
  void widensInDampAirAndWithSalt() {
    FilmIsotherm clean = FilmIsotherm.of(FilmCompositions.of(StarchKind.CORN, 0.2, 0));
    FilmIsotherm salty = FilmIsotherm.of(FilmCompositions.of(StarchKind.CORN, 0.2, 0.03));
    double saltWater = 2 * 18.015 / 58.44 * 0.03 * 9;
    assertThat(clean.bandFactor(0.75)).isEqualTo(1);
    assertThat(clean.bandFactor(0.95)).isCloseTo(2, within(1e-12));
    assertThat(clean.bandFactor(0.99)).isEqualTo(2);
    assertThat(salty.bandFactor(0.75)).isEqualTo(1);
    assertThat(salty.bandFactor(0.9))
        .isCloseTo(Math.hypot(1.75, saltWater / salty.moisture(0.9) / 0.15), within(1e-9));
  }

  /**
   * Of 100 g solids 20 g are inert: they hold nothing, or half of what as much of the rest does
   * (judged), which is an eighth of the moisture beside a spread of 0.15.
   */
  @Test
  void widensByWhatInertSolidsMightHold() {
    FilmIsotherm flour =
        FilmIsotherm.of(Composition.of(Map.of(StarchKind.WHEAT, 1.0), 0.06, 0.02, 0, 0, 0.9, 0.02));
    assertThat(flour.bandFactor(0.5)).isCloseTo(Math.hypot(1, 0.125 / 0.15), within(1e-12));
    assertThat(flour.bandFactor(0.95)).isCloseTo(Math.hypot(2, 0.125 / 0.15), within(1e-12));
  }

  @Test
  void goesOnStraightBelowDry() {
    FilmIsotherm isotherm = FilmIsotherm.of(FilmCompositions.of(StarchKind.POTATO, 0.2, 0));
    double slope = isotherm.activitySlope(0);
    assertThat(slope).isPositive();
    assertThat(isotherm.activity(-1e-3)).isCloseTo(-1e-3 * slope, within(1e-15));
    assertThat(isotherm.activity(-2e-3)).isCloseTo(-2e-3 * slope, within(1e-15));
    assertThat(isotherm.activity(1e-9)).isCloseTo(1e-9 * slope, within(1e-13));
  }

  /**
   * The points that the class names: 1, 0.9, 0.8 at 0, 0.05 and 0.2 of glycerol, straight between.
   */
  @Test
  void holdsLessTogetherThanApart() {
    assertThat(together(0)).isCloseTo(1, within(1e-12));
    assertThat(together(0.025)).isCloseTo(0.95, within(1e-12));
    assertThat(together(0.05)).isCloseTo(0.9, within(1e-12));
    assertThat(together(0.125)).isCloseTo(0.85, within(1e-12));
    assertThat(together(0.2)).isCloseTo(0.8, within(1e-12));
    assertThat(together(0.6)).isCloseTo(0.8, within(1e-12));
  }

  private static double together(double y) {
    double apart =
        (1 - y) * StarchIsotherms.of(StarchKind.CORN).moisture(0.5)
            + y * new FittedGlycerolActivity().waterKgPerKgGlycerol(0.5);
    return (FilmIsotherm.of(FilmCompositions.of(StarchKind.CORN, y, 0)).moisture(0.5) - 0.001)
        / apart;
  }

  @Test
  void saysWhichRangesAreNotMet() {
    FilmIsotherm isotherm = FilmIsotherm.of(FilmCompositions.of(StarchKind.CORN, 0.5, 0.03));
    assertThat(isotherm.extrapolations(0.95, 343.15))
        .extracting(Extrapolation::range)
        .containsExactly(
            FilmIsotherm.HUMIDITY_RANGE,
            FilmIsotherm.TEMPERATURE_RANGE,
            FilmIsotherm.GLYCEROL_RANGE,
            FilmIsotherm.SALT_RANGE);
    assertThat(
            FilmIsotherm.of(FilmCompositions.of(StarchKind.CORN, 0.2, 0))
                .extrapolations(0.5, 298.15))
        .isEmpty();
  }

  @Test
  void saysWhatItRestsOn() {
    FilmIsotherm isotherm = FilmIsotherm.of(FilmCompositions.of(StarchKind.WAXY_CORN, 0.2, 0));
    assertThat(isotherm.sources())
        .extracting(Source::check)
        .containsExactly(Check.JUDGED, Check.READ, Check.READ, Check.COMPUTED);
  }

  @Test
  void refusesSaturation() {
    FilmIsotherm isotherm = FilmIsotherm.of(FilmCompositions.of(StarchKind.CORN, 0.2, 0));
    assertThatThrownBy(() -> isotherm.moisture(1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "moisture of the film: water activity: 1.0 given, allowed 0 to below 1"
                + " (50 % is 0.5); at 1 a film takes up water without limit");
  }
}
