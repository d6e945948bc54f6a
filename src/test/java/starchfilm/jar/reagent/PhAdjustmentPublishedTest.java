package starchfilm.jar.reagent;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.numerics.evidence.Estimate;

/**
 * Acid and lye by the drop against the worked examples of general chemistry texts (recalled; the
 * arithmetic stands beside each).
 */
class PhAdjustmentPublishedTest {
  /** 25.0 mL of 0.100 mol/L HCl takes 25.0 mL of 0.100 mol/L NaOH to pH 7. */
  @Test
  void strongAcidTakesAsMuchStrongBase() {
    PhAdjustment step = PhAdjustment.to(bath(25e-6, 1.0), 7, Reagent.SODIUM_HYDROXIDE, 100);

    assertThat(step.millilitres()).isCloseTo(25.0, within(0.001));
  }

  /** 1 L at pH 12 is 0.01 mol/L of hydroxide; 0.1 mol/L HCl neutralises it with 100 mL. */
  @Test
  void litreOfPhTwelveTakesAHundredMillilitres() {
    PhAdjustment step = PhAdjustment.to(bath(1e-3, 12), 7, Reagent.HYDROCHLORIC_ACID, 100);

    assertThat(step.millilitres()).isCloseTo(100, within(0.01));
  }

  /** Sulfuric acid brings two protons: half the volume of the same concentration. */
  @Test
  void sulfuricAcidTakesHalfTheVolume() {
    PhAdjustment step = PhAdjustment.to(bath(1e-3, 12), 7, Reagent.SULFURIC_ACID, 100);

    assertThat(step.millilitres()).isCloseTo(50, within(0.01));
  }

  /**
   * The titration curve of 25.0 mL 0.1 mol/L HCl with 0.1 mol/L NaOH: pH 1.37 after 10.0 mL (1.5
   * mmol left in 35 mL), 2.69 after 24.0 mL, 11.29 after 26.0 mL. Agreement: the second decimal.
   */
  @Test
  void followsTheTitrationCurveOfTheTexts() {
    Titration curve = new Titration(bath(25e-6, 1.0), Reagent.SODIUM_HYDROXIDE);

    assertThat(curve.phAfter(10e-6, 100)).isCloseTo(1.37, within(0.005));
    assertThat(curve.phAfter(24e-6, 100)).isCloseTo(2.69, within(0.005));
    assertThat(curve.phAfter(26e-6, 100)).isCloseTo(11.29, within(0.005));
  }

  /**
   * Half of a buffer turned over: pH = pKa (Henderson and Hasselbalch). 0.01 mol of soap in 1 L at
   * pH 9 takes 0.005 mol of strong acid to the pKa, 50 mL of 0.1 mol/L. Agreement: the free
   * hydroxide at pH 9 and hydrogen at pH 4.9, 0.02 mmol, add 0.2 mL.
   */
  @Test
  void halfTheSoapIsSplitAtItsPka() {
    PhAdjustment.Bath soapy = new PhAdjustment.Bath(1e-3, 9, 0.01);
    PhAdjustment step =
        PhAdjustment.to(soapy, PhAdjustment.SOAP_PKA, Reagent.HYDROCHLORIC_ACID, 100);

    assertThat(step.millilitres()).isCloseTo(50.2, within(0.1));
  }

  /** Citric acid's mean charge at pH 4.76, its middle pKa: 1.5, by the symmetry of its three. */
  @Test
  void citricAcidIsHalfwayAtItsMiddlePka() {
    assertThat(Reagent.CITRIC_ACID.chargeBroughtAt(4.76)).isCloseTo(-1.5, within(0.01));
  }

  /** Baking soda alone in water stands near the mean of carbonic acid's pKas, 8.34. */
  @Test
  void bakingSodaBringsNoChargeAtItsOwnPh() {
    assertThat(Reagent.BAKING_SODA.chargeBroughtAt((6.35 + 10.33) / 2)).isCloseTo(0, within(1e-6));
    assertThat(Reagent.BAKING_SODA.chargeBroughtAt(4)).isCloseTo(1, within(0.01));
  }

  /**
   * Concentrations of solutions of 10 %: hydrochloric acid 2.87, sulfuric acid 1.09, sodium
   * hydroxide 2.77 mol/L (CRC Handbook, concentrative properties; recalled). Agreement: 1 %.
   */
  @Test
  void tenPerCentIsTheHandbooksConcentration() {
    assertThat(Reagent.HYDROCHLORIC_ACID.massShare(2870)).isCloseTo(0.100, within(0.001));
    assertThat(Reagent.SULFURIC_ACID.massShare(1087)).isCloseTo(0.100, within(0.001));
    assertThat(Reagent.SODIUM_HYDROXIDE.massShare(2772)).isCloseTo(0.100, within(0.001));
  }

  /**
   * Density of solutions of 10 %, of baking soda 5 %, at 20 C (CRC Handbook, concentrative
   * properties; recalled). Agreement: 0.5 %.
   */
  @ParameterizedTest
  @CsvSource({
    "ACETIC_ACID, 10, 1012",
    "CITRIC_ACID, 10, 1038",
    "PHOSPHORIC_ACID, 10, 1053",
    "HYDROCHLORIC_ACID, 10, 1047",
    "SULFURIC_ACID, 10, 1066",
    "BAKING_SODA, 5, 1035",
    "SODIUM_HYDROXIDE, 10, 1109",
    "POTASSIUM_HYDROXIDE, 10, 1090"
  })
  void hasTheHandbooksDensity(Reagent reagent, double percent, double kgPerM3) {
    assertThat(reagent.solutionKgPerM3(percent / 100)).isCloseTo(kgPerM3, within(0.005 * kgPerM3));
  }

  /**
   * The metal of a lye and the rest of an acid together are the salt, of so many metals: molar
   * masses of the anhydrous salts, CRC Handbook, physical constants (recalled). Agreement: the
   * second decimal.
   */
  @ParameterizedTest
  @CsvSource({
    "SODIUM_HYDROXIDE, HYDROCHLORIC_ACID, 1, 58.44",
    "POTASSIUM_HYDROXIDE, HYDROCHLORIC_ACID, 1, 74.55",
    "SODIUM_HYDROXIDE, SULFURIC_ACID, 2, 142.04",
    "POTASSIUM_HYDROXIDE, SULFURIC_ACID, 2, 174.26",
    "SODIUM_HYDROXIDE, ACETIC_ACID, 1, 82.03",
    "BAKING_SODA, CITRIC_ACID, 3, 258.07",
    "SODIUM_HYDROXIDE, PHOSPHORIC_ACID, 1, 119.98"
  })
  void metalAndRestMakeTheSalt(Reagent base, Reagent acid, int metals, double gramsPerMol) {
    assertThat(1000 * metals * (base.ionKgPerMolOfCharge() + acid.ionKgPerMolOfCharge()))
        .isCloseTo(gramsPerMol, within(0.015));
  }

  /**
   * A drop of 0.05 mL of 1 mol/L too much in 0.2 L is 0.25 mmol/L, pH 3.60; of 0.1 mol/L, pH 4.60.
   */
  @Test
  void oneDropTooMuchGoesFarAndATenthAsStrongLessFar() {
    PhAdjustment step = PhAdjustment.to(bath(0.2e-3, 9), 7, Reagent.HYDROCHLORIC_ACID, 1000);

    assertThat(step.phOneDropOver()).isCloseTo(3.60, within(0.005));
    assertThat(step.phOneDropOverTenthStrength()).isCloseTo(4.60, within(0.005));
  }

  /**
   * 4.00 g of pellets of 98 % sodium hydroxide, 40.00 g/mol: 98.0 mmol; sulfuric acid of 98.08
   * g/mol brings two protons a mole.
   */
  @Test
  void weighedReagentBringsItsCharge() {
    assertThat(weighed(Reagent.SODIUM_HYDROXIDE, 0.98)).isCloseTo(0.0980, within(1e-4));
    assertThat(weighed(Reagent.SULFURIC_ACID, 1)).isCloseTo(2 * 4 / 98.08, within(1e-4));
  }

  private static double weighed(Reagent reagent, double strength) {
    return Dose.weighed(reagent, Estimate.exact(0.004), Estimate.exact(strength))
        .chargeMol()
        .value();
  }

  private static PhAdjustment.Bath bath(double volumeM3, double ph) {
    return new PhAdjustment.Bath(volumeM3, ph, 0);
  }
}
