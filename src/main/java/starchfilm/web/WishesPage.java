package starchfilm.web;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import starchfilm.casting.PlateMaterial;
import starchfilm.files.amount.MomentParser;
import starchfilm.files.saving.FieldEdit;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.report.plan.NamedRecipe;
import starchfilm.report.plan.PlanReport;
import starchfilm.report.plan.PlanSheet;
import starchfilm.report.plan.PlannedTrial;
import starchfilm.request.PlanQuestion;
import starchfilm.web.http.Fields;
import starchfilm.web.http.HttpError;
import starchfilm.web.http.Request;
import starchfilm.web.http.Response;
import starchfilm.web.http.Routes;

/** Wishes in, recipes out: what can be made from what is at hand. */
record WishesPage(PageContext desk) {
  private PlanReport report() {
    return new PlanReport(desk.renderer());
  }

  void addTo(Routes table) {
    table
        .read("/plan/wishes", this::wishes)
        .read("/plan/sheets", this::sheets)
        .read("/plan/labels", this::labels)
        .send("/plan/take", this::take);
  }

  private Response wishes(Request request) {
    Fields form = request.query();
    Map<String, Object> values = new HashMap<>();
    values.put("form", form);
    values.put("starch", form.has("starch") ? form.text("starch") : StarchKind.POTATO.tradeName());
    values.put("starchKinds", StarchKind.values());
    values.put("materials", PlateMaterial.values());
    values.put("jars", desk.folder().read().jars());
    return desk.answering("wishes", "plan", values, form.has("glycerol"), all -> answer(form, all));
  }

  private void answer(Fields form, Map<String, Object> values) {
    values.put("asked", asked(form));
    values.put("plan", found(question(form)));
  }

  private PlanSheet found(PlanQuestion question) {
    return new PlanSheet(question, question.answer(desk.workshops().in(desk.folder().root())));
  }

  /** A kept jar says itself where its glycerol comes from, and a room what air it has. */
  private PlanQuestion question(Fields form) {
    FormEntries entries =
        new FormEntries(
            form,
            form.text("kept").isEmpty() ? "origin" : "kept",
            form.text("room").isEmpty() ? Set.of() : Set.of("air", "rh", "speed"));
    return PlanQuestion.read(entries, desk.folder().root(), desk.clock());
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
        + (by.isEmpty() ? "" : ", ready by " + FormEntries.withUnit(by, "days after the pour"));
  }

  private static String plates(Fields form) {
    String trays = form.text("trays");
    String width = FormEntries.withUnit(form.text("width"), "mm");
    return trays.isEmpty()
        ? form.text("plates") + " of " + form.text("length") + " × " + width
        : trays;
  }

  private Response sheets(Request request) {
    return Documents.page(report().html(found(question(request.query()))));
  }

  private Response labels(Request request) {
    return Documents.page(report().labels(found(question(request.query())).labels()));
  }

  /** The recipe is planned again from the same wishes, which gives the same recipe. */
  private Response take(Request request) throws NotWrittenException {
    Fields form = request.posted();
    PlanQuestion question = question(form);
    List<NamedRecipe> recipes = found(question).recipes();
    int number = form.number("number").orElse(recipes.size());
    if (number >= recipes.size()) {
      throw HttpError.malformed("The plan has no such recipe; ask for the plan again.");
    }
    NamedRecipe recipe = recipes.get(number);
    String text =
        PlannedTrial.text(
            recipe, question.request(), question.log(), question.isJarIn(desk.folder().root()));
    String typed = form.text("name");
    return typed.isEmpty()
        ? desk.begun(recipe.title(), text, "")
        : desk.begun(
            typed, FieldEdit.with(text, Map.of("name", typed), new MomentParser(desk.clock())), "");
  }
}
