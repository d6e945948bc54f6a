package starchfilm.report.caution;

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
  RECOVERED_GLYCEROL("Recovered glycerol", recovered("methanol", "poisonous and flammable")),
  /** Recovered with ethanol alone. */
  RECOVERED_WITH_ETHANOL("Recovered glycerol", recovered("ethanol", "flammable")),
  /** Nobody said where it comes from. */
  GLYCEROL_OF_UNKNOWN_ORIGIN(
      "Glycerol of unknown origin",
      "counts as recovered until you know better: it may hold methanol and"
          + " lye, so no flame, no kitchen or oven, and never for food, skin or"
          + " toys. State whether it was bought with a label or recovered."),
  /** Recovered glycerol is warmed. */
  HEATING_RECOVERED(
      "Heat recovered glycerol, and paste cooked with it,",
      "on an electric plate only, outdoors or under a fume hood; never over gas, in a kitchen or in"
          + " an oven. Alcohol vapour burns almost unseen and catches fire from about 12 °C. Don't"
          + " drive it off at home: that takes a closed apparatus and supervision."),
  /** What recovered glycerol has touched, and who handles it. */
  UTENSILS(
      "Pot, spoon, thermometer, scale pan and plates",
      "that touched recovered glycerol never go back to food. Children don't handle it; a class uses"
          + " bought glycerol."),
  /** Lye or soap left in a jar. */
  ALKALINE_JAR(
      "This jar is alkaline:",
      "lye or soap is left, which burns eyes and skin. Use no aluminium pot."
          + " It is fit for paste at pH 6 to 7; first get goggles, gloves and a"
          + " supervisor."),
  /** Acid left in a jar. */
  SOUR_JAR(
      "This jar is acidic:",
      "acid is left, which burns eyes, thins the paste and makes hot"
          + " glycerol give off acrolein sooner. It is fit for paste at pH 6 to 7;"
          + " first get goggles, gloves and a supervisor."),
  /** The sums cannot tell. */
  UNCERTAIN_PH(
      "Acid and lye nearly balance",
      "in this jar, so the balance cannot show on which side of neutral it"
          + " is: dilute a sample with the same amount of water and measure its pH."),
  /** Heat. */
  HOT_GLYCEROL(
      "Hot paste and hot glycerol",
      "cling and burn, and wet glycerol spits: use a long spoon, take your"
          + " time, never leave children alone at the stove. Nothing here needs"
          + " glycerol above 110 °C: from about 160 °C its vapour can catch fire,"
          + " and overheated, sooner with acid left in it, it gives off acrolein,"
          + " which is poisonous."),
  /** A hot bench or hot air. */
  HOT_PLACE(
      "A bench or air above 60 °C",
      "burns skin, softens acrylic and makes polypropylene sag. Don't leave"
          + " heated plates unattended."),
  /** Lye and strong acid. */
  LYE_AND_ACID(
      "Lye and acid",
      "need goggles, gloves, an apron and a wash bottle at hand. Add them to water, never water to"
          + " them, a little at a time: it heats up. After a splash rinse with running water for 15"
          + " minutes, eyes too, take wet clothes off, and get help."),
  /** Vinegar and bleach. */
  VINEGAR("Vinegar", "stings eyes. Never mix it, or any acid, with chlorine bleach."),
  /** Moving and heated air. */
  FANS_AND_HEATERS(
      "Fans and heaters",
      "spark: keep them away from glycerol that may hold methanol, and their"
          + " cables off wet trays. Never blow air at mouldy film; it spreads the"
          + " spores."),
  /** Mould. */
  MOULD(
      "Wet film can mould",
      "when it stays wet for days. With gloves on, peel mouldy film off, bag"
          + " it and throw it away; don't smell it. Wash the plate with detergent,"
          + " not with bleach. Not for people with asthma or a weak immune system."),
  /** Claims. */
  CLAIMS(
      "Don't call the film compostable or food-safe:",
      "nothing here has tested that, and no home test can."),
  /** Rules. */
  RULES(
      "Local rules, and a supervising teacher or licensed practice,",
      "come before anything said here.");

  private final String subject;
  private final String text;

  Caution(String subject, String text) {
    this.subject = subject;
    this.text = text;
  }

  private static String recovered(String alcohol, String danger) {
    return "may still hold "
        + alcohol
        + " ("
        + danger
        + "), lye and soap; boiling does not show that they are gone. Treat them"
        + " as present: work outdoors or ventilate well, keep flames and sparks"
        + " away, wear goggles and gloves of butyl or thick nitrile (thin ones"
        + " stop methanol for minutes, dust and charcoal masks not at all). Never"
        + " use it, or film made of it, for food, skin, cosmetics or toys.";
  }

  /**
   * What it is about; the sentence begins with it.
   *
   * @return a few words
   */
  public String subject() {
    return subject;
  }

  /**
   * The rest.
   *
   * @return one to four short sentences
   */
  public String text() {
    return text;
  }

  /**
   * All of it, for a line of text.
   *
   * @return subject and text
   */
  public String sentence() {
    return subject + " " + text;
  }
}
