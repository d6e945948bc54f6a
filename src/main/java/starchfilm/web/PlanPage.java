package starchfilm.web;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.Sketch;
import starchfilm.files.saving.TrialFileText;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.diffusion.IntegrationFailure;
import starchfilm.report.TrialSheet;
import starchfilm.trial.Trial;
import starchfilm.web.http.Fields;
import starchfilm.web.http.HttpError;
import starchfilm.web.http.Request;
import starchfilm.web.http.Response;
import starchfilm.web.http.Routes;

/** <em>The plan</em>: take a recipe, move thickness and plasticiser, see film and drying change. */
final class PlanPage {
  private static final String STARTER_MARK = "starter ";
  private static final String BASE = "base";
  private static final String WET = "wet";
  private static final String PLASTICISER = "plasticiser";

  /** Ends of the sliders; what people cast at home (common practice, no source). */
  private static final double THINNEST_MM = 0.5;

  private static final double THICKEST_MM = 12;
  private static final double LEAST_PLASTICISER = 5;
  private static final double MOST_PLASTICISER = 70;

  private final PageContext desk;

  PlanPage(PageContext desk) {
    this.desk = desk;
  }

  /**
   * Something to start from.
   *
   * @param key its value in the form
   * @param name its name
   */
  record Start(String key, String name) {}

  private record Base(String key, Trial trial, String text) {}

  void addTo(Routes.Table table) {
    table
        .read("/plan", this::plan)
        .read("/plan/sketch", this::sketch)
        .send("/plan/keep", this::keep);
  }

  private Response plan(Request request) {
    return page(200, request.query(), List.of());
  }

  private Response page(int status, Fields fields, List<String> why) {
    Base base = base(fields.text(BASE));
    Map<String, Object> values = values(base, fields);
    values.put("starts", starts());
    values.put("why", why);
    values.put("name", fields.text("name"));
    return Response.page(status, desk.html("plan", "plan", values));
  }

  private Response sketch(Request request) {
    if (!request.partial()) {
      return plan(request);
    }
    return desk.part("plan", "sketch", values(base(request.query().text(BASE)), request.query()));
  }

  private Map<String, Object> values(Base base, Fields fields) {
    Sketch now = Sketch.of(base.trial());
    // Sliders of another recipe say nothing about this one.
    boolean moved = fields.text("was").equals(base.key());
    double wet = moved ? slider(fields, WET, THINNEST_MM, THICKEST_MM) : now.wetThicknessMm();
    double plasticiser =
        moved && Sketch.canMovePlasticiser(base.trial())
            ? slider(fields, PLASTICISER, LEAST_PLASTICISER, MOST_PLASTICISER)
            : now.plasticiserPer100();
    Map<String, Object> values = new HashMap<>();
    values.put(BASE, base.key());
    values.put(WET, wet);
    values.put(PLASTICISER, plasticiser);
    values.put("canMovePlasticiser", Sketch.canMovePlasticiser(base.trial()));
    values.put("cases", desk.useCases().sketchCases());
    try {
      String text =
          new Sketch(wet, plasticiser).applied(base.trial(), base.text(), base.trial().name());
      TrialForecast forecast =
          desk.useCases().sketch().apply(Sketch.read(desk.folder().root(), text));
      values.putAll(TrialSheet.whole(forecast));
      values.put("failure", "");
    } catch (NotWrittenException e) {
      values.put("failure", String.join(" ", NoteDesk.sentences(e)));
    } catch (IllegalArgumentException | IntegrationFailure e) {
      values.put("failure", String.valueOf(e.getMessage()));
    }
    return values;
  }

  private Response keep(Request request) {
    Fields posted = request.posted();
    Base base = base(posted.text(BASE));
    String name = posted.text("name");
    if (name.isEmpty()) {
      return page(422, posted, List.of("The new trial needs a name; write what you call it."));
    }
    double wet = slider(posted, WET, THINNEST_MM, THICKEST_MM);
    double plasticiser =
        Sketch.canMovePlasticiser(base.trial())
            ? slider(posted, PLASTICISER, LEAST_PLASTICISER, MOST_PLASTICISER)
            : Sketch.of(base.trial()).plasticiserPer100();
    desk.folder().requireThere();
    try {
      String text = new Sketch(wet, plasticiser).applied(base.trial(), base.text(), name);
      Path file = TrialFileText.create(desk.folder().root(), name, text);
      return Response.seeOther(
          desk.said()
              .on(
                  NotebookFolder.address("/trial", desk.folder().name(file)),
                  List.of("The trial is in the notebook. Note its pour as soon as it is poured.")));
    } catch (NotWrittenException e) {
      return page(422, posted, NoteDesk.sentences(e));
    }
  }

  private static double slider(Fields fields, String name, double least, double most) {
    String typed = fields.text(name).replace(',', '.');
    if (typed.matches("[0-9]{1,4}(\\.[0-9]{1,4})?")) {
      double value = Double.parseDouble(typed);
      if (value >= least && value <= most) {
        return value;
      }
    }
    throw new HttpError(
        422,
        (name.equals(WET) ? "Wet thickness: \"" : "Plasticiser: \"")
            + (typed.length() > 20 ? typed.substring(0, 20) + "..." : typed)
            + "\" given, allowed "
            + least
            + " to "
            + most
            + (name.equals(WET) ? " mm" : " g per 100 g dry starch")
            + "; move the slider there.");
  }

  private List<Start> starts() {
    List<Start> starts = new ArrayList<>();
    TextPage.starters().forEach((key, name) -> starts.add(new Start(STARTER_MARK + key, name)));
    desk.folder()
        .read()
        .trials()
        .forEach(trial -> starts.add(new Start(desk.folder().name(trial.file()), trial.name())));
    return starts;
  }

  private Base base(String key) {
    String chosen = key.isEmpty() ? STARTER_MARK + "first-film" : key;
    try {
      String text =
          chosen.startsWith(STARTER_MARK)
              ? TextPage.starterText(chosen.substring(STARTER_MARK.length()))
              : TrialFileText.of(desk.folder().trialFile(chosen)).text();
      return new Base(chosen, Sketch.read(desk.folder().root(), text), text);
    } catch (NotWrittenException e) {
      throw new HttpError(422, String.join(" ", NoteDesk.sentences(e)));
    }
  }
}
