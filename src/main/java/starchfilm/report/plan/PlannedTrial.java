package starchfilm.report.plan;

import static starchfilm.files.saving.CastingFields.put;
import static starchfilm.numerics.units.Units.DAY_S;
import static starchfilm.numerics.units.Units.G_PER_KG;
import static starchfilm.numerics.units.Units.MINUTE_S;
import static starchfilm.numerics.units.Units.PERCENT_PER_UNIT;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.Optional;
import starchfilm.casting.Use;
import starchfilm.files.saving.CastingFields;
import starchfilm.files.saving.TrialTree;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.planning.PlanRequest;
import starchfilm.planning.PlannedRecipe;
import starchfilm.planning.Potful;
import starchfilm.report.words.PlanWords;

/**
 * A planned recipe as a trial file, ready to take notes: the first potful and the plates it is
 * poured on.
 */
public final class PlannedTrial {
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

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
    ObjectNode trial = JSON.objectNode();
    trial.put("name", named.trialName());
    put(trial, "scale_g", request.kitchen().scaleStepKg() * G_PER_KG);
    trial.set("recipe", CastingFields.recipe(potful.recipe(), besideJar));
    ObjectNode cook = trial.putObject("cook");
    put(cook, "minutes", potful.recipe().cook().durationS().times(1 / MINUTE_S));
    put(
        cook,
        "top_C",
        potful.recipe().cook().topTemperatureK().plus(Estimate.exact(-ZERO_CELSIUS_K)));
    put(cook, "water_lost_g", potful.recipe().cook().waterLostKg().times(G_PER_KG));
    trial.set("pour", pour(recipe, potful));
    trial.set("room", CastingFields.room(request.place(), log));
    ObjectNode film = trial.putObject("use");
    put(film, "rh_pct", use.relativeHumidity() * PERCENT_PER_UNIT);
    put(film, "air_C", use.temperatureK() - ZERO_CELSIUS_K);
    put(film, "after_days", use.ageS() / DAY_S);
    ObjectNode wish = trial.putObject("wish");
    wish.put("film", PlanWords.wish(request.wish()));
    request.byS().ifPresent(byS -> put(wish, "ready_after_days", byS / DAY_S));
    ArrayNode remarks = trial.putArray("remarks");
    remarks.add(
        "Planned by starchfilm and not poured yet: note what you really weigh" + " and pour.");
    if (!named.remark().isEmpty()) {
      remarks.add(named.remark());
    }
    return TrialTree.text(trial);
  }

  private static ObjectNode pour(PlannedRecipe recipe, Potful potful) {
    ObjectNode node = JSON.objectNode();
    node.set(
        "plate",
        CastingFields.plate(
            recipe.casting().plate(), recipe.casting().pour().wetThicknessM().value()));
    node.put("plates", potful.plates());
    put(node, "poured_g", recipe.pourKg() * G_PER_KG);
    put(node, "unevenness_pct", recipe.casting().pour().unevenness() * PERCENT_PER_UNIT);
    put(node, "paste_C", recipe.casting().pour().pasteTemperatureK() - ZERO_CELSIUS_K);
    return node;
  }
}
