package starchfilm.files.notebook;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import starchfilm.casting.trial.Trial;

/** What was read is kept, and no change to a file or to what it names goes unseen. */
class KeptReadingsTest {
  private static final FileTime LONG_AGO = FileTime.from(Instant.parse("2026-01-02T03:04:05Z"));

  @TempDir Path folder;
  private final KeptReadings kept = new KeptReadings();

  private Path trial(String text) throws IOException {
    return old(Files.writeString(folder.resolve("a.json"), text));
  }

  private static Path old(Path file) throws IOException {
    return Files.setLastModifiedTime(file, LONG_AGO);
  }

  private Trial read(Path file) {
    return kept.apply(file).trial().orElseThrow();
  }

  @Test
  void keepsWhatItReadOfAFileThatStaysTheSame() throws IOException {
    Path file = trial(TrialText.SOUND);
    assertThat(read(file)).isSameAs(read(file));
  }

  @Test
  void seesAChangeThatLeavesSizeAndSecondAsTheyWere() throws IOException {
    Path file = trial(TrialText.SOUND);
    read(file);
    Files.writeString(file, TrialText.SOUND.replace("\"A\"", "\"B\""));
    Files.setLastModifiedTime(file, FileTime.from(LONG_AGO.toInstant().plusNanos(1_000_000)));

    assertThat(read(file).name()).isEqualTo("B");
  }

  @Test
  void seesAnotherFileUnderItsNameWithTheSameSizeAndTime() throws IOException {
    Path file = trial(TrialText.SOUND);
    read(file);
    Path other =
        old(
            Files.writeString(
                folder.resolve("other"), TrialText.SOUND.replace("\"A\"", "\"B\""), UTF_8));
    Files.move(other, file, java.nio.file.StandardCopyOption.REPLACE_EXISTING);

    assertThat(read(file).name()).isEqualTo("B");
  }

  /** Twice within one step of the file system's clock: size, time and identity stay the same. */
  @Test
  void readsAFileAgainThatChangedAMomentAgo() throws IOException {
    Path file = Files.writeString(folder.resolve("a.json"), TrialText.SOUND);
    FileTime now = Files.getLastModifiedTime(file);
    read(file);
    Files.writeString(file, TrialText.SOUND.replace("\"A\"", "\"B\""));
    Files.setLastModifiedTime(file, now);

    assertThat(read(file).name()).isEqualTo("B");
  }

  @Test
  void seesAChangedLogAPictureThatCameAndAJarThatWasWeighedAgain() throws IOException {
    Path log = folder.resolve("log.csv");
    old(
        Files.writeString(
            log, "time,air_C,rh_pct\n2026-04-02T10:00,20,50\n2026-04-03T10:00,20,50\n"));
    Path jar = folder.resolve("oil.jar.json");
    old(Files.writeString(jar, "{\"mass_g\": 200, \"purity_pct\": 80}"));
    Path file =
        trial(
            TrialText.SOUND
                .replace("\"air_C\": 21, \"rh_pct\": 50", "\"log_csv\": \"log.csv\"")
                .replace("\"purity_pct\": 85, \"salt_pct\": 3", "\"jar\": \"oil\"")
                .replace("\"name\": \"A\"", "\"name\": \"A\", \"photos\": [\"p.png\"]"));
    Trial first = read(file);
    assertThat(read(file)).isSameAs(first);

    old(
        Files.writeString(
            log, "time,air_C,rh_pct\n2026-04-02T10:00,28,50\n2026-04-03T10:00,28,5\n"));
    Trial warm = read(file);
    old(Files.writeString(jar, "{\"mass_g\": 200, \"purity_pct\": 8}"));
    Trial thin = read(file);
    old(Files.write(folder.resolve("p.png"), new byte[] {1}));

    assertThat(first.casting().room().warmestK()).isLessThan(warm.casting().room().warmestK());
    assertThat(thin.recipe().glycerol().stock().glycerolFraction().value()).isEqualTo(0.08);
    assertThat(first.seen().photos()).isEmpty();
    assertThat(read(file).seen().photos()).hasSize(1);
  }

  @Test
  void forgetsAFileThatIsGoneOrHasAFault() throws IOException {
    Path file = trial(TrialText.SOUND);
    read(file);
    trial(TrialText.SOUND.replace("\"pour\"", "\"pour"));
    assertThat(kept.apply(file).findings().faults()).isNotEmpty();
    Files.delete(file);
    assertThat(kept.apply(file).findings().faults()).hasSize(1);
  }

  @Test
  void keepsAThousandWhenMoreAreReadInTurn() throws IOException {
    List<Path> files = new ArrayList<>();
    for (int i = 0; i < 1_010; i++) {
      files.add(old(Files.writeString(folder.resolve(i + ".json"), TrialText.SOUND)));
    }
    List<Trial> first = files.stream().map(this::read).toList();

    List<Trial> again = files.stream().map(this::read).toList();

    assertThat(IntStream.range(0, first.size()).filter(i -> first.get(i) == again.get(i)))
        .hasSize(1_000);
  }

  @Test
  void readsAFolderAsWithoutIt() {
    List<Path> garden = List.of(Path.of("formulations/garden"));

    assertThat(NotebookReader.read(garden, kept)).isEqualTo(NotebookReader.read(garden));
    assertThat(NotebookReader.read(garden, kept)).isEqualTo(NotebookReader.read(garden));
  }
}
