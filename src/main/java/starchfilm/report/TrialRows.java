package starchfilm.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import starchfilm.casting.Casting;
import starchfilm.casting.trial.Observations;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.DryingForecast;
import starchfilm.film.FilmForecast;
import starchfilm.forecast.TrialForecast;
import starchfilm.material.air.AirState;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Recipe;
import starchfilm.numerics.units.Named;
import starchfilm.planning.PlannedRecipe;
import starchfilm.planning.Potful;
import starchfilm.report.data.AnswerTable;
import starchfilm.report.data.AnswerTable.AnswerRow;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.RecipeWords;

/** Castings and trials as rows of a table; figures in SI, which the table turns into units. */
public final class TrialRows {
  /** What the plasticiser level is told for (kg of starch). */
  private static final double HUNDRED_G_KG = 0.1;

  private TrialRows() {}

  /** Trials side by side: a row a trial. */
  static AnswerTable of(Comparison comparison) {
    AnswerTable table = new AnswerTable("compare");
    List<String> assumed = new ArrayList<>();
    List<String> doubted = new ArrayList<>();
    for (TrialForecast forecast : comparison.trials()) {
      put(table.row("trial", forecast.trial().name()), forecast);
      String name = forecast.trial().name() + ": ";
      forecast.trial().notRecorded().forEach(gap -> assumed.add(name + gap.words()));
      forecast
          .weighed()
          .questions()
          .forEach(question -> doubted.add(name + question.withCommand(forecast.trial())));
    }
    return table
        .assuming(assumed)
        .tell("doubted", doubted)
        .tell("left_out", comparison.troubles())
        .tell("remarks", comparison.remarks());
  }

  private static void put(AnswerRow row, TrialForecast forecast) {
    Trial trial = forecast.trial();
    row.put("file", trial.fileName())
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
    row.put("crack_risk", Named.of(forecast.risks().crack().level()))
        .put("mould_risk", Named.of(forecast.risks().mould().level()))
        .put("weighings", trial.weighingCount())
        .put("faults", words(seen.faults().stream().map(f -> Named.of(f.kind())).distinct(), ", "))
        .put("remarks", String.join(" ", seen.remarks()));
  }

  /** The columns of a planned recipe. */
  public static void put(AnswerRow row, PlannedRecipe recipe) {
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

  private static AnswerRow pot(AnswerRow row, Recipe recipe) {
    return row.put("starch", RecipeWords.starchKinds(recipe))
        .put("starch_g", recipe.starchKg())
        .put("glycerol_g", recipe.glycerol().massKg().value())
        .put("vinegar_g", recipe.vinegar().massKg().value())
        .put("water_g", recipe.waterKg().value())
        .put("salt_g", recipe.saltKg().value())
        .put("inert_g", recipe.inertKg().value());
  }

  private static void cast(AnswerRow row, Casting casting) {
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

  private static void film(AnswerRow row, FilmForecast film) {
    row.put("feel", PlainWords.word(film.feel()));
    for (FilmFigure figure : FilmFigure.MEASURED) {
      if (figure.withheld(film).isEmpty()) {
        row.put(figure.key(), figure.of(film));
      }
    }
  }

  private static void drying(AnswerRow row, DryingForecast drying) {
    row.put("verdict", Named.of(drying.verdict()));
    Awaited.all().forEach(one -> row.put(Awaited.field(one) + "_h", drying.timeS(one)));
  }

  private static String words(Stream<String> words, String between) {
    return words.collect(Collectors.joining(between));
  }
}
