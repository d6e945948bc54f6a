package starchfilm.report.plan;

import java.util.List;
import starchfilm.report.words.Plural;
import starchfilm.report.words.PotLine;
import starchfilm.report.words.ReaderUnit;

/**
 * One recipe of a plan in the reader's units and words: what a terminal prints and what a printed
 * sheet shows.
 *
 * @param number its place in the plan, from 1
 * @param title what it is best at
 * @param summary the film in one line
 * @param potfuls what is weighed out
 * @param cook the steps of the cook, one sentence each; the same for every recipe of this starch
 * @param topUp the last step of the cook, with its grams
 * @param pour how it is poured, in sentences
 * @param plates one blank line a plate
 * @param pourGrams paste on one plate, with its unit
 * @param film what the film will be like
 * @param drying when it is ready
 * @param byDate how likely by the date; empty without a date
 * @param limits what keeps it from giving more
 * @param warnings what may go wrong with this film
 * @param room the air it dries in
 */
public record PlanSheet(
    int number,
    String title,
    String summary,
    List<Potful> potfuls,
    List<String> cook,
    String topUp,
    List<String> pour,
    List<Integer> plates,
    String pourGrams,
    List<Figure> film,
    List<Figure> drying,
    String byDate,
    List<String> limits,
    List<String> warnings,
    String room) {
  /**
   * What goes into the pot at once.
   *
   * @param heading for which plates, and how often
   * @param lines one an ingredient
   * @param total everything before the cook
   * @param cooked what the pot's content weighs once topped up
   */
  public record Potful(String heading, List<PotLine> lines, String total, String cooked) {
    static Potful of(starchfilm.planning.Potful potful, String heading) {
      return new Potful(
          heading,
          PotLine.of(potful.recipe(), kg -> ReaderUnit.GRAM.noted(kg.value())),
          ReaderUnit.GRAM.noted(potful.recipe().massKg()),
          ReaderUnit.GRAM.noted(potful.cookedKg()));
    }

    /** For which plates, and how often. */
    static String heading(starchfilm.planning.Potful potful, boolean alone) {
      String plates = Plural.of(potful.plates(), "plate");
      if (alone) {
        return "One potful for " + (potful.plates() == 1 ? plates : "all " + plates);
      }
      return potful.times() == 1
          ? "One potful for " + plates
          : "Each of " + potful.times() + " potfuls, for " + plates;
    }
  }

  /**
   * A figure with its range.
   *
   * @param name what
   * @param value with unit and range
   */
  public record Figure(String name, String value) {}
}
