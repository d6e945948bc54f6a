package starchfilm.web;

import java.time.LocalDateTime;
import java.util.Locale;
import starchfilm.casting.trial.Stage;
import starchfilm.casting.trial.Trial;
import starchfilm.report.words.Plural;
import starchfilm.report.words.RecipeWords;

/**
 * A trial in a list.
 *
 * @param file its name on the pages
 * @param address its page
 * @param name what its maker calls it
 * @param invented true where it is made up as an example
 * @param poured when it was poured, or that it was not
 * @param starch what it is made of
 * @param stage how far it has come
 * @param rating 0 where none was given
 * @param noted what was noted about it
 */
record TrialRow(
    String file,
    String address,
    String name,
    boolean invented,
    String poured,
    String starch,
    String stage,
    int rating,
    String noted) {
  /** A place on a page for this trial. */
  static String place(String file) {
    return "trial-" + file.replaceAll("[^A-Za-z0-9]+", "-");
  }

  static TrialRow of(Trial trial, NotebookFolder folder, LocalDateTime now, Locale locale) {
    String file = folder.name(trial.file());
    return new TrialRow(
        file,
        NotebookFolder.address("/trial", file),
        trial.name(),
        trial.invented(),
        trial.pouredAt().map(new ReaderDates(locale)::of).orElse("not poured yet"),
        RecipeWords.starchKinds(trial.recipe()),
        switch (Stage.of(trial, now)) {
          case PLANNED -> "planned";
          case DRYING -> "drying";
          case ENDED -> "off the plate";
          case GIVEN_UP -> "given up";
        },
        trial.seen().rating().orElse(0),
        noted(trial));
  }

  private static String noted(Trial trial) {
    return counted(trial.seen().weighings().size(), "weighing")
        + ", "
        + counted(trial.seen().faults().size(), "fault")
        + ", "
        + counted(trial.seen().photos().size(), "photo");
  }

  private static String counted(int count, String one) {
    return count == 0 ? "no " + one + "s" : Plural.of(count, one);
  }
}
