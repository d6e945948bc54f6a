package starchfilm.web;

import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import starchfilm.casting.trial.ObservedFault.FaultKind;
import starchfilm.casting.trial.PhotoNote;
import starchfilm.casting.trial.Stage;
import starchfilm.casting.trial.Trial;
import starchfilm.files.notebook.Notebook;
import starchfilm.files.saving.NewPhoto;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.NotedLine;
import starchfilm.files.saving.Picture;
import starchfilm.files.saving.PotEntry;
import starchfilm.learning.summary.DoubtedReading;
import starchfilm.numerics.units.Named;
import starchfilm.numerics.units.Plural;
import starchfilm.report.PhotoFrame;
import starchfilm.report.TrialForecasts;
import starchfilm.report.TrialView;
import starchfilm.report.learnt.LearntSheet;
import starchfilm.report.today.PlateNow;
import starchfilm.report.today.TrialNow;
import starchfilm.report.words.PourCalendar;
import starchfilm.report.words.RoomWords;
import starchfilm.request.NewTrial;
import starchfilm.today.Today;
import starchfilm.web.http.Fields;
import starchfilm.web.http.HttpError;
import starchfilm.web.http.Request;
import starchfilm.web.http.Response;
import starchfilm.web.http.Routes;

/** One trial: its forecast, what came of it, and small forms to note more. */
record TrialPage(PageContext desk) {
  private static final String PAGE = "/trial";
  private static final String FORECAST = "/trial/forecast";
  private static final String FILE = "file";

  /** What can be noted: fragments of the template of notes, in their order. */
  private static final List<String> NOTES =
      List.of(
          "weighed",
          "poured",
          "weighed-out",
          "cooked",
          "fault",
          "off",
          "moved",
          "thickness",
          "pulled",
          "rated",
          "remark",
          "photo");

  /** What the address calls a doubted reading that is to be put right. */
  private static final String READING = "reading";

  /**
   * The page with the lines of a reading open, to be put right.
   *
   * @param name the file's name on the pages
   * @param reading the reading, as a {@link DoubtedReading} calls it
   */
  static String atReading(String name, String reading) {
    return NotebookFolder.address(PAGE, name)
        + "&"
        + READING
        + "="
        + URLEncoder.encode(reading, StandardCharsets.UTF_8);
  }

  private NoteDesk notes() {
    return new NoteDesk(desk);
  }

  void addTo(Routes table) {
    table
        .read(PAGE, request -> shown(request, PageContext.AT_ONCE_MS))
        .read(FORECAST, this::forecast)
        .read("/photo", this::photo)
        .send("/trial/note", this::note)
        .send("/trial/undo", request -> notes().takeBack(request.posted()))
        .send("/trial/photo", this::keepPhoto);
  }

  private Response shown(Request request, long patienceMs) {
    return page(
        desk.file(request.query()), request, Fields.NONE, NoteDesk.Refused.NOTHING, patienceMs);
  }

  /** The page again, with a form that could not be written as it was filled in. */
  private Response page(
      Path file, Request request, Fields form, NoteDesk.Refused refused, long patienceMs) {
    String name = desk.folder().name(file);
    Notebook notebook = desk.folder().read(List.of(file));
    Map<String, Object> values = new HashMap<>();
    values.put(FILE, name);
    values.put("form", form);
    values.put("why", refused.why());
    values.put("faulty", refused.input());
    values.put("doubt", refused.isDoubt());
    values.put("said", desk.said().in(request.query()));
    values.put("faultKinds", Named.all(FaultKind.values()));
    values.put("remarks", notebook.notices().stream().map(notice -> notice.sentence()).toList());
    int status = refused.why().isEmpty() ? 200 : 422;
    if (notebook.trials().isEmpty()) {
      values.put("troubles", notebook.faults().stream().map(NoteDesk::sentence).toList());
      return desk.page(status, "faulty", "trials", values);
    }
    values.put("leftOut", notebook.faults().stream().map(NoteDesk::sentence).toList());
    Trial trial = notebook.trials().get(0);
    values.put("row", TrialRow.of(trial, desk.folder(), desk.now()));
    values.put("isPutAway", !notebook.putAway().isEmpty());
    values.put("plates", trial.plates());
    String first = first(trial, form.text("kind"));
    values.put("first", first);
    values.put("others", NOTES.stream().filter(kind -> !kind.equals(first)).toList());
    values.put("changes", NewTrial.changes());
    List<NotedLine> lines = NoteDesk.lines(file, NotedLine::of);
    values.put("lines", lines);
    values.put("opened", opened(lines, trial, request.query().text(READING)));
    values.put("photos", photos(trial));
    values.put("room", RoomWords.place(trial.casting().place()));
    values.put("wanted", TrialNow.wanted(trial));
    values.put("potLines", NoteDesk.lines(file, PotEntry::of));
    values.put(
        "learnt",
        new LearntSheet(desk.workshops().of(trial).learnt())
            .inUse(trial.casting().place())
            .orElse("from textbook rates alone; nothing has been learnt yet"));
    values.putAll(sheet(trial, patienceMs));
    return desk.page(status, "trial", "trials", values);
  }

  /** The lines that tell a reading; several where plates were weighed together. */
  private static List<NotedLine> opened(List<NotedLine> lines, Trial trial, String reading) {
    DoubtedReading doubted = new DoubtedReading("", reading, "", "", 0);
    return lines.stream()
        .filter(
            line ->
                switch (line.kind()) {
                  case WEIGHING ->
                      line.afterPourS(trial.pouredAt()).stream()
                          .anyMatch(timeS -> LearntSheet.isOf(doubted, timeS));
                  case PULL -> doubted.isOfStrip(line.number());
                  default -> false;
                })
        .toList();
  }

  /** The form that could not be written, or else the one for what is most likely noted next. */
  private String first(Trial trial, String refused) {
    if (NOTES.contains(refused)) {
      return refused;
    }
    if (refused.equals("given-up")) {
      return "off";
    }
    return switch (Stage.of(trial, desk.now())) {
      case PLANNED -> "poured";
      case DRYING -> "weighed";
      case ENDED ->
          trial.seen().rating().isEmpty()
              ? "rated"
              : trial.seen().dryThicknessesM().isEmpty() ? "thickness" : "";
      case GIVEN_UP -> "";
    };
  }

  /** The forecast if it is there soon; the sentence where there can be none. */
  private Map<String, Object> sheet(Trial trial, long patienceMs) {
    String name = desk.folder().name(trial.file());
    Map<String, Object> values = new HashMap<>();
    values.put(FILE, name);
    values.put("forecastAddress", NotebookFolder.address(FORECAST, name));
    values.put("restAddress", NotebookFolder.address(FORECAST, name) + "&part=rest");
    values.put("state", "pending");
    Stage stage = Stage.of(trial, desk.now());
    values.put("planned", stage == Stage.PLANNED);
    if (stage == Stage.ENDED || stage == Stage.GIVEN_UP) {
      values.put("care", "/care");
    }
    List<Today.Alike> drying = Today.alike(List.of(trial), desk.now());
    List<Trial> plates =
        drying.isEmpty()
            ? List.of(trial.ofPlate(1))
            : drying.stream().map(Today.Alike::as).toList();
    Map<Trial, TrialForecasts> made = desk.bench().wholes(plates, patienceMs);
    if (!made.keySet().containsAll(plates)) {
      return values;
    }
    TrialForecasts forecasts = Objects.requireNonNull(made.get(plates.get(0)));
    if (forecasts.done().isEmpty()) {
      values.put("state", "none");
      values.put("failures", forecasts.failures());
      return values;
    }
    List<PlateNow> standing = new ArrayList<>();
    for (Today.Alike alike : drying) {
      Objects.requireNonNull(made.get(alike.as()))
          .forecasts()
          .forEach(forecast -> standing.add(desk.standing(forecast, alike)));
    }
    values.put("trial", TrialView.of(forecasts.done().get(0)));
    values.put("now", new TrialNow(forecasts.forecasts().get(0), standing));
    values.put("state", "done");
    return values;
  }

  /** A part of the page for a script; the whole page, having waited, for a reader without. */
  private Response forecast(Request request) {
    if (!request.partial()) {
      return shown(request, PageContext.PATIENCE_MS);
    }
    return desk.part(
        "trial",
        request.query().text("part").equals("rest") ? "rest" : "now",
        sheet(desk.trial(request.query()), PageContext.PATIENCE_MS));
  }

  private Response note(Request request) {
    Path file = desk.file(request.posted());
    return notes()
        .write(
            file,
            request.posted(),
            desk.trialAddress(file),
            refused -> page(file, request, request.posted(), refused, PageContext.AT_ONCE_MS));
  }

  private Response keepPhoto(Request request) {
    Fields form = request.posted();
    Path file = desk.file(form);
    if (request.files().isEmpty()) {
      List<String> why = List.of("No picture was chosen; choose one first.");
      return page(file, request, form, NoteDesk.Refused.because(why), PageContext.AT_ONCE_MS);
    }
    try {
      List<NewPhoto.Chosen> chosen =
          request.files().stream()
              .map(sent -> new NewPhoto.Chosen(sent.name(), sent.bytes()))
              .toList();
      String version =
          new NewPhoto(file, desk.folder().trial(file).flatMap(Trial::pouredAt), form.has("place"))
              .keep(
                  chosen,
                  Optional.of(form.text("caption")).filter(words -> !words.isEmpty()),
                  form.number("plate"))
              .version();
      return notes()
          .backTo(desk.trialAddress(file), file, Plural.of(chosen.size(), "photo"), version);
    } catch (NotWrittenException e) {
      List<String> why =
          e.faults().stream().map(fault -> fault.file() + ": " + NoteDesk.sentence(fault)).toList();
      return page(file, request, form, NoteDesk.Refused.because(why), PageContext.AT_ONCE_MS);
    }
  }

  /**
   * A photo in the row of photos.
   *
   * @param number its number in the trial
   * @param words when it was taken, which plate it shows and its caption; may be empty
   */
  record Photo(int number, String words) {}

  /** In the order in which they were taken; those without a date come last, as in the file. */
  private static List<Photo> photos(Trial trial) {
    PourCalendar calendar = new PourCalendar(trial.pouredAt());
    List<Path> files = trial.seen().photos();
    return IntStream.range(0, files.size())
        .boxed()
        .sorted(
            Comparator.comparingDouble(
                n -> noteOf(trial, files.get(n)).takenAtS().orElse(Double.POSITIVE_INFINITY)))
        .map(n -> new Photo(n, words(noteOf(trial, files.get(n)), calendar)))
        .toList();
  }

  private static PhotoNote noteOf(Trial trial, Path photo) {
    return trial.seen().photoNotes().getOrDefault(photo, PhotoNote.NOTHING);
  }

  private static String words(PhotoNote note, PourCalendar calendar) {
    List<String> words = new ArrayList<>();
    note.takenAtS().ifPresent(at -> words.add(calendar.byTheHour(at)));
    note.plate().ifPresent(plate -> words.add("plate " + plate));
    note.caption().ifPresent(words::add);
    return String.join(" · ", words);
  }

  /** Only pictures that a trial names are shown, by their number. */
  private Response photo(Request request) {
    List<Path> photos = desk.trial(request.query()).seen().photos();
    int number = request.query().number("n").orElse(photos.size());
    if (number >= photos.size()) {
      throw HttpError.notFound("The trial has no such photo.");
    }
    Path photo = desk.folder().inside(desk.folder().name(photos.get(number)));
    Optional<byte[]> small =
        request.query().has("small") ? PhotoFrame.of(photo).jpeg() : Optional.empty();
    if (small.isPresent()) {
      return Response.passing("image/jpeg", small.get());
    }
    try {
      byte[] bytes = Files.readAllBytes(photo);
      return Response.passing(Picture.mediaType(bytes), bytes);
    } catch (IOException e) {
      throw HttpError.notFound("The photo can no longer be read.");
    }
  }
}
