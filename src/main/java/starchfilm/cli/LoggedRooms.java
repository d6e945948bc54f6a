package starchfilm.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import starchfilm.casting.Room;
import starchfilm.files.notebook.Notebook;
import starchfilm.files.notebook.NotebookReader;

/** Reads a hygrometer log as a trial file beside it would. */
final class LoggedRooms {
  private LoggedRooms() {}

  /**
   * The room of a log that is taken to begin with the pour.
   *
   * @param option the option's name, for the sentence
   * @param file the log
   * @param section the field {@code room} that names it
   * @return the room
   */
  static Room read(String option, Path file, ObjectNode section) {
    ObjectNode trial = JsonNodeFactory.instance.objectNode();
    ObjectNode recipe = trial.putObject("recipe");
    recipe
        .putArray("starch")
        .addObject()
        .put("kind", "potato")
        .put("mass_g", 20)
        .put("moisture_pct", 17);
    recipe.putObject("glycerol").put("mass_g", 0);
    recipe.putObject("water").put("mass_g", 400);
    trial.set("room", section);
    Notebook notebook =
        NotebookReader.readText(file.toAbsolutePath().resolveSibling("plan"), trial.toString());
    if (notebook.trials().isEmpty()) {
      throw CommandFailure.wrongInput(option + ": " + notebook.faults().get(0).sentence());
    }
    return notebook.trials().get(0).casting().room();
  }
}
