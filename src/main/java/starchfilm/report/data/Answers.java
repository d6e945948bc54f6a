package starchfilm.report.data;

import static starchfilm.numerics.units.Units.G_PER_KG;
import static starchfilm.numerics.units.Units.HOUR_S;
import static starchfilm.numerics.units.Units.MM_PER_M;
import static starchfilm.numerics.units.Units.PERCENT_PER_UNIT;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.util.List;
import java.util.stream.Collectors;
import starchfilm.casting.Casting;
import starchfilm.casting.trial.NotRecorded;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.DryingForecast;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.files.findings.Fault;
import starchfilm.files.notebook.FileWord;
import starchfilm.files.notebook.Notebook;
import starchfilm.film.FilmForecast;
import starchfilm.film.FilmProperty;
import starchfilm.forecast.TrialForecast;
import starchfilm.jar.assay.Assay;
import starchfilm.learning.summary.DoubtedReading;
import starchfilm.learning.summary.Learnt;
import starchfilm.learning.summary.ParameterLearnt;
import starchfilm.learning.summary.RoomLearnt;
import starchfilm.material.air.AirState;
import starchfilm.material.recipe.Recipe;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.planning.PiecesPlan;
import starchfilm.planning.PlannedRecipe;
import starchfilm.planning.Potful;
import starchfilm.planning.Series;
import starchfilm.planning.ThicknessAnswer;
import starchfilm.report.caution.Caution;
import starchfilm.report.plan.NamedRecipe;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.RecipeWords;

/** The answers of the commands, as rows. */
public final class Answers {
  private static final double UM_PER_M = 1e6;
  private static final double PA_PER_MPA = 1e6;

  private Answers() {}

  /** A plan: a row a recipe. */
  public static DataSheet plan(
      List<NamedRecipe> recipes, List<String> assumptions, List<Caution> cautions) {
    DataSheet sheet = new DataSheet("plan");
    recipes.forEach(named -> recipe(sheet.row("recipe", named.title()), named.recipe()));
    return sheet.tell("assumptions", assumptions).tell("cautions", sentences(cautions));
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
    return sheet
        .tell("assumptions", assumptions)
        .tell("whether_it_shows", shows)
        .tell("cautions", sentences(cautions));
  }

  /** What pieces take: a row for all of it, and one for each pour. */
  public static DataSheet pieces(
      PiecesPlan needed, NamedRecipe each, List<String> assumptions, List<Caution> cautions) {
    DataSheet sheet = new DataSheet("pieces");
    double starchKg = needed.starchKg().values().stream().mapToDouble(kg -> kg).sum();
    double missingKg = needed.starchKg().keySet().stream().mapToDouble(needed::missingKg).sum();
    sheet
        .row("pieces", "in all")
        .put("pieces", needed.pieces().isArea() ? Double.NaN : needed.pieces().count())
        .put("pieces_per_plate", needed.pieces().isArea() ? Double.NaN : needed.eachPlate())
        .put("plates", needed.plates())
        .put("pours", needed.pours())
        .put("starch_g", G_PER_KG * starchKg)
        .put("glycerol_g", G_PER_KG * needed.glycerolKg())
        .put("vinegar_g", G_PER_KG * needed.vinegarKg())
        .put("starch_to_get_g", G_PER_KG * missingKg)
        .put("glycerol_to_get_g", G_PER_KG * needed.missingGlycerolKg())
        .put("glycerol_left_g", G_PER_KG * needed.leftKg())
        .put("more_pours", needed.morePours());
    recipe(sheet.row("recipe", each.title()), needed.recipe());
    return sheet.tell("assumptions", assumptions).tell("cautions", sentences(cautions));
  }

  private static void recipe(DataSheet.Row row, PlannedRecipe recipe) {
    Potful potful = recipe.potfuls().get(0);
    pot(row, potful.recipe())
        .put("cooked_g", G_PER_KG * potful.cookedKg())
        .put("potfuls", recipe.potfuls().stream().mapToInt(Potful::times).sum());
    cast(row, recipe.casting());
    row.put("plates", recipe.plates())
        .put("pour_g", G_PER_KG * recipe.pourKg())
        .put("film_g", G_PER_KG * recipe.filmKg());
    film(row, recipe.film());
    drying(row, recipe.drying());
    recipe.chances().byDate().ifPresent(share -> row.put("by_date_pct", PERCENT_PER_UNIT * share));
    if (!recipe.goals().isEmpty()) {
      row.put("as_asked_pct", PERCENT_PER_UNIT * recipe.chances().wish());
    }
    row.put(
        "warnings",
        recipe.film().cautions().stream().map(PlainWords::word).collect(Collectors.joining(" ")));
  }

  private static DataSheet.Row pot(DataSheet.Row row, Recipe recipe) {
    double starchKg = recipe.starches().stream().mapToDouble(p -> p.massKg().value()).sum();
    return row.put("starch", RecipeWords.starchKinds(recipe))
        .put("starch_g", G_PER_KG * starchKg)
        .put("glycerol_g", G_PER_KG * recipe.glycerol().massKg().value())
        .put("vinegar_g", G_PER_KG * recipe.vinegar().massKg().value())
        .put("water_g", G_PER_KG * recipe.waterKg().value())
        .put("salt_g", G_PER_KG * recipe.saltKg().value())
        .put("inert_g", G_PER_KG * recipe.inertKg().value());
  }

  private static void cast(DataSheet.Row row, Casting casting) {
    AirState air = casting.room().at(0);
    row.put("plates", casting.pour().plates())
        .put("pour_g", G_PER_KG * casting.pouredKg())
        .put("wet_thickness_mm", MM_PER_M * casting.wetThicknessM())
        .put("starch_in_paste_pct", PERCENT_PER_UNIT * casting.composition().dryStarch())
        .put("glycerol_per_100_g_starch", 100 * casting.composition().glycerolPerDryStarch())
        .put("room", casting.place().name())
        .put("air_C", air.temperatureK() - ZERO_CELSIUS_K)
        .put("rh_pct", PERCENT_PER_UNIT * air.relativeHumidity())
        .put("air_speed_m_per_s", air.speedMPerS());
  }

  private static void film(DataSheet.Row row, FilmForecast film) {
    row.put("feel", PlainWords.word(film.feel()))
        .put("dry_thickness_um", film.dryThicknessM().times(UM_PER_M));
    if (film.withheld(FilmProperty.TENSILE_STRENGTH).isEmpty()) {
      row.put("strength_MPa", film.tensileStrengthPa().times(1 / PA_PER_MPA));
    }
    if (film.withheld(FilmProperty.ELONGATION).isEmpty()) {
      row.put("stretch_pct", film.elongationAtBreak().times(PERCENT_PER_UNIT));
    }
  }

  private static void drying(DataSheet.Row row, DryingForecast drying) {
    row.put("verdict", FileWord.of(drying.verdict()))
        .put("peelable_h", drying.peelableS().times(1 / HOUR_S))
        .put("dry_through_h", drying.dryThroughS().times(1 / HOUR_S));
  }

  /** How thick to pour: a row a share of the likely cases. */
  public static DataSheet thickness(
      ThicknessAnswer answer, List<String> assumptions, List<Caution> cautions) {
    DataSheet sheet = new DataSheet("thickness");
    answer
        .pours()
        .forEach(
            pour ->
                sheet
                    .row("pour", "")
                    .put("sure_pct", PERCENT_PER_UNIT * pour.sure())
                    .put("reach", FileWord.of(pour.reach()))
                    .put("wet_thickness_mm", MM_PER_M * pour.wetThicknessM())
                    .put("pour_g", G_PER_KG * pour.pourKg())
                    .put("dry_thickness_um", pour.dryThicknessM().times(UM_PER_M)));
    return sheet.tell("assumptions", assumptions).tell("cautions", sentences(cautions));
  }

  /** What is in a jar: one row. */
  public static DataSheet assay(Assay assay, List<String> assumptions, List<Caution> cautions) {
    DataSheet sheet = new DataSheet("assay");
    DataSheet.Row row =
        sheet
            .row("jar", "")
            .put("origin", FileWord.of(assay.origin()))
            .put("mass_g", G_PER_KG * assay.massKg().value())
            .put("withheld", assay.withheld().orElse(""));
    assay
        .content()
        .ifPresent(
            content ->
                row.put("pure_glycerol_g", content.pureGlycerolKg().times(G_PER_KG))
                    .put("glycerol_pct", content.glycerol().times(PERCENT_PER_UNIT))
                    .put("water_and_alcohol_pct", content.volatiles().times(PERCENT_PER_UNIT))
                    .put("salt_and_soap_pct", content.stays().times(PERCENT_PER_UNIT)));
    assay.alcoholLeft().ifPresent(left -> row.put("alcohol_at_most_g", G_PER_KG * left.mostKg()));
    return sheet
        .tell("assumptions", assumptions)
        .tell("remarks", assay.remarks())
        .tell("cautions", sentences(cautions));
  }

  /** Trials side by side: a row a trial. */
  public static DataSheet compare(
      List<TrialForecast> trials, List<String> troubles, List<String> remarks) {
    DataSheet sheet = new DataSheet("compare");
    trials.forEach(forecast -> trial(sheet, forecast));
    return sheet
        .tell(
            "assumptions",
            trials.stream()
                .flatMap(one -> one.trial().notRecorded().stream().map(gap -> told(one, gap)))
                .toList())
        .tell(
            "doubted",
            trials.stream()
                .flatMap(
                    one ->
                        one.weighed().questions().stream()
                            .map(question -> one.trial().name() + ": " + question))
                .toList())
        .tell("left_out", troubles)
        .tell("remarks", remarks);
  }

  private static String told(TrialForecast forecast, NotRecorded gap) {
    return forecast.trial().name() + ": " + gap.words();
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
    row.put("crack_risk", FileWord.of(forecast.risks().crack().level()))
        .put("mould_risk", FileWord.of(forecast.risks().mould().level()))
        .put("weighings", trial.weighingCount())
        .put(
            "measured_thickness_um",
            UM_PER_M
                * trial.seen().dryThicknessesM().stream()
                    .mapToDouble(m -> m)
                    .average()
                    .orElse(Double.NaN))
        .put(
            "faults",
            trial.seen().faults().stream()
                .map(fault -> FileWord.of(fault.kind()))
                .distinct()
                .collect(Collectors.joining(", ")))
        .put("remarks", String.join(" ", trial.seen().remarks()));
    trial.seen().rating().ifPresent(rating -> row.put("rating", rating));
  }

  /** What is wrong with files: a row a fault or notice, and one a sound trial. */
  public static DataSheet check(Notebook notebook) {
    DataSheet sheet = new DataSheet("check");
    notebook
        .trials()
        .forEach(
            trial ->
                sheet
                    .row("trial", trial.name())
                    .put("file", String.valueOf(trial.file()))
                    .put("remarks", "sound"));
    notebook.faults().forEach(fault -> fault(sheet, fault));
    notebook
        .notices()
        .forEach(
            notice -> {
              DataSheet.Row row =
                  sheet.row("notice", "").put("file", notice.file()).put("field", notice.field());
              notice.line().ifPresent(line -> row.put("line", line));
              row.put("remarks", notice.text());
            });
    return sheet;
  }

  private static void fault(DataSheet sheet, Fault fault) {
    DataSheet.Row row =
        sheet
            .row("fault", "")
            .put("file", fault.file())
            .put("field", fault.field())
            .put("given", fault.given())
            .put("allowed", fault.allowed())
            .put("mend", fault.mend());
    fault.line().ifPresent(line -> row.put("line", line));
    fault.column().ifPresent(column -> row.put("column", column));
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
      room.logDryingTime()
          .ifPresent(log -> row.put("drying_time_pct", band(log, true).times(PERCENT_PER_UNIT)));
      room.factors().forEach(one -> factor(sheet.row("room", room.name()), one));
    }
    learnt
        .kinds()
        .forEach(
            kind ->
                kind.factors()
                    .forEach(
                        one ->
                            factor(
                                sheet
                                    .row("starch", kind.kind().tradeName())
                                    .put("plates", kind.plates()),
                                one)));
    learnt.pours().forEach(one -> factor(sheet.row("hand", ""), one));
    learnt
        .films()
        .forEach(
            film ->
                sheet
                    .row("strips", film.starch())
                    .put("property", FileWord.of(film.property()))
                    .put("strips", film.strips())
                    .put("textbook_times", band(film.logFactor(), true)));
    return sheet
        .tell("doubted", learnt.doubted().stream().map(DoubtedReading::sentence).toList())
        .tell(
            "left_out",
            learnt.leftOut().stream().map(left -> left.file() + ": " + left.reason()).toList());
  }

  private static void factor(DataSheet.Row row, ParameterLearnt learnt) {
    UncertainParameter factor = learnt.factor();
    Estimate deviation = new Estimate(learnt.deviation(), learnt.sd());
    row.put("factor", FileWord.of(factor))
        .put(
            factor.isLogNormal() ? "textbook_times" : "offset",
            band(deviation, factor.isLogNormal()));
  }

  /** What a normal estimate holds in 8 of 10 cases, of itself or of what its logarithm is. */
  private static Band band(Estimate estimate, boolean isLogarithm) {
    return isLogarithm
        ? Band.logNormal(Math.exp(estimate.value()), Math.exp(estimate.sd()))
        : Band.normal(estimate.value(), estimate.sd());
  }

  private static List<String> sentences(List<Caution> cautions) {
    return cautions.stream().map(Caution::sentence).toList();
  }
}
