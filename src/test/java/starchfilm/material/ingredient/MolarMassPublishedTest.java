package starchfilm.material.ingredient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Molar masses against the CRC Handbook of Chemistry and Physics, physical constants of organic and
 * inorganic compounds (recalled). Agreement: the handbook's last digit, which older atomic weights
 * move by up to 0.02 g/mol in the fat.
 */
class MolarMassPublishedTest {
  @ParameterizedTest
  @CsvSource({
    "water, 18.015",
    "glycerol, 92.094",
    "acetic acid, 60.052",
    "methanol, 32.042",
    "ethanol, 46.069",
    "sodium hydroxide, 39.997",
    "potassium hydroxide, 56.105",
    "hydrogen chloride, 36.461",
    "sulfuric acid, 98.080",
    "citric acid, 192.124",
    "oleic acid, 282.468",
    "triolein, 885.432"
  })
  void agreesWithTheHandbook(String compound, double gramsPerMol) {
    assertThat(1000 * of(compound)).isCloseTo(gramsPerMol, within(0.025));
  }

  private static double of(String compound) {
    return switch (compound) {
      case "water" -> MolarMass.WATER;
      case "glycerol" -> MolarMass.GLYCEROL;
      case "acetic acid" -> MolarMass.ACETIC_ACID;
      case "methanol" -> MolarMass.METHANOL;
      case "ethanol" -> MolarMass.ETHANOL;
      case "sodium hydroxide" -> MolarMass.SODIUM_HYDROXIDE;
      case "potassium hydroxide" -> MolarMass.POTASSIUM_HYDROXIDE;
      case "hydrogen chloride" -> MolarMass.HYDROGEN_CHLORIDE;
      case "sulfuric acid" -> MolarMass.SULFURIC_ACID;
      case "citric acid" -> MolarMass.CITRIC_ACID;
      case "oleic acid" -> MolarMass.OLEIC_ACID;
      case "triolein" -> MolarMass.TRIOLEIN;
      default -> throw new AssertionError("no such compound in the table: " + compound);
    };
  }
}
