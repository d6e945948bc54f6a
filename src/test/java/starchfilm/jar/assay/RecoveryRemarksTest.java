package starchfilm.jar.assay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.jar.reagent.Dose;
import starchfilm.jar.reagent.Reagent;
import starchfilm.jar.recovery.Alcohol;
import starchfilm.jar.recovery.AlcoholLeft;
import starchfilm.jar.recovery.LaterAddition;
import starchfilm.jar.recovery.OilBatch;
import starchfilm.jar.recovery.RecoveryBalance;
import starchfilm.jar.recovery.RecoveryLog;
import starchfilm.numerics.evidence.Estimate;

/** What is said of a batch: one mole of triolein, 885.43 g, that binds 92.094 g of glycerol. */
class RecoveryRemarksTest {
  private static final Estimate NONE = Estimate.exact(0);

  @Test
  void aBatchIsSummedUpInFigures() {
    assertThat(remarks(0.1922, 0.1, 0.1, 0, Optional.empty(), List.of()))
        .containsExactly(
            "The oil bound 92.1 g glycerol; the alcohol was 6 mol per mol fat (3 is the least, 6 is"
                + " common practice).",
            "Neutralising made 5.84 g salt; with what was taken out and added later, 5.84 g stays"
                + " in the jar, with 0 g soap and 14.1 g fatty acid.",
            "Soap or fatty acid is left: it clouds the film, foams and weakens it.");
    assertThat(remarks(0.1922, 0.1, 0, 0, Optional.empty(), List.of()).get(1))
        .endsWith("0 g stays in the jar, with 15.2 g soap and 0 g fatty acid.");
    assertThat(remarks(0.2, 0.1, 0, 0, Optional.empty(), List.of()).get(0))
        .contains("the alcohol was 6.2 mol per mol fat");
  }

  /** No lye, hence neither soap nor fatty acid: only that the reaction may not have run is said. */
  @Test
  void aBatchWithoutLyeIsNotWarnedOfSoap() {
    assertThat(remarks(0.1922, 0, 0, 0, Optional.empty(), List.of()))
        .hasSize(3)
        .noneMatch(said -> said.startsWith("Soap or fatty acid"));
  }

  /** A hundredth of a gram of soap is what no balance of a kitchen shows. */
  @Test
  void tracesOfSoapAreNone() {
    assertThat(remarks(0.1922, 3e-5, 0, 0, Optional.empty(), List.of()))
        .noneMatch(said -> said.startsWith("Soap or fatty acid"))
        .anyMatch(said -> said.endsWith("with 0 g soap and 0 g fatty acid."));
  }

  /** 84 % of 92.1 g in 150 g. */
  @Test
  void aWeighedCrudeLayerIsToldItsGlycerol() {
    assertThat(remarks(0.1922, 0, 0, 0, Optional.of(Estimate.exact(0.150)), List.of()))
        .contains("The crude layer held about 51.6 % glycerol.");
  }

  @ParameterizedTest
  @CsvSource({
    "MAGNESIUM_SULFATE, Drying salt is left in it",
    "ADSORBENT, Fine adsorbent passes a filter"
  })
  void whatWasAddedLaterIsWarnedOf(LaterAddition.Agent agent, String remark) {
    LaterAddition added = new LaterAddition(agent, Estimate.exact(0.01), NONE);
    assertThat(remarks(0.1922, 0, 0, 0, Optional.empty(), List.of(added)))
        .hasSize(4)
        .anyMatch(said -> said.startsWith(remark));
  }

  /** 3 mol of methanol a mole of fat are 96.13 g. */
  @ParameterizedTest
  @CsvSource({"0.0961, true", "0.0962, false"})
  void tooLittleAlcoholIsSaid(double alcoholKg, boolean said) {
    assertThat(
            remarks(alcoholKg, 0, 0, 0, Optional.empty(), List.of()).stream()
                .anyMatch(remark -> remark.startsWith("Less alcohol was used")))
        .isEqualTo(said);
  }

  /** 0.05 mol of free acid beside so much lye. */
  @ParameterizedTest
  @CsvSource({"0.0499, true", "0.0501, false"})
  void lyeThatTheFreeAcidUsedUpIsSaid(double lyeMol, boolean said) {
    assertThat(
            remarks(0.1922, lyeMol, 0, 0.05, Optional.empty(), List.of()).stream()
                .anyMatch(remark -> remark.startsWith("The free acid of the oil used up")))
        .isEqualTo(said);
  }

  @Test
  void alcoholThatMayBeLeftIsTreatedAsPresent() {
    assertThat(RecoveryRemarks.alcohol(new AlcoholLeft(Alcohol.METHANOL, 0.01234)))
        .isEqualTo("Methanol left: unknown, from none to 12 g; treat it as present.");
  }

  private static List<String> remarks(
      double alcoholKg,
      double lyeMol,
      double acidMol,
      double freeAcidMol,
      Optional<Estimate> crude,
      List<LaterAddition> additions) {
    double acidValue = freeAcidMol * 56.105 / 0.88543;
    RecoveryLog log =
        new RecoveryLog(
            new OilBatch(
                Estimate.exact(0.88543),
                Estimate.exact(3 * 56.105 / 0.88543 + acidValue),
                Estimate.exact(acidValue)),
            Alcohol.METHANOL,
            Estimate.exact(alcoholKg),
            new Dose(Reagent.SODIUM_HYDROXIDE, Estimate.exact(lyeMol)),
            crude,
            Estimate.exact(1),
            acidMol > 0
                ? Optional.of(new Dose(Reagent.HYDROCHLORIC_ACID, Estimate.exact(acidMol)))
                : Optional.empty(),
            false,
            NONE,
            Optional.empty(),
            NONE,
            additions,
            Estimate.exact(1));
    return RecoveryRemarks.of(log, RecoveryBalance.of(log));
  }
}
