package starchfilm.web;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import starchfilm.casting.trial.Stage;
import starchfilm.files.findings.Notice;
import starchfilm.files.notebook.Notebook;
import starchfilm.web.http.Request;
import starchfilm.web.http.Response;
import starchfilm.web.http.Routes;

/** <em>Trials</em>: every trial of the folder, and what is wrong with the files of others. */
final class TrialsPage {
  private final PageContext desk;

  TrialsPage(PageContext desk) {
    this.desk = desk;
  }

  void addTo(Routes.Table table) {
    table.read("/", this::first).read("/trials", this::list).read("/notebook", this::list);
  }

  /** Whoever has a plate drying wants to see it first. */
  private Response first(Request request) {
    LocalDateTime now = desk.now();
    boolean drying =
        desk.folder().read().trials().stream().anyMatch(t -> Stage.of(t, now) == Stage.DRYING);
    return Response.seeOther(drying ? "/plates" : "/trials");
  }

  private Response list(Request request) {
    Notebook notebook = desk.folder().read();
    List<TrialRow> rows =
        notebook.trials().stream()
            .map(trial -> TrialRow.of(trial, desk.folder(), desk.now(), request.locale()))
            .toList();
    return desk.page(
        "trials",
        "trials",
        Map.of(
            "rows",
            rows,
            "starters",
            TextPage.starters(),
            "origins",
            OriginChoice.WORDS,
            "troubles",
            FileTrouble.of(notebook.faults(), desk.folder()),
            "remarks",
            notebook.notices().stream().map(Notice::sentence).toList()));
  }
}
