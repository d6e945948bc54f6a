package starchfilm.report.caution;

import starchfilm.report.words.PlainWords;

/**
 * The cautions, in the order they are shown.
 *
 * <p>Flash points in closed cup: methanol 12 °C, ethanol 13 °C (International Chemical Safety Cards
 * 0057 and 0044), glycerol 160 °C and upwards (GESTIS substance database; CRC Handbook of Chemistry
 * and Physics); boiling point of methanol 64.7 °C, of glycerol 290 °C with decomposition (CRC
 * Handbook). All recalled. That glycerol loses water to acrolein, and with acid salts at lower
 * temperature, is the textbook test for glycerol. The rest is common practice in school and
 * university laboratories, no source.
 */
public enum Caution {
  /** Recovered with methanol, or nobody knows with what. */
  RECOVERED_GLYCEROL,
  /** Recovered with ethanol alone. */
  RECOVERED_WITH_ETHANOL,
  /** Nobody said where it comes from. */
  GLYCEROL_OF_UNKNOWN_ORIGIN,
  /** Recovered glycerol is warmed. */
  HEATING_RECOVERED,
  /** What recovered glycerol has touched, and who handles it. */
  UTENSILS,
  /** Lye or soap left in a jar. */
  ALKALINE_JAR,
  /** Acid left in a jar. */
  SOUR_JAR,
  /** The sums cannot tell. */
  UNCERTAIN_PH,
  /** Heat. */
  HOT_GLYCEROL,
  /** A hot bench or hot air. */
  HOT_PLACE,
  /** Lye and strong acid. */
  LYE_AND_ACID,
  /** Vinegar and bleach. */
  VINEGAR,
  /** Moving and heated air. */
  FANS_AND_HEATERS,
  /** Mould. */
  MOULD,
  /** Claims. */
  CLAIMS,
  /** Rules. */
  RULES;

  /**
   * The subject; the sentence begins with it.
   *
   * @return a few words
   */
  public String subject() {
    return words()[0];
  }

  /**
   * The rest.
   *
   * @return one to four short sentences
   */
  public String text() {
    return words()[1];
  }

  /**
   * All of it, for a line of text.
   *
   * @return subject and text
   */
  public String sentence() {
    return subject() + " " + text();
  }

  private String[] words() {
    return PlainWords.word(this).split(" \\| ", 2);
  }
}
