package starchfilm.jar.assay;

/** What to mind with a jar of glycerol, in the order of what hurts most. */
public enum JarCaution {
  /** Alcohol may be left. */
  METHANOL_MAY_REMAIN(
      "May hold methanol: poisonous to breathe, swallow and touch, and flammable. Treat it as present:"
          + " boiling time does not show that it is gone. Ventilate well or work outdoors, wear"
          + " gloves, no open flame or spark."),
  /** Alcohol may be left. */
  ETHANOL_MAY_REMAIN(
      "May hold ethanol: flammable. Treat it as present: boiling time does not show that it is gone."
          + " Ventilate well, no open flame or spark."),
  /** Nobody knows how it was recovered. */
  ALCOHOL_UNKNOWN(
      "Recovered glycerol may hold methanol, lye and soap: treat them as present. Ventilate well, wear"
          + " gloves, no open flame or spark."),
  /** Recovered glycerol. */
  NEVER_FOR_FOOD(
      "Recovered glycerol, and film made of it, is never for food, skin, cosmetics or toys."),
  /** Lye or soap left. */
  ALKALINE(
      "Lye or soap is left: it hurts eyes and skin. Goggles and gloves; no aluminium pot. Bring the pH"
          + " to 6 to 7 with dilute acid before use."),
  /** Acid left. */
  SOUR(
      "Acid is left: it hurts eyes and thins the paste. Goggles and gloves. Bring the pH to 6 to 7 with"
          + " dilute lye before use."),
  /** The sums cannot tell. */
  MEASURE_PH(
      "Acid and lye nearly balance, so the sums cannot tell on which side of neutral the jar is: dilute"
          + " a sample with water and read its pH."),
  /** Acid and lye are handled. */
  ADD_TO_WATER(
      "Acid and lye: goggles and gloves, add them to water and never water to them, in small portions;"
          + " it heats up. Nothing with chlorine bleach."),
  /** Always. */
  HOT_GLYCEROL(
      "Hot glycerol clings and burns, and wet glycerol spits. Keep it well below 200 °C: overheated it"
          + " gives off poisonous acrolein."),
  /** Recovered glycerol. */
  LOCAL_RULES(
      "Local rules and a supervising teacher or licensed practice come first; this is no instruction"
          + " for handling methanol or lye."),
  /** Drying salt left behind. */
  HYGROSCOPIC_SALT(
      "Drying salt was left behind: it draws water out of the air, so the film stays damp and tacky and"
          + " dries later than forecast."),
  /** Salt in the density. */
  SALT_MAKES_READING_LIE("Salt or soap makes this reading show more glycerol than there is."),
  /** Alcohol in the density. */
  ALCOHOL_MAKES_DENSITY_LIE(
      "Alcohol makes the density show less glycerol than there is: about 2 % less for each 1 %."),
  /** Too little alcohol for the oil. */
  ALCOHOL_SHORT(
      "Less alcohol was used than the oil takes up, so part of the fat never gave its glycerol."),
  /** All catalyst became soap. */
  CATALYST_USED_UP(
      "The free acid of the oil used up the catalyst, so the reaction may not have run; the glycerol"
          + " counted here may not be there."),
  /** Fatty acid or soap left. */
  FATTY_RESIDUE("Soap or fatty acid is left: it clouds the film, foams and weakens it."),
  /** Fines through the filter. */
  FINES("Fines of the adsorbent pass a filter: the film may be cloudy or grey."),
  /** An opened jar. */
  TAKES_UP_WATER(
      "An opened jar takes water out of the air: if it stood open, take a density reading instead of"
          + " the label.");

  private final String sentence;

  JarCaution(String sentence) {
    this.sentence = sentence;
  }

  /**
   * The caution in words.
   *
   * @return one to three sentences
   */
  public String sentence() {
    return sentence;
  }
}
