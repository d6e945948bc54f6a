package starchfilm.report;

import java.util.List;
import java.util.function.Predicate;
import starchfilm.film.risk.RiskLevel;
import starchfilm.forecast.TrialForecast;

/** The cautions, and the trials they apply to in particular. */
public enum Safety {
  /** Recovered glycerol. */
  RECOVERED_GLYCEROL(
      "Recovered glycerol",
      "may still hold methanol, lye and soap, and boiling does not make it safe. Ventilate, wear"
          + " gloves, keep open flames away. Never for food, skin or toys.",
      trial -> trial.trial().recipe().glycerol().stock().saltFraction().value() > 0),
  /** Heat. */
  HEAT(
      "Hot paste and hot glycerol",
      "stick to skin and burn. Keep glycerol well below 200 °C: overheated it gives off acrolein,"
          + " which is poisonous.",
      trial -> false),
  /** Lye and strong acid. */
  LYE_AND_ACID(
      "Lye and acid",
      "need goggles and gloves. Add them to water, never water to them.",
      trial ->
          trial.trial().recipe().vinegar().massKg().value() > 0
              && trial.trial().recipe().vinegar().acidityFraction().value()
                  > Safety.STRONG_ACIDITY),
  /** Mould. */
  MOULD(
      "Wet film can mould",
      "when it stays wet for days. Bag a mouldy plate and throw it away, and don't sniff at it.",
      trial -> trial.risks().mould().level() != RiskLevel.LOW),
  /** Claims. */
  CLAIMS(
      "Don't call the film compostable or food-safe:",
      "nothing here has tested that, and no home test can.",
      trial -> false),
  /** Rules. */
  RULES(
      "Local rules, and a supervising teacher or licensed practice,",
      "come before anything on this page.",
      trial -> false);

  /** Vinegar stronger than this is treated as an acid (kg/kg); judged, no source. */
  private static final double STRONG_ACIDITY = 0.1;

  private final String subject;
  private final String text;
  private final Predicate<TrialForecast> applies;

  Safety(String subject, String text, Predicate<TrialForecast> applies) {
    this.subject = subject;
    this.text = text;
    this.applies = applies;
  }

  /**
   * What it is about; the sentence begins with it.
   *
   * @return a noun phrase
   */
  public String subject() {
    return subject;
  }

  /**
   * The rest of the sentence.
   *
   * @return one or two short sentences
   */
  public String text() {
    return text;
  }

  /**
   * The cautions a trial gives particular reason for.
   *
   * @param trial the trial
   * @return in the order of this list
   */
  static List<Safety> of(TrialForecast trial) {
    return List.of(values()).stream().filter(safety -> safety.applies.test(trial)).toList();
  }
}
