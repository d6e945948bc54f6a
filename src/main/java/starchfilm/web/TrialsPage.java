package starchfilm.web;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import starchfilm.casting.trial.Stage;
import starchfilm.files.amount.MomentParser;
import starchfilm.files.findings.Findings;
import starchfilm.files.findings.FirstFaults;
import starchfilm.files.findings.Notice;
import starchfilm.files.notebook.Notebook;
import starchfilm.files.saving.ExampleFolder;
import starchfilm.files.saving.NewTrialFile;
import starchfilm.material.recipe.GlycerolOrigin;
import starchfilm.numerics.units.Named;
import starchfilm.numerics.units.Plural;
import starchfilm.request.NewTrial;
import starchfilm.request.TrialTable;
import starchfilm.web.http.Fields;
import starchfilm.web.http.Request;
import starchfilm.web.http.Response;
import starchfilm.web.http.Routes;

/** <em>Trials</em>: every trial of the folder, and what is wrong with the files of others. */
record TrialsPage(PageContext desk) {
  private static final String PAGE = "/trials";

  void addTo(Routes table) {
    table
        .read("/", this::first)
        .read(PAGE, request -> list(200, request, Fields.NONE, List.of()))
        .read("/notebook", request -> list(200, request, Fields.NONE, List.of()))
        .send("/trial/cooked", this::cooked)
        .send("/trials/table", this::table)
        .send("/trials/example", this::showExample)
        .send("/trials/example/away", this::takeExampleAway);
  }

  /** Whoever has trials wants to know what needs doing. */
  private Response first(Request request) {
    return Response.seeOther(desk.folder().read().trials().isEmpty() ? PAGE : "/today");
  }

  /** A trial begun by typing what was cooked; a line that cannot be meant stays on the page. */
  private Response cooked(Request request) {
    Fields form = request.posted();
    return desk.orAgain(
        () -> {
          NewTrial made =
              NewTrial.read(
                  new FormEntries(form), Optional.empty(), desk.folder().root(), desk.clock());
          List<String> said = new ArrayList<>(List.of("Saved as a new trial."));
          said.addAll(made.assumptions());
          return desk.toTrial(
              desk.folder().create(made.name(), made.text()), said.toArray(String[]::new));
        },
        why -> list(422, request, form, why));
  }

  /** The trials of a table, all rows or none, so that it may be fixed and sent again. */
  private Response table(Request request) {
    Fields form = request.posted();
    String pasted = form.text("table");
    boolean sent = !request.files().isEmpty();
    if (sent != pasted.isEmpty()) {
      String why =
          sent
              ? "Two tables were given; nothing was saved. Empty the field, or choose no file."
              : "No table was given: paste one or choose a file.";
      return list(422, request, form, List.of(why));
    }
    byte[] content =
        sent ? request.files().get(0).bytes() : pasted.getBytes(StandardCharsets.UTF_8);
    Findings findings = new Findings("the table");
    List<NewTrialFile> rows =
        TrialTable.read(content, desk.folder().root(), findings, new MomentParser(desk.clock()));
    if (!findings.faults().isEmpty()) {
      return list(422, request, form, FirstFaults.sentences(findings.faults()));
    }
    return desk.orAgain(
        () -> {
          desk.folder().requireThere();
          List<Path> files = NewTrialFile.write(rows, Optional.empty(), desk.folder().root());
          long drying =
              desk.folder().read(files).trials().stream()
                  .filter(trial -> Stage.of(trial, desk.now()) == Stage.DRYING)
                  .count();
          List<String> said = new ArrayList<>(List.of(Plural.of(rows.size(), "trial") + " saved."));
          if (drying > 0) {
            said.add(
                "Still drying, as far as is noted: %s. A plate is listed until it is rated or noted as off the plate."
                    .formatted(drying));
          }
          findings.notices().stream().map(Notice::sentence).forEach(said::add);
          return desk.to(PAGE, said.toArray(String[]::new));
        },
        why -> list(422, request, form, why));
  }

  private Response showExample(Request request) {
    desk.folder().requireThere();
    return desk.orAgain(
        () -> {
          ExampleFolder.copyInto(desk.folder().root());
          return desk.to(
              PAGE,
              "Six trials were copied into the folder \""
                  + ExampleFolder.NAME
                  + "\". They are invented: nobody poured them. Open one, or compare them.");
        },
        why -> list(422, request, Fields.NONE, why));
  }

  private Response takeExampleAway(Request request) {
    desk.folder().requireThere();
    return desk.orAgain(
        () ->
            desk.to(
                PAGE,
                ExampleFolder.takeOutOf(desk.folder().root()) == 0
                    ? "The example was taken away."
                    : "The example was taken away; what was changed or added stays in the folder \""
                        + ExampleFolder.NAME
                        + "\"."),
        why -> list(422, request, Fields.NONE, why));
  }

  private Response list(int status, Request request, Fields form, List<String> why) {
    Notebook notebook = desk.folder().read();
    List<TrialRow> rows = desk.rows(notebook.trials());
    TrialFilter filter = new TrialFilter(request.query());
    Map<String, Object> values = new HashMap<>();
    values.put("putAway", desk.rows(notebook.putAway()));
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
    values.put("origins", Named.all(GlycerolOrigin.values()));
    values.put("troubles", FileTrouble.of(notebook.faults(), desk.folder()));
    values.put("remarks", notebook.notices().stream().map(Notice::sentence).toList());
    return desk.page(status, "trials", "trials", values);
  }
}
