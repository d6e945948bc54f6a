package starchfilm.report.data;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import starchfilm.casting.Casting;
import starchfilm.casting.trial.Observations;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.DryingForecast;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.files.findings.Fault;
import starchfilm.files.findings.Notice;
import starchfilm.files.json.Located.Place;
import starchfilm.files.notebook.FileWord;
import starchfilm.files.notebook.Notebook;
import starchfilm.film.FilmForecast;
import starchfilm.forecast.TrialForecast;
import starchfilm.jar.assay.Assay;
import starchfilm.learning.summary.DoubtedReading;
import starchfilm.learning.summary.FilmLearnt;
import starchfilm.learning.summary.KindLearnt;
import starchfilm.learning.summary.Learnt;
import starchfilm.learning.summary.ParameterLearnt;
import starchfilm.learning.summary.RoomLearnt;
import starchfilm.material.air.AirState;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Recipe;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.planning.PiecesPlan;
import starchfilm.planning.PlannedRecipe;
import starchfilm.planning.Potful;
import starchfilm.planning.PourThickness;
import starchfilm.planning.Series;
import starchfilm.planning.ThicknessAnswer;
import starchfilm.report.Awaited;
import starchfilm.report.FilmFigure;
import starchfilm.report.caution.Caution;
import starchfilm.report.plan.AssaySheet;
import starchfilm.report.plan.NamedRecipe;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.RecipeWords;

/** The answers of the commands, as rows; figures in SI, which the sheet turns into units. */
public final class Answers {
  /** What the plasticiser level is told for (kg of starch). */
  private static final double HUNDRED_G_KG = 0.1;

  private Answers() {}

  /** A plan: a row a recipe. */
  public static DataSheet plan(
      List<NamedRecipe> recipes, List<String> assumptions, List<Caution> cautions) {
    DataSheet sheet = new DataSheet("plan");
    recipes.forEach(named -> recipe(sheet.row("recipe", named.title()), named.recipe()));
    return sheet.assuming(assumptions).cautioning(cautions);
  }

  /** A series: a row a group. */
  public static DataSheet series(
      Series series, List<String> assumptions, List<String> shows, List<Caution> cautions) {
    DataSheet sheet = new DataSheet("series");
    for (int i = 0; i < series.groups().size(); i++) {
      Series.Group group = series.groups().get(i);
      DataSheet.Row row =
          sheet
              .row("group", group.name())
              .put("order", series.order().indexOf(i) + 1)
              .put("seed", String.valueOf(series.series().seed()))
              .put("varied", series.series().what().words())
              .put("varied_unit", series.series().what().unit())
              .put("asked", group.asked())
              .put("weighed", group.weighed());
      recipe(row, group.recipe());
    }
    return sheet.assuming(assumptions).tell("whether_it_shows", shows).cautioning(cautions);
  }

  /** What pieces take: a row for all of it, and one for each pour. */
  public static DataSheet pieces(
      PiecesPlan needed, NamedRecipe each, List<String> assumptions, List<Caution> cautions) {
    DataSheet sheet = new DataSheet("pieces");
    boolean counted = !needed.pieces().isArea();
    sheet
        .row("pieces", "in all")
        .put("pieces", counted ? needed.pieces().count() : Double.NaN)
        .put("pieces_per_plate", counted ? needed.eachPlate() : Double.NaN)
        .put("plates", needed.plates())
        .put("pours", needed.pours())
        .put("starch_g", needed.starchKg().values().stream().mapToDouble(kg -> kg).sum())
        .put("glycerol_g", needed.glycerolKg())
        .put("vinegar_g", needed.vinegarKg())
        .put(
            "starch_to_get_g",
            needed.starchKg().keySet().stream().mapToDouble(needed::missingKg).sum())
        .put("glycerol_to_get_g", needed.missingGlycerolKg())
        .put("glycerol_left_g", needed.leftKg())
        .put("more_pours", needed.morePours());
    recipe(sheet.row("recipe", each.title()), needed.recipe());
    return sheet.assuming(assumptions).cautioning(cautions);
  }

  private static void recipe(DataSheet.Row row, PlannedRecipe recipe) {
    Potful potful = recipe.potfuls().get(0);
    pot(row, potful.recipe())
        .put("cooked_g", potful.cookedKg())
        .put("potfuls", recipe.potfuls().stream().mapToInt(Potful::times).sum());
    cast(row, recipe.casting());
    row.put("plates", recipe.plates())
        .put("pour_g", recipe.pourKg())
        .put("film_g", recipe.filmKg())
        .put("warnings", words(recipe.film().cautions().stream().map(PlainWords::word), " "));
    film(row, recipe.film());
    drying(row, recipe.drying());
    recipe.chances().byDate().ifPresent(share -> row.put("by_date_pct", share));
    if (!recipe.goals().isEmpty()) {
      row.put("as_asked_pct", recipe.chances().wish());
    }
  }

  private static DataSheet.Row pot(DataSheet.Row row, Recipe recipe) {
    return row.put("starch", RecipeWords.starchKinds(recipe))
        .put("starch_g", recipe.starchKg())
        .put("glycerol_g", recipe.glycerol().massKg().value())
        .put("vinegar_g", recipe.vinegar().massKg().value())
        .put("water_g", recipe.waterKg().value())
        .put("salt_g", recipe.saltKg().value())
        .put("inert_g", recipe.inertKg().value());
  }

  private static void cast(DataSheet.Row row, Casting casting) {
    AirState air = casting.room().at(0);
    Composition paste = casting.composition();
    row.put("plates", casting.pour().plates())
        .put("pour_g", casting.pouredKg())
        .put("wet_thickness_mm", casting.wetThicknessM())
        .put("starch_in_paste_pct", paste.dryStarch())
        .put("glycerol_per_100_g_starch", HUNDRED_G_KG * paste.glycerolPerDryStarch())
        .put("room", casting.place().name())
        .put("air_C", air.temperatureK())
        .put("rh_pct", air.relativeHumidity())
        .put("air_speed_m_per_s", air.speedMPerS());
  }

  private static void film(DataSheet.Row row, FilmForecast film) {
    row.put("feel", PlainWords.word(film.feel()));
    for (FilmFigure figure : FilmFigure.MEASURED) {
      if (figure.withheld(film).isEmpty()) {
        row.put(figure.key(), figure.of(film));
      }
    }
  }

  private static void drying(DataSheet.Row row, DryingForecast drying) {
    row.put("verdict", FileWord.of(drying.verdict()));
    Awaited.all().forEach(one -> row.put(Awaited.field(one) + "_h", drying.timeS(one)));
  }

  /** How thick to pour: a row a share of the likely cases. */
  public static DataSheet thickness(
      ThicknessAnswer answer, List<String> assumptions, List<Caution> cautions) {
    DataSheet sheet = new DataSheet("thickness");
    for (PourThickness pour : answer.pours()) {
      sheet
          .row("pour", "")
          .put("sure_pct", pour.sure())
          .put("reach", FileWord.of(pour.reach()))
          .put("wet_thickness_mm", pour.wetThicknessM())
          .put("pour_g", pour.pourKg())
          .put("dry_thickness_um", pour.dryThicknessM());
    }
    return sheet.assuming(assumptions).cautioning(cautions);
  }

  /** What is in a jar: one row. */
  public static DataSheet assay(Assay assay, List<String> assumptions, List<Caution> cautions) {
    DataSheet sheet = new DataSheet("assay");
    DataSheet.Row row =
        sheet
            .row("jar", "")
            .put("origin", FileWord.of(assay.origin()))
            .put("mass_g", assay.massKg().value())
            .put("withheld", assay.withheld().orElse(""));
    new AssaySheet(assay).rows().forEach(part -> row.put(part.key(), part.si()));
    assay.alcoholLeft().ifPresent(left -> row.put("alcohol_at_most_g", left.mostKg()));
    return sheet.assuming(assumptions).tell("remarks", assay.remarks()).cautioning(cautions);
  }

  /** Trials side by side: a row a trial. */
  public static DataSheet compare(
      List<TrialForecast> trials, List<String> troubles, List<String> remarks) {
    DataSheet sheet = new DataSheet("compare");
    List<String> assumed = new ArrayList<>();
    List<String> doubted = new ArrayList<>();
    for (TrialForecast forecast : trials) {
      trial(sheet, forecast);
      String name = forecast.trial().name() + ": ";
      forecast.trial().notRecorded().forEach(gap -> assumed.add(name + gap.words()));
      forecast
          .weighed()
          .questions()
          .forEach(question -> doubted.add(name + question.withCommand()));
    }
    return sheet
        .assuming(assumed)
        .tell("doubted", doubted)
        .tell("left_out", troubles)
        .tell("remarks", remarks);
  }

  private static void trial(DataSheet sheet, TrialForecast forecast) {
    Trial trial = forecast.trial();
    DataSheet.Row row =
        sheet
            .row("trial", trial.name())
            .put("file", trial.fileName())
            .put("poured_at", trial.pouredAt().map(Object::toString).orElse(""))
            .put("invented", trial.invented() ? "true" : "");
    pot(row, trial.recipe());
    cast(row, trial.casting());
    film(row, forecast.film());
    drying(row, forecast.drying());
    Observations seen = trial.seen();
    seen.dryThicknessesM().stream()
        .mapToDouble(m -> m)
        .average()
        .ifPresent(mean -> row.put("measured_thickness_um", mean));
    seen.rating().ifPresent(rating -> row.put("rating", rating));
    row.put("crack_risk", FileWord.of(forecast.risks().crack().level()))
        .put("mould_risk", FileWord.of(forecast.risks().mould().level()))
        .put("weighings", trial.weighingCount())
        .put(
            "faults",
            words(seen.faults().stream().map(f -> FileWord.of(f.kind())).distinct(), ", "))
        .put("remarks", String.join(" ", seen.remarks()));
  }

  private static String words(Stream<String> words, String between) {
    return words.collect(Collectors.joining(between));
  }

  /** What is wrong with files: a row a fault or notice, and one a sound trial. */
  public static DataSheet check(Notebook notebook) {
    DataSheet sheet = new DataSheet("check");
    for (Trial trial : notebook.trials()) {
      sheet
          .row("trial", trial.name())
          .put("file", String.valueOf(trial.file()))
          .put("remarks", "sound");
    }
    for (Fault fault : notebook.faults()) {
      at(sheet.row("fault", ""), fault.file(), fault.place())
          .put("given", fault.given())
          .put("allowed", fault.allowed())
          .put("mend", fault.mend());
    }
    for (Notice notice : notebook.notices()) {
      at(sheet.row("notice", ""), notice.file(), notice.place()).put("remarks", notice.text());
    }
    return sheet;
  }

  private static DataSheet.Row at(DataSheet.Row row, String file, Place place) {
    if (place.line() > 0) {
      row.put("line", place.line());
    }
    if (place.column() > 0) {
      row.put("column", place.column());
    }
    return row.put("file", file).put("field", place.path());
  }

  /** What trials taught: a row a factor. */
  public static DataSheet learnt(Learnt learnt) {
    DataSheet sheet = new DataSheet("learn");
    for (RoomLearnt room : learnt.rooms()) {
      DataSheet.Row row =
          sheet
              .row("room", room.name())
              .put("plates", room.plates())
              .put("weighings", room.weighings());
      room.logDryingTime().ifPresent(log -> row.put("drying_time_pct", Band.exp(log)));
      room.factors().forEach(one -> factor(sheet.row("room", room.name()), one));
    }
    for (KindLearnt kind : learnt.kinds()) {
      for (ParameterLearnt one : kind.factors()) {
        factor(sheet.row("starch", kind.kind().tradeName()).put("plates", kind.plates()), one);
      }
    }
    learnt.pours().forEach(one -> factor(sheet.row("hand", ""), one));
    for (FilmLearnt film : learnt.films()) {
      sheet
          .row("strips", film.starch())
          .put("property", FileWord.of(film.property()))
          .put("strips", film.strips())
          .put("textbook_times", Band.exp(film.logFactor()));
    }
    return sheet
        .tell("doubted", learnt.doubted().stream().map(DoubtedReading::sentence).toList())
        .tell(
            "left_out",
            learnt.leftOut().stream().map(left -> left.file() + ": " + left.reason()).toList());
  }

  private static void factor(DataSheet.Row row, ParameterLearnt learnt) {
    UncertainParameter factor = learnt.factor();
    Estimate deviation = new Estimate(learnt.deviation(), learnt.sd());
    row.put("factor", FileWord.of(factor));
    if (factor.isLogNormal()) {
      row.put("textbook_times", Band.exp(deviation));
    } else {
      row.put("offset", Band.of(deviation));
    }
  }
}
