package starchfilm.jar.reagent;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import starchfilm.numerics.evidence.Estimate;

/** The charge balance closes, and what cannot be reached is refused. */
class PhAdjustmentTest {
  @Test
  void whatWasAddedGivesThePhWanted() {
    Random random = new Random(7_001L);
    for (int i = 0; i < 300; i++) {
      double from = 7.5 + 5 * random.nextDouble();
      double to = 4.5 + 2.9 * random.nextDouble();
      Reagent acid = Reagent.acids().get(random.nextInt(Reagent.acids().size()));
      double concentration = 50 + 950 * random.nextDouble();
      PhAdjustment.Bath bath =
          new PhAdjustment.Bath(
              1e-4 + 5e-3 * random.nextDouble(), from, 0.05 * random.nextDouble());
      double millilitres = PhAdjustment.to(bath, to, acid, concentration).millilitres();
      Titration check = new Titration(bath, acid);

      assertThat(check.phAfter(millilitres * 1e-6, concentration)).isCloseTo(to, within(1e-7));
    }
  }

  @Test
  void weakerSolutionOvershootsLess() {
    PhAdjustment.Bath bath = new PhAdjustment.Bath(2e-4, 9, 0);
    PhAdjustment step = PhAdjustment.to(bath, 6.5, Reagent.HYDROCHLORIC_ACID, 1000);

    assertThat(step.phOneDropOver()).isLessThan(5);
    assertThat(step.phOneDropOverTenthStrength()).isBetween(step.phOneDropOver() + 0.5, 6.5);
  }

  @Test
  void soapTakesUpAcidBeforeThePhFalls() {
    PhAdjustment plain =
        PhAdjustment.to(new PhAdjustment.Bath(1e-3, 9, 0), 6, Reagent.CITRIC_ACID, 100);
    PhAdjustment soapy =
        PhAdjustment.to(new PhAdjustment.Bath(1e-3, 9, 0.02), 6, Reagent.CITRIC_ACID, 100);

    assertThat(soapy.millilitres()).isGreaterThan(plain.millilitres());
  }

  @Test
  void refusesTheWrongDirection() {
    PhAdjustment.Bath bath = new PhAdjustment.Bath(1e-3, 6, 0);

    assertThat(
            assertThrows(
                IllegalArgumentException.class,
                () -> PhAdjustment.to(bath, 8, Reagent.HYDROCHLORIC_ACID, 100)))
        .hasMessage(
            "pH wanted: 8.0 given, allowed below 6.0, the pH now, with"
                + " hydrochloric acid; to raise it use lye");
    assertThrows(
        IllegalArgumentException.class,
        () -> PhAdjustment.to(bath, 5, Reagent.SODIUM_HYDROXIDE, 100));
  }

  @Test
  void refusesWhatTheSolutionCannotReach() {
    PhAdjustment.Bath bath = new PhAdjustment.Bath(1e-3, 7, 0);

    assertThat(
            assertThrows(
                IllegalArgumentException.class,
                () -> PhAdjustment.to(bath, 2.3456, Reagent.ACETIC_ACID, 123.456)))
        .hasMessage(
            "pH wanted: 2.35 given, but acetic acid of 0.123 mol/L does not reach it,"
                + " however much is added; ask for a pH nearer to 7 or use a stronger"
                + " solution");
  }

  @Test
  void refusesImpossibleFigures() {
    assertThat(
            assertThrows(
                IllegalArgumentException.class, () -> new PhAdjustment.Bath(-250e-6, 7, 0)))
        .hasMessageStartingWith("volume to adjust: -250.0 ml given, allowed more than 0 ml");
    assertThrows(IllegalArgumentException.class, () -> new PhAdjustment.Bath(0, 7, 0));
    assertThrows(IllegalArgumentException.class, () -> new PhAdjustment.Bath(1, 7, -1));
    assertThrows(IllegalArgumentException.class, () -> new PhAdjustment.Bath(1, 15, 0));
    assertThrows(IllegalArgumentException.class, () -> new PhAdjustment.Bath(1, Double.NaN, 0));
    PhAdjustment.Bath bath = new PhAdjustment.Bath(1e-3, 9, 0);
    for (double molPerL : new double[] {0, -0.25}) {
      assertThat(
              assertThrows(
                  IllegalArgumentException.class,
                  () -> PhAdjustment.to(bath, 6, Reagent.HYDROCHLORIC_ACID, 1000 * molPerL)))
          .hasMessage(
              "strength of the hydrochloric acid: %s mol/L given, allowed more than 0 mol/L"
                  .formatted(molPerL));
    }
    assertThat(
            assertThrows(
                IllegalArgumentException.class,
                () -> PhAdjustment.to(bath, -0.1, Reagent.HYDROCHLORIC_ACID, 100)))
        .hasMessage("pH wanted: -0.1 given, allowed 0 to 14");
  }

  @Test
  void takesTheEndsAndRefusesToGoNowhere() {
    PhAdjustment.Bath lye = new PhAdjustment.Bath(1e-3, 14, 0);
    assertThat(PhAdjustment.to(lye, 7, Reagent.HYDROCHLORIC_ACID, 100).millilitres()).isPositive();
    assertThat(new PhAdjustment.Bath(1e-3, 0, 0).ph()).isZero();
    assertThat(
            assertThrows(
                IllegalArgumentException.class,
                () -> PhAdjustment.to(lye, 14, Reagent.HYDROCHLORIC_ACID, 100)))
        .hasMessageContaining("allowed below 14.0, the pH now");
    PhAdjustment.Bath acid = new PhAdjustment.Bath(1e-3, 3, 0);
    assertThat(
            assertThrows(
                IllegalArgumentException.class,
                () -> PhAdjustment.to(acid, 3, Reagent.SODIUM_HYDROXIDE, 100)))
        .hasMessageContaining("allowed above 3.0, the pH now");
  }

  /** 1 L at pH 9 holds 0.01 mmol of hydroxide; 0.5 mmol/L of strong acid takes it up in 20 mL. */
  @Test
  void takesAVeryWeakSolution() {
    assertThat(
            PhAdjustment.to(new PhAdjustment.Bath(1e-3, 9, 0), 7, Reagent.HYDROCHLORIC_ACID, 0.5)
                .millilitres())
        .isCloseTo(20, within(0.01));
  }

  /** The concentration of a solution is its share of the solution's mass, worked out both ways. */
  @ParameterizedTest
  @EnumSource
  void shareAndConcentrationOfASolutionAgree(Reagent reagent) {
    for (double share : new double[] {0.001, 0.05, 0.3}) {
      double molPerM3 = share * reagent.solutionKgPerM3(share) / reagent.kgPerMol();
      assertThat(reagent.massShare(molPerM3)).isCloseTo(share, within(1e-12));
    }
  }

  @Test
  void strengthOfADoseIsAShare() {
    Estimate grams = Estimate.exact(0.005);
    assertThat(Dose.weighed(Reagent.CITRIC_ACID, grams, Estimate.exact(1)).chargeMol().value())
        .isPositive();
    assertThat(new Dose(Reagent.CITRIC_ACID, Estimate.exact(0)).chargeMol().value()).isZero();
    assertThat(
            assertThrows(
                IllegalArgumentException.class,
                () -> Dose.weighed(Reagent.CITRIC_ACID, grams, Estimate.exact(1.2))))
        .hasMessageContaining(": 120 % given");
    assertThrows(
        IllegalArgumentException.class,
        () -> Dose.weighed(Reagent.CITRIC_ACID, grams, Estimate.exact(0)));
    assertThrows(
        IllegalArgumentException.class, () -> new Dose(Reagent.CITRIC_ACID, Estimate.exact(-1)));
  }

  /** What a log or a question may call it, and what sentences then call it. */
  @ParameterizedTest
  @CsvSource({"ACETIC_ACID, vinegar, acetic acid", "SULFURIC_ACID, H2SO4, sulfuric acid"})
  void hasAShortNameAndTheTradesName(Reagent reagent, String shortName, String tradeName) {
    assertThat(reagent.formula()).isEqualTo(shortName);
    assertThat(reagent.tradeName()).isEqualTo(tradeName);
  }

  /** The two bases that serve as catalyst; potassium's pellets hold more water. */
  @Test
  void lyesAreTheStrongBases() {
    assertThat(Reagent.lyes())
        .containsExactly(Reagent.SODIUM_HYDROXIDE, Reagent.POTASSIUM_HYDROXIDE);
    assertThat(Reagent.SODIUM_HYDROXIDE.solidPurity()).isEqualTo(Estimate.between(0.95, 0.99));
    assertThat(Reagent.POTASSIUM_HYDROXIDE.solidPurity()).isEqualTo(Estimate.between(0.85, 0.92));
  }
}
