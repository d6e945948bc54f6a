package starchfilm.web;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import starchfilm.casting.trial.Stage;
import starchfilm.casting.trial.Trial;
import starchfilm.forecast.TrialForecast;
import starchfilm.report.TrialForecasts;
import starchfilm.report.plan.PlateLabel;
import starchfilm.web.http.HttpError;
import starchfilm.web.http.Request;
import starchfilm.web.http.Response;
import starchfilm.web.http.Routes;

/** What is printed: a trial's weigh-out sheet, and labels to stick on plates. */
record PrintPage(PageContext desk) {
  void addTo(Routes table) {
    table
        .read("/trial/sheet", request -> Documents.page(desk.printed().html(one(request))))
        .read("/trial/labels", request -> labels(one(request)))
        .read("/plates/labels", request -> labels(onTheShelf()));
  }

  private Response labels(List<TrialForecast> trials) {
    return Documents.page(desk.printed().labels(trials.stream().flatMap(PlateLabel::of).toList()));
  }

  private List<TrialForecast> one(Request request) {
    return forecast(desk.folder().trial(desk.file(request.query())).stream().toList());
  }

  /** Plates that dry, and those still to be poured. */
  private List<TrialForecast> onTheShelf() {
    Set<Stage> onIt = EnumSet.of(Stage.DRYING, Stage.PLANNED);
    return forecast(
        desk.folder().read().trials().stream()
            .filter(trial -> onIt.contains(Stage.of(trial, desk.now())))
            .toList());
  }

  private List<TrialForecast> forecast(List<Trial> trials) {
    Map<Trial, TrialForecasts> made = desk.bench().glances(trials, PageContext.PATIENCE_MS);
    if (!made.keySet().containsAll(trials)) {
      throw new HttpError(503, "The forecasts are taking a while; load this page again.");
    }
    List<TrialForecast> done =
        made.values().stream().flatMap(one -> one.forecasts().stream()).toList();
    if (done.isEmpty()) {
      throw new HttpError(422, "There is nothing to print: no trial here has a forecast.");
    }
    return done;
  }
}
