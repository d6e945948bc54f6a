package starchfilm.web;

import static starchfilm.numerics.units.Units.DAY_S;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import starchfilm.casting.Room;
import starchfilm.casting.trial.Trial;
import starchfilm.files.findings.Fault;
import starchfilm.files.findings.Notice;
import starchfilm.files.notebook.Notebook;
import starchfilm.files.notebook.RoomAccount;
import starchfilm.files.notebook.TrialField;
import starchfilm.files.saving.NewRoom;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.report.RoomFigure;
import starchfilm.report.words.RoomWords;
import starchfilm.web.http.Fields;
import starchfilm.web.http.Request;
import starchfilm.web.http.Response;
import starchfilm.web.http.Routes;

/** The room of a trial: what was read of it, a hygrometer's log to upload, other accounts. */
record RoomPage(PageContext desk) {
  private static final String PAGE = "/trial/room";
  private static final String FILE = "file";

  /** A room without a log is drawn for so long (s). */
  private static final double SHOWN_S = 5 * DAY_S;

  void addTo(Routes table) {
    table
        .read(PAGE, request -> page(200, desk.file(request.query()), request, List.of(), Map.of()))
        .send("/trial/log", this::log)
        .send("/trial/swing", this::swing);
  }

  /** The page, with what is wrong with a log, or at the inputs of day and night. */
  private Response page(
      int status, Path file, Request request, List<String> why, Map<String, String> wrong) {
    Notebook notebook = desk.folder().read(List.of(file));
    Trial trial = notebook.trials().stream().findFirst().orElseThrow(PageContext::faulty);
    Room room = trial.casting().room();
    String name = desk.folder().name(file);
    Map<String, Object> values = new HashMap<>();
    values.put(FILE, name);
    values.put("name", trial.name());
    values.put("address", NotebookFolder.address("/trial", name));
    values.put("why", why);
    values.put("said", desk.said().in(request.query()));
    values.put("air", RoomWords.air(room));
    values.put("figure", RoomFigure.of(room, endS(room)));
    values.put("notices", notebook.notices().stream().map(Notice::sentence).toList());
    values.put("swing", RoomAccount.SWING.fields().stream().map(Input::of).toList());
    values.put("form", request.posted());
    values.put("wrong", wrong);
    values.put("first", wrong.keySet().stream().findFirst().orElse(""));
    return desk.page(status, "room", "trials", values);
  }

  /** A field of a form: its sentence without the full stop, and its unit. */
  record Input(String key, String label, boolean required) {
    static Input of(TrialField field) {
      String label = field.sentence().replaceFirst("\\.$", "");
      return new Input(
          field.key(),
          field.unit().isEmpty() ? label : label + ", " + field.unit(),
          field.required());
    }
  }

  private static double endS(Room room) {
    double known = room.knownUntilS();
    return Double.isInfinite(known) ? SHOWN_S : Math.max(1, known);
  }

  private Response log(Request request) {
    Path file = desk.file(request.posted());
    if (request.files().isEmpty()) {
      return page(422, file, request, List.of("No log was chosen; choose one first."), Map.of());
    }
    try {
      NewRoom.log(
          file, request.files().get(0).bytes(), desk.folder().trial(file).flatMap(Trial::pouredAt));
      return seen(file, "The log is kept beside the trial. Look whether this is your room.");
    } catch (NotWrittenException e) {
      // In a log of many rows the line of a fault is half the help.
      return page(422, file, request, e.faults().stream().map(Fault::sentence).toList(), Map.of());
    }
  }

  private Response swing(Request request) {
    Fields posted = request.posted();
    Path file = desk.file(posted);
    try {
      NewRoom.note(file, RoomAccount.SWING, posted::text);
      return seen(file, "The day and the night are noted.");
    } catch (NotWrittenException e) {
      Map<String, String> wrong = new LinkedHashMap<>();
      e.faults().forEach(fault -> wrong.merge(input(fault), inWords(fault), (a, b) -> a + " " + b));
      return page(422, file, request, List.of(), wrong);
    }
  }

  /** The input that a fault of the file is about; empty where it is about none. */
  private static String input(Fault fault) {
    return RoomAccount.SWING.fields().stream()
        .map(TrialField::key)
        .filter(key -> fault.field().endsWith(key))
        .findFirst()
        .orElse("");
  }

  /** A sentence about fields of the file, in the words of the form. */
  private static String inWords(Fault fault) {
    String told = input(fault).isEmpty() ? NoteDesk.sentence(fault) : NoteDesk.atItsField(fault);
    for (TrialField field : RoomAccount.SWING.fields()) {
      told = told.replace(field.key(), "\u201C" + Input.of(field).label() + "\u201D");
    }
    return told;
  }

  private Response seen(Path file, String said) {
    return desk.to(NotebookFolder.address(PAGE, desk.folder().name(file)), said);
  }
}
