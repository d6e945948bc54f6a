package starchfilm.web;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import starchfilm.casting.trial.Stage;
import starchfilm.casting.trial.Trial;
import starchfilm.files.notebook.Notebook;
import starchfilm.report.PlateNow;
import starchfilm.report.TrialForecasts;
import starchfilm.web.http.HttpError;
import starchfilm.web.http.Request;
import starchfilm.web.http.Response;
import starchfilm.web.http.Routes;
import starchfilm.web.work.Work;

/** <em>The plates</em>: what is drying now, how far it is, when it is due; weigh it in two taps. */
final class PlatesPage {
  private static final String PAGE = "/plates";
  private static final String DUE = "/plates/due";
  private static final String FILE = "file";
  private static final long AT_ONCE_MS = 600;
  private static final long PATIENCE_MS = 30_000;

  private final PageContext desk;
  private final NoteDesk notes;

  PlatesPage(PageContext desk) {
    this.desk = desk;
    this.notes = new NoteDesk(desk);
  }

  /**
   * One plate on the page.
   *
   * @param row the trial
   * @param dueAddress where the part with its forecast is
   * @param state done, pending or none
   * @param now how it stands; null unless done
   * @param failure why there is no forecast; may be empty
   * @param said what was just noted of it
   * @param typed the weight typed where it could not be noted; may be empty
   * @param refused why it could not be noted
   */
  record Card(
      TrialRow row,
      String dueAddress,
      String state,
      @Nullable PlateNow now,
      String failure,
      FlashMessages.Said said,
      String typed,
      NoteDesk.Refused refused) {
    /** Its place on the page. */
    public String place() {
      return TrialRow.place(row.file());
    }
  }

  /** What was typed for one plate and could not be noted. */
  private record Retry(String file, String typed, NoteDesk.Refused refused) {
    static final Retry NONE = new Retry("", "", NoteDesk.Refused.NOTHING);
  }

  void addTo(Routes.Table table) {
    table
        .read(PAGE, request -> shown(request, Retry.NONE, AT_ONCE_MS))
        .read("/plates/all", request -> shown(request, Retry.NONE, PATIENCE_MS))
        .read(DUE, this::due)
        .send("/plates/weigh", this::weigh);
  }

  private Response shown(Request request, Retry retry, long patienceMs) {
    Notebook notebook = desk.folder().read();
    LocalDateTime now = desk.now();
    List<Trial> drying =
        notebook.trials().stream().filter(t -> Stage.of(t, now) == Stage.DRYING).toList();
    List<TrialRow> planned =
        notebook.trials().stream()
            .filter(t -> Stage.of(t, now) == Stage.PLANNED)
            .map(t -> TrialRow.of(t, desk.folder(), now, request.locale()))
            .toList();
    drying.forEach(desk.bench()::on);
    long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(patienceMs);
    List<Card> cards = new ArrayList<>();
    for (Trial trial : drying) {
      long leftMs = Math.max(0, TimeUnit.NANOSECONDS.toMillis(end - System.nanoTime()));
      cards.add(card(trial, request, leftMs, retry));
    }
    Map<String, Object> values = new HashMap<>();
    values.put("cards", cards);
    values.put("planned", planned);
    FlashMessages.Said said = desk.said().in(request.query());
    boolean atCard = cards.stream().anyMatch(card -> card.said().equals(said));
    values.put("said", atCard ? FlashMessages.Said.NOTHING : said);
    values.put("pending", cards.stream().anyMatch(card -> card.state().equals("pending")));
    return Response.page(
        retry.equals(Retry.NONE) ? 200 : 422, desk.html("plates", "plates", values));
  }

  private Card card(Trial trial, Request request, long patienceMs, Retry retry) {
    TrialRow row = TrialRow.of(trial, desk.folder(), desk.now(), request.locale());
    FlashMessages.Said said = desk.said().in(request.query());
    FlashMessages.Said here = said.isAbout(row.file()) ? said : FlashMessages.Said.NOTHING;
    Retry mine = retry.file().equals(row.file()) ? retry : Retry.NONE;
    String state = "pending";
    PlateNow now = null;
    String failure = "";
    Work<TrialForecasts> work = desk.bench().on(trial);
    if (work.endsWithin(patienceMs) && !work.isCancelled()) {
      TrialForecasts forecasts = work.result();
      boolean done = !forecasts.done().isEmpty();
      state = done ? "done" : "none";
      now = done ? PlateNow.of(forecasts.forecasts().get(0), desk.now()) : null;
      failure = String.join(" ", forecasts.failures());
    }
    return new Card(
        row,
        NotebookFolder.address(DUE, row.file()),
        state,
        now,
        failure,
        here,
        mine.typed(),
        mine.refused());
  }

  /** The part of a card that waits for its forecast. */
  private Response due(Request request) {
    Path file = desk.folder().trialFile(request.query().text(FILE));
    Optional<Trial> trial =
        desk.folder().read(List.of(file)).trials().stream()
            .filter(t -> Stage.of(t, desk.now()) == Stage.DRYING)
            .findFirst();
    Trial drying =
        trial.orElseThrow(() -> new HttpError(422, "This plate is not drying any more."));
    return desk.part(
        "plates", "due", Map.of("card", card(drying, request, PATIENCE_MS, Retry.NONE)));
  }

  private Response weigh(Request request) {
    String name = request.posted().text(FILE);
    Path file = desk.folder().trialFile(name);
    NoteDesk.Outcome outcome = notes.write(file, request.posted());
    return outcome instanceof NoteDesk.Noted noted
        ? notes.backTo(PAGE + "#" + TrialRow.place(name), file, noted)
        : shown(
            request,
            new Retry(name, request.posted().text("mass"), (NoteDesk.Refused) outcome),
            AT_ONCE_MS);
  }
}
