package starchfilm.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import starchfilm.drying.DryingForecast.RoomVerdict;
import starchfilm.drying.FaceChange.OpenFaces;
import starchfilm.evidence.Estimate;
import starchfilm.recipe.Composition;

/** Small facts of plates, pastes and risks, by hand. */
class PlateFactsTest {
  /**
   * 10 parts starch and 3 of glycerol: (10 * 1550 + 3 * 2430)/13 J/(kg K); salt counts as starch.
   */
  @Test
  void solidsHeatIsMixedByMass() {
    assertThat(SolidsHeat.jPerKgK(Plates.paste(0.1, 0.3)))
        .isCloseTo((10 * 1550 + 3 * 2430) / 13.0, within(1e-9));
    Composition salty =
        new Composition(Plates.paste(0.1, 0.3).starchShares(), 0.06, 0.03, 0.04, 0.01, 0.86);
    assertThat(SolidsHeat.jPerKgK(salty)).isCloseTo((10 * 1550 + 3 * 2430) / 13.0, within(1e-9));
  }

  @Test
  void aPlateHasItsAreaAndItsHeat() {
    Plate plate = new Plate(PlateMaterial.GLASS, 0.3, 0.2, 0.004, 0);
    assertThat(plate.areaM2()).isCloseTo(0.06, within(1e-15));
    // Window glass 2500 kg/m3 and 750 J/(kg K), 4 mm.
    assertThat(plate.heatCapacityJPerM2K()).isCloseTo(7500, within(1e-9));
  }

  /** Volumetric heat of solids lies between 1 and 4 MJ/(m3 K) (any handbook; recalled). */
  @ParameterizedTest
  @EnumSource(PlateMaterial.class)
  void materialsAreSolids(PlateMaterial material) {
    assertThat(material.heatCapacityJPerM3K()).isBetween(1e6, 4e6);
    assertThat(material.tradeName()).isEqualTo(material.tradeName().strip()).isNotEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "0.2999, LOW",
    "0.3, WATCH",
    "0.999, WATCH",
    "1, LIKELY",
    "1.99, LIKELY",
    "2, EXPECTED"
  })
  void crackLevels(double ratio, RiskLevel level) {
    assertThat(CrackRisk.level(ratio)).isEqualTo(level);
  }

  @ParameterizedTest
  @CsvSource({
    "23.9, LOW",
    "24, WATCH",
    "47.9, WATCH",
    "48, LIKELY",
    "95.9, LIKELY",
    "96, EXPECTED"
  })
  void mouldLevels(double hours, RiskLevel level) {
    assertThat(MouldRisk.level(hours)).isEqualTo(level);
  }

  /** 18 days at 0.75, one at 0.95 and above; 2.5 times slower 10 K colder; nothing from 45 °C. */
  @ParameterizedTest
  @CsvSource({
    "0.7499, 22, 0",
    "0.75, 22, 0.0555556",
    "0.95, 22, 1",
    "0.99, 22, 1",
    "0.95, 12, 0.4",
    "0.95, 2, 0.16",
    "0.95, 44.9, 1",
    "0.95, 45, 0"
  })
  void mouldGrows(double activity, double celsius, double perDay) {
    assertThat(new MouldGrowth().speed(activity, celsius + 273.15)).isCloseTo(perDay, within(1e-6));
  }

  /** A film keeps at most its own weight, and at most half of what the paste had. */
  @ParameterizedTest
  @CsvSource({
    "0.3299, 10, DRIES",
    "0.3301, 10, NEVER_PEELABLE",
    "1, 10, NEVER_PEELABLE",
    "1.001, 10, TOO_DAMP",
    "0.2, 0.4, DRIES",
    "0.201, 0.4, TOO_DAMP"
  })
  void roomsAreJudged(double resting, double start, RoomVerdict verdict) {
    assertThat(RoomDamp.verdict(resting, start)).isEqualTo(verdict);
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
    assertThatThrownBy(
            () ->
                new DryingCase(
                    Plates.paste(solids, 0),
                    0,
                    0,
                    Plates.USUAL.plate(),
                    new Pour(Estimate.exact(0.003), unevenness, pasteC + 273.15),
                    Plates.room(airC, humidityPct, speed),
                    OptionalDouble.empty(),
                    List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith(words);
  }

  @Test
  void refusesABoilingBenchAndSortsTheTurns() {
    List<FaceChange> turns =
        List.of(new FaceChange(20, OpenFaces.BOTH), new FaceChange(10, OpenFaces.TURNED));
    assertThat(bench(40, turns).faces()).extracting(FaceChange::timeS).containsExactly(10.0, 20.0);
    assertThatThrownBy(() -> bench(120, turns))
        .hasMessageStartingWith("paste or bench temperature: 393.15");
  }

  private static DryingCase bench(double celsius, List<FaceChange> turns) {
    return Plates.plate(
        3,
        Plates.paste(0.08, 0.3),
        Plates.room(20, 50, 0.1),
        60,
        OptionalDouble.of(celsius),
        turns);
  }

  @Test
  void namesWhatDryingRestsOn() {
    assertThat(DryingSources.all())
        .contains(CrackRisk.SOURCE, MouldGrowth.SOURCE)
        .containsAll(WaterDiffusivity.SOURCES)
        .doesNotHaveDuplicates();
  }

  /** A tenth more glycerol beside the same starch, salt, acid and water. */
  @Test
  void glycerolIsMultipliedBesideTheRest() {
    Composition paste =
        new Composition(Plates.paste(0.1, 0.3).starchShares(), 0.08, 0.024, 0.004, 0.006, 0.886);
    Composition more = FilmMaterial.withGlycerol(paste, 1.1);
    assertThat(more.glycerolPerDryStarch()).isCloseTo(0.33, within(1e-12));
    assertThat(more.salt() / more.dryStarch()).isCloseTo(0.05, within(1e-12));
    assertThat(more.aceticAcid() / more.dryStarch()).isCloseTo(0.075, within(1e-12));
    assertThat(more.water() / more.dryStarch()).isCloseTo(0.886 / 0.08, within(1e-9));
  }

  @Test
  void deviationsAreEqualByValue() {
    Deviations some = Deviations.NONE.with(Factor.HUMIDITY, 0.1);
    Deviations same = Deviations.NONE.with(Factor.HUMIDITY, 0.1);
    assertThat(some).isEqualTo(same).hasSameHashCodeAs(same).isNotEqualTo(Deviations.NONE);
    assertThat(some).isNotEqualTo("0.1");
    assertThat(some.hashCode()).isNotEqualTo(Deviations.NONE.hashCode());
    assertThat(some.toString()).contains("0.1");
    assertThat(some.multiplier(Factor.HUMIDITY)).isEqualTo(1.1);
    assertThat(Deviations.NONE.with(Factor.BENCH, Math.log(2)).multiplier(Factor.BENCH))
        .isCloseTo(2, within(1e-12));
  }

  /** What goes in as a covariance comes out as one, of the model and of what it draws. */
  @Test
  void drawsHaveTheCovarianceTheyAreDrawnFrom() {
    int n = Factor.values().length;
    double[][] covariance = FactorModel.textbook().covariance();
    int air = Factor.AIR_SIDE.ordinal();
    int bench = Factor.BENCH.ordinal();
    covariance[air][bench] = covariance[bench][air] = -0.6 * 0.35 * 0.5;
    double[] mean = new double[n];
    mean[air] = 0.2;
    FactorModel model = FactorModel.learnt(mean, covariance);
    assertThat(model.sd(Factor.BENCH)).isCloseTo(0.5, within(1e-9));
    assertThat(model.mean().of(Factor.AIR_SIDE)).isEqualTo(0.2);
    Deviations[] draws = model.draws(4096);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        assertThat(model.covariance()[i][j]).isCloseTo(covariance[i][j], within(1e-12));
        double sum = 0;
        for (Deviations draw : draws) {
          sum += (draw.of(Factor.values()[i]) - mean[i]) * (draw.of(Factor.values()[j]) - mean[j]);
        }
        if (covariance[i][i] == 0 || covariance[j][j] == 0) {
          continue; // the plasticiser, which varies only with its jar
        }
        double scale = Math.sqrt(covariance[i][i] * covariance[j][j]);
        assertThat(sum / draws.length / scale)
            .as("%s %s", i, j)
            .isCloseTo(covariance[i][j] / scale, within(0.03));
      }
    }
    assertThat(model.widened(Factor.BENCH, 1.2).sd(Factor.BENCH)).isCloseTo(1.3, within(1e-9));
  }
}
