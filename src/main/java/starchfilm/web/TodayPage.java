package starchfilm.web;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import starchfilm.casting.trial.Trial;
import starchfilm.files.findings.Fault;
import starchfilm.files.notebook.Notebook;
import starchfilm.forecast.TrialForecast;
import starchfilm.report.TrialForecasts;
import starchfilm.report.today.CalendarFile;
import starchfilm.report.today.TodayView;
import starchfilm.today.Standing;
import starchfilm.today.Today;
import starchfilm.web.http.Request;
import starchfilm.web.http.Response;
import starchfilm.web.http.Routes;
import starchfilm.web.work.Work;

/** <em>Today</em>: which plates need somebody now, and why; the first page that opens. */
record TodayPage(PageContext desk) {
  private static final String PAGE = "/today";
  private static final long AT_ONCE_MS = 600;
  private static final long PATIENCE_MS = 60_000;

  void addTo(Routes.Table table) {
    table
        .read(PAGE, request -> desk.page("today", "today", values(request, AT_ONCE_MS)))
        .read(PAGE + "/all", request -> desk.page("today", "today", values(request, PATIENCE_MS)))
        .read(PAGE + "/looks.ics", request -> calendar())
        .read(PAGE + "/now", request -> desk.part("today", "now", values(request, PATIENCE_MS)));
  }

  /** What could be looked at in time. */
  private record Looked(Today today, boolean pending, List<String> failures, List<Fault> faults) {}

  private Looked look(long patienceMs) {
    Notebook notebook = desk.folder().read();
    List<String> failures = new ArrayList<>();
    boolean pending = false;
    List<Today.Alike> drying = Today.alike(notebook.trials(), desk.now());
    drying.forEach(plates -> desk.bench().glance(plates.as()));
    long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(patienceMs);
    Map<Trial, TrialForecast> made = new HashMap<>();
    for (Today.Alike plates : drying) {
      Work<TrialForecasts> work = desk.bench().glance(plates.as());
      long leftMs = Math.max(0, TimeUnit.NANOSECONDS.toMillis(end - System.nanoTime()));
      if (!work.endsWithin(leftMs) || work.isCancelled()) {
        pending = true;
      } else if (work.result().forecasts().isEmpty()) {
        failures.addAll(work.result().failures());
      } else {
        made.put(plates.as(), work.result().forecasts().get(0));
      }
    }
    // What is shown once all is there need not be worked out before.
    Today today =
        Today.of(
            pending ? List.of() : notebook.trials(),
            desk.now(),
            trial -> Optional.ofNullable(made.get(trial)),
            desk.bench().courses()::of);
    return new Looked(today, pending, failures, notebook.faults());
  }

  private Map<String, Object> values(Request request, long patienceMs) {
    Looked looked = look(patienceMs);
    return Map.of(
        "said",
        desk.said().in(request.query()),
        "pending",
        looked.pending(),
        "view",
        TodayView.of(looked.today(), addresses()),
        "failures",
        looked.failures(),
        "troubles",
        FileTrouble.of(looked.faults(), desk.folder()));
  }

  private Response calendar() {
    String text =
        CalendarFile.of(
            look(PATIENCE_MS).today(),
            desk.clock().instant(),
            trial -> desk.folder().name(trial.file()));
    return Response.passing("text/calendar; charset=utf-8", text.getBytes(StandardCharsets.UTF_8))
        .with("Content-Disposition", "attachment; filename=\"plates-to-look-after.ics\"");
  }

  private TodayView.Addresses addresses() {
    return new TodayView.Addresses() {
      @Override
      public String page(Standing standing) {
        return NotebookFolder.address("/trial", name(standing));
      }

      @Override
      public String card(Standing standing) {
        return "/plates#" + PlatesPage.place(name(standing), standing.plates().get(0));
      }
    };
  }

  private String name(Standing standing) {
    return desk.folder().name(standing.forecast().trial().file());
  }
}
