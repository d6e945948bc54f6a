package starchfilm.report.plan;

import java.util.List;

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
  public record Potful(String heading, List<Line> lines, String total, String cooked) {}

  /**
   * An ingredient.
   *
   * @param name what
   * @param grams how much, with its unit
   * @param millilitres the same in a measuring jug, with its unit; empty for a powder
   * @param note what it holds; may be empty
   */
  public record Line(String name, String grams, String millilitres, String note) {}

  /**
   * A figure with its range.
   *
   * @param name what
   * @param value with unit and range
   */
  public record Figure(String name, String value) {}
}
