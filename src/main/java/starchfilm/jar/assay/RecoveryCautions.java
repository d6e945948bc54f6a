package starchfilm.jar.assay;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import starchfilm.jar.recovery.Alcohol;
import starchfilm.jar.recovery.AlcoholLeft;
import starchfilm.jar.recovery.LaterAddition;
import starchfilm.jar.recovery.RecoveryBalance;
import starchfilm.jar.recovery.RecoveryLog;
import starchfilm.numerics.evidence.Figures;

/** What to mind, and what to say, about a jar whose recovery was written down. */
final class RecoveryCautions {
  /** Alcohol per fat below this runs slowly and stops early; common practice, no source. */
  private static final double USUAL_ALCOHOL_PER_FAT = 6;

  private RecoveryCautions() {}

  static List<JarCaution> of(RecoveryLog log, RecoveryBalance balance) {
    List<JarCaution> cautions = new ArrayList<>();
    boolean methanol =
        log.alcohol() == Alcohol.METHANOL || added(log, LaterAddition.Agent.METHANOL);
    cautions.add(methanol ? JarCaution.METHANOL_MAY_REMAIN : JarCaution.ETHANOL_MAY_REMAIN);
    cautions.add(JarCaution.NEVER_FOR_FOOD);
    if (balance.neutralisation().isNearBalance()) {
      cautions.add(JarCaution.MEASURE_PH);
    } else if (balance.neutralisation().netAcidMol().value() > 0) {
      cautions.add(JarCaution.SOUR);
    } else {
      cautions.add(JarCaution.ALKALINE);
    }
    cautions.add(JarCaution.ADD_TO_WATER);
    cautions.add(JarCaution.HOT_GLYCEROL);
    cautions.add(JarCaution.LOCAL_RULES);
    if (balance.hygroscopicSalt()) {
      cautions.add(JarCaution.HYGROSCOPIC_SALT);
    }
    if (balance.soapKg().value() + balance.fattyAcidKg().value() > 0) {
      cautions.add(JarCaution.FATTY_RESIDUE);
    }
    if (balance.finesLikely()) {
      cautions.add(JarCaution.FINES);
    }
    if (balance.alcoholPerFat() < RecoveryBalance.ALCOHOL_PER_FAT) {
      cautions.add(JarCaution.ALCOHOL_SHORT);
    }
    if (log.oil().freeAcidMol().value() >= log.catalyst().mol().value()) {
      cautions.add(JarCaution.CATALYST_USED_UP);
    }
    return cautions;
  }

  static List<String> remarks(RecoveryBalance balance) {
    List<String> remarks = new ArrayList<>();
    remarks.add(
        String.format(
            Locale.ROOT,
            "The oil bound %s g glycerol; the alcohol was %s mol per mol fat (3 is the least, %.0f"
                + " is common practice).",
            Figures.grams(balance.boundGlycerolKg().value()),
            Figures.of(balance.alcoholPerFat(), 2),
            USUAL_ALCOHOL_PER_FAT));
    remarks.add(
        String.format(
            Locale.ROOT,
            "Neutralising made %s g salt; with what was taken out and added later, %s g stays in"
                + " the jar, with %s g soap and %s g fatty acid.",
            Figures.grams(balance.neutralisation().saltKg().value()),
            Figures.grams(balance.saltKg().value()),
            Figures.grams(balance.soapKg().value()),
            Figures.grams(balance.fattyAcidKg().value())));
    balance
        .glycerolOfCrude()
        .ifPresent(
            fraction ->
                remarks.add(
                    String.format(
                        Locale.ROOT,
                        "The crude layer held about %s %% glycerol.",
                        Figures.percent(fraction))));
    return remarks;
  }

  static String alcoholRemark(AlcoholLeft alcohol) {
    return capital(alcohol.alcohol().tradeName())
        + " left: unknown, anything from none to "
        + Figures.of(alcohol.mostKg() * 1000, 2)
        + " g; treat it as present.";
  }

  private static boolean added(RecoveryLog log, LaterAddition.Agent agent) {
    return log.additions().stream().anyMatch(a -> a.agent() == agent);
  }

  private static String capital(String word) {
    return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
  }
}
