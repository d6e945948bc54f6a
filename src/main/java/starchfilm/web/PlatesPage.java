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
import starchfilm.web.http.Fields;
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
   * @param typed the weight typed where it could not be noted; may be empty
   * @param why why it could not be noted
   */
  record Card(
      TrialRow row,
      String dueAddress,
      String state,
      @Nullable PlateNow now,
      String failure,
      String typed,
      List<String> why) {}

  void addTo(Routes.Table table) {
    table
        .read(PAGE, request -> shown(request, "", Fields.NONE, List.of(), AT_ONCE_MS))
        .read("/plates/all", request -> shown(request, "", Fields.NONE, List.of(), PATIENCE_MS))
        .read(DUE, this::due)
        .send("/plates/weigh", this::weigh);
  }

  private Response shown(
      Request request, String refused, Fields form, List<String> why, long patienceMs) {
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
      boolean isRefused = desk.folder().name(trial.file()).equals(refused);
      cards.add(
          card(
              trial,
              request,
              leftMs,
              isRefused ? form.text("mass") : "",
              isRefused ? why : List.of()));
    }
    Map<String, Object> values = new HashMap<>();
    values.put("cards", cards);
    values.put("planned", planned);
    values.put("said", desk.said().in(request.query()));
    values.put("pending", cards.stream().anyMatch(card -> card.state().equals("pending")));
    return Response.page(why.isEmpty() ? 200 : 422, desk.html("plates", "plates", values));
  }

  private Card card(Trial trial, Request request, long patienceMs, String typed, List<String> why) {
    TrialRow row = TrialRow.of(trial, desk.folder(), desk.now(), request.locale());
    String dueAddress = NotebookFolder.address(DUE, row.file());
    Work<TrialForecasts> work = desk.bench().on(trial);
    if (!work.endsWithin(patienceMs) || work.isCancelled()) {
      return new Card(row, dueAddress, "pending", null, "", typed, why);
    }
    TrialForecasts forecasts = work.result();
    return forecasts.done().isEmpty()
        ? new Card(
            row, dueAddress, "none", null, String.join(" ", forecasts.failures()), typed, why)
        : new Card(
            row,
            dueAddress,
            "done",
            PlateNow.of(forecasts.done().get(0), desk.now()),
            "",
            typed,
            why);
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
        "plates", "due", Map.of("card", card(drying, request, PATIENCE_MS, "", List.of())));
  }

  private Response weigh(Request request) {
    String name = request.posted().text(FILE);
    Path file = desk.folder().trialFile(name);
    NoteDesk.Outcome outcome = notes.write(file, request.posted());
    if (!outcome.done()) {
      return shown(request, name, request.posted(), outcome.sentences(), AT_ONCE_MS);
    }
    return Response.seeOther(desk.said().on(PAGE, outcome.sentences()));
  }
}
