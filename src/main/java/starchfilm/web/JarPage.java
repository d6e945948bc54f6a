package starchfilm.web;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import starchfilm.files.notebook.FileWord;
import starchfilm.jar.assay.Assay;
import starchfilm.jar.reagent.Reagent;
import starchfilm.jar.recovery.OilKind;
import starchfilm.numerics.evidence.Figures;
import starchfilm.report.plan.AssaySheet;
import starchfilm.web.http.Fields;
import starchfilm.web.http.Request;
import starchfilm.web.http.Response;
import starchfilm.web.http.Routes;

/** <em>The jar</em>: what is in the glycerol, by its label, a reading, or how it was recovered. */
final class JarPage {
  private static final List<String> OILS =
      Arrays.stream(OilKind.values()).map(OilKind::tradeName).toList();
  private static final List<String> ACIDS =
      Reagent.acids().stream().map(Reagent::tradeName).toList();

  private final PageContext desk;

  JarPage(PageContext desk) {
    this.desk = desk;
  }

  void addTo(Routes.Table table) {
    table.read("/jar", this::jar);
  }

  private Response jar(Request request) {
    Fields form = request.query();
    Map<String, Object> values = new HashMap<>();
    values.put("form", form);
    values.put("why", List.of());
    values.put("oils", OILS);
    values.put("acids", ACIDS);
    if (!form.has("amount")) {
      return desk.page("jar", "jar", values);
    }
    Words words = new Words(form);
    try {
      Assay assay = desk.useCases().questions().assay(words(words, form));
      values.put("sheet", AssaySheet.of(assay));
      values.put("asked", asked(form));
      values.put("planAddress", planAddress(assay));
    } catch (Questions.NotAnswered e) {
      values.put("why", List.of(words.inTheFormsWords(e.sentence())));
      return Response.page(422, desk.html("jar", "jar", values));
    }
    return desk.page("jar", "jar", values);
  }

  /** What was asked, in a line. */
  private static String asked(Fields form) {
    String origin =
        switch (form.text("origin")) {
          case "recorded" -> "recovered as noted";
          case "unknown" -> "recovered, not written down how";
          default -> "bought";
        };
    String label = form.text("label");
    String reading =
        switch (form.text("reading")) {
          case "density" -> ", read with a hydrometer";
          case "bottle" -> ", a bottle weighed";
          case "sample" -> ", a volume weighed";
          case "index" -> ", read with a refractometer";
          default -> "";
        };
    return Words.withUnit(form.text("amount"), "g")
        + ", "
        + origin
        + (origin.equals("bought") && !label.isEmpty()
            ? ", " + Words.withUnit(label, "%") + " by the label"
            : "")
        + reading;
  }

  /** The form of wishes, with the jar filled in; a jar without salt says nothing of it. */
  private static String planAddress(Assay assay) {
    double salt = assay.salt().middle();
    return "/plan/wishes?jar="
        + Figures.grams(assay.massKg().value())
        + "&share="
        + Figures.percent(assay.glycerol().middle())
        + "&origin="
        + FileWord.of(assay.stock().origin())
        + (salt > 0 ? "&salted=" + Figures.percent(salt) : "");
  }

  private static List<String> words(Words words, Fields form) {
    words
        .named("--label", "Glycerol by the label")
        .named("--density", "Hydrometer")
        .named("--oil", "Oil")
        .named("--salt", "Salt and soap")
        .named("--at", "Temperature then")
        .named("--origin", "It was")
        .option("--mass", "amount", "g", "What the jar holds");
    if (form.text("origin").equals("recorded")) {
      record(words);
    } else {
      words.option("--origin", "origin", "It was");
      if (form.text("origin").equals("bought")) {
        words.option("--label", "label", "%", "Glycerol by the label");
      } else {
        words.option("--salt", "salt", "%", "Salt and soap");
      }
    }
    String reading = form.text("reading");
    if (!reading.isEmpty()) {
      words.option("--at", "at", "C", "Temperature then");
    }
    return switch (reading) {
      case "density" -> words.option("--density", "density", "Hydrometer").list();
      case "bottle" ->
          words
              .option(
                  "--bottle",
                  List.of("bottle_empty", "bottle_water", "bottle_sample"),
                  List.of("g", "g", "g"),
                  "Bottle weighed three times")
              .list();
      case "sample" ->
          words
              .option(
                  "--sample",
                  List.of("sample_mass", "sample_volume"),
                  List.of("g", "ml"),
                  "Mass and volume of a sample")
              .list();
      case "index" -> words.option("--index", "index", "Refractive index").list();
      default -> words.list();
    };
  }

  private static void record(Words words) {
    words
        .option("--oil", List.of("oil", "oil_amount"), List.of("", "ml"), "Oil")
        .option("--alcohol", List.of("alcohol", "alcohol_amount"), List.of("", "ml"), "Alcohol")
        .option("--catalyst", List.of("catalyst", "catalyst_mass"), List.of("", "g"), "Lye used")
        .option("--crude", "crude", "g", "Dark lower layer");
    // Without an amount no acid was used, whatever stands in the choice of acids.
    if (!words.typed("acid_amount", "Acid").isEmpty()) {
      words.option(
          "--acid",
          List.of("acid", "acid_amount", "acid_strength"),
          List.of("", "ml", "%"),
          "Acid that split the soap");
    }
  }
}
