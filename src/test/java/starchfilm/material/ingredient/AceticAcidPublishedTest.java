package starchfilm.material.ingredient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The pH of vinegar against the worked figures of general chemistry texts (recalled). */
class AceticAcidPublishedTest {
  /** Agreement: inside the texts' own rounding. */
  @ParameterizedTest
  @CsvFileSource(resources = "vinegar-ph.csv", useHeadersInDisplayName = true)
  void agreesWithGeneralChemistryTexts(double molPerL, double low, double high) {
    assertThat(AceticAcid.ph(1000 * molPerL)).isBetween(low, high);
  }

  /** 5 g in 100 mL over 60.05 g/mol is 0.833 mol/L, by hand. */
  @Test
  void countsTheMolesOfHouseholdVinegar() {
    assertThat(AceticAcid.molPerM3(0.005, 1e-4)).isCloseTo(833, within(0.5));
    assertThat(AceticAcid.molPerM3(0, 1e-4)).isZero();
  }

  @Test
  void isNeutralWithoutAcid() {
    assertThat(AceticAcid.ph(0)).isCloseTo(7, within(1e-12));
  }

  @Test
  void refusesNegativeAcid() {
    assertThrows(IllegalArgumentException.class, () -> AceticAcid.ph(-1));
    assertThrows(IllegalArgumentException.class, () -> AceticAcid.molPerM3(1, 0));
  }
}
