package starchfilm.web;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import starchfilm.files.saving.JarFile;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.SafeFile.WrittenFile;
import starchfilm.jar.assay.Assay;
import starchfilm.jar.assay.JarContent;
import starchfilm.jar.reagent.Reagent;
import starchfilm.jar.recovery.OilKind;
import starchfilm.numerics.figures.Figures;
import starchfilm.numerics.units.Named;
import starchfilm.report.plan.AssaySheet;
import starchfilm.request.AssayRequest;
import starchfilm.web.http.Fields;
import starchfilm.web.http.HttpError;
import starchfilm.web.http.Request;
import starchfilm.web.http.Response;
import starchfilm.web.http.Routes;

/** <em>The jar</em>: what is in the glycerol, by its label, a reading, or how it was recovered. */
record JarPage(PageContext desk) {
  void addTo(Routes table) {
    table.read("/jar", this::jar).send("/jar/keep", this::keep);
  }

  private Response jar(Request request) {
    Fields form = request.query();
    return desk.answering(
        "jar", "jar", form, values(form), form.has("amount"), all -> answer(form, all));
  }

  private Map<String, Object> values(Fields form) {
    Map<String, Object> values = new HashMap<>();
    values.put("oils", OilKind.values());
    values.put("acids", Reagent.acids());
    values.put("said", desk.said().in(form));
    values.put("kept", desk.folder().read().jars());
    return values;
  }

  private static void answer(Fields form, Map<String, Object> values) {
    AssayRequest jar = AssayRequest.read(entries(form));
    Assay assay = jar.answer();
    AssaySheet sheet = new AssaySheet(assay, jar.assumptions());
    values.put("sheet", sheet);
    values.put("asked", asked(form, sheet));
    values.put("planAddress", assay.content().map(jarOf -> planAddress(assay, jarOf)).orElse(""));
  }

  /** What the form says is worked out again, which gives the same jar. */
  private Response keep(Request request) {
    Fields form = request.posted();
    desk.folder().requireThere();
    Assay assay = AssayRequest.read(entries(form)).answer();
    JarContent content =
        assay
            .content()
            .orElseThrow(
                () -> new HttpError(422, "Not kept, because the figures contradict each other."));
    String name = form.text("name");
    try {
      WrittenFile written =
          JarFile.keep(
              desk.folder().root(),
              name,
              assay.massKg(),
              content.stock(assay.origin()),
              desk.now());
      return desk.to(
          "/jar",
          "The jar is kept as %s%s. Trials take from it by that name."
              .formatted(
                  name,
                  written
                      .before()
                      .map(before -> ", and the jar before in " + before.getFileName())
                      .orElse("")));
    } catch (NotWrittenException e) {
      Map<String, Object> values = values(form);
      answer(form, values);
      values.put("form", form);
      values.put("wrong", Map.of("name", String.join(" ", NoteDesk.sentences(e))));
      values.put("first", "name");
      return desk.page(422, "jar", "jar", values);
    }
  }

  /** The origin says which fields are meant. */
  private static FormEntries entries(Fields form) {
    return new FormEntries(form, "origin", Set.of());
  }

  /** What was asked and what it comes to, in a line. */
  private static String asked(Fields form, AssaySheet sheet) {
    String origin =
        switch (form.text("origin")) {
          case "recorded" -> "recovered as noted";
          case "recovered" -> "recovered, no notes of the batch";
          case "bought" -> "bought";
          default -> "of unknown origin";
        };
    String label = form.text("label");
    String reading =
        !form.text("density").isEmpty()
            ? ", read with a hydrometer"
            : !form.text("bottle_sample").isEmpty()
                ? ", a bottle weighed"
                : !form.text("sample_mass").isEmpty()
                    ? ", a volume weighed"
                    : form.text("index").isEmpty() ? "" : ", read with a refractometer";
    return FormEntries.withUnit(form.text("amount"), "g")
        + (sheet.glycerol().isEmpty() ? "" : ", about " + sheet.glycerol() + " %")
        + ", "
        + origin
        + (origin.equals("bought") && !label.isEmpty()
            ? ", " + FormEntries.withUnit(label, "%") + " by the label"
            : "")
        + reading;
  }

  /** The form of wishes, with the jar filled in; a jar without salt says nothing of it. */
  private static String planAddress(Assay assay, JarContent content) {
    double salt = content.stays().middle();
    return "/plan/wishes?jar=%s&share=%s-%s%%25&origin=%s%s"
        .formatted(
            Figures.grams(assay.massKg().value()),
            Figures.percent(content.glycerol().low()),
            Figures.percent(content.glycerol().high()),
            Named.of(assay.origin()),
            salt > 0 ? "&salted=" + Figures.percent(salt) : "");
  }
}
