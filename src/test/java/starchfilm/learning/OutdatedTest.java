package starchfilm.learning;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import starchfilm.casting.trial.PullTest;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.Weighing;
import starchfilm.drying.uncertainty.ParameterSample;

/** What a workshop says once its trials are no longer those it was learnt from. */
class OutdatedTest {
  private static final List<PullTest> STRIPS =
      List.of(MadeUpNotebook.strip(4e6, 0.3), MadeUpNotebook.strip(4.2e6, 0.35));

  private final SyntheticPlates plates = new SyntheticPlates(7);
  private final List<Trial> learntFrom = new ArrayList<>();
  @TempDir private Path folder;
  private Workshop workshop = Workshop.untaught(Path.of(""));

  @BeforeEach
  void learn() throws IOException {
    for (String name : List.of("a", "b", "c", "d")) {
      learntFrom.add(plate(name));
      Files.createFile(folder.resolve(name + ".json"));
    }
    workshop = Workshop.taughtBy(folder, learntFrom);
  }

  private Trial plate(String name) {
    Trial dried = SyntheticPlates.dried(plates.any("shed"), ParameterSample.NONE, 0.3, 0.6);
    return in(name, dried.seen().weighings(), STRIPS, dried);
  }

  private Trial in(String name, List<Weighing> weighings, List<PullTest> strips, Trial like) {
    return SyntheticPlates.with(like, folder.resolve(name + ".json"), weighings, strips);
  }

  private Optional<String> said(Trial changed) {
    List<Trial> now = new ArrayList<>(learntFrom);
    now.removeIf(trial -> trial.file().equals(changed.file()));
    now.add(changed);
    return workshop.outdated(now);
  }

  private void assertSays(Trial changed, String part) {
    assertThat(said(changed).orElseThrow())
        .endsWith(
            Workshop.FILE_NAME
                + ": "
                + part
                + " since it was learnt: "
                + changed.file().getFileName()
                + "; run the command learn again to include that");
  }

  @Test
  void nothingWhereNothingChanged() {
    assertThat(workshop.outdated(learntFrom)).isEmpty();
    assertThat(Workshop.untaught(folder).outdated(learntFrom)).isEmpty();
  }

  @Test
  void moreReadingsThanItWasLearntFromAreNoted() {
    Trial first = learntFrom.get(0);
    List<Weighing> weighings = first.seen().weighings();
    assertSays(in("a", weighings.subList(0, 1), STRIPS, first), "noted in");
    assertSays(in("a", weighings, STRIPS.subList(0, 1), first), "noted in");
    assertSays(plate("e"), "noted in");
    assertThat(said(in("f", List.of(), List.of(), first))).isEmpty();
  }

  @Test
  void aFactThatIsAnotherIsEdited() {
    Trial first = learntFrom.get(0);
    List<Weighing> weighings = new ArrayList<>(first.seen().weighings());
    Weighing slip = weighings.get(1);
    weighings.set(1, new Weighing(slip.timeS(), slip.filmMassKg() + 0.001, slip.massSdKg()));
    assertSays(in("a", weighings, STRIPS, first), "edited");
  }

  @Test
  void filesThatAreGoneAreNamedThreeAtMost() throws IOException {
    Files.delete(folder.resolve("b.json"));
    Files.delete(folder.resolve("c.json"));
    Files.delete(folder.resolve("d.json"));
    assertThat(workshop.outdated(learntFrom).orElseThrow())
        .contains(": gone or renamed since it was learnt: b.json, c.json, d.json; run");
    Files.delete(folder.resolve("a.json"));
    assertThat(workshop.outdated(learntFrom).orElseThrow())
        .contains("gone or renamed since it was learnt: a.json and 3 more; run");
  }

  /** Of a plate that was left out nothing was learnt, so that nothing more can be noted. */
  @Test
  void aPlateThatWasLeftOutIsNotCalledNoted() {
    Trial light = in("x", List.of(new Weighing(3600, 1e-3, 1e-4)), List.of(), plate("x"));
    List<Trial> all = new ArrayList<>(learntFrom);
    all.add(light);
    Workshop taught = Workshop.taughtBy(folder, all);
    assertThat(taught.learnt().leftOut()).hasSize(1);
    assertThat(taught.outdated(all)).isEmpty();
    assertThat(workshop.outdated(all).orElseThrow())
        .contains("noted in since it was learnt: x.json");
  }
}
