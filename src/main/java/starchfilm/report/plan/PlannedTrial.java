package starchfilm.report.plan;

import static starchfilm.files.saving.CastingFields.figure;
import static starchfilm.files.saving.CastingFields.range;
import static starchfilm.numerics.units.Units.DAY_S;
import static starchfilm.numerics.units.Units.G_PER_KG;
import static starchfilm.numerics.units.Units.MINUTE_S;
import static starchfilm.numerics.units.Units.PERCENT_PER_UNIT;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import starchfilm.casting.Casting;
import starchfilm.casting.Plate;
import starchfilm.casting.Pour;
import starchfilm.casting.Use;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.LocatedWriter;
import starchfilm.files.saving.CastingFields;
import starchfilm.material.recipe.Cook;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.planning.Kitchen;
import starchfilm.planning.PlanRequest;
import starchfilm.planning.PlannedRecipe;
import starchfilm.planning.Potful;
import starchfilm.report.words.PlanWords;

/**
 * A planned recipe as a trial file, ready to take notes: the first potful and the plates it is
 * poured on.
 */
public final class PlannedTrial {
  private PlannedTrial() {}

  /**
   * The file.
   *
   * @param named the recipe
   * @param request what was asked
   * @param log the log of its room, where that has one
   * @param besideJar whether the file will lie beside the kept jar it takes from
   * @return its text
   */
  public static String text(
      NamedRecipe named, PlanRequest request, Optional<Path> log, boolean besideJar) {
    PlannedRecipe recipe = named.recipe();
    Use use = request.use();
    Potful potful = recipe.potfuls().get(0);
    Cook cook = potful.recipe().cook();
    Stream<String> remarks =
        Stream.of("Planned by starchfilm: note what you really weigh and pour.", named.remark());
    return LocatedWriter.lines(
        Located.object()
            .with("name", named.trialName())
            .with("scale_g", figure(request.kitchen().scaleStepKg() * G_PER_KG))
            .with("recipe", CastingFields.recipe(potful.recipe(), besideJar))
            .with("cook.minutes", range(cook.durationS().times(1 / MINUTE_S)))
            .with("cook.top_C", range(cook.topTemperatureK().plus(Estimate.exact(-ZERO_CELSIUS_K))))
            .with("cook.water_lost_g", range(cook.waterLostKg().times(G_PER_KG)))
            .with("pour", pour(recipe, potful, request.kitchen()))
            .with("room", CastingFields.room(request.place(), log))
            .with("use.rh_pct", figure(use.relativeHumidity() * PERCENT_PER_UNIT))
            .with("use.air_C", figure(use.temperatureK() - ZERO_CELSIUS_K))
            .with("use.after_days", figure(use.ageS() / DAY_S))
            .with("wish.film", PlanWords.wish(request.wish()))
            .with(
                "wish.ready_after_days",
                request.byS().stream().mapToObj(byS -> figure(byS / DAY_S)).findFirst())
            .with(
                "remarks",
                Located.list(remarks.filter(said -> !said.isEmpty()).map(Located::text).toList())));
  }

  /** On plates of several sizes the first is the plate, and the areas of the others are listed. */
  private static ObjectValue pour(PlannedRecipe recipe, Potful potful, Kitchen kitchen) {
    Casting casting = recipe.casting();
    Pour pour = casting.pour();
    double wetM = pour.wetThicknessM().value();
    ObjectValue on = Located.object();
    double pouredG = recipe.pourKg() * G_PER_KG;
    if (kitchen.sizes().size() > 1 && potful.plates() == kitchen.plates()) {
      Plate first = kitchen.eachPlate().get(0);
      pouredG = Math.rint(10 * pouredG * first.areaM2() / casting.plate().areaM2()) / 10;
      on =
          on.with("plate", CastingFields.plate(first.filledTo(wetM, kitchen.rimM()), wetM))
              .with("other_areas_cm2", CastingFields.otherAreas(kitchen.eachPlate()));
    } else {
      on = on.with("plate", CastingFields.plate(casting.plate(), wetM));
    }
    return on.with("plates", figure(potful.plates()))
        .with("poured_g", figure(pouredG))
        .with("unevenness_pct", figure(pour.unevenness() * PERCENT_PER_UNIT))
        .with("paste_C", figure(pour.pasteTemperatureK() - ZERO_CELSIUS_K));
  }
}
