package starchfilm.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.Setting;
import starchfilm.casting.trial.ObservedFault.FaultKind;
import starchfilm.casting.trial.Trial;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.figures.Figures;

/**
 * What faults teach together is told only where chance would seldom part the plates as clearly: the
 * probabilities are counted by hand.
 */
class TaughtTest {
  private static final TrialForecast ANY = SeenFaults.forecast(SeenFaults.poured(Castings.USUAL));

  /** Two of five brittle, those with least glycerol: one in C(5, 2) = 10 by chance. */
  @Test
  void onePartingInTenIsTold() {
    assertThat(Taught.by(ofGlycerol(FaultKind.BRITTLE, 2, 0.1, 0.15, 0.3, 0.35, 0.4)))
        .containsExactly(
            "Of the 2 trials with 15 g or less of glycerol per 100 g dry starch, 2"
                + " cracked, broke apart or were brittle; of the other 3 none.");
  }

  /** Two of four: one in C(4, 2) = 6. */
  @Test
  void onePartingInSixIsNot() {
    assertThat(Taught.by(ofGlycerol(FaultKind.BRITTLE, 2, 0.1, 0.15, 0.3, 0.35))).isEmpty();
  }

  /** One of twelve would come by chance once in twelve, yet one plate is no lesson. */
  @Test
  void onePlateIsNoLesson() {
    assertThat(
            Taught.by(
                ofGlycerol(
                    FaultKind.BRITTLE,
                    1,
                    0.1,
                    0.2,
                    0.21,
                    0.22,
                    0.23,
                    0.24,
                    0.25,
                    0.26,
                    0.27,
                    0.28,
                    0.29,
                    0.3)))
        .isEmpty();
  }

  @Test
  void stickyFilmTeachesFromTheOtherSide() {
    assertThat(Taught.by(ofGlycerol(FaultKind.STICKY, 3, 0.6, 0.55, 0.5, 0.3, 0.25, 0.2)))
        .containsExactly(
            "Of the 3 trials with 50 g or more of glycerol per 100 g dry starch, 3"
                + " were sticky; of the other 3 none.");
  }

  /** Recipes that nobody cast teach nothing: with the fifth, one in ten by chance; without, six. */
  @Test
  void thickPoursTeachAndRecipesDoNot() {
    List<TrialForecast> notebook = new ArrayList<>();
    for (double wetM : new double[] {5e-3, 4e-3, 2e-3, 1.5e-3}) {
      Casting casting = Castings.USUAL.pouredTo(wetM);
      notebook.add(
          of(
              wetM > 3e-3
                  ? SeenFaults.poured(casting, SeenFaults.fault(FaultKind.STILL_WET))
                  : SeenFaults.poured(casting)));
    }
    Trial cast = notebook.get(3).trial();
    notebook.add(of(SeenFaults.recipeOf(cast)));
    assertThat(Taught.by(notebook)).isEmpty();

    notebook.set(4, of(cast));
    assertThat(Taught.by(notebook))
        .containsExactly(
            "Of the 2 trials with 4 mm or more of paste, 2 stayed wet or moulded; of the other 3"
                + " none.");
  }

  private static final Pattern LESSON =
      Pattern.compile(
          "Of the (\\d+) trials with ([0-9.]+) (g|mm) or (less|more) of .*, (\\d+) (.*);"
              + " of the other (\\d+) none\\.");

  /**
   * Notebooks of any faults: whoever counts in the table, where figures stand rounded as in the
   * sentence, counts the same, and finds no fault where the sentence says none.
   */
  @Test
  void everyLessonCanBeCountedInTheTable() {
    Random random = new Random(15);
    int lessons = 0;
    for (int i = 0; i < 600; i++) {
      List<TrialForecast> notebook = new ArrayList<>();
      double limit = 0.1 + 0.4 * random.nextDouble();
      int trials = 1 + random.nextInt(12);
      for (int j = 0; j < trials; j++) {
        double level = 0.05 + 0.5 * random.nextDouble();
        Casting casting = SeenFaults.usual(Setting.GLYCEROL, level);
        FaultKind kind = level < limit ? FaultKind.BRITTLE : FaultKind.STICKY;
        boolean faulty = random.nextInt(5) > 0 && (level < limit || random.nextBoolean());
        notebook.add(
            of(
                faulty
                    ? SeenFaults.poured(casting, SeenFaults.fault(kind))
                    : SeenFaults.poured(casting)));
      }
      for (String lesson : Taught.by(notebook)) {
        assertCounts(lesson, notebook);
        lessons++;
      }
    }
    assertThat(lessons).isGreaterThan(50);
  }

  private static void assertCounts(String lesson, List<TrialForecast> notebook) {
    Matcher told = LESSON.matcher(lesson);
    assertThat(told.matches()).as(lesson).isTrue();
    double limit = Double.parseDouble(told.group(2));
    boolean less = told.group(4).equals("less");
    FaultKind kind = less ? FaultKind.BRITTLE : FaultKind.STICKY;
    int there = 0;
    int faulty = 0;
    for (TrialForecast trial : notebook) {
      double shown =
          Double.parseDouble(Figures.brief(100 * trial.composition().glycerolPerDryStarch()));
      boolean beyond = less ? shown <= limit : shown >= limit;
      boolean shows =
          trial.trial().seen().faults().stream().anyMatch(fault -> fault.kind() == kind);
      there += beyond ? 1 : 0;
      faulty += shows ? 1 : 0;
      assertThat(!shows || beyond).as("%s: %s shows it", lesson, shown).isTrue();
    }
    assertThat(told.group(1)).as(lesson).isEqualTo(String.valueOf(there));
    assertThat(told.group(5)).as(lesson).isEqualTo(String.valueOf(faulty));
    assertThat(told.group(7)).as(lesson).isEqualTo(String.valueOf(notebook.size() - there));
    assertThat(faulty).isGreaterThanOrEqualTo(2);
  }

  /** A best trial with a fault is not called best, and one of one is not compared. */
  @Test
  void noVerdictPraisesAFaultNorComparesOneWithItself() {
    TrialForecast sound = rated(4);
    TrialForecast faulty = rated(4, FaultKind.CURLED);
    TrialForecast unrated = seen(OptionalInt.empty(), FaultKind.CURLED);

    assertThat(verdict(sound, rated(2)))
        .isEqualTo(
            "It is the best rated, 4 of 5, and has no fault: keep it, and pour it again to see how"
                + " far plates differ.");
    assertThat(verdict(sound)).startsWith("Only this one is rated, 4 of 5, and has no fault");
    assertThat(verdict(faulty, rated(2)))
        .startsWith("None is rated higher than this one, 4 of 5, and it has a fault");
    assertThat(verdict(faulty)).startsWith("Only this one is rated, 4 of 5, and it has a fault");
    assertThat(verdict(unrated)).startsWith("It is the only one poured, and has a fault");
    assertThat(verdict(unrated, unrated)).startsWith("No trial is rated; none has fewer faults");
    for (String told : List.of(verdict(faulty, rated(2)), verdict(faulty), verdict(unrated))) {
      assertThat(told).doesNotContain("best").doesNotContain("fewest").doesNotContain("keep it");
    }
  }

  private static String verdict(TrialForecast best, TrialForecast... others) {
    List<Trial> notebook =
        Stream.concat(Stream.of(best), Stream.of(others)).map(TrialForecast::trial).toList();
    return NotebookAdvice.of(best, notebook, Optional.empty(), List.of()).verdict();
  }

  /** The first so many trials show the fault. */
  private static List<TrialForecast> ofGlycerol(FaultKind kind, int faulty, double... levels) {
    List<TrialForecast> trials = new ArrayList<>();
    for (double level : levels) {
      Casting casting = SeenFaults.usual(Setting.GLYCEROL, level);
      Trial trial =
          trials.size() < faulty
              ? SeenFaults.poured(casting, SeenFaults.fault(kind))
              : SeenFaults.poured(casting);
      trials.add(of(trial));
    }
    return trials;
  }

  private static TrialForecast of(Trial trial) {
    return new TrialForecast(trial, ANY.film(), ANY.drying(), ANY.risks(), ANY.weighed());
  }

  @Test
  void theBestTrialHasTheBestRatingThenTheFewestFaultsThenIsTheLast() {
    TrialForecast poor = rated(2);
    TrialForecast oneFault = rated(4, FaultKind.CURLED);
    TrialForecast twoFaults = rated(4, FaultKind.CURLED, FaultKind.STICKY);
    TrialForecast alike = rated(4, FaultKind.CLOUDY);

    assertThat(Adviser.best(List.of(oneFault, poor))).hasValue(0);
    assertThat(Adviser.best(List.of(oneFault, twoFaults))).hasValue(0);
    assertThat(Adviser.best(List.of(twoFaults, oneFault))).hasValue(1);
    assertThat(Adviser.best(List.of(oneFault, alike))).hasValue(1);
  }

  private static TrialForecast rated(int rating, FaultKind... faults) {
    return seen(OptionalInt.of(rating), faults);
  }

  private static TrialForecast seen(OptionalInt rating, FaultKind... faults) {
    return of(SeenFaults.rated(Castings.USUAL, rating, faults));
  }
}
