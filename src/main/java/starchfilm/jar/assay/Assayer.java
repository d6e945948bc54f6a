package starchfilm.jar.assay;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import starchfilm.jar.recovery.AlcoholLeft;
import starchfilm.jar.recovery.RecoveryBalance;
import starchfilm.jar.recovery.RecoveryLog;
import starchfilm.material.recipe.GlycerolOrigin;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.evidence.Figures;
import starchfilm.numerics.evidence.Source;

/** Says what is in a jar of glycerol, by its label, a reading, or the record of its recovery. */
public final class Assayer {
  /** Salt in recovered glycerol of which nothing is known; judged, no source. */
  public static final Estimate UNKNOWN_SALT = Estimate.between(0, 0.06);

  /** How far a label may be off (kg per kg); judged, no source. */
  public static final double LABEL_GOOD_TO = 0.005;

  private static final String TAKES_UP_WATER =
      "An opened jar takes water out of the air: if it stood open, take a density reading instead of"
          + " the label.";

  /** Below this a label is a fraction typed for per cent, or no glycerol worth the name. */
  private static final double LEAST_LABEL = 0.2;

  /**
   * A bought jar.
   *
   * @param massKg what the jar holds (kg)
   * @param labelFraction glycerol by the label (kg per kg, 0.2 to 1), taken to be good to {@link
   *     #LABEL_GOOD_TO}
   * @param reading a reading of the same jar, if there is one; it counts for more than the label
   * @return what is in it
   */
  public Assay bought(Estimate massKg, double labelFraction, Optional<JarReading> reading) {
    if (!(labelFraction >= LEAST_LABEL && labelFraction <= 1)) {
      throw new IllegalArgumentException(
          "glycerol by the label: "
              + Figures.percent(labelFraction)
              + " % given, allowed 20 to 100 %; write the per cent of the mass, such as 99.5 %");
    }
    Estimate label =
        Estimate.between(labelFraction - LABEL_GOOD_TO, Math.min(1, labelFraction + LABEL_GOOD_TO));
    Estimate none = Estimate.exact(0);
    if (reading.isEmpty()) {
      return new Jar(massKg, label, none, GlycerolOrigin.BOUGHT)
          .assay(List.of(TAKES_UP_WATER), List.of());
    }
    Band mixture = reading.get().glycerolInMixture(Dissolved.NOTHING);
    List<String> remarks = new ArrayList<>();
    if (labelFraction < mixture.low() || labelFraction > mixture.high()) {
      remarks.add(
          String.format(
              Locale.ROOT,
              "The label says %s %% glycerol, the reading %s %% (%s to %s); the reading is"
                  + " taken.",
              Figures.percent(labelFraction),
              Figures.percent(mixture.middle()),
              Figures.percent(mixture.low()),
              Figures.percent(mixture.high())));
    }
    return new Jar(massKg, mixture, none, GlycerolOrigin.BOUGHT)
        .assay(remarks, List.of(reading.get().source()));
  }

  /**
   * A jar that was read with a hydrometer, a weighed volume or a refractometer.
   *
   * @param massKg what the jar holds (kg)
   * @param reading the reading
   * @param salt salt and soap in it (kg per kg), if known
   * @param origin where it comes from; where nobody knows, it is read as recovered
   * @return what is in it
   */
  public Assay measured(
      Estimate massKg, JarReading reading, Optional<Estimate> salt, GlycerolOrigin origin) {
    Estimate taken =
        salt.orElse(origin == GlycerolOrigin.BOUGHT ? Estimate.exact(0) : UNKNOWN_SALT);
    List<String> remarks = new ArrayList<>();
    if (origin == GlycerolOrigin.UNKNOWN && salt.isEmpty()) {
      Band bought = reading.glycerolInMixture(Dissolved.NOTHING);
      remarks.add(
          String.format(
              Locale.ROOT,
              "Nobody said where it comes from, so it is read as recovered. If it was bought and"
                  + " holds no salt, the same reading means %s %% glycerol (%s to %s).",
              Figures.percent(bought.middle()),
              Figures.percent(bought.low()),
              Figures.percent(bought.high())));
    }
    if (origin != GlycerolOrigin.BOUGHT && salt.isEmpty()) {
      remarks.add(
          String.format(
              Locale.ROOT,
              "Nothing is known of its salt, so 0 to %s %% is taken (judged).",
              Figures.percent(UNKNOWN_SALT.value() + Math.sqrt(3) * UNKNOWN_SALT.sd())));
    }
    readingLies(reading, taken, origin, remarks);
    return new Jar(massKg, reading.glycerolInMixture(Dissolved.salt(taken)), taken, origin)
        .assay(remarks, List.of(reading.source()));
  }

  /**
   * A jar whose recovery was written down.
   *
   * @param log what was done
   * @param reading a reading of the same jar, if there is one; the record then tells its salt
   * @return what is in it
   */
  public Assay recovered(RecoveryLog log, Optional<JarReading> reading) {
    RecoveryBalance balance = RecoveryBalance.of(log);
    Estimate salt = balance.saltKg().over(log.jarKg());
    Estimate fatty = balance.soapKg().plus(balance.fattyAcidKg()).over(log.jarKg());
    Estimate stays = salt.plus(fatty);
    if (stays.value() >= 1) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "what the jar holds: %s g given, allowed more than the %s g salt, soap and fatty"
                  + " acid that must be in it; weigh the jar's content again",
              Figures.grams(log.jarKg().value()),
              Figures.grams(stays.value() * log.jarKg().value())));
    }
    List<String> remarks = new ArrayList<>(RecoveryRemarks.of(log, balance));
    List<Source> sources = new ArrayList<>(List.of(RecoveryBalance.SOURCE));
    Jar jar;
    if (reading.isPresent()) {
      readingLies(reading.get(), salt, GlycerolOrigin.RECOVERED, remarks);
      Dissolved dissolved = new Dissolved(salt, fatty);
      jar =
          new Jar(
              log.jarKg(),
              reading.get().glycerolInMixture(dissolved),
              stays,
              GlycerolOrigin.RECOVERED);
      sources.add(reading.get().source());
      Band most = jar.pureGlycerolKg();
      double bound = balance.boundGlycerolKg().value() + 2 * balance.boundGlycerolKg().sd();
      if (most.low() > bound) {
        remarks.add(
            String.format(
                Locale.ROOT,
                "The reading means at least %s g glycerol, but the oil held no more than %s g:"
                    + " more salt or soap is in the jar than counted, or the oil's mass is wrong.",
                Figures.grams(most.low()),
                Figures.grams(bound)));
      }
    } else {
      jar =
          new Jar(
              log.jarKg(), balance.glycerolKg().over(log.jarKg()), stays, GlycerolOrigin.RECOVERED);
      remarks.add(
          "Without a density or refractometer reading the glycerol is only as sure as the share"
              + " that was recovered, 70 to 98 % (judged); a reading narrows it.");
    }
    // Whatever the reading did not take for glycerol bounds the alcohol, which reads as water.
    AlcoholLeft alcohol = balance.alcoholLeft().atMost(jar.mostVolatileKg());
    remarks.add(RecoveryRemarks.alcohol(alcohol));
    return jar.assay(remarks, sources, balance, alcohol);
  }

  private static void readingLies(
      JarReading reading, Estimate salt, GlycerolOrigin origin, List<String> remarks) {
    if (salt.value() + salt.sd() > 0) {
      remarks.add(
          String.format(
              Locale.ROOT,
              "Each 1 %% of salt makes this reading show %.1f %% more glycerol; %s %% of salt was"
                  + " taken off, and its uncertainty is in the range.",
              reading.falseGlycerolPerSalt(),
              Figures.percent(salt.value())));
    }
    if (origin.mayHoldMethanol() && reading instanceof DensityReading) {
      remarks.add(
          "Alcohol makes the density show less glycerol than there is: about 2 % less for each"
              + " 1 %.");
    }
  }
}
