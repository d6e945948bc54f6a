package starchfilm.learning;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.uncertainty.ParameterSample;

/** The workshop file that a trial belongs to, and plates that stand in two files. */
class WorkshopsTest {
  private static final LocalDateTime POURED = LocalDateTime.of(2026, 4, 19, 10, 0);

  private final SyntheticPlates plates = new SyntheticPlates(3);
  @TempDir private Path folder;

  private Trial plate(String file) {
    Trial dried = SyntheticPlates.dried(plates.any("shed"), ParameterSample.NONE, 0.2, 0.4, 0.6);
    Trial poured = SyntheticPlates.poured(dried, POURED);
    return SyntheticPlates.with(poured, folder.resolve(file), dried.seen().weighings(), List.of());
  }

  private Trial backupOf(Trial plate) {
    return SyntheticPlates.with(
        plate, folder.resolve("backup/plate.json"), plate.seen().weighings(), List.of());
  }

  private static Workshops workshops() {
    return new Workshops(Clock.systemUTC());
  }

  private static void learn(Path home, Trial... trials) throws Exception {
    Workshop.taughtBy(home, List.of(trials)).write();
  }

  @Test
  void theNearestFileAboveATrialIsItsOwn() throws Exception {
    Path shed = Files.createDirectories(folder.resolve("garden/shed"));
    Trial far = plate("plate.json");
    Trial near = plate("garden/shed/deep/plate.json");
    learn(folder, far);
    assertThat(workshops().of(near).isTaught()).isTrue();
    assertThat(workshops().nearer(folder, List.of(far, near))).isEmpty();

    learn(shed, near);

    assertThat(workshops().all(List.of(far, near, near)))
        .extracting(workshop -> workshop.copyOf(near).isPresent())
        .containsExactly(false, false);
    assertThat(workshops().nearer(folder, List.of(far, near)))
        .containsExactly(
            "The trials in garden/shed keep to garden/shed/workshop.json, which is nearer; delete"
                + " that file to have them use this one.");
  }

  @Test
  void aFileIsLookedForEightFoldersUpAndNoFurther() throws Exception {
    learn(folder, plate("plate.json"));
    assertThat(workshops().of(plate("1/2/3/4/5/6/7/8/plate.json")).isTaught()).isTrue();
    assertThat(workshops().of(plate("1/2/3/4/5/6/7/8/9/plate.json")).isTaught()).isFalse();
  }

  /** Kept forecasts are found again by the workshop they rest on. */
  @Test
  void aFolderWithoutAFileHasOneWorkshopForAll() {
    Workshops workshops = workshops();
    assertThat(workshops.of(plate("one.json"))).isSameAs(workshops.of(plate("other.json")));
  }

  @Test
  void aFileIsReadAgainOnceItHasChanged() throws Exception {
    Trial one = plate("one.json");
    learn(folder, one);
    Workshops workshops = workshops();
    Workshop first = workshops.of(one);
    assertThat(workshops.of(one)).isSameAs(first);

    learn(folder, one, plate("two.json"));

    assertThat(workshops.of(one).learnt().rooms().get(0).plates()).isEqualTo(2);
  }

  @Test
  void aBackupOfAPlateThatWasLearntFromIsNamed() throws Exception {
    Trial plate = plate("plate.json");
    Trial backup = backupOf(plate);
    Trial other = plate("other.json");
    learn(folder, plate, other);

    Workshop workshop = workshops().of(backup);
    assertThat(workshop.copyOf(backup))
        .contains("backup/plate.json: the same plate as plate.json, which counts once.");
    assertThat(workshop.copyOf(plate)).isEmpty();
    assertThat(Workshops.copies(List.of(plate, backup, other)))
        .singleElement()
        .asString()
        .endsWith("plate.json, which counts once in what is learnt.");
  }

  /** The copy's weighings are those of the plate; counted twice they would bind it too tightly. */
  @Test
  void aBackupIsForecastAsThePlateItself() throws Exception {
    Trial plate = plate("plate.json");
    Trial backup = backupOf(plate);
    learn(folder, plate, plate("other.json"));

    WorkshopFileTest.isSame(
        workshops().drying(backup).factors(), workshops().drying(plate).factors());
  }
}
