package starchfilm.report.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import starchfilm.casting.Spot;
import starchfilm.casting.trial.ObservedFault;
import starchfilm.drying.Milestone;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.film.Feel;
import starchfilm.film.FeelChances;
import starchfilm.film.FilmCaution;
import starchfilm.film.FilmForecast;
import starchfilm.film.FilmProperty;
import starchfilm.film.Withheld;
import starchfilm.material.recipe.Ingredient;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Extrapolation;
import starchfilm.numerics.evidence.ValidRange;

/** What the rooms below find out, in plain words. */
public final class PlainWords {
  private PlainWords() {}

  /**
   * The word for a feel.
   *
   * @param feel what the film is like in the hand
   * @return one word, lower case
   */
  public static String word(Feel feel) {
    return feel.name().toLowerCase(Locale.ROOT);
  }

  /**
   * A feel in a sentence.
   *
   * @param feel what the film is like in the hand
   * @return a clause that follows "The film"
   */
  public static String inTheHand(Feel feel) {
    return switch (feel) {
      case BRITTLE -> "snaps when bent, and may crack on the plate or while it is peeled";
      case STIFF ->
          "bends a little and springs back, like an overhead sheet; a sharp fold breaks it";
      case FLEXIBLE -> "bends and folds without breaking, like a thin carrier bag";
      case STRETCHY -> "stretches clearly before it tears";
      case STICKY -> "is soft and tacky, and clings to itself and to fingers";
    };
  }

  /**
   * A warning of the film rules.
   *
   * @param caution the warning
   * @return one sentence
   */
  public static String sentence(FilmCaution caution) {
    return switch (caution) {
      case NO_FILM -> "Without starch there is no film: the glycerol stays a liquid.";
      case MAY_CRACK_OFF -> "With this little glycerol the film may crack off the plate by itself.";
      case BREAKS_AT_FLAWS ->
          "In air this dry the film is brittle and breaks at its first flaw,"
              + " such as a bubble or a nick: it may have only half the strength.";
      case ANTIPLASTICISED ->
          "A little glycerol can make film more brittle than none does; leave it"
              + " out or use more.";
      case MAY_SEPARATE ->
          "With this much glycerol it may separate from the starch, too finely" + " to see.";
      case SEPARATES ->
          "With this much glycerol it separates from the starch: expect a weak" + " or hazy film.";
      case MAY_SWEAT ->
          "With this much glycerol it may sweat out as beads, more so as the" + " film ages.";
      case TACKY -> "Tacky in the air where it will be used; drier air or less glycerol helps.";
      case SALT_NOTICEABLE ->
          "Salt from the glycerol is over 2 % of the dry solids; the film takes up more water and"
              + " the forecast is less certain.";
      case SALT_HIGH ->
          "Salt is over 5 % of the dry solids: weaker, less stretch, and crystals may bloom on the"
              + " film.";
      case INERT_SOLIDS ->
          "Some of the solids are neither starch nor glycerol, such as protein and fibre of flour"
              + " or citric acid: they are only counted, so strength and stretch are known far less"
              + " well; expect a cloudier film.";
      case NEEDS_PRESSURE_COOK ->
          "This starch does not gelatinise in an open pan; it needs 120–140 °C under pressure.";
      case TOO_THICK_TO_LEVEL ->
          "Paste as thick as this hardly levels by itself: spread it with a rod, or the film shows"
              + " ridges.";
      case MAY_SETTLE -> "The paste is so thin that the starch settles before it sets.";
      case UNDERCOOKED ->
          "Cooked below the end of gelatinisation: granules stay whole, so the"
              + " film is weak and cloudy.";
      case PASTE_THINS ->
          "The acid cuts the long chains so short that the paste thins; the film"
              + " gets weaker later.";
      case MOULDS_IN_USE ->
          "Kept for weeks in air above 75–80 % RH the dry film itself moulds; below 60 % it is"
              + " safe.";
      case THICK_FILM -> "Over 0.3 mm when dry: slow to dry, and more likely to curl and crack.";
    };
  }

  /**
   * Why a figure of the film is not stated.
   *
   * @param why the reason
   * @return a clause that follows "not stated:"
   */
  public static String reason(Withheld why) {
    return switch (why) {
      case NO_STARCH -> "without starch there is no film";
      case UNDERCOOKED -> "the cook left half the starch or more whole, so the film is weak";
      case SCORCHED -> "the paste scorched, and such film has not been tested";
      case LIMP_IN_DAMP_AIR -> "limp and tacky in air above 75 % RH, where films were not tested";
      case LEATHERY_IN_DAMP_AIR ->
          "soft as leather in air above 75 % RH, where hardly any film was tested";
      case NEARLY_SATURATED_AIR -> "what a film holds in air above 90 % RH is not known";
      case TOO_MUCH_GLYCEROL ->
          "more glycerol than starch, and no film with more than 60 g per 100 g was tested";
      case OUTSIDE_TESTED_TEMPERATURES ->
          "films were tested near 23 °C, and nothing is known below -20 °C or above 60 °C";
    };
  }

  /**
   * A figure of the film, or why it is not stated.
   *
   * @param film the forecast
   * @param property the figure's property
   * @param figure the figure in words
   * @return the figure, or a clause that begins "not stated:"
   */
  public static String unlessWithheld(FilmForecast film, FilmProperty property, String figure) {
    return film.withheld(property).map(why -> "not stated: " + reason(why)).orElse(figure);
  }

  /**
   * How likely each feel is.
   *
   * @param chances of the film
   * @return such as {@code Of 100 such films about 48 flexible and 30 stiff.}
   */
  public static String sentence(FeelChances chances) {
    List<String> parts =
        chances.ofHundred().entrySet().stream()
            .sorted(Map.Entry.<Feel, Integer>comparingByValue().reversed())
            .map(each -> each.getValue() + " " + word(each.getKey()))
            .toList();
    return parts.size() == 1 ? "" : "Of 100 such films about " + list(parts) + ".";
  }

  /**
   * A fault somebody saw.
   *
   * @param fault the fault
   * @param calendar of its plate
   * @return such as {@code cracked at the edge, Thu 16 Apr}; without the remark
   */
  public static String sentence(ObservedFault fault, PourCalendar calendar) {
    String what =
        switch (fault.kind()) {
          case CRACKED -> "cracked";
          case BROKE_APART -> "broke apart when peeled";
          case CURLED -> "curled";
          case SHRANK -> "shrank";
          case STICKY -> "stayed sticky";
          case BRITTLE -> "brittle when dry";
          case CLOUDY -> "cloudy";
          case STILL_WET -> "still wet";
          case BUBBLES -> "bubbles";
          case LUMPS -> "lumps";
          case SCORCHED -> "scorched in the pot";
          case MOULD -> "mould";
          case STUCK -> "stuck to the plate";
          case UNEVEN -> "uneven";
        };
    String where =
        switch (fault.where()) {
          case EDGE -> " at the edge";
          case MIDDLE -> " in the middle";
          case ALL -> " all over";
        };
    String when =
        fault.seenAtS().isPresent() ? ", " + calendar.moment(fault.seenAtS().getAsDouble()) : "";
    return what + where + when;
  }

  /**
   * The name of a milestone.
   *
   * @param milestone the milestone
   * @return lower case
   */
  public static String word(Milestone milestone) {
    return switch (milestone) {
      case SKIN_DRY -> "skin-dry";
      case PEELABLE -> "peelable";
      case DRY_THROUGH -> "dry through";
    };
  }

  /**
   * What a milestone means, and what it looks and feels like (common practice, no source).
   *
   * @param milestone the milestone
   * @return a clause
   */
  public static String meaning(Milestone milestone) {
    return Glossary.clause(word(milestone));
  }

  /**
   * The name of a spot.
   *
   * @param spot the spot
   * @return lower case
   */
  public static String word(Spot spot) {
    return switch (spot) {
      case THIN_EDGE -> "thin edge";
      case NOMINAL -> "average";
      case THICK_SPOT -> "thick spot";
    };
  }

  /**
   * What is uncertain.
   *
   * @param factor the factor
   * @return a noun, lower case
   */
  public static String word(UncertainParameter factor) {
    return switch (factor) {
      case AIR_SIDE -> "the air over the plate";
      case DIFFUSIVITY -> "how fast water moves inside the film";
      case ISOTHERM -> "how much water the film keeps";
      case BENCH -> "the bench under the plate";
      case HUMIDITY -> "the room's humidity";
      case AIR_TEMPERATURE -> "the room's temperature";
      case THICKNESS -> "the wet thickness";
      case SOLIDS -> "the solids of the paste";
      case PLASTICISER -> "the glycerol in the jar";
      case UNEVENNESS -> "how uneven the plate is";
    };
  }

  /**
   * How to know a factor better.
   *
   * @param factor the factor
   * @return one sentence in the imperative
   */
  public static String howToSharpen(UncertainParameter factor) {
    return switch (factor) {
      case AIR_SIDE -> "Weigh the plate two or three times in the first day and note the grams.";
      case DIFFUSIVITY -> "Weigh the plate when the skin is dry and again a day later.";
      case ISOTHERM -> "Weigh the finished film once it has rested two days in a known humidity.";
      case BENCH -> "Note what the plate stands on and how warm it is.";
      case HUMIDITY -> "Put a hygrometer beside the plate and keep its log.";
      case AIR_TEMPERATURE -> "Put a thermometer beside the plate, out of the sun.";
      case THICKNESS -> "Weigh the plate before and right after the pour, and measure its area.";
      case UNEVENNESS -> "Level the shelf, or measure the film at four corners and note it.";
      case PLASTICISER -> "Find out what the jar holds: weigh a measured volume of it.";
      case SOLIDS -> "Weigh the pot before and after the cook.";
    };
  }

  /**
   * The name of an ingredient.
   *
   * @param ingredient the ingredient
   * @return lower case
   */
  public static String word(Ingredient ingredient) {
    return ingredient.name().toLowerCase(Locale.ROOT);
  }

  /**
   * A clause as it begins a sentence.
   *
   * @param clause not empty
   * @return with a capital
   */
  public static String capital(String clause) {
    return clause.substring(0, 1).toUpperCase(Locale.ROOT) + clause.substring(1);
  }

  /**
   * Things one after another.
   *
   * @param things at least one
   * @return such as {@code a, b and c}
   */
  public static String list(List<String> things) {
    int last = things.size() - 1;
    return last == 0
        ? things.get(0)
        : String.join(", ", things.subList(0, last)) + " and " + things.get(last);
  }

  /**
   * How far a figure of a source was checked.
   *
   * @param check the check
   * @return a clause
   */
  public static String sentence(Check check) {
    return switch (check) {
      case READ -> "read in the source";
      case RECALLED -> "recalled from memory of the source, not read again";
      case COMPUTED -> "computed or fitted by us from the source's figures";
      case JUDGED -> "our own judgement, no source";
    };
  }

  /**
   * Rules used outside their ranges; rules with the same range and value share a sentence.
   *
   * @param extrapolations rules, ranges and values
   * @return whole sentences, in the order of the rules
   */
  public static List<String> extrapolations(List<Extrapolation> extrapolations) {
    Map<String, Set<String>> rulesByReason = new LinkedHashMap<>();
    for (Extrapolation each : extrapolations) {
      rulesByReason.computeIfAbsent(reason(each), none -> new LinkedHashSet<>()).add(each.rule());
    }
    List<String> sentences = new ArrayList<>();
    rulesByReason.forEach(
        (reason, rules) -> {
          String names = list(List.copyOf(rules));
          sentences.add(
              names.substring(0, 1).toUpperCase(Locale.ROOT) + names.substring(1) + ": " + reason);
        });
    return sentences;
  }

  private static String reason(Extrapolation extrapolation) {
    ValidRange range = extrapolation.range();
    String unit = range.unit().isEmpty() ? "" : " " + range.unit();
    return range.quantity()
        + " is "
        + Figures.noted(extrapolation.given())
        + unit
        + ", known to hold from "
        + Figures.noted(range.min())
        + " to "
        + Figures.noted(range.max())
        + unit
        + ".";
  }
}
