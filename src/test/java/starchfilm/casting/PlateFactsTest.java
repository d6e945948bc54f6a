package starchfilm.casting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import starchfilm.casting.FaceChange.OpenFaces;
import starchfilm.numerics.evidence.Estimate;

/** Small facts of plates, by hand, and what is refused as none. */
class PlateFactsTest {
  @Test
  void aPlateHasItsAreaAndItsHeat() {
    Plate plate = new Plate(PlateMaterial.GLASS, 0.3, 0.2, 0.004, 0);
    assertThat(plate.areaM2()).isCloseTo(0.06, within(1e-15));
    // Window glass 2500 kg/m3 and 750 J/(kg K), 4 mm.
    assertThat(plate.heatCapacityJPerM2K()).isCloseTo(7500, within(1e-9));
  }

  /** Volumetric heat of solids is 0.6 (light wood) to 4 MJ/(m3 K) (any handbook; recalled). */
  @ParameterizedTest
  @EnumSource(PlateMaterial.class)
  void materialsAreSolids(PlateMaterial material) {
    assertThat(material.heatCapacityJPerM3K()).isBetween(0.6e6, 4e6);
    assertThat(material.tradeName()).isEqualTo(material.tradeName().strip()).isNotEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "0.91, 60, 20, 50, 0.1, 0.08, unevenness: 0.91",
    "0.25, 99, 20, 50, 0.1, 0.08, paste or bench temperature: 372.15",
    "0.25, 60, 20, 101, 0.1, 0.08, relative humidity: 1.01",
    "0.25, 60, 20, 50, 21, 0.08, air speed: 21.0",
    "0.25, 60, 20, 50, 0.1, 0.97, moisture of the paste: 0.03"
  })
  void refusesWhatNoPlateIs(
      double unevenness,
      double pasteC,
      double airC,
      double humidityPct,
      double speed,
      double solids,
      String words) {
    Casting casting =
        Castings.plate(
                3, Castings.paste(solids, 0), Castings.room(airC, humidityPct, speed), pasteC)
            .with(new Pour(Estimate.exact(0.003), unevenness, pasteC + 273.15));
    assertThatThrownBy(() -> DryingLimits.require(casting))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith(words);
  }

  @Test
  void refusesABoilingBenchAndSortsTheTurns() {
    List<FaceChange> turns =
        List.of(new FaceChange(20, OpenFaces.BOTH), new FaceChange(10, OpenFaces.TURNED));
    assertThat(bench(40, turns).faces()).extracting(FaceChange::timeS).containsExactly(10.0, 20.0);
    Casting boiling = bench(120, turns);
    assertThatThrownBy(() -> DryingLimits.require(boiling))
        .hasMessageStartingWith("paste or bench temperature: 393.15");
  }

  private static Casting bench(double celsius, List<FaceChange> turns) {
    return Castings.plate(
        3,
        Castings.paste(0.08, 0.3),
        Castings.room(20, 50, 0.1),
        60,
        OptionalDouble.of(celsius),
        turns);
  }
}
