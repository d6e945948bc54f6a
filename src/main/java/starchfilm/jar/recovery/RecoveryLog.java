package starchfilm.jar.recovery;

import java.util.List;
import java.util.Optional;
import starchfilm.jar.reagent.Dose;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.evidence.Refusal;
import starchfilm.numerics.figures.Figures;

/**
 * The steps that the maker of a jar of recovered glycerol took, in the order it was done.
 *
 * @param oil the oil of the batch
 * @param alcohol which alcohol
 * @param alcoholKg alcohol (kg)
 * @param catalyst lye dissolved in the alcohol
 * @param crudeLayerKg the dark layer drawn off below the ester (kg), if weighed
 * @param shareWorkedUp how much of that layer went into the jar (0 to 1)
 * @param acid acid used to split the soap, if any
 * @param fattyLayerTakenOff whether the fatty acid that floated up was taken off
 * @param saltTakenOutKg salt filtered or poured off as crystals, dry (kg); 0 for none
 * @param lye lye used to bring the pH back, if any
 * @param alcoholTakenOffKg alcohol caught and weighed when it was driven off (kg); 0 for none
 * @param additions what was added later
 * @param jarKg what the jar holds now (kg)
 */
public record RecoveryLog(
    OilBatch oil,
    Alcohol alcohol,
    Estimate alcoholKg,
    Dose catalyst,
    Optional<Estimate> crudeLayerKg,
    Estimate shareWorkedUp,
    Optional<Dose> acid,
    boolean fattyLayerTakenOff,
    Estimate saltTakenOutKg,
    Optional<Dose> lye,
    Estimate alcoholTakenOffKg,
    List<LaterAddition> additions,
    Estimate jarKg) {

  public RecoveryLog {
    additions = List.copyOf(additions);
    requirePositive(alcohol.tradeName(), alcoholKg);
    requirePositive("what the jar holds", jarKg);
    crudeLayerKg.ifPresent(kg -> requirePositive("crude layer", kg));
    Refusal.unless(
        shareWorkedUp.value() > 0 && shareWorkedUp.value() <= 1,
        "share of the crude layer worked up",
        shareWorkedUp.value() * 100,
        " %",
        "more than 0 to 100 %");
    double allIn =
        oil.massKg().value()
            + alcoholKg.value()
            + catalyst.chargeMol().value() * catalyst.reagent().kgPerMol();
    crudeLayerKg.ifPresent(
        kg ->
            Refusal.unless(
                kg.value() <= allIn,
                "crude layer",
                Figures.grams(kg.value()) + " g",
                "up to "
                    + Figures.grams(allIn)
                    + " g, the oil, alcohol and lye together; weigh the lower layer alone"));
  }

  private static void requirePositive(String what, Estimate massKg) {
    Refusal.unless(massKg.value() > 0, what, Figures.grams(massKg.value()) + " g", "more than 0 g");
  }
}
