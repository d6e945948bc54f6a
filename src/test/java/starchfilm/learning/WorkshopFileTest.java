package starchfilm.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.files.findings.Fault;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.film.FilmProperty;
import starchfilm.film.LearntFilm;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.numerics.evidence.Estimate;

/** What was learnt is the same after it was written and read. */
class WorkshopFileTest {
  /** The file keeps twelve figures; a fit that starts from them ends within its own stopping. */
  private static final double TWELVE_FIGURES = 1e-6;

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void readBackItGivesTheSameForAnyTrial(long seed) throws Exception {
    MadeUpNotebook notebook = new MadeUpNotebook(seed, folder);
    List<Trial> taught = notebook.trials(1 + (int) seed);
    Workshop learnt = Workshop.taughtBy(folder, taught);

    Path file = learnt.write();
    Workshop read = Workshop.read(folder);

    List<Trial> asked = new ArrayList<>(taught);
    asked.addAll(notebook.trials(2));
    for (Trial trial : asked) {
      isSame(read.atThePour(trial).factors(), learnt.atThePour(trial).factors());
      isSame(read.drying(trial).factors(), learnt.drying(trial).factors());
      isSame(read.film(trial), learnt.film(trial));
    }
    isSame(
        read.factors("a room nobody named", Map.of(StarchKind.CORN, 1.0), false),
        learnt.factors("a room nobody named", Map.of(StarchKind.CORN, 1.0), false));
    byte[] first = Files.readAllBytes(file);
    Files.delete(file);
    assertThat(read.write()).hasBinaryContent(first);
  }

  @Test
  void theSameBytesInAnyLanguageAndWithAnyNumberOfThreads() throws Exception {
    List<Trial> taught = new MadeUpNotebook(11, folder).trials(4);
    byte[] bytes = Files.readAllBytes(Workshop.taughtBy(folder, taught).write());
    Locale before = Locale.getDefault();
    try {
      for (String language : List.of("tr-TR", "ar-EG-u-nu-arab", "de-DE")) {
        Locale.setDefault(Locale.forLanguageTag(language));
        ForkJoinPool threads = new ForkJoinPool(language.length());
        try {
          Files.delete(Workshop.file(folder));
          Path file = threads.submit(() -> Workshop.taughtBy(folder, taught).write()).get();
          assertThat(file).as(language).hasBinaryContent(bytes);
        } finally {
          threads.shutdown();
        }
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void theSameWhereverTheFolderLies(@TempDir Path elsewhere) throws Exception {
    byte[] here =
        Files.readAllBytes(
            Workshop.taughtBy(folder, new MadeUpNotebook(5, folder).trials(3)).write());
    byte[] there =
        Files.readAllBytes(
            Workshop.taughtBy(elsewhere, new MadeUpNotebook(5, elsewhere).trials(3)).write());

    assertThat(there).isEqualTo(here);
  }

  @Test
  void learningAgainKnowsNothingOfTheOldFileAndKeepsItAside() throws Exception {
    List<Trial> all = new MadeUpNotebook(8, folder).trials(5);
    byte[] ofTwo = Files.readAllBytes(Workshop.taughtBy(folder, all.subList(0, 2)).write());
    byte[] ofAll = Files.readAllBytes(Workshop.taughtBy(folder, all).write());

    assertThat(folder.resolve("workshop.json.before")).hasBinaryContent(ofTwo);
    assertThat(Workshop.taughtBy(folder, all.subList(0, 2)).write()).hasBinaryContent(ofTwo);
    assertThat(ofAll).isNotEqualTo(ofTwo);
  }

  @Test
  void withoutAFileAllIsTheTextbook() throws Exception {
    Trial trial = new MadeUpNotebook(9, folder).trial();

    assertThat(Workshop.read(folder).isTaught()).isFalse();
    isSame(
        new Workshops(Clock.systemUTC()).atThePour(trial).factors(),
        Workshop.untaught(folder).atThePour(trial).factors());
    assertThat(new Workshops(Clock.systemUTC()).film(trial)).isEqualTo(LearntFilm.NOTHING);
  }

  @Test
  void aFolderInThePlaceOfTheFileIsLeftAloneAndNamed() throws IOException {
    Path inTheWay = Files.createDirectories(Workshop.file(folder).resolve("mine"));
    Trial trial = new MadeUpNotebook(9, folder).trial();

    assertThatThrownBy(() -> Workshop.taughtBy(folder, List.of(trial)).write())
        .isInstanceOf(NotWrittenException.class)
        .hasMessageContaining("workshop.json")
        .hasMessageContaining("a folder");
    assertThat(inTheWay).isDirectory();
    Workshops workshops = new Workshops(Clock.systemUTC());
    assertThat(workshops.faults(List.of(trial)))
        .extracting(Fault::given, Fault::mend)
        .containsExactly(
            tuple(
                "a folder",
                "rename or move it, then run the command learn again on this folder; until then the"
                    + " forecasts are the textbook's"));
    assertThat(workshops.of(trial).isTaught()).isFalse();
  }

  /** Renamed or copied it is the same plate: what it taught under its old name is left out, too. */
  @Test
  void aTrialIsKnownByItsReadings() {
    List<Trial> taught = new MadeUpNotebook(12, folder).trials(3);
    Workshop learnt = Workshop.taughtBy(folder, taught);
    Trial renamed =
        MadeUpNotebook.pulled(
            taught.get(0), folder.resolve("new.json"), taught.get(0).seen().pulls());

    assertThat(learnt.atThePour(renamed).factors().sd(UncertainParameter.AIR_SIDE))
        .isEqualTo(learnt.atThePour(taught.get(0)).factors().sd(UncertainParameter.AIR_SIDE));
  }

  /** Its old likelihood is left out and its new readings are taken, so nothing stale touches it. */
  @Test
  void aTrialEditedAfterLearningIsForecastFromItsNewReadings() throws Exception {
    List<Trial> taught = new ArrayList<>(new MadeUpNotebook(13, folder).trials(3));
    Workshop learnt = Workshop.taughtBy(folder, taught);
    Trial slow =
        SyntheticPlates.dried(
            taught.get(0),
            ParameterSample.NONE.with(UncertainParameter.AIR_SIDE, Math.log(0.5)),
            0.2,
            0.5,
            0.8);
    Workshop asIfNew = Workshop.taughtBy(folder, List.of(taught.get(1), taught.get(2)));

    isNear(learnt.drying(slow).factors(), asIfNew.drying(slow).factors(), 0.15);
  }

  static void isSame(ParameterDistribution one, ParameterDistribution other) {
    isNear(one, other, TWELVE_FIGURES);
  }

  private static void isNear(
      ParameterDistribution one, ParameterDistribution other, double spreads) {
    for (int i = 0; i < VarianceShares.COUNT; i++) {
      UncertainParameter factor = VarianceShares.factor(i);
      assertThat(one.mean().of(factor))
          .as("%s", factor)
          .isCloseTo(other.mean().of(factor), within(spreads * factor.spread()));
      assertThat(one.sd(factor))
          .as("%s", factor)
          .isCloseTo(other.sd(factor), within(spreads * factor.spread()));
    }
  }

  private static void isSame(LearntFilm one, LearntFilm other) {
    assertThat(one.logFactors().keySet()).isEqualTo(other.logFactors().keySet());
    for (Map.Entry<FilmProperty, Estimate> entry : one.logFactors().entrySet()) {
      Estimate wanted = other.logFactors().get(entry.getKey());
      assertThat(entry.getValue().value()).isCloseTo(wanted.value(), within(TWELVE_FIGURES));
      assertThat(entry.getValue().sd()).isCloseTo(wanted.sd(), within(TWELVE_FIGURES));
    }
  }
}
