package starchfilm.jar.recovery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import starchfilm.material.ingredient.MolarMass;
import starchfilm.numerics.evidence.Estimate;

/** The glycerol bound in an oil, against molar masses, a standard and the trade's rule of thumb. */
class OilBatchPublishedTest {
  /**
   * One mole of triolein, 885.43 g, by the definition of the saponification value: 3 x 56.105 /
   * 885.43 = 190.1 mg/g (organic chemistry texts give 190). It holds one mole of glycerol, 92.09 g.
   * Agreement: rounding.
   */
  @Test
  void trioleinGivesOneMoleOfGlycerol() {
    Estimate saponification = Estimate.exact(3 * 56.105 / 885.43 * 1000);
    OilBatch oil = new OilBatch(Estimate.exact(0.88543), saponification, Estimate.exact(0));

    assertThat(saponification.value()).isCloseTo(190, within(0.2));
    assertThat(oil.fatMol().value()).isCloseTo(1, within(1e-5));
    assertThat(oil.fattyAcidKgPerMol()).isCloseTo(MolarMass.OLEIC_ACID, within(1e-5));
  }

  /**
   * Triolein + 3 methanol gives 3 methyl oleate (296.495 g/mol, CRC Handbook, recalled) + glycerol:
   * the mass of both sides by IUPAC weights. Agreement: 0.02 g in 981 g, the handbook's rounding.
   */
  @Test
  void transesterificationKeepsTheMass() {
    double before = MolarMass.TRIOLEIN + 3 * MolarMass.METHANOL;
    double after = 3 * 296.495e-3 + MolarMass.GLYCEROL;

    assertThat(after).isCloseTo(before, within(3e-5));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "codex-saponification.csv", useHeadersInDisplayName = true)
  void kindsHoldTheStandardsRanges(
      String oil, double svFrom, double svTo, double densityFrom, double densityTo) {
    OilKind kind =
        Arrays.stream(OilKind.values())
            .filter(k -> k.tradeName().equals(oil))
            .findFirst()
            .orElseThrow();

    assertThat(kind.saponificationMgPerG().min()).isEqualTo(svFrom);
    assertThat(kind.saponificationMgPerG().max()).isEqualTo(svTo);
    assertThat(kind.densityKgPerM3().min() / 998.2).isCloseTo(densityFrom, within(1e-9));
    assertThat(kind.densityKgPerM3().max() / 998.2).isCloseTo(densityTo, within(1e-9));
  }

  /**
   * Common practice, no source: glycerol comes to near a tenth of the oil's mass. By stoichiometry
   * it is 10.3 to 10.9 %, and 13 to 14 % for coconut and palm kernel.
   */
  @Test
  void glycerolIsNearATenthOfTheOil() {
    for (OilKind kind : OilKind.values()) {
      double share = OilBatch.of(kind, Estimate.exact(1)).fatMol().value() * MolarMass.GLYCEROL;
      boolean lauric = kind == OilKind.COCONUT || kind == OilKind.PALM_KERNEL;
      assertThat(share).as(kind.tradeName()).isCloseTo(lauric ? 0.136 : 0.105, withinPercentage(5));
    }
  }
}
