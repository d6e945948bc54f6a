package starchfilm.film.risk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.FaceChange;
import starchfilm.casting.FaceChange.OpenFaces;
import starchfilm.casting.Plate;
import starchfilm.casting.PlateMaterial;
import starchfilm.casting.Pour;
import starchfilm.drying.PlateCourse;
import starchfilm.drying.SpotMoment;
import starchfilm.material.recipe.Composition;
import starchfilm.material.sorption.FilmIsotherm;
import starchfilm.numerics.evidence.Estimate;

/**
 * Cracking and curling over courses made by hand: a glass without glycerol, 3 mm wet on average,
 * that dries from 0.03 to 0.01 kg/kg and further; its modulus is 2,009.9 MPa, its toughness 200
 * J/m2 (worked in {@link FilmStressTest}).
 */
class StressHistoryTest {
  private static final double HOUR_S = 3600;
  private static final double MODULUS_PA = 2009.9e6;

  private final Composition paste = Castings.paste(0.06, 0);
  private final double solidsKgPerM2 = 3e-3 * paste.pasteDensityKgPerM3() * 0.06;
  private PlateMaterial material = PlateMaterial.GLASS;
  private double rimM;
  private double unevenness = 0.25;
  private List<FaceChange> faces = List.of();

  private static double volume(double moisture) {
    return 1 / 1500.0 + moisture / 997;
  }

  /** {@code (1 - nu^2) sigma^2/E} from one moisture to another (J/m3). */
  private static double energy(double from, double to) {
    double sigma = 0.2 * MODULUS_PA / 0.65 * Math.log(volume(from) / volume(to)) / 3;
    return 0.8775 * sigma * sigma / MODULUS_PA;
  }

  private double thicknessM(double ofAverage, double moisture) {
    return ofAverage * solidsKgPerM2 * volume(moisture);
  }

  private StressHistory history(List<SpotMoment> edge, List<SpotMoment> thick) {
    Casting casting =
        Castings.USUAL
            .with(paste)
            .with(new Pour(Estimate.exact(3e-3), unevenness, 333.15))
            .with(new Plate(material, 0.2, 0.3, 0.004, rimM))
            .with(faces);
    return StressHistory.of(casting, new PlateCourse(edge, thick));
  }

  private StressHistory history(double... moistures) {
    List<SpotMoment> moments = new ArrayList<>();
    for (int hour = 0; hour < moistures.length; hour++) {
      double moisture = moistures[hour];
      moments.add(new SpotMoment(hour * HOUR_S, moisture, moisture, moisture, 295));
    }
    return history(moments, moments);
  }

  private static double shrinking(double from, double to) {
    return 1 - Math.cbrt(volume(to) / volume(from));
  }

  /** On glass, 30 J/m2: the thick spot, 1.25 of the average, pulls harder and nears a crack. */
  @Test
  void aFilmThatStaysStuckIsJudgedByItsThickSpot() {
    StressHistory stuck = history(0.03, 0.02, 0.01);
    double pull = energy(0.03, 0.01) * thicknessM(1.25, 0.01) / 2;
    CurlRisk curl = stuck.curl();
    assertThat(curl.pullOverAdhesion()).isCloseTo(pull / 30, within(0.002 * pull / 30));
    assertThat(curl.level()).isEqualTo(RiskLevel.LOW);
    assertThat(curl.looseFromS()).isEmpty();
    assertThat(curl.edgeLiftM()).isZero();
    assertThat(curl.leastShrinking()).isZero();
    // Peeled as soon as it is firm it would shrink from 0.35 kg/kg on.
    assertThat(curl.shrinking()).isCloseTo(shrinking(0.35, 0.01), within(1e-9));

    CrackRisk crack = stuck.crack();
    double ratio = 1.13 * 2 * pull / 200;
    assertThat(crack.energyOverToughness()).isCloseTo(ratio, within(0.002 * ratio));
    assertThat(crack.dryThicknessM()).isCloseTo(thicknessM(1.25, 0.01), within(1e-9));
    assertThat(crack.criticalDryThicknessM())
        .isCloseTo(thicknessM(1.25, 0.01) / ratio, within(0.003 * thicknessM(1.25, 0.01) / ratio));
    assertThat(crack.mayTearAtRim()).isFalse();
  }

  /**
   * On PTFE, 0.4 J/m2, the thick spot lets go after the first hour and the edge then too: from
   * there both shrink, the thick spot alone where the film sticks three times as well.
   */
  @Test
  void aFilmThatLetsGoShrinksFromThereOn() {
    material = PlateMaterial.PTFE;
    StressHistory loose = history(0.03, 0.01, 0.005);
    double first = energy(0.03, 0.01) * thicknessM(1.25, 0.01) / 2;
    assertThat(first / 0.4).isGreaterThan(3);
    assertThat(0.6 * energy(0.03, 0.005) * thicknessM(1.25, 0.005) / 2 / 0.4).isLessThan(3);
    CurlRisk curl = loose.curl();
    assertThat(curl.looseFromS()).hasValue(HOUR_S);
    assertThat(curl.level()).isEqualTo(RiskLevel.EXPECTED);
    assertThat(curl.shrinking()).isCloseTo(shrinking(0.01, 0.005), within(1e-9));
    assertThat(curl.leastShrinking()).isCloseTo(shrinking(0.01, 0.005) / 2, within(1e-9));
    assertThat(curl.edgeLiftM()).isZero();

    // It let go at three times the adhesion, whatever that is, and cracks no more from there on.
    double ratio = 1.13 * 2 * first / 200;
    assertThat(loose.crack().energyOverToughness()).isCloseTo(ratio, within(0.002 * ratio));
    double whole = 1.13 * energy(0.03, 0.005) * thicknessM(1.25, 0.005) / 200;
    assertThat(loose.crack().criticalDryThicknessM())
        .isCloseTo(thicknessM(1.25, 0.005) / whole, within(0.01 * thicknessM(1.25, 0.005) / whole));
  }

  /**
   * A skin at 0.01 over a core at 0.03 bends to a radius of 3 h/ln(v/v'); 300 mm lift L^2/8 of it.
   */
  @Test
  void aSkinDrierThanTheCoreLiftsTheEdges() {
    material = PlateMaterial.PTFE;
    unevenness = 0;
    double mean = 0.03 - 0.02 / 6;
    List<SpotMoment> drying =
        List.of(
            new SpotMoment(0, 0.3, 0.3, 0.3, 295),
            new SpotMoment(HOUR_S, mean, 0.01, 0.03, 295),
            new SpotMoment(2 * HOUR_S, 0.01, 0.01, 0.01, 295));
    double bendPerM = Math.log(volume(0.03) / volume(0.01)) / (3 * thicknessM(1, mean));
    double lift = 0.3 * 0.3 * bendPerM / 8;
    assertThat(lift).isGreaterThan(0.3 / 4);
    assertThat(history(drying, drying).curl().edgeLiftM()).isCloseTo(0.3 / 4, within(1e-12));

    List<SpotMoment> flatter =
        List.of(
            new SpotMoment(0, 0.3, 0.3, 0.3, 295),
            new SpotMoment(HOUR_S, 0.03 - 0.001 / 6, 0.029, 0.03, 295),
            new SpotMoment(2 * HOUR_S, 0.01, 0.01, 0.01, 295));
    double little = Math.log(volume(0.03) / volume(0.029)) / (3 * thicknessM(1, 0.03));
    assertThat(history(flatter, flatter).curl().edgeLiftM())
        .isCloseTo(0.3 * 0.3 * little / 8, within(0.001 * little));
    // The other way round it would bend down, which lifts no edge.
    List<SpotMoment> even =
        List.of(drying.get(0), new SpotMoment(HOUR_S, 0.03, 0.03, 0.03, 295), drying.get(2));
    assertThat(history(even, even).curl().edgeLiftM()).isZero();
  }

  /**
   * Only the thick spot lets go, of a plate three quarters uneven: half of its shrinking counts.
   */
  @Test
  void whereOnlyTheThickSpotLetsGoTheEdgeHoldsItsHalf() {
    material = PlateMaterial.PTFE;
    unevenness = 0.75;
    StressHistory half = history(0.03, 0.015, 0.012);
    double thick = energy(0.03, 0.015) * thicknessM(1.75, 0.015) / 2 / 0.4;
    double edge = energy(0.03, 0.012) * thicknessM(0.25, 0.012) / 2 / 0.4;
    assertThat(thick).isBetween(1.0, 3.0);
    assertThat(edge).isLessThan(1);
    assertThat(half.curl().looseFromS()).hasValue(HOUR_S);
    assertThat(half.curl().shrinking()).isCloseTo(shrinking(0.015, 0.012) / 2, within(1e-9));
  }

  /** Peeled at half past one, wet or dry: loose from then; wet, it shrinks by more than is seen. */
  @ParameterizedTest
  @CsvSource({"0.2, LIKELY", "0.03, LOW"})
  void aPeeledFilmIsLooseFromThenOn(double moistureWhenPeeled, RiskLevel level) {
    faces = List.of(new FaceChange(1.5 * HOUR_S, OpenFaces.BOTH));
    StressHistory peeled = history(0.3, 0.25, moistureWhenPeeled, 0.01);
    assertThat(peeled.curl().looseFromS()).hasValue(1.5 * HOUR_S);
    assertThat(peeled.curl().shrinking())
        .isCloseTo(shrinking(moistureWhenPeeled, 0.01), within(1e-9));
    assertThat(peeled.curl().leastShrinking()).isEqualTo(peeled.curl().shrinking());
    assertThat(peeled.curl().level()).isEqualTo(level);
  }

  /** What opens only the upper face again does not peel; of two that do the first counts. */
  @Test
  void onlyAFaceThatLeavesThePlatePeels() {
    faces =
        List.of(
            new FaceChange(0.5 * HOUR_S, OpenFaces.UPPER),
            new FaceChange(1.5 * HOUR_S, OpenFaces.TURNED),
            new FaceChange(2.5 * HOUR_S, OpenFaces.BOTH));
    assertThat(history(0.3, 0.25, 0.2, 0.01).curl().looseFromS()).hasValue(1.5 * HOUR_S);
  }

  /** A film that was peeled cracks no more on its plate. */
  @Test
  void aPeeledFilmCracksNoMore() {
    faces = List.of(new FaceChange(1.5 * HOUR_S, OpenFaces.BOTH));
    double ratio = 1.13 * energy(0.03, 0.02) * thicknessM(1.25, 0.02) / 200;
    assertThat(history(0.03, 0.02, 0.01).crack().energyOverToughness())
        .isCloseTo(ratio, within(0.002 * ratio));
  }

  /** Loose, but held at a rim 300 mm apart, its energy of 0.15 m is set free by one tear. */
  @ParameterizedTest
  @CsvSource({"0, LOW, false", "0.005, WATCH, true"})
  void aRimHoldsALooseFilmUntilItTears(double rim, RiskLevel level, boolean tears) {
    material = PlateMaterial.PTFE;
    rimM = rim;
    CrackRisk crack = history(0.03, 0.01, 0.008).crack();
    assertThat(crack.level()).isEqualTo(level);
    assertThat(crack.mayTearAtRim()).isEqualTo(tears);
  }

  /** On glass it does not come loose, and a rim holds nothing. */
  @Test
  void aRimDoesNothingToAFilmThatSticks() {
    rimM = 0.005;
    assertThat(history(0.03, 0.01, 0.008).crack().mayTearAtRim()).isFalse();
  }

  /** A course that ends while the paste is wet still comes to rest with the room's 50 %. */
  @Test
  void aPlateThatIsNotDryInTimeIsJudgedAtItsRest() {
    double rest = FilmIsotherm.of(paste).moisture(0.5, 295);
    CrackRisk crack = history(2, 1, 0.9).crack();
    assertThat(crack.dryThicknessM()).isCloseTo(thicknessM(1.25, rest), within(1e-9));
  }

  /** Adhesion is judged at 0.4, 1 and 30 J/m2. */
  @ParameterizedTest
  @CsvSource({
    "SILICONE, 0.4",
    "PTFE, 0.4",
    "BAKING_PAPER, 0.4",
    "ACRYLIC, 1",
    "POLYESTER, 1",
    "STEEL, 30",
    "WOOD, 30"
  })
  void platesHoldFilmAsTheyAreJudgedTo(PlateMaterial plate, double adhesionJPerM2) {
    material = plate;
    double pull = energy(0.03, 0.02) * thicknessM(1.25, 0.02) / 2;
    assertThat(history(0.03, 0.02).curl().pullOverAdhesion())
        .isCloseTo(pull / adhesionJPerM2, within(0.002 * pull / adhesionJPerM2));
  }
}
