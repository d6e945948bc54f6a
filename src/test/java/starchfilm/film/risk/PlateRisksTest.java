package starchfilm.film.risk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.FaceChange;
import starchfilm.drying.SpotMoment;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.material.recipe.Composition;
import starchfilm.material.sorption.FilmIsotherm;

/** Risks of a plate and the change that helps most. */
class PlateRisksTest {
  @Test
  void callsAThickBrittlePlateLikelyToCrackAndThinOrFlexibleOnesNot() {
    assertThat(crack(10, 0, 20, 20).level()).isGreaterThanOrEqualTo(RiskLevel.LIKELY);
    assertThat(crack(1, 0, 20, 50).level()).isEqualTo(RiskLevel.LOW);
    assertThat(crack(10, 0.35, 20, 50).level()).isEqualTo(RiskLevel.LOW);
  }

  @Test
  void findsAThickPlateOfLittleGlycerolTooBrittleInDryAir() {
    CrackRisk risk = crack(10, 0.05, 20, 25);
    assertThat(risk.level()).isGreaterThanOrEqualTo(RiskLevel.WATCH);
  }

  @Test
  void needsLessStretchOfALevelPlate() {
    Casting uneven = Castings.plate(3, Castings.paste(0.06, 0.1), Castings.room(20, 50, 0.1), 60);
    Casting level = uneven.with(uneven.pour().withUnevenness(0.125));
    assertThat(risks(level).crack().energyOverToughness())
        .isLessThanOrEqualTo(risks(uneven).crack().energyOverToughness());
  }

  @Test
  void expectsMouldOnAThickPlateInACoolDampShedAndNamesItsDay() {
    MouldRisk risk = mould(10, 15, 75);
    assertThat(risk.level()).isEqualTo(RiskLevel.EXPECTED);
    assertThat(risk.growthFromS()).isBetween(2 * 86_400.0, 10 * 86_400.0);
  }

  /**
   * In saturated air of 24 °C a paste never dries and mould grows at full speed, one weighted hour
   * an hour: two days until it may show, thirty days in all.
   */
  @Test
  void countsMouldByTheClockWhereNothingSlowsIt() {
    MouldRisk risk =
        risks(Castings.plate(5, Castings.paste(0.06, 0.3), Castings.room(24, 100, 0.1), 24))
            .mould();
    assertThat(risk.weightedHours()).isCloseTo(30 * 24, within(5.0));
    assertThat(risk.growthFromS()).isCloseTo(48 * 3600, within(3600.0));
  }

  /** Film that holds half as much again at the same activity moulds by the same activity. */
  @Test
  void mouldGoesByActivityAndNotByMoisture() {
    Casting damp = Castings.plate(6, Castings.paste(0.06, 0.3), Castings.room(18, 65, 0.1), 60);
    double[] mean = new double[UncertainParameter.values().length];
    mean[UncertainParameter.ISOTHERM.ordinal()] = Math.log(1.5);
    ParameterDistribution holdsMore =
        ParameterDistribution.learnt(mean, ParameterDistribution.textbook().covariance());
    double usual = risks(damp).mould().weightedHours();
    double more = PlateRisks.of(damp, holdsMore).mould().weightedHours();
    assertThat(usual).isGreaterThan(24);
    assertThat(more).isCloseTo(usual, within(0.25 * usual));
  }

  /**
   * 100 hours at a water activity of 0.85 on average, four days to germination, while the plate
   * warms from 12 to 22 °C: at 17 °C {@code 2.5^-0.5/4} of full speed, 15.8 weighted hours, so 304
   * hours until 48 are full.
   */
  @Test
  void weighsEachStepByItsMeanActivityAndTemperature() {
    Composition paste = Castings.paste(0.06, 0.3);
    Casting plate = Castings.plate(5, paste, Castings.room(20, 80, 0.1), 60);
    double meanMoisture = FilmIsotherm.of(paste).moisture(0.85, 290.15);
    SpotMoment poured = new SpotMoment(1000, 0, 0, meanMoisture + 0.1, 285.15);
    SpotMoment later = new SpotMoment(1000 + 360_000, 0, 0, meanMoisture - 0.1, 295.15);
    SpotMoment muchLater = new SpotMoment(1000 + 4 * 360_000, 0, 0, meanMoisture + 0.1, 285.15);
    ParameterSample middle = ParameterDistribution.textbook().mean();
    double perHour = Math.pow(2.5, -0.5) / 4;

    MouldRisk early = MouldRisk.of(plate, middle, List.of(poured, later));
    assertThat(early.weightedHours()).isCloseTo(100 * perHour, within(0.01));
    assertThat(early.growthFromS()).isInfinite();
    MouldRisk late = MouldRisk.of(plate, middle, List.of(poured, later, muchLater));
    assertThat(late.weightedHours()).isCloseTo(400 * perHour, within(0.04));
    assertThat(late.growthFromS()).isCloseTo(1000 + 48 / perHour * 3600, within(400.0));
    assertThat(late.level()).isEqualTo(RiskLevel.LIKELY);
    assertThat(late.expectedFromS()).isEqualTo(late.growthFromS());
    assertThat(new MouldRisk(RiskLevel.WATCH, 47, 1e6).expectedFromS()).isInfinite();
  }

  @Test
  void fearsNoMouldOnAThinPlateInADryRoom() {
    MouldRisk risk = mould(1, 20, 45);
    assertThat(risk.level()).isEqualTo(RiskLevel.LOW);
    assertThat(risk.growthFromS()).isInfinite();
  }

  /** Beuchat 1981, Cereal Foods World 26:345 (read in a copy): no mould grows below 0.61. */
  @ParameterizedTest
  @CsvSource({"0.60, 25", "0.70, 25", "0.74, 25", "0.95, 50"})
  void countsNothingWhereNoMouldOfAPasteGrows(double activity, double celsius) {
    assertThat(new MouldGrowth().speed(activity, celsius + 273.15)).isZero();
  }

  /** Sedlbauer 2001, isopleth of the optimum medium, 20 to 25 C (recalled). */
  @ParameterizedTest
  @CsvSource({"0.96, 1", "0.90, 2", "0.85, 4", "0.80, 8"})
  void germinatesAsFastAsOnTheOptimumMedium(double activity, double days) {
    assertThat(1 / new MouldGrowth().speed(activity, 296.15))
        .isCloseTo(days, org.assertj.core.data.Offset.offset(1e-9));
  }

  private CrackRisk crack(double wetMm, double glycerol, double celsius, double humidityPct) {
    return risks(
            Castings.plate(
                wetMm,
                Castings.paste(0.06, glycerol),
                Castings.room(celsius, humidityPct, 0.1),
                60))
        .crack();
  }

  private MouldRisk mould(double wetMm, double celsius, double humidityPct) {
    return risks(
            Castings.plate(
                wetMm, Castings.paste(0.06, 0.3), Castings.room(celsius, humidityPct, 0.1), 60))
        .mould();
  }

  @Test
  void filmIsLooseFromWhenItIsPeeled() {
    Casting plate = Castings.plate(2, Castings.paste(0.06, 0.3), Castings.room(20, 50, 0.1), 60);
    CurlRisk stuck = risks(plate).curl();
    CurlRisk peeled =
        risks(plate.with(List.of(new FaceChange(10 * 3_600, FaceChange.OpenFaces.BOTH)))).curl();
    assertThat(stuck.level()).isEqualTo(RiskLevel.LOW);
    assertThat(stuck.looseFromS()).isEmpty();
    assertThat(peeled.looseFromS()).hasValue(10 * 3_600);
    assertThat(peeled.level()).isEqualTo(RiskLevel.LIKELY);
    assertThat(peeled.shrinking()).isGreaterThan(stuck.shrinking());
  }

  /** Half as fast per 0.3 % acetic acid in the water: an eighth at 0.9 %. */
  @Test
  void vinegarSlowsMould() {
    Composition plain = Castings.paste(0.06, 0.3);
    double liquid = plain.water();
    Composition sour =
        new Composition(
            plain.starchShares(),
            plain.dryStarch(),
            plain.glycerol(),
            0,
            0.009 * liquid,
            0.991 * liquid,
            0);
    assertThat(MouldGrowth.slowedBy(plain)).isEqualTo(1);
    assertThat(MouldGrowth.slowedBy(new Composition(plain.starchShares(), 0.7, 0.3, 0, 0, 0, 0)))
        .isEqualTo(1);
    assertThat(MouldGrowth.slowedBy(sour)).isCloseTo(0.125, within(1e-9));
    Casting damp = Castings.plate(10, plain, Castings.room(15, 75, 0.1), 60);
    assertThat(risks(damp.with(sour)).mould().weightedHours())
        .isLessThan(0.2 * risks(damp).mould().weightedHours());
  }

  private static PlateRisks risks(Casting plate) {
    return PlateRisks.of(plate, ParameterDistribution.textbook());
  }
}
