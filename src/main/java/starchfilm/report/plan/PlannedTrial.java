package starchfilm.report.plan;

import static starchfilm.numerics.units.Units.DAY_S;
import static starchfilm.numerics.units.Units.G_PER_KG;
import static starchfilm.numerics.units.Units.MINUTE_S;
import static starchfilm.numerics.units.Units.MM_PER_M;
import static starchfilm.numerics.units.Units.PERCENT_PER_UNIT;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.Optional;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.Plate;
import starchfilm.casting.SwingingRoom;
import starchfilm.casting.Use;
import starchfilm.files.notebook.FileWord;
import starchfilm.material.air.AirState;
import starchfilm.material.recipe.GlycerolPortion;
import starchfilm.material.recipe.Recipe;
import starchfilm.material.recipe.StarchPortion;
import starchfilm.material.recipe.VinegarPortion;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.planning.PlanRequest;
import starchfilm.planning.PlannedRecipe;
import starchfilm.planning.Potful;
import starchfilm.report.words.PlanWords;
import starchfilm.report.words.RecipeWords;

/**
 * A planned recipe as a trial file, ready to take notes: the first potful and the plates it is
 * poured on.
 */
public final class PlannedTrial {
  private static final int DECIMALS = 6;

  /** Half the width of a rectangle over its standard deviation. */
  private static final double HALF_WIDTH = Math.sqrt(3);

  private static final ObjectMapper MAPPER = new ObjectMapper();

  private PlannedTrial() {}

  /**
   * The file.
   *
   * @param recipe the recipe
   * @param request what was asked
   * @param log the log of its room, where that has one
   * @return its text
   */
  public static String text(PlannedRecipe recipe, PlanRequest request, Optional<Path> log) {
    Use use = request.use();
    Potful potful = recipe.potfuls().get(0);
    ObjectNode trial = MAPPER.createObjectNode();
    trial.put(
        "name",
        PlanWords.title(recipe.goals())
            + ": "
            + RecipeWords.starchKinds(potful.recipe())
            + " starch");
    put(trial, "scale_g", request.kitchen().scaleStepKg() * G_PER_KG);
    trial.set("recipe", recipe(potful.recipe()));
    ObjectNode cook = trial.putObject("cook");
    put(cook, "minutes", potful.recipe().cook().durationS().times(1 / MINUTE_S));
    put(
        cook,
        "top_C",
        potful.recipe().cook().topTemperatureK().plus(Estimate.exact(-ZERO_CELSIUS_K)));
    put(cook, "water_lost_g", potful.recipe().cook().waterLostKg().times(G_PER_KG));
    trial.set("pour", pour(recipe, potful));
    trial.set("room", room(request.place(), log));
    ObjectNode film = trial.putObject("use");
    put(film, "rh_pct", use.relativeHumidity() * PERCENT_PER_UNIT);
    put(film, "air_C", use.temperatureK() - ZERO_CELSIUS_K);
    put(film, "after_days", use.ageS() / DAY_S);
    trial
        .putArray("remarks")
        .add("Planned by starchfilm and not poured yet: note what was really weighed and poured.");
    return write(trial);
  }

  private static ObjectNode recipe(Recipe recipe) {
    ObjectNode node = MAPPER.createObjectNode();
    ArrayNode starches = node.putArray("starch");
    for (StarchPortion portion : recipe.starches()) {
      ObjectNode starch = starches.addObject();
      starch.put("kind", portion.kind().tradeName());
      put(starch, "mass_g", portion.massKg().value() * G_PER_KG);
      put(starch, "moisture_pct", portion.moistureFraction().times(PERCENT_PER_UNIT));
    }
    GlycerolPortion glycerol = recipe.glycerol();
    ObjectNode jar = node.putObject("glycerol");
    put(jar, "mass_g", glycerol.massKg().value() * G_PER_KG);
    put(jar, "purity_pct", glycerol.stock().glycerolFraction().times(PERCENT_PER_UNIT));
    put(jar, "salt_pct", glycerol.stock().saltFraction().times(PERCENT_PER_UNIT));
    jar.put("origin", FileWord.of(glycerol.stock().origin()));
    VinegarPortion vinegar = recipe.vinegar();
    if (vinegar.massKg().value() > 0) {
      ObjectNode sour = node.putObject("vinegar");
      put(sour, "mass_g", vinegar.massKg().value() * G_PER_KG);
      put(sour, "acidity_pct", vinegar.acidityFraction().times(PERCENT_PER_UNIT));
    }
    put(node.putObject("water"), "mass_g", recipe.waterKg().value() * G_PER_KG);
    return node;
  }

  private static ObjectNode room(DryingPlace place, Optional<Path> log) {
    ObjectNode node = MAPPER.createObjectNode();
    if (!place.name().equals(DryingPlace.UNNAMED)) {
      // So that what is poured there teaches of that room.
      node.put("name", place.name());
    }
    AirState air = place.room().at(0);
    put(node, "air_speed_m_per_s", air.speedMPerS());
    if (log.isPresent()) {
      node.put("log_csv", String.valueOf(log.get().getFileName()));
    } else if (place.room() instanceof SwingingRoom swinging) {
      double warmth = swinging.mean().temperatureK() - ZERO_CELSIUS_K;
      double humidity = swinging.mean().relativeHumidity();
      double warmer = swinging.temperatureHalfSwingK();
      double damper = swinging.humidityHalfSwing();
      ObjectNode swing = node.putObject("swing");
      put(swing, "coolest_C", warmth - warmer);
      put(swing, "warmest_C", warmth + warmer);
      put(swing, "driest_rh_pct", (humidity - damper) * PERCENT_PER_UNIT);
      put(swing, "dampest_rh_pct", (humidity + damper) * PERCENT_PER_UNIT);
    } else {
      put(node, "air_C", air.temperatureK() - ZERO_CELSIUS_K);
      put(node, "rh_pct", air.relativeHumidity() * PERCENT_PER_UNIT);
    }
    place.benchTemperatureK().ifPresent(kelvin -> put(node, "bench_C", kelvin - ZERO_CELSIUS_K));
    return node;
  }

  private static ObjectNode pour(PlannedRecipe recipe, Potful potful) {
    ObjectNode node = MAPPER.createObjectNode();
    Plate plate = recipe.casting().plate();
    ObjectNode on = node.putObject("plate");
    on.put("material", plate.material().tradeName());
    put(on, "length_mm", plate.lengthM() * MM_PER_M);
    put(on, "width_mm", plate.widthM() * MM_PER_M);
    put(on, "thickness_mm", plate.thicknessM() * MM_PER_M);
    // As measured on the empty plate; the forecast's plate has what the pour leaves of it.
    if (plate.rimHeightM() > 0) {
      double rimM = plate.rimHeightM() + recipe.casting().pour().wetThicknessM().value();
      on.put("rim_height_mm", Math.round(rimM * MM_PER_M * 100) / 100.0);
    }
    node.put("plates", potful.plates());
    put(node, "poured_g", recipe.pourKg() * G_PER_KG);
    put(node, "unevenness_pct", recipe.casting().pour().unevenness() * PERCENT_PER_UNIT);
    put(node, "paste_C", recipe.casting().pour().pasteTemperatureK() - ZERO_CELSIUS_K);
    return node;
  }

  /** A figure, or where it is uncertain the rectangle it lies in. */
  private static void put(ObjectNode node, String key, Estimate estimate) {
    double half = estimate.sd() * HALF_WIDTH;
    if (half == 0) {
      put(node, key, estimate.value());
      return;
    }
    ObjectNode range = node.putObject(key);
    put(range, "from", Math.max(0, estimate.value() - half));
    put(
        range,
        "to",
        key.endsWith("_pct") ? Math.min(100, estimate.value() + half) : estimate.value() + half);
  }

  private static void put(ObjectNode node, String key, double value) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP).stripTrailingZeros();
    node.put(key, rounded.scale() < 0 ? rounded.setScale(0) : rounded);
  }

  private static String write(ObjectNode trial) {
    ObjectWriter writer = MAPPER.writer().with(SerializationFeature.INDENT_OUTPUT);
    try {
      return writer.writeValueAsString(trial) + "\n";
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException("a tree in memory cannot fail", impossible);
    }
  }
}
