package starchfilm.web;

import java.time.LocalDateTime;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import starchfilm.casting.trial.Stage;
import starchfilm.casting.trial.Trial;
import starchfilm.numerics.figures.Figures;
import starchfilm.numerics.units.Plural;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.PourCalendar;
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
 * @param reached how far it has come
 * @param rating 0 where none was given
 * @param noted what was noted about it
 * @param pouredAt the same as a moment, to sort by; long ago where it was not
 * @param made its thickness and glycerol
 * @param room where it dries
 * @param picture the address of its first photo; empty where it has none
 */
record TrialRow(
    String file,
    String address,
    String name,
    boolean invented,
    String poured,
    String starch,
    Stage reached,
    int rating,
    String noted,
    LocalDateTime pouredAt,
    String made,
    String room,
    String picture) {
  /** A place on a page for this trial. */
  static String place(String file) {
    return "trial-" + file.replaceAll("[^A-Za-z0-9]+", "-");
  }

  static TrialRow of(Trial trial, NotebookFolder folder, LocalDateTime now) {
    String file = folder.name(trial.file());
    return new TrialRow(
        file,
        NotebookFolder.address("/trial", file),
        trial.name(),
        trial.invented(),
        trial.pouredAt().isEmpty() ? "not poured yet" : new PourCalendar(trial.pouredAt()).pour(),
        RecipeWords.starchKinds(trial.recipe()),
        Stage.of(trial, now),
        trial.seen().rating().orElse(0),
        noted(trial),
        trial.pouredAt().orElse(LocalDateTime.MIN),
        made(trial),
        trial.casting().place().name(),
        trial.seen().photos().isEmpty() ? "" : NotebookFolder.address("/photo", file) + "&n=0");
  }

  /** How far it has come, in words. */
  public String stage() {
    return PlainWords.word(reached);
  }

  private static String made(Trial trial) {
    return Figures.two(1e3 * trial.casting().wetThicknessM())
        + " mm wet, "
        + RecipeWords.plasticiser(trial.casting().composition().glycerolPerDryStarch());
  }

  /** What there is; of a trial that is only planned nothing. */
  private static String noted(Trial trial) {
    return Stream.of(
            Plural.of(trial.weighingCount(), "weighing"),
            Plural.of(trial.seen().faults().size(), "fault"),
            Plural.of(trial.seen().photos().size(), "photo"))
        .filter(counted -> !counted.startsWith("0 "))
        .collect(Collectors.joining(", "));
  }
}
