package starchfilm.web;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import starchfilm.casting.trial.Trial;
import starchfilm.files.notebook.Notebook;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.learning.Workshop;
import starchfilm.learning.summary.DoubtedReading;
import starchfilm.report.learnt.LearntPicture;
import starchfilm.report.learnt.LearntSheet;
import starchfilm.report.learnt.LearntSoFar;
import starchfilm.web.http.HttpError;
import starchfilm.web.http.Request;
import starchfilm.web.http.Response;
import starchfilm.web.http.Routes;
import starchfilm.web.work.Work;

/** What your trials have taught, and the button that lets it teach again. */
record LearnPage(PageContext desk) {
  private static final String PAGE = "/learnt";
  private static final String WORKING = "/learnt/working";

  void addTo(Routes table) {
    table
        .read(PAGE, this::shown)
        .read(WORKING, request -> underWay())
        .send("/learn", this::learn)
        .send("/learn/cancel", this::cancel);
  }

  private Response shown(Request request) {
    desk.folder().requireThere();
    Workshop workshop = desk.workshops().in(desk.folder().root());
    Map<String, Object> values = new HashMap<>();
    values.put("said", desk.said().in(request.query()));
    values.put("taught", workshop.isTaught());
    if (workshop.isTaught()) {
      values.put("picture", LearntPicture.of(workshop.learnt()));
      List<Trial> trials = desk.folder().read().trials();
      values.put(
          "doubted",
          workshop.learnt().doubted().stream().map(one -> doubted(one, workshop, trials)).toList());
      values.put("blocks", new LearntSheet(workshop.learnt()).blocks());
    }
    return desk.page("learnt", "trials", values);
  }

  /**
   * A reading that hardly counts.
   *
   * @param sentence what is odd about it
   * @param address the page where it is put right; empty where it lies elsewhere
   */
  record Doubted(String sentence, String address) {}

  private static Doubted doubted(DoubtedReading reading, Workshop workshop, List<Trial> trials) {
    return new Doubted(
        LearntSoFar.doubt(reading, workshop, trials) + ".",
        workshop
            .trialOf(reading, trials)
            .map(trial -> TrialPage.atReading(reading.file(), reading.reading()))
            .orElse(""));
  }

  private Response learn(Request request) {
    Notebook notebook = desk.folder().read();
    desk.bench()
        .learn(
            notebook.trials().size(),
            requireWanted -> learnt(desk.folder().root(), notebook, requireWanted));
    return underWay();
  }

  private String learnt(Path root, Notebook notebook, Runnable requireWanted) {
    Workshop workshop = desk.workshops().learn(root, notebook.trials(), requireWanted);
    if (!workshop.isTaught()) {
      throw new HttpError(
          422,
          "There is nothing to learn from yet: no trial has usable weighings or"
              + " pulled strips. Two or three weighings in the first days help most.");
    }
    requireWanted.run();
    List<String> said = new ArrayList<>();
    said.add("Learnt; every forecast from now on uses it.");
    workshop.replaces().ifPresent(said::add);
    try {
      workshop.write();
    } catch (NotWrittenException e) {
      throw new HttpError(500, Workshop.FILE_NAME + ": " + String.join(" ", NoteDesk.sentences(e)));
    }
    said.addAll(desk.workshops().nearer(root, notebook.trials()));
    return desk.said().on(PAGE, said);
  }

  /** How far the learning is, or what came of it. */
  private Response underWay() {
    Optional<Work<String>> learning = desk.bench().learning();
    if (learning.isEmpty()) {
      return Response.seeOther(PAGE);
    }
    Work<String> work = learning.get();
    if (!work.endsWithin(PageContext.AT_ONCE_MS)) {
      // The header makes the browser ask again, with or without script.
      return desk.page("learning", "trials", Map.of("trials", work.total()))
          .with("Refresh", "1; url=" + WORKING);
    }
    return Response.seeOther(work.isCancelled() ? PAGE : work.result());
  }

  private Response cancel(Request request) {
    desk.bench().stopLearning();
    return desk.to(PAGE, "Stopped; nothing was learnt.");
  }
}
