package starchfilm.jar.recovery;

import static starchfilm.numerics.figures.ReaderUnit.GRAM;
import static starchfilm.numerics.figures.ReaderUnit.PERCENT;
import static starchfilm.numerics.units.Units.G_PER_KG;

import java.util.List;
import java.util.Optional;
import starchfilm.jar.reagent.Dose;
import starchfilm.numerics.evidence.Estimate;

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
    GRAM.requireSome(alcohol.tradeName(), alcoholKg.value(), "write what went into the batch");
    GRAM.requireSome("what the jar holds", jarKg.value(), "weigh it without the jar");
    PERCENT.requireSome(
        "share of the crude layer worked up",
        shareWorkedUp.value(),
        100,
        "write how much of it went into this jar");
    double allIn =
        oil.massKg().value()
            + alcoholKg.value()
            + catalyst.chargeMol().value() * catalyst.reagent().kgPerMol();
    crudeLayerKg.ifPresent(
        kg ->
            GRAM.requireSome(
                "crude layer",
                kg.value(),
                allIn * G_PER_KG,
                "oil, alcohol and lye together weigh no more; weigh the lower layer alone"));
  }
}
