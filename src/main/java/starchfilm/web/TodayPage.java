package starchfilm.web;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import starchfilm.casting.trial.Trial;
import starchfilm.files.findings.Fault;
import starchfilm.files.notebook.Notebook;
import starchfilm.report.TrialForecasts;
import starchfilm.report.today.CalendarFile;
import starchfilm.report.today.TodaySheet;
import starchfilm.today.Standing;
import starchfilm.today.Today;
import starchfilm.web.http.Request;
import starchfilm.web.http.Response;
import starchfilm.web.http.Routes;

/** <em>Today</em>: which plates need somebody now, and why; the first page that opens. */
record TodayPage(PageContext desk) {
  private static final String PAGE = "/today";

  void addTo(Routes table) {
    table
        .read(PAGE, request -> desk.page("today", "today", values(request, PageContext.AT_ONCE_MS)))
        .read(
            PAGE + "/all",
            request -> desk.page("today", "today", values(request, PageContext.PATIENCE_MS)))
        .read(PAGE + "/looks.ics", request -> calendar())
        .read(
            PAGE + "/now",
            request -> desk.part("today", "now", values(request, PageContext.PATIENCE_MS)));
  }

  /** What could be looked at in time. */
  private record Looked(Today today, boolean pending, List<String> failures, List<Fault> faults) {}

  private Looked look(long patienceMs) {
    Notebook notebook = desk.folder().read();
    List<Trial> drying =
        Today.alike(notebook.trials(), desk.now()).stream().map(Today.Alike::as).toList();
    Map<Trial, TrialForecasts> made = desk.bench().glances(drying, patienceMs);
    boolean pending = !made.keySet().containsAll(drying);
    // What is shown once all is there need not be worked out before.
    Today today =
        Today.of(
            pending ? List.of() : notebook.trials(),
            desk.now(),
            trial ->
                Optional.ofNullable(made.get(trial))
                    .flatMap(one -> one.forecasts().stream().findFirst()),
            desk.bench()::course);
    return new Looked(
        today,
        pending,
        made.values().stream().flatMap(one -> one.failures().stream()).toList(),
        notebook.faults());
  }

  private Map<String, Object> values(Request request, long patienceMs) {
    Looked looked = look(patienceMs);
    Map<String, Object> values = new HashMap<>();
    values.put("said", desk.said().in(request.query()));
    values.put("pending", looked.pending());
    values.put("view", TodaySheet.of(looked.today(), desk.workshops()));
    values.put("addresses", this);
    values.put("failures", looked.failures());
    values.put("troubles", FileTrouble.of(looked.faults(), desk.folder()));
    return values;
  }

  private Response calendar() {
    String text =
        CalendarFile.of(
            look(PageContext.PATIENCE_MS).today(),
            desk.clock().instant(),
            trial -> desk.folder().name(trial.file()));
    return Response.passing("text/calendar; charset=utf-8", text.getBytes(StandardCharsets.UTF_8))
        .asFile("plates-to-look-after.ics");
  }

  /** The page of a trial. */
  public String page(Trial trial) {
    return NotebookFolder.address("/trial", desk.folder().name(trial.file()));
  }

  /** The place where a plate is weighed. */
  public String card(Standing standing) {
    String file = desk.folder().name(standing.forecast().trial().file());
    return "/plates#" + PlatesPage.place(file, standing.plates().get(0));
  }
}
