package starchfilm.web;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import starchfilm.files.notebook.Notebook;
import starchfilm.report.Comparison;
import starchfilm.report.ComparisonReport;
import starchfilm.report.TrialForecasts;
import starchfilm.web.http.Fields;
import starchfilm.web.http.HttpError;
import starchfilm.web.http.Request;
import starchfilm.web.http.Response;
import starchfilm.web.http.Routes;
import starchfilm.web.work.Work;

/** <em>Compare</em>: choose trials, wait while they are forecast, get the comparison page. */
final class ComparePage {
  private static final String PAGE = "/compare/page";
  private static final String FILE = "/compare/file";
  private static final String TRIAL = "trial";
  private static final int MOST_TRIALS = 200;

  /** Work that ends this soon needs no page of its own (ms). */
  private static final long WORTH_A_PAGE_MS = 800;

  private final PageContext desk;
  private final ComparisonReport report;

  ComparePage(PageContext desk) {
    this.desk = desk;
    this.report = new ComparisonReport(desk.renderer());
  }

  void addTo(Routes.Table table) {
    table
        .read("/compare", this::choose)
        .read(PAGE, request -> shown(request, false))
        .read(FILE, request -> shown(request, true))
        .send("/compare/cancel", this::cancel);
  }

  private Response choose(Request request) {
    List<TrialRow> rows =
        desk.folder().read().trials().stream()
            .map(trial -> TrialRow.of(trial, desk.folder(), desk.now(), request.locale()))
            .toList();
    return desk.page("compare", "compare", Map.of("rows", rows));
  }

  private Response shown(Request request, boolean asFile) {
    Notebook notebook = chosen(request.query());
    Work<Comparison> work = desk.bench().on(notebook, forecasts -> comparison(notebook, forecasts));
    if (!work.endsWithin(WORTH_A_PAGE_MS)) {
      // The header makes the browser ask again, with or without script.
      return desk.page(
              "working",
              "compare",
              Map.of(
                  "done", work.done(), "total", work.total(), "files", request.query().all(TRIAL)))
          .with("Refresh", "1");
    }
    if (work.isCancelled()) {
      return Response.seeOther("/compare");
    }
    Comparison comparison = work.result();
    if (comparison.trials().isEmpty()) {
      throw new HttpError(
          422,
          "None of these trials can be laid side by side. "
              + String.join(" ", comparison.troubles()));
    }
    return asFile
        ? Documents.page(report.html(comparison))
            .with("Content-Disposition", "attachment; filename=\"starchfilm.html\"")
        : Documents.page(report.html(comparison, "/compare"));
  }

  private Comparison comparison(Notebook notebook, TrialForecasts forecasts) {
    Comparison comparison = Comparison.of(notebook, forecasts);
    return comparison.trials().isEmpty()
        ? comparison
        : comparison.with(
            desk.useCases().adviser(), desk.useCases().workshops().all(notebook.trials()));
  }

  private Response cancel(Request request) {
    desk.bench().cancel(chosen(request.posted()));
    return Response.seeOther("/compare");
  }

  private Notebook chosen(Fields fields) {
    List<String> names = fields.all(TRIAL);
    if (names.isEmpty()) {
      throw new HttpError(422, "No trial was chosen. Go back and tick at least one.");
    }
    if (names.size() > MOST_TRIALS) {
      throw new HttpError(422, "At most " + MOST_TRIALS + " trials fit on one page; choose fewer.");
    }
    List<Path> files = names.stream().distinct().map(desk.folder()::trialFile).toList();
    Notebook notebook = desk.folder().read(files);
    if (notebook.trials().isEmpty()) {
      throw new HttpError(
          422,
          "None of these files can be read. "
              + notebook.faults().stream()
                  .map(fault -> fault.sentence() + ".")
                  .collect(Collectors.joining(" ")));
    }
    return notebook;
  }
}
