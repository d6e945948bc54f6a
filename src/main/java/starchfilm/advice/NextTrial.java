package starchfilm.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import starchfilm.casting.Casting;
import starchfilm.change.Change;
import starchfilm.film.FilmCaution;

/**
 * The next trial to pour: one or two changes of a trial, and what they are expected to do.
 *
 * @param adjustments what is turned; one or two
 * @param changes the same with figures, in the same order, each a clause
 * @param setup the trial with the changes made
 * @param waitUntilS when to peel or look (s since the pour), where that is one of the changes
 * @param against the causes the changes answer, a noun phrase each
 * @param aims what the changes do to the trouble itself, each a clause; may be empty
 * @param before what the model expects of the trial as it was
 * @param after what it expects with the changes
 */
public record NextTrial(
    List<Change> adjustments,
    List<String> changes,
    Casting setup,
    OptionalDouble waitUntilS,
    List<String> against,
    List<String> aims,
    Expectation before,
    Expectation after) {
  /** No more may change at once, or the notebook could not tell which did it. */
  public static final int MOST_CHANGES = 2;

  /** Copies the lists and checks that there are one or two changes. */
  public NextTrial {
    adjustments = List.copyOf(adjustments);
    changes = List.copyOf(changes);
    against = List.copyOf(against);
    aims = List.copyOf(aims);
    if (changes.isEmpty() || changes.size() > MOST_CHANGES) {
      throw new IllegalArgumentException(
          "a next trial has one or two changes, not " + changes.size());
    }
  }

  /**
   * The expected effects of the changes on drying, risks and film.
   *
   * @return the figures that move; empty where the model sees none move
   */
  public List<ExpectedEffect> effects() {
    return before.changesTo(after);
  }

  /**
   * The cautions that the film rules give with the changes, and did not give before.
   *
   * @return the new cautions
   */
  public List<FilmCaution> newCautions() {
    List<FilmCaution> cautions = new ArrayList<>(after.film().cautions());
    cautions.removeAll(before.film().cautions());
    return cautions;
  }

  /**
   * Changes and effects in one sentence.
   *
   * @return such as {@code wet thickness 3.2 → 2.4 mm: dry through 9 days (7–12) → 5.5 days (4–8);
   *     cracking likely → not expected.}
   */
  public String sentence() {
    List<String> told = new ArrayList<>(aims);
    effects().forEach(effect -> told.add(effect.clause()));
    return String.join("; and ", changes)
        + ": "
        + (told.isEmpty() ? "no computed figure changes" : String.join("; ", told))
        + ".";
  }
}
