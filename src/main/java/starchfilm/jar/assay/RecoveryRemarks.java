package starchfilm.jar.assay;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import starchfilm.jar.recovery.AlcoholLeft;
import starchfilm.jar.recovery.RecoveryBalance;
import starchfilm.jar.recovery.RecoveryLog;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.figures.Figures;

/** What the figures say of a jar whose recovery was written down. */
final class RecoveryRemarks {
  /** Alcohol per fat below this runs slowly and stops early; common practice, no source. */
  private static final double USUAL_ALCOHOL_PER_FAT = 6;

  /** Less than this of a batch is none (kg): no balance of a kitchen shows it; judged. */
  private static final double NONE_BELOW_KG = 5e-5;

  private RecoveryRemarks() {}

  static List<String> of(RecoveryLog log, RecoveryBalance balance) {
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
        ("Neutralising made %s g salt; with what was taken out and added later, %s g stays in"
                + " the jar, with %s g soap and %s g fatty acid.")
            .formatted(
                grams(balance.neutralisation().saltKg()),
                grams(balance.saltKg()),
                grams(balance.soapKg()),
                grams(balance.fattyAcidKg())));
    balance
        .glycerolOfCrude()
        .ifPresent(
            fraction ->
                remarks.add(
                    String.format(
                        Locale.ROOT,
                        "The crude layer held about %s %% glycerol.",
                        Figures.percent(fraction))));
    if (balance.hygroscopicSalt()) {
      remarks.add(
          "Drying salt is left in it: it draws water from the air, so the film"
              + " stays damp and tacky and dries later than forecast.");
    }
    if (balance.soapKg().value() + balance.fattyAcidKg().value() > NONE_BELOW_KG) {
      remarks.add("Soap or fatty acid is left: it clouds the film, foams and weakens it.");
    }
    if (balance.finesLikely()) {
      remarks.add("Fine adsorbent passes a filter: the film may be cloudy or grey.");
    }
    if (balance.alcoholPerFat() < RecoveryBalance.ALCOHOL_PER_FAT) {
      remarks.add(
          "Less alcohol was used than the oil needs, so part of the fat did not"
              + " release its glycerol.");
    }
    if (log.oil().freeAcidMol().value() >= log.catalyst().chargeMol().value()) {
      remarks.add(
          "The free acid of the oil used up the catalyst, so the reaction may"
              + " not have run; there may be less glycerol than counted here.");
    }
    return remarks;
  }

  private static String grams(Estimate kg) {
    return Figures.grams(kg.value() < NONE_BELOW_KG ? 0 : kg.value());
  }

  static String alcohol(AlcoholLeft alcohol) {
    return capital(alcohol.alcohol().tradeName())
        + " left: unknown, from none to "
        + Figures.of(alcohol.mostKg() * 1000, 2)
        + " g; treat it as present.";
  }

  private static String capital(String word) {
    return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
  }
}
