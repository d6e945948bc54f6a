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
  private static final Map<String, String> USUAL =
      Map.of(
          "starch", StarchKind.POTATO.tradeName(),
          "material", PlateMaterial.GLASS.tradeName(),
          "vinegar", "5",
          "plates", "2",
          "length", "300",
          "width", "200",
          "pot", "2",
          "scale", "1",
          "air", "20",
          "rh", "50");

  void addTo(Routes table) {
    table
        .read("/plan/wishes", this::wishes)
        .read("/plan/sheets", this::sheets)
        .read("/plan/labels", this::labels)
        .send("/plan/take", this::take);
  }

  private Response wishes(Request request) {
    Fields sent = request.query();
    Fields form = form(sent);
    Map<String, Object> values = new HashMap<>();
    values.put("rest", rest(form));
    values.put("starchKinds", StarchKind.values());
    values.put("materials", PlateMaterial.values());
    values.put("jars", desk.folder().read().jars());
    return desk.answering(
        "wishes", "plan", form, values, sent.has("glycerol"), all -> answer(form, all));
  }

  /** What was sent; what was not is usual, or as the page of the jar has found. */
  private static Fields form(Fields sent) {
    return sent.orUsual(USUAL)
        .orUsual(
            Map.of(
                "glycerol", sent.text("jar"),
                "purity", sent.text("share"),
                "salt", sent.text("salted")));
  }

  /** What the folded part of the form holds, in a line. */
  private static String rest(Fields form) {
    String purity = form.text("purity");
    return (form.text("kept").isEmpty()
            ? "%s glycerol of %s origin; "
                .formatted(
                    purity.isEmpty() ? "80 to 100 %" : FormEntries.withUnit(purity, "%"),
                    form.has("origin") ? form.text("origin") : "unknown")
            : "")
        + "plates: %s, of %s; pot %s; balance %s; %s; vinegar %s"
            .formatted(
                plates(form),
                form.text("material"),
                FormEntries.withUnit(form.text("pot"), "l"),
                FormEntries.withUnit(form.text("scale"), "g"),
                form.text("room").isEmpty()
                    ? FormEntries.withUnit(form.text("air"), "°C")
                        + ", "
                        + FormEntries.withUnit(form.text("rh"), "% RH")
                    : form.text("room"),
                FormEntries.withUnit(form.text("vinegar"), "%"));
  }

  private void answer(Fields form, Map<String, Object> values) {
    values.put("asked", asked(form));
    values.put("plan", found(question(form)));
  }

  private PlanSheet found(PlanQuestion question) {
    return PlanSheet.of(question, desk.workshops().in(desk.folder().root()));
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
    return Documents.page(desk.printed().html(found(question(form(request.query())))));
  }

  private Response labels(Request request) {
    return Documents.page(desk.printed().labels(found(question(form(request.query()))).labels()));
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
