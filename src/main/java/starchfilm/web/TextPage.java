package starchfilm.web;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import starchfilm.files.findings.Fault;
import starchfilm.files.json.PackedText;
import starchfilm.files.notebook.TrialField;
import starchfilm.files.saving.ChangedMeanwhileException;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.TrialFileText;
import starchfilm.request.NewTrial;
import starchfilm.request.TrialQuestion;
import starchfilm.web.http.Fields;
import starchfilm.web.http.HttpError;
import starchfilm.web.http.Request;
import starchfilm.web.http.Response;
import starchfilm.web.http.Routes;

/** Edits a trial file as it stands, and starts new ones from a starter recipe or an older trial. */
record TextPage(PageContext desk) {
  private static final String FILE = "file";
  private static final String TEXT = "text";
  private static final String VERSION = "version";

  /** The starter recipes packed with the program: name of the file, what they are. */
  private static final Map<String, String> STARTERS =
      new TreeMap<>(
          Map.of(
              "first-film", "A first film: potato, bendable",
              "soft-wrap", "Soft wrap: tapioca, stretchy",
              "stiff-window", "Stiff window: corn, clear and flat"));

  /**
   * A line of a text.
   *
   * @param differs true where the other text has no such line
   */
  record ComparedLine(String words, boolean differs) {}

  /** What can be started from. */
  static Map<String, String> starters() {
    return STARTERS;
  }

  void addTo(Routes table) {
    table
        .read("/trial/text", this::edit)
        .send("/trial/text", this::save)
        .send("/trial/start", this::start)
        .send("/trial/again", this::again);
  }

  private Response edit(Request request) throws NotWrittenException {
    Path file = desk.file(request.query());
    TrialFileText there = TrialFileText.of(file);
    return page(200, file, there.text(), there.version(), List.of(), List.of());
  }

  private Response save(Request request) {
    Fields posted = request.posted();
    Path file = desk.file(posted);
    String text = posted.all(TEXT).stream().findFirst().orElse("");
    String version = desk.ownSaves().madeFrom(posted);
    try {
      desk.ownSaves().saved(posted, TrialFileText.replace(file, text, version));
      return desk.toTrial(file, "Saved.");
    } catch (ChangedMeanwhileException e) {
      return page(409, file, text, e.now().version(), List.of(), lines(e.now().text(), text));
    } catch (NotWrittenException e) {
      return page(
          422, file, text, version, e.faults().stream().map(TextPage::placed).toList(), List.of());
    }
  }

  /** In a text of many lines the place of a fault is half the help. */
  private static String placed(Fault fault) {
    return fault.place().line() > 0
        ? "line " + fault.place().line() + ": " + NoteDesk.sentence(fault)
        : NoteDesk.sentence(fault);
  }

  private Response page(
      int status,
      Path file,
      String text,
      String version,
      List<String> why,
      List<ComparedLine> theirs) {
    Map<String, Object> values = new HashMap<>();
    values.put(FILE, desk.folder().name(file));
    values.put("address", desk.trialAddress(file));
    values.put(TEXT, text);
    values.put(VERSION, version);
    values.put("why", why);
    values.put("theirs", theirs);
    values.put("keys", TrialField.TRIAL.all());
    return desk.page(status, TEXT, "trials", values);
  }

  private static List<ComparedLine> lines(String text, String other) {
    Set<String> known = new HashSet<>(other.lines().map(String::strip).toList());
    return text.lines().map(line -> new ComparedLine(line, !known.contains(line.strip()))).toList();
  }

  private Response start(Request request) throws NotWrittenException {
    Fields posted = request.posted();
    return begun(posted, desk.folder().sketched(starterText(posted.text("starter"))));
  }

  private Response again(Request request) throws NotWrittenException {
    Fields posted = request.posted();
    return begun(
        posted, TrialQuestion.Base.of(desk.trial(posted)).orElseThrow(PageContext::faulty));
  }

  private Response begun(Fields posted, TrialQuestion.Base base) throws NotWrittenException {
    NewTrial made =
        NewTrial.read(
            new FormEntries(posted, "origin", Set.of()),
            Optional.of(base),
            desk.folder().root(),
            desk.clock());
    return desk.begun(
        made.name(),
        made.text(),
        made.changed().isEmpty() ? "" : "Changed: " + made.changed() + ". ");
  }

  /** The text of a starter recipe. */
  static String starterText(String starter) {
    if (!STARTERS.containsKey(starter)) {
      throw HttpError.malformed("There is no starter recipe of this name.");
    }
    return PackedText.of(TextPage.class, "/formulations/starter-" + starter + ".json");
  }
}
