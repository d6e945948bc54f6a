package starchfilm.web;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import starchfilm.files.saving.FieldEdit;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.TrialFileText;
import starchfilm.planning.Plan;
import starchfilm.report.caution.Cautions;
import starchfilm.report.plan.PlanReport;
import starchfilm.report.plan.PlanSheets;
import starchfilm.report.words.PlanWords;
import starchfilm.web.http.Fields;
import starchfilm.web.http.HttpError;
import starchfilm.web.http.Request;
import starchfilm.web.http.Response;
import starchfilm.web.http.Routes;

/** Wishes in, recipes out: what can be made from what is at hand. */
final class WishesPage {
  private static final String NUMBER = "[0-9]{1,4}([.,][0-9]{1,3})?";
  private static final List<String> STARCHES =
      List.of("potato", "tapioca", "corn", "waxy corn", "wheat", "rice");
  private static final List<String> MATERIALS =
      List.of("glass", "polypropylene", "acrylic", "ptfe", "silicone", "laminate", "steel");

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
        .send("/plan/take", this::take);
  }

  private Response wishes(Request request) {
    Fields form = request.query();
    if (!form.has("glycerol")) {
      return page(200, form, List.of(), Optional.empty());
    }
    Words words = new Words(form);
    try {
      Questions.Planned planned = planned(words);
      List<String> remarks = planned.remarks().stream().map(words::inTheFormsWords).toList();
      return page(
          200,
          form,
          List.of(),
          Optional.of(new Questions.Planned(planned.plan(), remarks, planned.trialTexts())));
    } catch (Questions.NotAnswered e) {
      return page(422, form, List.of(words.inTheFormsWords(e.sentence())), Optional.empty());
    }
  }

  private Response page(
      int status, Fields form, List<String> why, Optional<Questions.Planned> planned) {
    Optional<Plan> plan = planned.map(Questions.Planned::plan);
    Map<String, Object> values = new HashMap<>();
    values.put("form", form);
    values.put("why", why);
    values.put("sheets", plan.map(PlanSheets::of).orElse(List.of()));
    values.put("cautions", plan.map(one -> Cautions.of(one.request())).orElse(List.of()));
    values.put(
        "nothingFits",
        plan.filter(one -> one.recipes().isEmpty()).map(WishesPage::nothingFits).orElse(List.of()));
    values.put("remarks", planned.map(Questions.Planned::remarks).orElse(List.of()));
    values.put("asked", plan.isEmpty() ? "" : asked(form));
    values.put("starchKinds", STARCHES);
    values.put("materials", MATERIALS);
    return Response.page(status, desk.html("wishes", "plan", values));
  }

  /** What was asked, in a line. */
  private static String asked(Fields form) {
    String by = form.text("by");
    return Words.withUnit(form.text("glycerol"), "g")
        + " of glycerol, "
        + form.text("starch")
        + " starch, plates: "
        + form.text("plates")
        + " of "
        + form.text("length")
        + " × "
        + Words.withUnit(form.text("width"), "mm")
        + ", "
        + form.text("feel")
        + (by.isEmpty() ? "" : ", ready after " + Words.withUnit(by, "days"));
  }

  private static List<String> nothingFits(Plan plan) {
    List<String> sentences = new ArrayList<>();
    plan.giveUps().forEach(way -> sentences.add(PlanWords.sentence(way, plan.request())));
    if (sentences.isEmpty()) {
      sentences.add("No one or two wishes given up would help; the room may be too damp.");
    }
    return sentences;
  }

  private Response sheets(Request request) {
    Words words = new Words(request.query());
    Questions.Planned planned = answered(words);
    return Documents.page(report.html(planned.plan(), planned.remarks()));
  }

  /** The recipe is planned again from the same wishes, which gives the same recipe. */
  private Response take(Request request) {
    Fields form = request.posted();
    Questions.Planned planned = answered(new Words(form));
    String number = form.text("number");
    if (!number.matches("[0-9]") || Integer.parseInt(number) >= planned.trialTexts().size()) {
      throw HttpError.malformed("The plan has no such recipe; ask for the plan again.");
    }
    desk.folder().requireThere();
    try {
      String text = planned.trialTexts().get(Integer.parseInt(number));
      String typed = form.text("name");
      String name =
          typed.isEmpty()
              ? PlanWords.title(planned.plan().recipes().get(Integer.parseInt(number)).goals())
              : typed;
      String named = typed.isEmpty() ? text : FieldEdit.with(text, Map.of("name", typed));
      Path file = TrialFileText.create(desk.folder().root(), name, named);
      return Response.seeOther(
          desk.said()
              .on(
                  NotebookFolder.address("/trial", desk.folder().name(file)),
                  List.of(
                      "The recipe is in the notebook. Note its pour as soon as it is poured.")));
    } catch (FieldEdit.MistypedFields e) {
      throw new HttpError(422, String.join(" ", e.sentences().values()));
    } catch (NotWrittenException e) {
      throw new HttpError(422, String.join(" ", NoteDesk.sentences(e)));
    }
  }

  private Questions.Planned answered(Words words) {
    try {
      return planned(words);
    } catch (Questions.NotAnswered e) {
      throw new HttpError(422, words.inTheFormsWords(e.sentence()));
    }
  }

  private Questions.Planned planned(Words words) {
    words
        .named("starchfilm assay --help", "The jar")
        .option("--glycerol", "glycerol", "g", "Glycerol in the jar")
        .option("--purity", "purity", "%", "Purity")
        .option("--origin", "origin", "It was")
        .option("--salt", "salt", "%", "Salt and soap")
        .option("--starch", "starch", "Starch")
        .option("--vinegar", "vinegar", "%", "Vinegar")
        .option("--pot", "pot", "l", "Pot")
        .option("--scale", "scale", "g", "Step of the balance")
        .option("--rim", "rim", "mm", "Rim")
        .option("--feel", "feel", "Feel")
        .option("--thickness", "thickness", "mm", "Dry thickness")
        .option("--by", "by", "d", "Ready after")
        .option("--room-name", "room_name", "What you call the room");
    words.made(
        "--plates",
        number(words, "plates", "Plates")
            + "x"
            + number(words, "length", "Length of a plate")
            + "x"
            + number(words, "width", "Width of a plate")
            + "mm "
            + choice(words, "material", MATERIALS, "Material"),
        "Plates");
    String speed = words.typed("speed", "Air speed");
    words.made(
        "--room",
        number(words, "air", "Air temperature")
            + "C,"
            + number(words, "rh", "Relative humidity")
            + "%"
            + (speed.isEmpty() ? "" : "," + number(words, "speed", "Air speed") + "m/s"),
        "Room");
    return desk.useCases().questions().plan(words.list());
  }

  /** Parts of a value that the page puts together are plain numbers, never names of files. */
  private static String number(Words words, String field, String label) {
    String typed = words.typed(field, label);
    if (!typed.matches(NUMBER)) {
      throw new Questions.NotAnswered(
          label
              + ": \""
              + typed
              + "\" given, allowed a number, such as 20; write it without unit.");
    }
    return typed;
  }

  private static String choice(Words words, String field, List<String> all, String label) {
    String typed = words.typed(field, label);
    if (!all.contains(typed)) {
      throw new Questions.NotAnswered(
          label + ": \"" + typed + "\" given, allowed " + String.join(", ", all) + ".");
    }
    return typed;
  }
}
