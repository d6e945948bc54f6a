package starchfilm.jar.assay;

import java.util.List;
import java.util.Optional;
import starchfilm.jar.reagent.Dose;
import starchfilm.jar.reagent.Reagent;
import starchfilm.jar.recovery.Alcohol;
import starchfilm.jar.recovery.LaterAddition;
import starchfilm.jar.recovery.OilBatch;
import starchfilm.jar.recovery.OilKind;
import starchfilm.jar.recovery.RecoveryLog;
import starchfilm.numerics.evidence.Estimate;

/** Recoveries written down, invented. */
final class RecoveryLogs {
  private RecoveryLogs() {}

  /** A kilogram of sunflower oil with methanol and sodium hydroxide, 125 g in the jar. */
  static RecoveryLog sunflower(List<LaterAddition> additions) {
    return new RecoveryLog(
        OilBatch.of(OilKind.SUNFLOWER, new Estimate(1, 0.005)),
        Alcohol.METHANOL,
        new Estimate(0.200, 0.002),
        Dose.weighed(
            Reagent.SODIUM_HYDROXIDE,
            new Estimate(0.0035, 0.0001),
            Reagent.SODIUM_HYDROXIDE.solidPurity()),
        Optional.empty(),
        Estimate.exact(1),
        Optional.of(new Dose(Reagent.HYDROCHLORIC_ACID, new Estimate(0.09, 0.002))),
        true,
        Estimate.exact(0),
        Optional.empty(),
        Estimate.exact(0),
        additions,
        new Estimate(0.125, 0.001));
  }

  /** The same with another content of the jar (kg). */
  static RecoveryLog withJar(RecoveryLog log, double kg) {
    return new RecoveryLog(
        log.oil(),
        log.alcohol(),
        log.alcoholKg(),
        log.catalyst(),
        log.crudeLayerKg(),
        log.shareWorkedUp(),
        log.acid(),
        log.fattyLayerTakenOff(),
        log.saltTakenOutKg(),
        log.lye(),
        log.alcoholTakenOffKg(),
        log.additions(),
        Estimate.exact(kg));
  }
}
