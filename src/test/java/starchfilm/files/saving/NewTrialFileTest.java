package starchfilm.files.saving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NewTrialFileTest {
  private static final NewTrialFile SOUND =
      new NewTrialFile(
          "Sound", "{\"recipe\": {\"starch\": {\"mass_g\": 20}, \"water\": {\"mass_g\": 360}}}");
  private static final NewTrialFile FAULTY = new NewTrialFile("Faulty", "{\"recipe\": 7}");

  @TempDir private Path folder;
  private Path log;

  @BeforeEach
  void writeLog(@TempDir Path elsewhere) throws IOException {
    log = Files.writeString(elsewhere.resolve("shed.csv"), "time,air_C,rh_pct\n0,18,60\n");
  }

  @Test
  void trialsAndTheLogTheyNameLieBesideEachOther() throws Exception {
    List<Path> written = NewTrialFile.write(List.of(SOUND, SOUND), Optional.of(log), folder);

    assertThat(written)
        .containsExactly(folder.resolve("sound.json"), folder.resolve("sound-2.json"));
    assertThat(folder.resolve("shed.csv")).hasSameBinaryContentAs(log);
  }

  /** On Windows what is written into nul.json is lost. */
  @ParameterizedTest
  @CsvSource({"NUL, nul-trial", "con, con-trial", "Com1, com1-trial", "Workshop, workshop-trial"})
  void aNameThatIsTakenElsewhereIsLengthened(String name, String file) throws Exception {
    NewTrialFile trial = new NewTrialFile(name, SOUND.text());

    assertThat(NewTrialFile.write(List.of(trial), Optional.empty(), folder))
        .containsExactly(folder.resolve(file + ".json"));
  }

  @Test
  void whereOneCannotBeWrittenNothingIsLeft() {
    assertThatThrownBy(() -> NewTrialFile.write(List.of(SOUND, FAULTY), Optional.of(log), folder))
        .isInstanceOf(NotWrittenException.class);

    assertThat(folder.toFile().list()).allMatch(name -> name.startsWith("."));
  }

  @Test
  void anotherLogOfTheSameNameIsLeftAlone() throws IOException {
    Path other = Files.writeString(folder.resolve("shed.csv"), "other");

    assertThatThrownBy(() -> NewTrialFile.write(List.of(SOUND), Optional.of(log), folder))
        .hasMessage(
            "shed.csv: another log of this name in the folder;"
                + " rename one of the two, or choose another folder");

    assertThat(other).hasContent("other");
    assertThat(folder.resolve("sound.json")).doesNotExist();
  }
}
