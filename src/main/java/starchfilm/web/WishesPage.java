package starchfilm.web;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import starchfilm.casting.PlateMaterial;
import starchfilm.files.saving.FieldEdit;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.learning.Workshop;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.planning.Plan;
import starchfilm.planning.Planner;
import starchfilm.report.caution.Caution;
import starchfilm.report.caution.Cautions;
import starchfilm.report.plan.NamedRecipe;
import starchfilm.report.plan.PiecesText;
import starchfilm.report.plan.PlanReport;
import starchfilm.report.plan.PlanSheet;
import starchfilm.report.plan.PlanSheets;
import starchfilm.report.plan.PlannedTrial;
import starchfilm.report.plan.PlateLabel;
import starchfilm.report.plan.SeriesText;
import starchfilm.report.words.PlanWords;
import starchfilm.request.PlanQuestion;
import starchfilm.request.RefusedRequestException;
import starchfilm.web.http.Fields;
import starchfilm.web.http.HttpError;
import starchfilm.web.http.Request;
import starchfilm.web.http.Response;
import starchfilm.web.http.Routes;

/** Wishes in, recipes out: what can be made from what is at hand. */
final class WishesPage {
  private static final List<String> STARCHES =
      Arrays.stream(StarchKind.values()).map(StarchKind::tradeName).toList();
  private static final List<String> MATERIALS =
      Arrays.stream(PlateMaterial.values()).map(PlateMaterial::tradeName).toList();

  private final PageContext desk;
  private final PlanReport report;

  WishesPage(PageContext desk) {
    this.desk = desk;
    this.report = new PlanReport(desk.renderer());
  }

  void addTo(Routes.Table table) {
    table
        .read("/plan/wishes", this::wishes)
        .read("/plan/sheets", this::sheets)
        .read("/plan/labels", this::labels)
        .send("/plan/take", this::take);
  }

  private Response wishes(Request request) {
    Fields form = request.query();
    if (!form.has("glycerol")) {
      return page(200, form, List.of(), List.of(), List.of(), List.of(), Answer.NONE);
    }
    try {
      PlanQuestion question = question(form);
      Answer answer = answer(question);
      List<Caution> cautions =
          answer.recipes().isEmpty() ? List.of() : Cautions.of(question.request());
      return page(
          200,
          form,
          List.of(),
          question.assumptions(),
          PlanSheets.of(answer.recipes(), question.request()),
          cautions,
          answer);
    } catch (RefusedRequestException e) {
      return page(422, form, FormEntries.why(e), List.of(), List.of(), List.of(), Answer.NONE);
    }
  }

  private PlanQuestion question(Fields form) {
    // A kept jar says itself where its glycerol comes from, and a room what air it has; the fields
    // for
    // both always say something.
    Set<String> told = new HashSet<>();
    if (form.has("kept")) {
      told.add("origin");
    }
    if (form.has("room")) {
      told.addAll(Set.of("air", "rh", "speed"));
    }
    FormEntries entries =
        new FormEntries(form, field -> !told.contains(field.parts().get(0).key()));
    return PlanQuestion.read(entries, desk.folder().root(), desk.clock());
  }

  /**
   * What was found.
   *
   * @param recipes the recipes
   * @param told what is to be said before them: what pieces take, how a series is cooked
   * @param ways what to give up where no recipe meets every wish
   */
  private record Answer(List<NamedRecipe> recipes, List<String> told, List<String> ways) {
    static final Answer NONE = new Answer(List.of(), List.of(), List.of());

    static Answer of(Plan plan) {
      return new Answer(
          NamedRecipe.of(plan),
          List.of(),
          plan.recipes().isEmpty() ? nothingFits(plan) : List.of());
    }
  }

  private Answer answer(PlanQuestion question) {
    Workshop workshop = desk.useCases().workshops().in(desk.folder().root());
    if (question.series().isPresent()) {
      Planner.SeriesAnswer answer = question.answerSeries(workshop);
      return answer
          .series()
          .map(
              series ->
                  new Answer(
                      NamedRecipe.of(series),
                      SeriesText.beside(series, PlanQuestion.STRIPS_EACH),
                      List.of()))
          .orElseGet(() -> Answer.of(answer.plan()));
    }
    if (question.pieces().isPresent()) {
      Planner.PiecesAnswer answer = question.answerPieces(workshop);
      return answer
          .pieces()
          .map(
              needed ->
                  new Answer(
                      List.of(new NamedRecipe("Each pour", "", needed.recipe())),
                      PiecesText.of(needed),
                      List.of()))
          .orElseGet(() -> Answer.of(answer.plan()));
    }
    return Answer.of(question.answer(workshop));
  }

  private Response page(
      int status,
      Fields form,
      List<String> why,
      List<String> remarks,
      List<PlanSheet> sheets,
      List<Caution> cautions,
      Answer answer) {
    Map<String, Object> values = new HashMap<>();
    values.put("form", form);
    values.put("why", why);
    values.put("sheets", sheets);
    values.put("cautions", cautions);
    values.put("nothingFits", answer.ways());
    values.put("told", answer.told());
    values.put("remarks", remarks);
    values.put("asked", answer.equals(Answer.NONE) ? "" : asked(form));
    values.put("starch", form.has("starch") ? form.text("starch") : StarchKind.POTATO.tradeName());
    values.put("starchKinds", STARCHES);
    values.put("materials", MATERIALS);
    values.put("jars", desk.folder().read().jars());
    return Response.page(status, desk.html("wishes", "plan", values));
  }

  /** What was asked, in a line. */
  private static String asked(Fields form) {
    String by = form.text("by");
    String glycerol = form.text("glycerol");
    String kept = form.text("kept");
    return (glycerol.isEmpty()
            ? "the glycerol"
            : FormEntries.withUnit(glycerol, "g") + " of glycerol")
        + (kept.isEmpty() ? "" : " in the jar " + kept)
        + ", "
        + form.text("starch")
        + " starch, plates: "
        + plates(form)
        + ", "
        + form.text("feel")
        + (form.text("pieces").isEmpty() ? "" : ", film needed: " + form.text("pieces"))
        + (form.text("vary").isEmpty() ? "" : ", varied: " + form.text("vary"))
        + (by.isEmpty() ? "" : ", ready after " + FormEntries.withUnit(by, "days"));
  }

  private static String plates(Fields form) {
    String trays = form.text("trays");
    return trays.isEmpty()
        ? form.text("plates")
            + " of "
            + form.text("length")
            + " × "
            + FormEntries.withUnit(form.text("width"), "mm")
        : trays;
  }

  private static List<String> nothingFits(Plan plan) {
    List<String> sentences = new ArrayList<>();
    plan.giveUps().forEach(way -> sentences.add(PlanWords.sentence(way, plan.request())));
    if (sentences.isEmpty()) {
      sentences.add("Giving up one or two wishes would not help; the room may be too damp.");
    }
    return sentences;
  }

  private Response sheets(Request request) {
    PlanQuestion question = question(request.query());
    return Documents.page(
        report.html(answer(question).recipes(), question.request(), question.assumptions()));
  }

  private Response labels(Request request) {
    List<NamedRecipe> recipes = answer(question(request.query())).recipes();
    return Documents.page(report.labels(recipes.stream().flatMap(PlateLabel::of).toList()));
  }

  /** The recipe is planned again from the same wishes, which gives the same recipe. */
  private Response take(Request request) throws NotWrittenException {
    Fields form = request.posted();
    PlanQuestion question = question(form);
    List<NamedRecipe> recipes = answer(question).recipes();
    String number = form.text("number");
    if (!number.matches("[0-9]{1,2}") || Integer.parseInt(number) >= recipes.size()) {
      throw HttpError.malformed("The plan has no such recipe; ask for the plan again.");
    }
    NamedRecipe recipe = recipes.get(Integer.parseInt(number));
    String text =
        PlannedTrial.text(
            recipe, question.request(), question.log(), question.isJarIn(desk.folder().root()));
    String typed = form.text("name");
    return desk.toTrial(
        typed.isEmpty()
            ? desk.folder().create(recipe.title(), text)
            : desk.folder().create(typed, FieldEdit.with(text, Map.of("name", typed))),
        "Saved as a new trial. Note its pour as soon as it is poured.");
  }
}
