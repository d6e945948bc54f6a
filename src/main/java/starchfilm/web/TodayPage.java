package starchfilm.web;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import starchfilm.casting.trial.Trial;
import starchfilm.files.notebook.Notebook;
import starchfilm.forecast.TrialForecast;
import starchfilm.report.TrialForecasts;
import starchfilm.report.today.TodayView;
import starchfilm.today.Standing;
import starchfilm.today.Today;
import starchfilm.web.http.Request;
import starchfilm.web.http.Routes;
import starchfilm.web.work.Work;

/** <em>Today</em>: which plates need somebody now, and why; the first page that opens. */
final class TodayPage {
  private static final String PAGE = "/today";
  private static final long AT_ONCE_MS = 600;
  private static final long PATIENCE_MS = 60_000;

  private final PageContext desk;

  TodayPage(PageContext desk) {
    this.desk = desk;
  }

  void addTo(Routes.Table table) {
    table
        .read(PAGE, request -> desk.page("today", "today", values(request, AT_ONCE_MS)))
        .read(PAGE + "/all", request -> desk.page("today", "today", values(request, PATIENCE_MS)))
        .read(PAGE + "/now", request -> desk.part("today", "now", values(request, PATIENCE_MS)));
  }

  private Map<String, Object> values(Request request, long patienceMs) {
    Notebook notebook = desk.folder().read();
    List<String> failures = new ArrayList<>();
    List<Trial> late = new ArrayList<>();
    List<Today.Alike> drying = Today.alike(notebook.trials(), desk.now());
    drying.forEach(plates -> desk.bench().on(plates.as()));
    long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(patienceMs);
    Map<Trial, TrialForecast> made = new HashMap<>();
    for (Today.Alike plates : drying) {
      Work<TrialForecasts> work = desk.bench().on(plates.as());
      long leftMs = Math.max(0, TimeUnit.NANOSECONDS.toMillis(end - System.nanoTime()));
      if (!work.endsWithin(leftMs) || work.isCancelled()) {
        late.add(plates.as());
      } else if (work.result().forecasts().isEmpty()) {
        failures.addAll(work.result().failures());
      } else {
        made.put(plates.as(), work.result().forecasts().get(0));
      }
    }
    boolean pending = !late.isEmpty();
    Today today =
        Today.of(notebook.trials(), desk.now(), trial -> Optional.ofNullable(made.get(trial)));
    return Map.of(
        "said",
        desk.said().in(request.query()),
        "pending",
        pending,
        "view",
        TodayView.of(today, addresses()),
        "failures",
        failures,
        "troubles",
        FileTrouble.of(notebook.faults(), desk.folder()));
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
