package starchfilm.web;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import starchfilm.casting.trial.Trial;
import starchfilm.change.TrialAnalysis;
import starchfilm.files.notebook.FileWord;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.Sketch;
import starchfilm.files.saving.TrialFileText;
import starchfilm.numerics.diffusion.IntegrationFailure;
import starchfilm.planning.PotShare;
import starchfilm.report.TrialSheet;
import starchfilm.report.plan.SharedPotfuls;
import starchfilm.report.words.Figures;
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
  private static final String PLATES = "plates";
  private static final String POT = "pot";

  /** Ends of the sliders; what people cast at home (common practice, no source). */
  private static final double THINNEST_MM = 0.5;

  private static final double THICKEST_MM = 12;
  private static final double LEAST_PLASTICISER = 5;
  private static final double MOST_PLASTICISER = 70;
  private static final int MOST_PLATES = 50;
  private static final double SMALLEST_POT_L = 0.2;
  private static final double LARGEST_POT_L = 50;
  private static final double USUAL_POT_L = 2;
  private static final double M3_PER_LITRE = 1e-3;

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

  /** What the sliders and fields say. */
  private record Moved(double wetMm, double plasticiser, int plates, double potL, String origin) {
    Sketch sketch() {
      return new Sketch(wetMm, plasticiser);
    }
  }

  /**
   * A moved recipe in potfuls.
   *
   * @param shares how its plates are shared out over potfuls
   * @param texts for each share the text of a trial file
   * @param trials for each share the trial
   */
  private record Cooked(List<PotShare> shares, List<String> texts, List<Trial> trials) {}

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
    Moved moved = moved(base, fields);
    Map<String, Object> values = new HashMap<>();
    values.put(BASE, base.key());
    values.put(WET, moved.wetMm());
    values.put(PLASTICISER, moved.plasticiser());
    values.put(PLATES, moved.plates());
    values.put(POT, moved.potL());
    values.put("canMovePlasticiser", Sketch.canMovePlasticiser(base.trial()));
    values.put("origins", OriginChoice.WORDS);
    values.put(OriginChoice.FIELD, moved.origin());
    values.put("cases", desk.useCases().sketchCases());
    try {
      Cooked cooked = cooked(base, moved, base.trial().name());
      TrialAnalysis analysis = desk.useCases().sketch().apply(cooked.trials().get(0));
      values.putAll(TrialSheet.whole(analysis));
      values.put("pour", TrialSheet.pour(analysis.forecast(), moved.plates()));
      values.put(
          "pots", SharedPotfuls.of(moved.potL() * M3_PER_LITRE, cooked.shares(), cooked.trials()));
      values.put("kept", cooked.shares().get(0).plates());
      values.put("failure", "");
    } catch (NotWrittenException e) {
      values.put("failure", String.join(" ", NoteDesk.sentences(e)));
    } catch (IllegalArgumentException | IntegrationFailure e) {
      values.put("failure", String.valueOf(e.getMessage()));
    }
    return values;
  }

  /** The sliders of a form; those of another recipe say nothing about this one. */
  private static Moved moved(Base base, Fields fields) {
    Sketch now = Sketch.of(base.trial());
    boolean moved = fields.text("was").equals(base.key());
    return new Moved(
        moved ? number(fields, WET, THINNEST_MM, THICKEST_MM) : now.wetThicknessMm(),
        moved && Sketch.canMovePlasticiser(base.trial())
            ? number(fields, PLASTICISER, LEAST_PLASTICISER, MOST_PLASTICISER)
            : now.plasticiserPer100(),
        moved && fields.has(PLATES)
            ? (int) number(fields, PLATES, 1, MOST_PLATES)
            : base.trial().casting().pour().plates(),
        fields.has(POT) ? number(fields, POT, SMALLEST_POT_L, LARGEST_POT_L) : USUAL_POT_L,
        moved && fields.has(OriginChoice.FIELD)
            ? fields.text(OriginChoice.FIELD)
            : FileWord.of(base.trial().recipe().glycerol().stock().origin()));
  }

  private Cooked cooked(Base base, Moved moved, String name) throws NotWrittenException {
    double inPotKg =
        trial(applied(base, moved, name, moved.plates())).recipe().massKg() / moved.plates();
    List<PotShare> shares = PotShare.of(inPotKg, moved.potL() * M3_PER_LITRE, moved.plates());
    List<String> texts = new ArrayList<>();
    List<Trial> trials = new ArrayList<>();
    for (PotShare share : shares) {
      String text = applied(base, moved, name, share.plates());
      texts.add(text);
      trials.add(trial(text));
    }
    return new Cooked(shares, texts, trials);
  }

  private static String applied(Base base, Moved moved, String name, int plates)
      throws NotWrittenException {
    String text =
        moved.sketch().applied(base.trial(), base.text(), name, plates, PotShare.LEFT_IN_POT);
    return Sketch.canMovePlasticiser(base.trial())
        ? OriginChoice.applied(moved.origin(), text)
        : text;
  }

  private Trial trial(String text) throws NotWrittenException {
    return Sketch.read(desk.folder().root(), text);
  }

  private Response keep(Request request) {
    Fields posted = request.posted();
    Base base = base(posted.text(BASE));
    String name = posted.text("name");
    if (name.isEmpty()) {
      return page(422, posted, List.of("The new trial needs a name; write what you call it."));
    }
    desk.folder().requireThere();
    try {
      String text = cooked(base, moved(base, posted), name).texts().get(0);
      Path file = TrialFileText.create(desk.folder().root(), name, text);
      return Response.seeOther(
          desk.said()
              .on(
                  NotebookFolder.address("/trial", desk.folder().name(file)),
                  List.of("Saved as a new trial. Note its pour as soon as it is poured.")));
    } catch (NotWrittenException e) {
      return page(422, posted, NoteDesk.sentences(e));
    }
  }

  private static double number(Fields fields, String name, double least, double most) {
    String typed = fields.text(name).replace(',', '.');
    String form = name.equals(PLATES) ? "[0-9]{1,4}" : "[0-9]{1,4}(\\.[0-9]{1,4})?";
    if (typed.matches(form)) {
      double value = Double.parseDouble(typed);
      if (value >= least && value <= most) {
        return value;
      }
    }
    String label =
        switch (name) {
          case WET -> "Wet thickness";
          case PLASTICISER -> "Glycerol";
          case PLATES -> "Plates";
          default -> "The pot holds";
        };
    String unit =
        switch (name) {
          case WET -> " mm; move the slider there.";
          case PLASTICISER -> " g per 100 g dry starch; move the slider there.";
          case PLATES -> "; write a whole number.";
          default -> " l; write how much it holds when brim-full.";
        };
    throw new HttpError(
        422,
        label
            + ": \""
            + (typed.length() > 20 ? typed.substring(0, 20) + "..." : typed)
            + "\" given, allowed "
            + Figures.noted(least)
            + " to "
            + Figures.noted(most)
            + unit);
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
      return new Base(chosen, trial(text), text);
    } catch (NotWrittenException e) {
      throw new HttpError(422, String.join(" ", NoteDesk.sentences(e)));
    }
  }
}
