package starchfilm.web;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import starchfilm.casting.trial.Stage;
import starchfilm.casting.trial.Trial;
import starchfilm.files.notebook.Notebook;
import starchfilm.forecast.TrialForecast;
import starchfilm.report.TrialForecasts;
import starchfilm.report.today.PlateNow;
import starchfilm.today.Standing;
import starchfilm.today.Today;
import starchfilm.web.http.Fields;
import starchfilm.web.http.HttpError;
import starchfilm.web.http.Request;
import starchfilm.web.http.Response;
import starchfilm.web.http.Routes;

/**
 * <em>The plates</em>: what is drying now, in the order of the trials, so that noting moves
 * nothing; a number and the Enter key a plate.
 */
record PlatesPage(PageContext desk) {
  private static final String PAGE = "/plates";
  private static final String DUE = "/plates/due";
  private static final String FILE = "file";
  private static final String PLATE = "plate";
  private static final long AT_ONCE_MS = 600;
  private static final long PATIENCE_MS = 30_000;

  /** So many plates of one pour have a field each; of more, the number is typed. */
  private static final int MOST_FIELDS = 12;

  /**
   * Plates of one pour that nobody distinguished.
   *
   * @param row the trial
   * @param place its place on the page
   * @param plates which of the pour; empty where there is but one
   * @param single true where the pour was one plate
   * @param first the number of the first of them; empty where it is one of one
   * @param dueAddress where the part with its forecast is
   * @param state done, pending or none
   * @param now how it stands; null unless done
   * @param failure why there is no forecast; may be empty
   * @param said what was just noted of it
   * @param entries a field a plate
   */
  record Card(
      TrialRow row,
      String place,
      String plates,
      boolean single,
      String first,
      String dueAddress,
      String state,
      @Nullable PlateNow now,
      String failure,
      FlashMessages.Said said,
      List<Entry> entries) {}

  /**
   * The field for one plate's weight.
   *
   * @param plate its number
   * @param label what the field is called
   * @param id its name on the page
   * @param typed the weight typed where it could not be noted; may be empty
   * @param refused why it could not be noted
   * @param focus true for the field after the one noted last
   * @param asksNumber true where the number of the plate is typed, too
   */
  record Entry(
      int plate,
      String label,
      String id,
      String typed,
      NoteDesk.Refused refused,
      boolean focus,
      boolean asksNumber) {}

  /** What was typed for one plate and could not be noted. */
  private record Retry(String file, int plate, String typed, NoteDesk.Refused refused) {
    static final Retry NONE = new Retry("", 0, "", NoteDesk.Refused.NOTHING);

    boolean isOf(String name, int number) {
      return file.equals(name) && plate == number;
    }
  }

  private NoteDesk notes() {
    return new NoteDesk(desk);
  }

  void addTo(Routes table) {
    table
        .read(PAGE, request -> shown(request, Retry.NONE, AT_ONCE_MS))
        .read("/plates/all", request -> shown(request, Retry.NONE, PATIENCE_MS))
        .read(DUE, this::due)
        .send("/plates/weigh", this::weigh);
  }

  /** Where a plate is on the page. */
  static String place(String file, int plate) {
    return TrialRow.place(file) + (plate == 1 ? "" : "-" + plate);
  }

  private Response shown(Request request, Retry retry, long patienceMs) {
    Notebook notebook = desk.folder().read();
    LocalDateTime now = desk.now();
    List<Today.Alike> drying = Today.alike(notebook.trials(), now);
    List<TrialRow> planned =
        desk.rows(
            notebook.trials().stream().filter(t -> Stage.of(t, now) == Stage.PLANNED).toList());
    Map<Trial, TrialForecasts> made =
        desk.bench().glances(drying.stream().map(Today.Alike::as).toList(), patienceMs);
    Focus focus = new Focus(request.query());
    List<Card> cards =
        drying.stream()
            .map(
                plates ->
                    card(plates, request, Optional.ofNullable(made.get(plates.as())), retry, focus))
            .toList();
    Map<String, Object> values = new HashMap<>();
    values.put("cards", cards);
    values.put("planned", planned);
    // After the last plate there is no next field: the view stays on what was noted.
    values.put(
        "goesOn", cards.stream().flatMap(card -> card.entries().stream()).anyMatch(Entry::focus));
    FlashMessages.Said said = desk.said().in(request.query());
    boolean atCard = cards.stream().anyMatch(card -> card.said().equals(said));
    values.put("said", atCard ? FlashMessages.Said.NOTHING : said);
    values.put("pending", cards.stream().anyMatch(card -> card.state().equals("pending")));
    return desk.page(retry.equals(Retry.NONE) ? 200 : 422, "plates", "plates", values);
  }

  /** Finds the field after the one that was noted last. */
  private static final class Focus {
    private final String file;
    private final String plate;
    private boolean next;

    Focus(Fields query) {
      file = query.text(FILE);
      plate = query.text(PLATE);
    }

    boolean isNoted(String name, int number) {
      return file.equals(name) && plate.equals(String.valueOf(number));
    }

    boolean isNext(String name, int number) {
      boolean here = next;
      next = isNoted(name, number);
      return here;
    }
  }

  private Card card(
      Today.Alike plates,
      Request request,
      Optional<TrialForecasts> made,
      Retry retry,
      Focus focus) {
    TrialRow row = TrialRow.of(plates.as(), desk.folder(), desk.now());
    FlashMessages.Said said = desk.said().in(request.query());
    boolean here =
        said.isAbout(row.file())
            && plates.numbers().stream().anyMatch(plate -> focus.isNoted(row.file(), plate));
    List<Entry> entries = entries(plates, row.file(), retry, focus);
    Optional<TrialForecast> forecast = made.flatMap(one -> one.forecasts().stream().findFirst());
    int first = plates.numbers().get(0);
    return new Card(
        row,
        place(row.file(), first),
        plates.as().plates() == 1 ? "" : numbers(plates),
        plates.as().plates() == 1,
        plates.numbers().size() == 1 ? String.valueOf(first) : "",
        NotebookFolder.address(DUE, row.file()) + "&" + PLATE + "=" + first,
        made.isEmpty() ? "pending" : forecast.isPresent() ? "done" : "none",
        forecast.map(one -> new PlateNow(standing(one, plates))).orElse(null),
        made.map(one -> String.join(" ", one.failures())).orElse(""),
        here ? said : FlashMessages.Said.NOTHING,
        entries);
  }

  private Standing standing(TrialForecast forecast, Today.Alike plates) {
    return Standing.of(forecast, desk.bench().course(forecast), plates.numbers(), desk.now());
  }

  private static String numbers(Today.Alike plates) {
    List<Integer> numbers = plates.numbers();
    return numbers.size() == 1
        ? "plate " + numbers.get(0)
        : numbers.size() == plates.as().plates()
            ? numbers.size() + " plates"
            : "plates " + String.join(", ", numbers.stream().map(String::valueOf).toList());
  }

  private static List<Entry> entries(Today.Alike plates, String file, Retry retry, Focus focus) {
    boolean one = plates.as().plates() == 1;
    boolean many = plates.numbers().size() > MOST_FIELDS;
    List<Entry> entries = new ArrayList<>();
    for (int plate : many ? plates.numbers().subList(0, 1) : plates.numbers()) {
      boolean again = many ? retry.file().equals(file) : retry.isOf(file, plate);
      boolean next = focus.isNext(file, plate);
      entries.add(
          new Entry(
              plate,
              one || many ? "Weight with plate, g" : "Plate " + plate + " weighs, g",
              "mass-" + place(file, plate),
              again ? retry.typed() : "",
              again ? retry.refused() : NoteDesk.Refused.NOTHING,
              again || next,
              many));
    }
    return entries;
  }

  /** The part of a card that waits for its forecast. */
  private Response due(Request request) {
    int plate = number(request.query().text(PLATE));
    Today.Alike drying =
        Today.alike(desk.folder().trial(desk.file(request.query())).stream().toList(), desk.now())
            .stream()
            .filter(plates -> plates.numbers().contains(plate))
            .findFirst()
            .orElseThrow(() -> new HttpError(422, "This plate is not drying any more."));
    Optional<TrialForecasts> made =
        Optional.ofNullable(
            desk.bench().glances(List.of(drying.as()), PATIENCE_MS).get(drying.as()));
    Card card = card(drying, request, made, Retry.NONE, new Focus(Fields.NONE));
    return desk.part("plates", "due", Map.of("card", card));
  }

  private static int number(String typed) {
    return typed.matches("[0-9]{1,4}") ? Integer.parseInt(typed) : 1;
  }

  private Response weigh(Request request) {
    Fields form = request.posted();
    String name = form.text(FILE);
    int plate = number(form.text(PLATE));
    return notes()
        .write(
            desk.file(form),
            form,
            NotebookFolder.address(PAGE, name) + "&" + PLATE + "=" + plate,
            refused ->
                shown(request, new Retry(name, plate, form.text("mass"), refused), AT_ONCE_MS));
  }
}
