package starchfilm.learning;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import starchfilm.casting.Pour;
import starchfilm.casting.trial.EachPlate;
import starchfilm.casting.trial.PullTest;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.Weighing;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;

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

  /** Copies that were learnt from all the same are named once, and strips alone are enough. */
  @Test
  void ofTwoFilesOfOnePlateTheOneLearntFromIsNoCopy() {
    Trial plate = plate("plate.json");
    Trial backup = backupOf(plate);
    Workshop both = Workshop.taughtBy(folder, List.of(plate, backup));
    assertThat(both.copyOf(plate)).isEmpty();
    assertThat(both.copyOf(backup)).isPresent();
    List<PullTest> strips = List.of(MadeUpNotebook.strip(4e6, 0.3));
    Trial pulled = SyntheticPlates.with(plate, plate.file(), List.of(), strips);
    Trial again = SyntheticPlates.with(plate, backup.file(), List.of(), strips);
    Workshop ofStrips = Workshop.taughtBy(folder, List.of(pulled, again));
    assertThat(ofStrips.isTaught()).isTrue();
    assertThat(ofStrips.copyOf(pulled)).isEmpty();
    assertThat(ofStrips.copyOf(again)).isPresent();
    assertThat(ofStrips.folderName()).isEqualTo(folder.getFileName().toString());
  }

  /** Each folder's sentence stands by itself, and a folder without a file has none. */
  @Test
  void eachFolderSaysWhatChangedInIt() throws Exception {
    Path shed = Files.createDirectories(folder.resolve("shed"));
    Trial far = plate("plate.json");
    Trial near = plate("shed/plate.json");
    Files.createFile(far.file());
    Files.createFile(near.file());
    learn(folder, far);
    learn(shed, near);
    assertThat(workshops().outdated(List.of(near, far))).isEmpty();
    assertThat(workshops().outdated(List.of(near, plate("shed/new.json"), far, plate("new.json"))))
        .hasSize(2)
        .satisfiesExactly(
            one -> assertThat(one).contains("shed/workshop.json: noted in"),
            other ->
                assertThat(other)
                    .contains("noted in since it was learnt: new.json")
                    .doesNotContain("shed"));
  }

  /** An invented trial may lie in the future; this one may not. */
  private static Trial real(Trial trial) {
    return new Trial(
        trial.file(),
        trial.name(),
        false,
        trial.from(),
        trial.wanted(),
        trial.pouredAt(),
        trial.recipe(),
        trial.casting(),
        trial.seen(),
        trial.notRecorded());
  }

  /** What lies in the future is not counted, and is asked about. */
  @Test
  void whatLiesInTheFutureIsAskedAbout() {
    Trial plate = real(plate("plate.json"));
    List<Weighing> weighings = plate.seen().weighings();
    LocalDateTime now = POURED.plusSeconds((long) weighings.get(0).timeS() + 60);
    Workshops then = new Workshops(Clock.fixed(now.toInstant(ZoneOffset.UTC), ZoneOffset.UTC));
    Trial first = SyntheticPlates.with(plate, plate.file(), weighings.subList(0, 1), List.of());
    Trial two = real(SyntheticPlates.with(plate, plate.file(), weighings.subList(0, 2), List.of()));
    assertThat(then.drying(first).questions()).isEmpty();
    assertThat(then.drying(two).questions())
        .singleElement()
        .satisfies(
            asked ->
                assertThat(asked.words())
                    .isEqualTo(
                        "One weighing lies in the future and is not counted: is its date right?"));
    assertThat(then.drying(plate).questions().get(0).words())
        .isEqualTo("2 weighings lie in the future and are not counted: are their dates right?");
    assertThat(then.drying(plate).weighings()).isEqualTo(1);
    WorkshopFileTest.isSame(then.drying(plate).factors(), then.drying(first).factors());
  }

  /** Of the other plates of a pour the three that were weighed most often are heard. */
  @Test
  void theThreeMostWeighedPlatesOfAPourAreHeard() {
    Trial plate = plate("plate.json");
    List<Weighing> three = plate.seen().weighings();
    Pour pour = plate.casting().pour();
    SortedMap<Integer, List<Weighing>> others =
        new TreeMap<>(
            Map.of(
                2, three.subList(0, 1), 3, three.subList(0, 2), 4, three, 5, three.subList(1, 3)));
    EachPlate plates = new EachPlate(1, new TreeMap<>(), others, new TreeMap<>(), new TreeMap<>());
    Trial ofFive =
        SyntheticPlates.with(plate, plate.file(), three.subList(0, 1), List.of(), plates)
            .cast(
                plate
                    .casting()
                    .with(
                        new Pour(
                            pour.wetThicknessM(),
                            pour.unevenness(),
                            pour.pasteTemperatureK(),
                            pour.weighedKg(),
                            5)),
                List.of());
    Workshop untaught = Workshop.untaught(folder);
    assertThat(untaught.drying(ofFive).weighings()).isEqualTo(1 + 3 + 2 + 2);
    UncertainParameter air = UncertainParameter.AIR_SIDE;
    assertThat(untaught.drying(ofFive).factors().sd(air))
        .isLessThan(
            untaught
                .drying(SyntheticPlates.with(plate, plate.file(), three.subList(0, 1), List.of()))
                .factors()
                .sd(air));
  }
}
