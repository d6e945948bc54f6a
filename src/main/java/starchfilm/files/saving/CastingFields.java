package starchfilm.files.saving;

import static starchfilm.numerics.units.Units.CM2_PER_M2;
import static starchfilm.numerics.units.Units.G_PER_KG;
import static starchfilm.numerics.units.Units.MM_PER_M;
import static starchfilm.numerics.units.Units.PERCENT_PER_UNIT;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.Optional;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.Plate;
import starchfilm.casting.Room;
import starchfilm.casting.RoomUncertainty;
import starchfilm.casting.SwingingRoom;
import starchfilm.files.notebook.FileWord;
import starchfilm.material.air.AirState;
import starchfilm.material.recipe.GlycerolPortion;
import starchfilm.material.recipe.GlycerolStock;
import starchfilm.material.recipe.Recipe;
import starchfilm.material.recipe.StarchPortion;
import starchfilm.material.recipe.VinegarPortion;
import starchfilm.numerics.evidence.Estimate;

/** What is cast, as the fields of a trial file. */
public final class CastingFields {
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
  private static final int DECIMALS = 6;

  /** Below it a file has no forecast. */
  private static final double COLDEST_C = 1;

  /** Half the width of a rectangle over its standard deviation. */
  private static final double HALF_WIDTH = Math.sqrt(3);

  private CastingFields() {}

  /**
   * What went into the pot.
   *
   * @param recipe the recipe
   * @param besideJar whether the file will lie beside the kept jar it takes from
   */
  public static ObjectNode recipe(Recipe recipe, boolean besideJar) {
    ObjectNode node = JSON.objectNode();
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
    if (besideJar) {
      jar.put("jar", glycerol.stock().jar());
    } else {
      putContent(jar, glycerol.stock());
    }
    VinegarPortion vinegar = recipe.vinegar();
    if (vinegar.massKg().value() > 0) {
      ObjectNode sour = node.putObject("vinegar");
      put(sour, "mass_g", vinegar.massKg().value() * G_PER_KG);
      put(sour, "acidity_pct", vinegar.acidityFraction().times(PERCENT_PER_UNIT));
    }
    put(node.putObject("water"), "mass_g", recipe.waterKg().value() * G_PER_KG);
    return node;
  }

  /** What is in a jar of glycerol. */
  static void putContent(ObjectNode jar, GlycerolStock stock) {
    put(jar, "purity_pct", stock.glycerolFraction().times(PERCENT_PER_UNIT));
    put(jar, "salt_pct", stock.saltFraction().times(PERCENT_PER_UNIT));
    jar.put("origin", FileWord.of(stock.origin()));
  }

  /**
   * Where it dries.
   *
   * @param place the place
   * @param log the log of its room, where that has one
   */
  public static ObjectNode room(DryingPlace place, Optional<Path> log) {
    ObjectNode node = JSON.objectNode();
    if (!place.name().equals(DryingPlace.UNNAMED)) {
      // So that what is poured there teaches of that room.
      node.put("name", place.name());
    }
    AirState air = place.room().at(0);
    RoomUncertainty doubt = place.uncertainty();
    put(node, "air_speed_m_per_s", air.speedMPerS(), doubt.speedRelativeSd() * air.speedMPerS(), 0);
    if (log.isPresent()) {
      node.put("log_csv", String.valueOf(log.get().getFileName()));
    } else {
      place
          .room()
          .map(
              new Room.Kinds<>(
                  constant -> air(node, air, doubt),
                  swinging -> swing(node, swinging),
                  logged -> air(node, air, doubt)));
    }
    place.benchTemperatureK().ifPresent(kelvin -> put(node, "bench_C", kelvin - ZERO_CELSIUS_K));
    return node;
  }

  private static ObjectNode air(ObjectNode node, AirState air, RoomUncertainty doubt) {
    put(node, "air_C", air.temperatureK() - ZERO_CELSIUS_K, doubt.temperatureSdK(), COLDEST_C);
    double percent = air.relativeHumidity() * PERCENT_PER_UNIT;
    double dampest = Math.min(doubt.humiditySd(), (1 - air.relativeHumidity()) / HALF_WIDTH);
    put(node, "rh_pct", percent, dampest * PERCENT_PER_UNIT, 0);
    return node;
  }

  /** A range that keeps its middle where it would reach below what a field allows. */
  private static void put(ObjectNode node, String key, double value, double sd, double least) {
    double half = Math.min(sd * HALF_WIDTH, Math.max(0, value - least));
    double plain = BigDecimal.valueOf(half).round(new MathContext(3)).doubleValue();
    put(node, key, new Estimate(value, plain / HALF_WIDTH));
  }

  private static ObjectNode swing(ObjectNode node, SwingingRoom room) {
    double warmth = room.mean().temperatureK() - ZERO_CELSIUS_K;
    double humidity = room.mean().relativeHumidity();
    ObjectNode swing = node.putObject("swing");
    put(swing, "coolest_C", warmth - room.temperatureHalfSwingK());
    put(swing, "warmest_C", warmth + room.temperatureHalfSwingK());
    put(swing, "driest_rh_pct", (humidity - room.humidityHalfSwing()) * PERCENT_PER_UNIT);
    put(swing, "dampest_rh_pct", (humidity + room.humidityHalfSwing()) * PERCENT_PER_UNIT);
    return node;
  }

  /**
   * One plate, its rim as measured on the empty one; a casting's plate has what the pour leaves.
   *
   * @param plate the plate of a casting
   * @param wetThicknessM how thick it is poured (m)
   */
  public static ObjectNode plate(Plate plate, double wetThicknessM) {
    ObjectNode on = JSON.objectNode();
    on.put("material", plate.material().tradeName());
    switch (plate.outline()) {
      case FREE -> put(on, "area_cm2", plate.areaM2() * CM2_PER_M2);
      case ELLIPSE -> {
        if (plate.isRound()) {
          put(on, "diameter_mm", plate.longestM() * MM_PER_M);
        } else {
          on.put("shape", "oval");
          sides(on, plate);
        }
      }
      case RECTANGLE -> sides(on, plate);
    }
    put(on, "thickness_mm", plate.thicknessM() * MM_PER_M);
    if (plate.rimHeightM() > 0) {
      double rimM = plate.rimHeightM() + wetThicknessM;
      on.put("rim_height_mm", Math.round(rimM * MM_PER_M * 100) / 100.0);
    }
    return on;
  }

  private static void sides(ObjectNode on, Plate plate) {
    put(on, "length_mm", plate.longestM() * MM_PER_M);
    put(on, "width_mm", plate.shortestM() * MM_PER_M);
  }

  /** A figure, or where it is uncertain the rectangle it lies in. */
  public static void put(ObjectNode node, String key, Estimate estimate) {
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

  /** A figure. */
  public static void put(ObjectNode node, String key, double value) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP).stripTrailingZeros();
    node.put(key, rounded.scale() < 0 ? rounded.setScale(0) : rounded);
  }
}
