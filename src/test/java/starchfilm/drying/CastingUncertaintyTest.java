package starchfilm.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.Pour;
import starchfilm.casting.RoomUncertainty;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Paste;
import starchfilm.material.sorption.FilmIsotherm;
import starchfilm.numerics.evidence.Estimate;

/** What the notes of one plate add to what is believed of all, in squares, by hand. */
class CastingUncertaintyTest {
  private final ParameterDistribution believed = ParameterDistribution.textbook();

  private double added(Casting casting, UncertainParameter parameter) {
    double sd = new PlateSimulation(casting).doubted(believed).sd(parameter);
    return Math.sqrt(Math.max(0, sd * sd - Math.pow(believed.sd(parameter), 2)));
  }

  /** Transfer goes with the root of the speed, so half of the speed's 40 % is left. */
  @ParameterizedTest
  @CsvSource({"AIR_TEMPERATURE, 1.5", "HUMIDITY, 0.05", "AIR_SIDE, 0.2"})
  void theRoomsOwnUncertaintyCounts(UncertainParameter parameter, double more) {
    Casting plate = Castings.USUAL;
    RoomUncertainty vague = new RoomUncertainty(1.5, 0.05, 0.4);
    Casting vaguely =
        plate.with(new DryingPlace("shed", plate.room(), vague, OptionalDouble.empty()));
    assertThat(added(vaguely, parameter)).isCloseTo(more, within(1e-9));
    assertThat(added(plate, parameter)).isZero();
  }

  /** The logarithm of a figure known within 30 % spreads by {@code sqrt(ln 1.09)} = 0.2936. */
  @ParameterizedTest
  @CsvSource({"THICKNESS, 0.2936", "UNEVENNESS, 0.51", "SOLIDS, 0.2936", "PLASTICISER, 0.2936"})
  void pourAndPasteAddTheirOwn(UncertainParameter parameter, double more) {
    Composition paste = Castings.USUAL.composition();
    Pour guessed =
        new Pour(
            new Estimate(3e-3, 0.9e-3),
            Castings.USUAL.pour().unevenness(),
            Pour.UNMEASURED_SD_OF_LOG,
            333.15,
            Castings.USUAL.pour().weighedKg(),
            1,
            List.of());
    Casting rough = Castings.USUAL.with(new Paste(paste, 1, 0.3, 0.3)).with(guessed);
    assertThat(added(rough, parameter)).isCloseTo(more, within(1e-4));
    assertThat(added(Castings.USUAL, parameter)).isZero();
  }

  /** Half a per cent of glycerol does not show. */
  @Test
  void aHairOfPlasticiserIsNotCounted() {
    Composition paste = Castings.USUAL.composition();
    assertThat(
            added(
                Castings.USUAL.with(new Paste(paste, 1, 0, 0.005)), UncertainParameter.PLASTICISER))
        .isZero();
    assertThat(
            added(
                Castings.USUAL.with(new Paste(paste, 1, 0, 0.006)), UncertainParameter.PLASTICISER))
        .isCloseTo(0.006, within(1e-6));
  }

  /** What film holds in damp air, or beside salt, is known less well than in a dry room. */
  @Test
  void dampAirWidensTheIsotherm() {
    assertThat(added(Castings.USUAL, UncertainParameter.ISOTHERM)).isCloseTo(0, within(1e-6));
    Casting damp = Castings.plate(3, Castings.paste(0.08, 0.3), Castings.room(20, 88, 0.1), 60);
    double factor = FilmIsotherm.of(damp.composition()).bandFactor(0.88);
    assertThat(factor).isGreaterThan(1.05);
    assertThat(added(damp, UncertainParameter.ISOTHERM))
        .isCloseTo(0.15 * Math.sqrt(factor * factor - 1), within(1e-6));
  }

  /**
   * Solids of 10 % that deviate by d: the logarithm of {@code s/(1 - s)} by {@code d/0.9}, so the
   * water per solids, 9 kg/kg, by as much the other way; never below none nor above all.
   */
  @ParameterizedTest
  @CsvSource({"0, 9", "0.09, 8.1435", "-0.09, 9.9465", "-9, 198238", "9, 0.0004086"})
  void solidsMoveTheMoistureOfThePaste(double deviation, double moisture) {
    Composition tenth = Castings.paste(0.1 / 1.3, 0.3);
    assertThat(
            PreparedCase.startMoisture(
                tenth, ParameterSample.NONE.with(UncertainParameter.SOLIDS, deviation)))
        .isCloseTo(moisture, within(2e-4 * moisture));
  }
}
