package starchfilm.jar.recovery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import starchfilm.numerics.evidence.Estimate;

/** The oil, the alcohol and what was added later to a batch, each by itself. */
class BatchPartsTest {
  /** Molar mass of potassium hydroxide (g/mol), by which saponification values are counted. */
  private static final double KOH = 56.105;

  private static LaterAddition addition(
      LaterAddition.Agent agent, double grams, double takenOutGrams) {
    return new LaterAddition(
        agent, Estimate.exact(grams / 1000), Estimate.exact(takenOutGrams / 1000));
  }

  @ParameterizedTest
  @CsvSource({
    "99.9, 0, saponification value: 99.9 given",
    "400.1, 0, saponification value: 400.1 given",
    "190, -0.1, acid value: -0.1 given",
    "190, 190, acid value: 190.0 given"
  })
  void anOilsFiguresAreThoseOfAnOil(double saponification, double acidMgPerG, String message) {
    assertThatThrownBy(
            () ->
                new OilBatch(
                    Estimate.exact(1), Estimate.exact(saponification), Estimate.exact(acidMgPerG)))
        .hasMessageStartingWith(message);
  }

  @Test
  void anOilMayLieOnTheEndsOfWhatIsAllowed() {
    for (double saponification : new double[] {100, 400}) {
      OilBatch oil =
          new OilBatch(Estimate.exact(1), Estimate.exact(saponification), Estimate.exact(0));
      assertThat(oil.fatMol().value()).isCloseTo(saponification / (3 * KOH), within(1e-4));
    }
    assertThatThrownBy(() -> OilBatch.of(OilKind.OLIVE, Estimate.exact(0)))
        .hasMessage("oil: 0 g given, allowed more than 0 g; write what went into the batch");
  }

  @ParameterizedTest
  @EnumSource
  void theOilForSoMuchGlycerolHoldsIt(OilKind kind) {
    Estimate oil = OilBatch.holding(kind, 0.150);
    double bound = OilBatch.of(kind, Estimate.exact(oil.value())).fatMol().value() * 0.092094;
    assertThat(bound).isCloseTo(0.150, within(1e-6));
  }

  /** Shares that stay behind are judged; what was weighed out again is gone. */
  @ParameterizedTest
  @CsvSource({
    "MAGNESIUM_SULFATE, 100, 0, 5, 50",
    "CALCIUM_CHLORIDE, 100, 0, 50, 100",
    "SODIUM_SULFATE, 100, 0, 0, 20",
    "COMMON_SALT, 100, 0, 30, 100",
    "ADSORBENT, 100, 0, 0, 2",
    "MAGNESIUM_SULFATE, 100, 60, 40, 40",
    "MAGNESIUM_SULFATE, 100, 100, 0, 0",
    "METHANOL, 100, 0, 0, 0",
    "ETHANOL, 100, 40, 0, 0",
    "WATER, 100, 0, 0, 0",
    "WATER, 100, 30, 0, 0"
  })
  void solidsStayBehind(
      LaterAddition.Agent agent, double grams, double takenOut, double from, double to) {
    Estimate left = addition(agent, grams, takenOut).solidsLeftKg();
    assertThat(left.value()).isCloseTo((from + to) / 2000, within(1e-6));
    assertThat(left.sd()).isCloseTo((to - from) / 1000 / Math.sqrt(12), within(1e-6));
  }

  @Test
  void anAdditionIsNotLessThanNothing() {
    assertThatThrownBy(() -> addition(LaterAddition.Agent.WATER, -1, 0))
        .hasMessageStartingWith("water: -1 g given, allowed 0 g or more; ");
    assertThatThrownBy(() -> addition(LaterAddition.Agent.WATER, 1, -1))
        .hasMessageStartingWith("water: -1 g given, allowed 0 g or more; ");
    addition(LaterAddition.Agent.WATER, 0, 0);
    assertThat(LaterAddition.Agent.WATER.tradeName()).isEqualTo("water");
  }

  /** CRC Handbook, 20 C (recalled): 0.791 and 0.789 g/mL. */
  @ParameterizedTest
  @CsvSource({"METHANOL, methanol, 791", "ETHANOL, ethanol, 789"})
  void alcoholsHaveTheHandbooksDensity(Alcohol alcohol, String name, double kgPerM3) {
    assertThat(alcohol.tradeName()).isEqualTo(name);
    assertThat(alcohol.kgPerM3()).isCloseTo(kgPerM3, within(1.0));
  }
}
