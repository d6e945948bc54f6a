package starchfilm.film.risk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.Pour;
import starchfilm.casting.Room;
import starchfilm.casting.SwingingRoom;
import starchfilm.film.risk.Remedy.Change;
import starchfilm.material.air.AirState;
import starchfilm.material.air.WagnerPruss1993;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;
import starchfilm.numerics.evidence.Estimate;

/** What each remedy changes, by how much, and where there is nothing left to change. */
class PlateChangeTest {
  @ParameterizedTest
  @CsvSource({
    "POUR_THINNER, 0.003, 0.00225",
    "MORE_GLYCEROL, 0.3, 0.4",
    "LEVEL_BETTER, 0.25, 0.125",
    "DRY_SLOWER, 0.5, 0.65",
    "MORE_AIR, 0.1, 0.5",
    "DRIER_ROOM, 0.5, 0.35",
    "WARMER_ROOM, 293.15, 298.15"
  })
  void changesOneThing(Change change, double from, double to) {
    PlateChange changed = PlateChange.apply(change, Castings.USUAL).orElseThrow();
    assertThat(changed.from()).isCloseTo(from, within(1e-12));
    assertThat(changed.to()).isCloseTo(to, within(1e-12));
    assertThat(figure(change, Castings.USUAL)).isCloseTo(from, within(1e-12));
    assertThat(figure(change, changed.drying())).isCloseTo(to, within(1e-12));
    for (Change other : Change.values()) {
      // Warmed air keeps its vapour; more glycerol dilutes nothing but the shares of a kilogram.
      boolean bound = change == Change.WARMER_ROOM && isHumidity(other);
      if (other != change && !(isHumidity(other) && isHumidity(change)) && !bound) {
        assertThat(figure(other, changed.drying()))
            .as("%s", other)
            .isEqualTo(figure(other, Castings.USUAL));
      }
    }
  }

  private static boolean isHumidity(Change change) {
    return change == Change.DRY_SLOWER || change == Change.DRIER_ROOM;
  }

  private static double figure(Change change, Casting drying) {
    AirState air = drying.room().at(0);
    return switch (change) {
      case POUR_THINNER -> drying.pour().wetThicknessM().value();
      case MORE_GLYCEROL -> drying.composition().glycerolPerDryStarch();
      case LEVEL_BETTER -> drying.pour().unevenness();
      case DRY_SLOWER, DRIER_ROOM -> air.relativeHumidity();
      case MORE_AIR -> air.speedMPerS();
      case WARMER_ROOM -> air.temperatureK();
    };
  }

  @Test
  void keepsTheVapourOfWarmedAir() {
    AirState warmed =
        PlateChange.apply(Change.WARMER_ROOM, Castings.USUAL).orElseThrow().drying().room().at(0);
    WagnerPruss1993 saturation = new WagnerPruss1993();
    assertThat(warmed.relativeHumidity() * saturation.pa(298.15))
        .isCloseTo(0.5 * saturation.pa(293.15), within(1e-9));
  }

  /**
   * 100 g starch and 30 g glycerol with salt, acid and water, to 40 g: the others in proportion.
   */
  @Test
  void addsGlycerolAndNothingElse() {
    Composition paste =
        new Composition(Map.of(StarchKind.RICE, 1.0), 0.08, 0.024, 0.004, 0.006, 0.886);
    Composition more =
        PlateChange.apply(
                Change.MORE_GLYCEROL, Castings.plate(3, paste, Castings.room(20, 50, 0.1), 60))
            .orElseThrow()
            .drying()
            .composition();
    assertThat(more.glycerolPerDryStarch()).isCloseTo(0.4, within(1e-12));
    assertThat(more.water() / more.dryStarch()).isCloseTo(0.886 / 0.08, within(1e-9));
    assertThat(more.salt() / more.dryStarch()).isCloseTo(0.05, within(1e-12));
    assertThat(more.aceticAcid() / more.dryStarch()).isCloseTo(0.075, within(1e-12));
  }

  /** At 45 g, 70 %, 30 %, 0.5 m/s, 35 °C there is nothing left; just short of it the rest is. */
  @Test
  void stopsAtItsLimits() {
    assertThat(to(Change.MORE_GLYCEROL, 0.45, 20, 50, 0.1)).isNaN();
    assertThat(to(Change.MORE_GLYCEROL, 0.40, 20, 50, 0.1)).isCloseTo(0.45, within(1e-12));
    assertThat(to(Change.DRY_SLOWER, 0.3, 20, 70, 0.1)).isNaN();
    assertThat(to(Change.DRY_SLOWER, 0.3, 20, 65, 0.1)).isCloseTo(0.70, within(1e-12));
    assertThat(to(Change.DRIER_ROOM, 0.3, 20, 30, 0.1)).isNaN();
    assertThat(to(Change.DRIER_ROOM, 0.3, 20, 35, 0.1)).isCloseTo(0.30, within(1e-12));
    assertThat(to(Change.MORE_AIR, 0.3, 20, 50, 0.5)).isNaN();
    assertThat(to(Change.WARMER_ROOM, 0.3, 35, 50, 0.1)).isNaN();
    assertThat(to(Change.WARMER_ROOM, 0.3, 33, 50, 0.1)).isCloseTo(308.15, within(1e-9));
  }

  private static double to(
      Change change, double glycerol, double celsius, double humidityPct, double speed) {
    Casting drying =
        Castings.plate(
            3, Castings.paste(0.06, glycerol), Castings.room(celsius, humidityPct, speed), 60);
    return PlateChange.apply(change, drying).map(PlateChange::to).orElse(Double.NaN);
  }

  @Test
  void levelsOnlyWhatIsUneven() {
    assertThat(PlateChange.apply(Change.LEVEL_BETTER, uneven(0.049))).isEmpty();
    assertThat(PlateChange.apply(Change.LEVEL_BETTER, uneven(0.05))).isPresent();
  }

  private static Casting uneven(double unevenness) {
    Casting usual = Castings.USUAL;
    return Castings.of(
        usual.composition(),
        0,
        0,
        usual.plate(),
        new Pour(Estimate.exact(0.003), unevenness, 333),
        usual.room(),
        usual.benchTemperatureK(),
        List.of());
  }

  @Test
  void leavesTheAirOfAVaryingRoomAlone() {
    Room swing = new SwingingRoom(new AirState(293.15, 0.5, 0.1), 5, 0.1, 0);
    Casting drying = Castings.plate(3, Castings.paste(0.08, 0.3), swing, 60);
    assertThat(PlateChange.apply(Change.DRIER_ROOM, drying)).isEmpty();
    assertThat(PlateChange.apply(Change.MORE_AIR, drying)).isEmpty();
    assertThat(PlateChange.apply(Change.POUR_THINNER, drying)).isPresent();
  }
}
