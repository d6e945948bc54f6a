package starchfilm.web;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import starchfilm.casting.PlateMaterial;
import starchfilm.files.saving.FieldEdit;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.TrialFileText;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.planning.Plan;
import starchfilm.report.caution.Cautions;
import starchfilm.report.plan.NamedRecipe;
import starchfilm.report.plan.PlanReport;
import starchfilm.report.plan.PlanSheets;
import starchfilm.report.plan.PlannedTrial;
import starchfilm.report.plan.PlateLabel;
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
      return page(200, form, List.of(), List.of(), Optional.empty());
    }
    try {
      PlanQuestion question = question(form);
      return page(200, form, List.of(), question.assumptions(), Optional.of(plan(question)));
    } catch (RefusedRequestException e) {
      return page(422, form, FormEntries.why(e), List.of(), Optional.empty());
    }
  }

  private PlanQuestion question(Fields form) {
    // A kept jar says itself where its glycerol comes from; the choice always says something.
    boolean kept = form.has("kept");
    FormEntries entries =
        new FormEntries(form, field -> !(kept && field.parts().get(0).key().equals("origin")));
    return PlanQuestion.read(entries, desk.folder().root(), desk.clock());
  }

  private Plan plan(PlanQuestion question) {
    return question.answer(desk.useCases().workshops().in(desk.folder().root()));
  }

  private Response page(
      int status, Fields form, List<String> why, List<String> remarks, Optional<Plan> plan) {
    Map<String, Object> values = new HashMap<>();
    values.put("form", form);
    values.put("why", why);
    values.put("sheets", plan.map(PlanSheets::of).orElse(List.of()));
    values.put("cautions", plan.map(one -> Cautions.of(one.request())).orElse(List.of()));
    values.put(
        "nothingFits",
        plan.filter(one -> one.recipes().isEmpty()).map(WishesPage::nothingFits).orElse(List.of()));
    values.put("remarks", remarks);
    values.put("asked", plan.isEmpty() ? "" : asked(form));
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
        + form.text("plates")
        + " of "
        + form.text("length")
        + " × "
        + FormEntries.withUnit(form.text("width"), "mm")
        + ", "
        + form.text("feel")
        + (by.isEmpty() ? "" : ", ready after " + FormEntries.withUnit(by, "days"));
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
    try {
      PlanQuestion question = question(request.query());
      return Documents.page(
          report.html(NamedRecipe.of(plan(question)), question.request(), question.assumptions()));
    } catch (RefusedRequestException e) {
      throw new HttpError(422, String.join(" ", FormEntries.why(e)));
    }
  }

  private Response labels(Request request) {
    try {
      return Documents.page(
          report.labels(
              NamedRecipe.of(plan(question(request.query()))).stream()
                  .flatMap(PlateLabel::of)
                  .toList()));
    } catch (RefusedRequestException e) {
      throw new HttpError(422, String.join(" ", FormEntries.why(e)));
    }
  }

  /** The recipe is planned again from the same wishes, which gives the same recipe. */
  private Response take(Request request) {
    Fields form = request.posted();
    String number = form.text("number");
    PlanQuestion question;
    List<NamedRecipe> recipes;
    try {
      question = question(form);
      recipes = NamedRecipe.of(plan(question));
    } catch (RefusedRequestException e) {
      throw new HttpError(422, String.join(" ", FormEntries.why(e)));
    }
    if (!number.matches("[0-9]") || Integer.parseInt(number) >= recipes.size()) {
      throw HttpError.malformed("The plan has no such recipe; ask for the plan again.");
    }
    NamedRecipe recipe = recipes.get(Integer.parseInt(number));
    desk.folder().requireThere();
    try {
      String text =
          PlannedTrial.text(
              recipe, question.request(), question.log(), question.isJarIn(desk.folder().root()));
      String typed = form.text("name");
      String name = typed.isEmpty() ? recipe.title() : typed;
      String named = typed.isEmpty() ? text : FieldEdit.with(text, Map.of("name", typed));
      Path file = TrialFileText.create(desk.folder().root(), name, named);
      return Response.seeOther(
          desk.said()
              .on(
                  NotebookFolder.address("/trial", desk.folder().name(file)),
                  List.of("Saved as a new trial. Note its pour as soon as it is poured.")));
    } catch (FieldEdit.MistypedFields e) {
      throw new HttpError(422, String.join(" ", e.sentences().values()));
    } catch (NotWrittenException e) {
      throw new HttpError(422, String.join(" ", NoteDesk.sentences(e)));
    }
  }
}
