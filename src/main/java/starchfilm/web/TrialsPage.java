package starchfilm.web;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import starchfilm.files.findings.Notice;
import starchfilm.files.notebook.Notebook;
import starchfilm.files.saving.ExampleFolder;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.request.NewTrial;
import starchfilm.request.RefusedRequestException;
import starchfilm.web.http.Fields;
import starchfilm.web.http.Request;
import starchfilm.web.http.Response;
import starchfilm.web.http.Routes;

/** <em>Trials</em>: every trial of the folder, and what is wrong with the files of others. */
record TrialsPage(PageContext desk) {

  void addTo(Routes.Table table) {
    table
        .read("/", this::first)
        .read("/trials", request -> list(200, request, Fields.NONE, List.of()))
        .read("/notebook", request -> list(200, request, Fields.NONE, List.of()))
        .send("/trial/cooked", this::cooked)
        .send("/trials/example", this::showExample)
        .send("/trials/example/away", this::takeExampleAway);
  }

  /** Whoever has trials wants to know what needs doing. */
  private Response first(Request request) {
    return Response.seeOther(desk.folder().read().trials().isEmpty() ? "/trials" : "/today");
  }

  /** A trial begun by typing what was cooked; a line that cannot be meant stays on the page. */
  private Response cooked(Request request) {
    Fields form = request.posted();
    try {
      NewTrial made =
          NewTrial.read(
              Optional.of(form.text("cooked")),
              new FormEntries(form),
              Optional.empty(),
              desk.folder().root(),
              desk.clock());
      List<String> said = new ArrayList<>(List.of("Saved as a new trial."));
      said.addAll(made.assumptions());
      return desk.toTrial(
          desk.folder().create(made.name(), made.text()), said.toArray(String[]::new));
    } catch (RefusedRequestException e) {
      return list(422, request, form, FormEntries.why(e));
    } catch (NotWrittenException e) {
      return list(422, request, form, NoteDesk.sentences(e));
    }
  }

  private Response showExample(Request request) {
    desk.folder().requireThere();
    try {
      ExampleFolder.copyInto(desk.folder().root());
      return said(
          "Six trials were copied into the folder \""
              + ExampleFolder.NAME
              + "\". They are invented: nobody poured them. Open one, or compare them.");
    } catch (NotWrittenException e) {
      return list(422, request, Fields.NONE, NoteDesk.sentences(e));
    }
  }

  private Response takeExampleAway(Request request) {
    desk.folder().requireThere();
    try {
      long left = ExampleFolder.takeOutOf(desk.folder().root());
      return said(
          left == 0
              ? "The example was taken away."
              : "The example was taken away; what was changed or added stays in the folder \""
                  + ExampleFolder.NAME
                  + "\".");
    } catch (NotWrittenException e) {
      return list(422, request, Fields.NONE, NoteDesk.sentences(e));
    }
  }

  private Response said(String sentence) {
    return Response.seeOther(desk.said().on("/trials", List.of(sentence)));
  }

  private Response list(int status, Request request, Fields form, List<String> why) {
    Notebook notebook = desk.folder().read();
    List<TrialRow> rows =
        notebook.trials().stream()
            .map(trial -> TrialRow.of(trial, desk.folder(), desk.now()))
            .toList();
    List<TrialRow> putAway =
        notebook.putAway().stream()
            .map(trial -> TrialRow.of(trial, desk.folder(), desk.now()))
            .toList();
    TrialFilter filter = new TrialFilter(request.query());
    Map<String, Object> values = new HashMap<>();
    values.put("putAway", putAway);
    values.put("said", desk.said().in(request.query()));
    values.put("example", ExampleFolder.isIn(desk.folder().root()));
    values.put("form", form);
    values.put("why", why);
    values.put("query", request.query());
    values.put("all", rows.size());
    values.put("rows", filter.of(rows));
    values.put("selects", filter.selects(rows));
    values.put("orders", TrialFilter.ORDERS);
    values.put("starters", TextPage.starters());
    values.put("origins", OriginChoice.WORDS);
    values.put("troubles", FileTrouble.of(notebook.faults(), desk.folder()));
    values.put("remarks", notebook.notices().stream().map(Notice::sentence).toList());
    return Response.page(status, desk.html("trials", "trials", values));
  }
}
