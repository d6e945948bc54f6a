package starchfilm.jar.assay;

import static starchfilm.numerics.figures.ReaderUnit.GRAM;
import static starchfilm.numerics.units.Units.PERCENT;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleFunction;
import starchfilm.jar.recovery.AlcoholLeft;
import starchfilm.jar.recovery.RecoveryBalance;
import starchfilm.jar.recovery.RecoveryLog;
import starchfilm.material.recipe.GlycerolOrigin;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.evidence.Source;
import starchfilm.numerics.figures.Figures;
import starchfilm.numerics.figures.ReaderUnit;

/**
 * Says what is in a jar of glycerol by all that is known of it: its label, a reading, the record of
 * its recovery.
 */
public final class Assayer {
  /** Salt and soap in recovered glycerol of which nothing is known; judged, no source. */
  public static final Estimate UNKNOWN_SALT = Estimate.between(0, 0.06);

  /** How far a label may be off (kg per kg); judged, no source. */
  public static final double LABEL_GOOD_TO = 0.005;

  /** The most soap in that salt and soap (kg per kg); judged, no source. */
  private static final double MOST_SOAP = 0.5;

  /** The most alcohol in recovered glycerol of which nothing is known; judged, no source. */
  private static final double MOST_ALCOHOL = 0.05;

  /**
   * Chance that glycerol was bought where nobody knows: bought and recovered are as likely; judged.
   */
  private static final double EVEN = 0.5;

  /** Likelihood below which a reading is of no such mixture: fewer than one of 200 likely cases. */
  private static final double POSSIBLE = 0.005;

  /**
   * Likelihood below which what is known cannot all be true: fewer than one of 100 likely cases.
   */
  private static final double ALLOWED = 0.01;

  /** Water from this share on is worth a word (kg per kg). */
  private static final double MUCH_WATER = 0.02;

  private static final Source COMBINED =
      new Source(
          "label, record and reading together: JCGM 101:2008, propagation of distributions by a"
              + " Monte Carlo method",
          Check.RECALLED);

  /**
   * A bought jar.
   *
   * @param massKg what the jar holds (kg)
   * @param labelFraction glycerol by the label (kg per kg, 0.2 to 1), taken to be good to {@link
   *     #LABEL_GOOD_TO} where the jar was not opened
   * @param reading a reading of the same jar, if there is one
   * @return what is in it
   */
  public Assay bought(Estimate massKg, double labelFraction, Optional<JarReading> reading) {
    // Below this it is a fraction typed for per cent, or no glycerol worth the name.
    ReaderUnit.PERCENT.require(
        "glycerol by the label",
        labelFraction,
        20,
        100,
        "write the per cent of the mass, such as 99.5 %");
    Estimate label =
        Estimate.between(labelFraction - LABEL_GOOD_TO, Math.min(1, labelFraction + LABEL_GOOD_TO));
    Jar jar = new Jar(massKg, GlycerolOrigin.BOUGHT, JarPrior.label(label), reading);
    if (reading.isEmpty()) {
      jar.say(
          "An opened jar takes up water from the air: if it stood open, add a"
              + " density reading to the label.");
      return jar.assay();
    }
    Band alone = jar.readingAlone().glycerol();
    if (jar.posterior.allowed() < ALLOWED) {
      return jar.withheld(
          ("The label says %s %% glycerol, but the reading alone means %s, and a bought jar holds"
                  + " no more than its label says. Read it again without bubbles, or state that it"
                  + " was recovered.")
              .formatted(Figures.percent(labelFraction), percent(alone, "")));
    }
    if (labelFraction > alone.high()) {
      jar.say(
          "The label says %s %% glycerol, the reading %s: the jar has taken up water."
              .formatted(Figures.percent(labelFraction), percent(alone, "")));
    }
    return jar.assay();
  }

  /**
   * A jar that was read with a hydrometer, a weighed volume or a refractometer.
   *
   * @param massKg what the jar holds (kg)
   * @param reading the reading
   * @param salt salt and soap in it (kg per kg), if known
   * @param origin where it comes from; where nobody knows, either is as likely
   * @return what is in it
   */
  public Assay measured(
      Estimate massKg, JarReading reading, Optional<Estimate> salt, GlycerolOrigin origin) {
    JarPrior bought = JarPrior.reading(0, Estimate.exact(0), 0, 0);
    JarPrior recovered =
        JarPrior.reading(
            1, salt.orElse(UNKNOWN_SALT), salt.isPresent() ? 0 : MOST_SOAP, MOST_ALCOHOL);
    JarPrior either = JarPrior.reading(EVEN, UNKNOWN_SALT, MOST_SOAP, MOST_ALCOHOL);
    boolean undecided = origin == GlycerolOrigin.UNKNOWN && salt.isEmpty();
    Jar jar =
        new Jar(
            massKg,
            origin,
            origin == GlycerolOrigin.BOUGHT ? bought : undecided ? either : recovered,
            Optional.of(reading));
    if (undecided) {
      jar.say(
          ("The origin is unknown. If it was bought, the reading means %s; if it was recovered,"
                  + " %s. The range above covers both; state the origin to narrow it.")
              .formatted(
                  percent(alone(massKg, bought, reading), " glycerol"),
                  percent(alone(massKg, recovered, reading), "")));
    }
    if (origin != GlycerolOrigin.BOUGHT && salt.isEmpty()) {
      jar.say(
          ("Salt and soap are unknown: assumed 0 to %s %%, up to half of it soap,"
                  + " and 0 to %s %% alcohol (judged).")
              .formatted(
                  Figures.percent(UNKNOWN_SALT.value() + Math.sqrt(3) * UNKNOWN_SALT.sd()),
                  Figures.percent(MOST_ALCOHOL)));
    } else if (origin != GlycerolOrigin.BOUGHT) {
      jar.say(
          "The salt you gave is counted as salt, with 0 to %s %% alcohol assumed (judged)."
              .formatted(Figures.percent(MOST_ALCOHOL)));
    }
    jar.addWhatMovesTheReading(reading);
    return jar.assay();
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
    JarPrior record = JarPrior.recovered(balance, balance.alcoholLeft().mostKg());
    Jar jar = new Jar(log.jarKg(), GlycerolOrigin.RECOVERED, record, reading);
    jar.recovery = Optional.of(balance);
    jar.remarks.addAll(RecoveryRemarks.of(log, balance));
    jar.sources.add(0, RecoveryBalance.SOURCE);
    if (reading.isEmpty()) {
      jar.say(
          "Without a density or refractometer reading the glycerol is only as"
              + " certain as the share that was recovered, 70 to 98 % (judged); a"
              + " reading narrows it.");
    } else {
      jar.addWhatMovesTheReading(reading.get());
      Band alone = jar.readingAlone().pureGlycerolKg();
      JarContent ofRecord = new JarPosterior(log.jarKg(), record, Optional.empty()).content();
      Band recordAlone = ofRecord.pureGlycerolKg();
      String both =
          "The record alone means %s, the reading alone %s"
              .formatted(grams(recordAlone, " pure glycerol"), grams(alone, ""));
      double sober = new JarPosterior(log.jarKg(), record.sober(), reading).allowed();
      if (Math.max(jar.posterior.allowed(), sober) < ALLOWED) {
        jar.alcohol = Optional.of(balance.alcoholLeft());
        return jar.withheld(
            both
                + (alone.middle() > recordAlone.middle()
                    ? ", and the oil held no more than "
                        + Figures.grams(balance.boundGlycerolKg().value())
                        + " g. More salt is in the jar than counted, it holds more than this batch,"
                        + " or the oil's amount, the jar's mass or the reading is wrong."
                    : ". More water, alcohol or soap is in the jar than counted, less of the batch"
                        + " went into it, or the jar's mass or the reading is wrong."));
      }
      boolean apart = alone.low() > recordAlone.high() || alone.high() < recordAlone.low();
      if (apart) {
        jar.covered = List.of(ofRecord, jar.readingAlone());
        jar.mostGlycerolKg = RecoveryBalance.MOST_RECOVERED * balance.boundGlycerolKg().value();
      }
      jar.say(
          both
              + (apart
                  ? ". These ranges do not overlap, so one of the two is probably wrong, and the"
                      + " range shown covers both: weigh the jar and read it again."
                  : "; the figures shown satisfy both."));
    }
    // Whatever cannot be glycerol bounds the alcohol, which leaves with the water.
    AlcoholLeft alcohol = balance.alcoholLeft().atMost(jar.posterior.mostAlcoholKg());
    jar.alcohol = Optional.of(alcohol);
    jar.say(RecoveryRemarks.alcohol(alcohol));
    return jar.assay();
  }

  /** Such as {@code 82 % glycerol (78 to 86)}. */
  private static String percent(Band band, String of) {
    return range(band, Figures::percent, " %" + of);
  }

  static String grams(Band band, String of) {
    return range(band, Figures::grams, " g" + of);
  }

  private static String range(Band band, DoubleFunction<String> figure, String of) {
    return "%s%s (%s to %s)"
        .formatted(
            figure.apply(band.middle()), of, figure.apply(band.low()), figure.apply(band.high()));
  }

  private static Band alone(Estimate massKg, JarPrior prior, JarReading reading) {
    return new JarPosterior(massKg, prior, Optional.of(reading)).content().glycerol();
  }

  /** An assay in the making. */
  private static final class Jar {
    private final Estimate massKg;
    private final GlycerolOrigin origin;
    private final JarPrior prior;
    private final Optional<JarReading> reading;
    private final JarPosterior posterior;
    private final List<String> remarks = new ArrayList<>();
    private final List<Source> sources = new ArrayList<>();
    private Optional<AlcoholLeft> alcohol = Optional.empty();
    private Optional<RecoveryBalance> recovery = Optional.empty();
    private List<JarContent> covered = List.of();
    private double mostGlycerolKg = Double.POSITIVE_INFINITY;

    Jar(Estimate massKg, GlycerolOrigin origin, JarPrior prior, Optional<JarReading> reading) {
      GRAM.requireSome("what the jar holds", massKg.value(), "weigh it without the jar");
      this.massKg = massKg;
      this.origin = origin;
      this.prior = prior;
      this.reading = reading;
      this.posterior = new JarPosterior(massKg, prior, reading);
      reading.ifPresent(
          one -> {
            if (posterior.possible() < POSSIBLE) {
              throw new IllegalArgumentException(one.refusal());
            }
            sources.add(one.source());
            sources.add(COMBINED);
          });
    }

    void say(String remark) {
      remarks.add(remark);
    }

    JarContent readingAlone() {
      return new JarPosterior(massKg, prior.readingAlone(), reading).content();
    }

    void addWhatMovesTheReading(JarReading one) {
      if (origin != GlycerolOrigin.BOUGHT) {
        say(
            ("Each 1 %% of salt makes this reading show %s, each 1 %% of soap or fatty acid %s,"
                    + " each 1 %% of alcohol %s; all three are allowed for in the range.")
                .formatted(
                    shown(one.falseGlycerol(new Dissolved(PERCENT, 0, 0))),
                    shown(one.falseGlycerol(new Dissolved(0, PERCENT, 0))),
                    shown(one.falseGlycerol(new Dissolved(0, 0, PERCENT)))));
      }
    }

    private static String shown(double falseGlycerol) {
      return String.format(
          Locale.ROOT,
          "%.1f %% %s glycerol",
          100 * Math.abs(falseGlycerol),
          falseGlycerol >= 0 ? "more" : "less");
    }

    Assay withheld(String why) {
      return assay(Optional.empty(), Optional.of(why));
    }

    private Assay assay(Optional<JarContent> content, Optional<String> withheld) {
      return new Assay(massKg, origin, content, withheld, alcohol, recovery, remarks, sources);
    }

    Assay assay() {
      if (posterior.allowed() == 0) {
        throw new IllegalArgumentException(
            reading
                .map(JarReading::refusal)
                .orElse(
                    """
                    what the jar holds: %s g given, too little for what the batch must have left \
                    in it; weigh the jar's content again\
                    """
                        .formatted(Figures.grams(massKg.value()))));
      }
      JarContent content = posterior.content();
      for (JarContent other : covered) {
        content = content.covering(other, mostGlycerolKg);
      }
      if (content.stays().middle() > 0) {
        sources.add(SaltAdvice.SOURCE);
      }
      if (content.volatiles().middle() > MUCH_WATER) {
        remarks.add(
            "Water in the jar does no harm: the recipe counts it, so there is no"
                + " need to boil it off.");
      }
      return assay(Optional.of(content), Optional.empty());
    }
  }
}
