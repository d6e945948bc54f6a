package starchfilm.web;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.net.URLEncoder;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import starchfilm.advice.Adviser;
import starchfilm.casting.trial.Trial;
import starchfilm.files.notebook.Notebook;
import starchfilm.report.Around;
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
record ComparePage(PageContext desk) {
  private static final String PAGE = "/compare/page";
  private static final String CHOICE = "/compare/choice";
  private static final String FILE = "/compare/file";
  private static final String TRIAL = "trial";
  private static final String BASE = "base";
  private static final String TICK = "tick";

  /** How many trials are ticked at first: as many as stand side by side. */
  private static final int TICKED = 5;

  private static final int MOST_TRIALS = 200;

  private ComparisonReport report() {
    return new ComparisonReport(desk.renderer());
  }

  void addTo(Routes table) {
    table
        .read("/compare", this::first)
        .read(CHOICE, this::choose)
        .read(PAGE, request -> shown(request, false))
        .read(FILE, request -> shown(request, true))
        .send("/compare/cancel", this::cancel);
  }

  /** The last trials side by side at once: the choice of others is a link on that page. */
  private Response first(Request request) {
    List<Trial> trials = desk.folder().read().trials();
    return trials.size() < 2
        ? choose(request)
        : Response.seeOther(address(PAGE, latest(trials, TICKED).toList(), ""));
  }

  private Response choose(Request request) {
    List<Trial> trials = desk.folder().read().trials();
    return choice(200, ticked(request.query(), trials), "");
  }

  /** The choice, with why it could not be shown; empty where nothing was asked yet. */
  private Response choice(int status, Set<String> ticked, String why) {
    Notebook notebook = desk.folder().read();
    return desk.page(
        status,
        "compare",
        "compare",
        Map.of(
            "rows",
            desk.rows(notebook.trials()),
            "ticked",
            ticked,
            "why",
            why,
            "troubles",
            FileTrouble.of(notebook.faults(), desk.folder())));
  }

  /** The trials ticked: those compared before, all, none, or the last ones poured. */
  private Set<String> ticked(Fields query, List<Trial> trials) {
    Set<String> before = Set.copyOf(query.all(TRIAL));
    if (!before.isEmpty()) {
      return before;
    }
    long most =
        switch (query.text(TICK)) {
          case "all" -> trials.size();
          case "none" -> 0;
          default -> TICKED;
        };
    return latest(trials, most).collect(Collectors.toSet());
  }

  /** The files of the trials that were poured last, in the order of the folder. */
  private Stream<String> latest(List<Trial> trials, long most) {
    Comparator<Trial> latest =
        Comparator.comparing(
            (Trial trial) -> trial.pouredAt().orElse(LocalDateTime.MIN), Comparator.reverseOrder());
    List<Trial> kept = trials.stream().sorted(latest).limit(most).toList();
    return trials.stream().filter(kept::contains).map(trial -> desk.folder().name(trial.file()));
  }

  private Response shown(Request request, boolean asFile) {
    List<String> names = request.query().all(TRIAL);
    String why = refusal(names.size());
    if (!why.isEmpty()) {
      return choice(422, Set.copyOf(names), why);
    }
    Notebook notebook = chosen(request.query());
    Work<Comparison> work = desk.bench().on(notebook, forecasts -> comparison(notebook, forecasts));
    if (!work.endsWithin(PageContext.AT_ONCE_MS)) {
      // The header makes the browser ask again, with or without script.
      return desk.page(
              "working",
              "compare",
              Map.of(
                  "done", work.done(), "total", work.total(), "files", request.query().all(TRIAL)))
          .with("Refresh", "1");
    }
    if (work.isCancelled()) {
      return Response.seeOther(CHOICE);
    }
    Comparison comparison = work.result();
    if (comparison.trials().isEmpty()) {
      throw new HttpError(
          422, "None of these trials can be compared. " + String.join(" ", comparison.troubles()));
    }
    List<String> files =
        comparison.trials().stream().map(one -> desk.folder().name(one.trial().file())).toList();
    int base = Math.max(0, files.indexOf(request.query().text(BASE)));
    if (asFile) {
      return Documents.page(report().html(comparison, base)).asFile("starchfilm.html");
    }
    Around around =
        new Around(
            files.stream().map(file -> NotebookFolder.address("/trial", file)).toList(),
            files.stream().map(file -> address(PAGE, files, file)).toList(),
            base);
    Map<String, Object> values = new HashMap<>(report().content(comparison, around));
    values.put("choose", address(CHOICE, files, ""));
    values.put("file", address(FILE, files, files.get(base)));
    return desk.page("compared", "compare", values);
  }

  private static String address(String page, List<String> files, String base) {
    String trials =
        files.stream()
            .map(file -> TRIAL + "=" + URLEncoder.encode(file, UTF_8))
            .collect(Collectors.joining("&"));
    return page
        + "?"
        + trials
        + (base.isEmpty() ? "" : "&" + BASE + "=" + URLEncoder.encode(base, UTF_8));
  }

  private Comparison comparison(Notebook notebook, TrialForecasts forecasts) {
    Comparison comparison = Comparison.of(notebook, forecasts);
    return comparison.trials().isEmpty()
        ? comparison
        : comparison.with(new Adviser(desk.workshops()), desk.workshops().all(notebook.trials()));
  }

  private Response cancel(Request request) {
    desk.bench().cancel(chosen(request.posted()));
    return Response.seeOther(CHOICE);
  }

  /** Why so many trials cannot be compared; empty where they can. */
  private static String refusal(int trials) {
    if (trials == 0) {
      return "No trial is ticked. Tick at least one.";
    }
    return trials > MOST_TRIALS
        ? "%d trials are ticked, and at most %d fit on one page. Tick fewer."
            .formatted(trials, MOST_TRIALS)
        : "";
  }

  private Notebook chosen(Fields fields) {
    List<String> names = fields.all(TRIAL);
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
