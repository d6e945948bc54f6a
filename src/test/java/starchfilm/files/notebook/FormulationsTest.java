package starchfilm.files.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import starchfilm.casting.trial.Trial;
import starchfilm.files.findings.Fault;
import starchfilm.files.findings.Notice;

/** The recipes and the notebook that come with the program can be read. */
class FormulationsTest {
  private static final Notebook ALL = NotebookReader.read(List.of(Path.of("formulations")));

  @Test
  void everyFileIsReadWithoutFault() {
    assertThat(ALL.faults()).extracting(Fault::sentence).isEmpty();
    assertThat(ALL.trials()).hasSize(9);
  }

  @Test
  void thePouredTrialsComeFirstInOrderOfTheirDay() {
    assertThat(ALL.trials())
        .extracting(Trial::name)
        .containsExactly(
            "Thick tray",
            "Little glycerol",
            "Much glycerol",
            "Potato and tapioca",
            "The same in the shed",
            "Thin, by the fan",
            "First film: potato, bendable",
            "Soft wrap: tapioca, stretchy",
            "Stiff window: corn, clear and flat");
  }

  @Test
  void everyFileIsMarkedInventedAndOnlyTheGardenHasAHistory() {
    assertThat(ALL.trials()).allMatch(Trial::invented);
    assertThat(ALL.trials().subList(0, 6)).allMatch(Trial::hasHistory);
    assertThat(ALL.trials().subList(6, 9)).noneMatch(Trial::hasHistory);
  }

  @Test
  void theOnlyNoticesAreOfTheShedLog() {
    assertThat(ALL.notices())
        .extracting(Notice::sentence)
        .containsExactly(
            "formulations/garden/shed-april.csv, line 127: no reading for 9.5 h"
                + " before 2026-04-21T07:00; bridged by a straight line",
            "formulations/garden/shed-april.csv: 367 readings are averaged over hours;"
                + " faster changes hardly affect when a film is dry");
  }
}
