package starchfilm.files.saving;

import static starchfilm.numerics.units.Units.CM2_PER_M2;
import static starchfilm.numerics.units.Units.G_PER_KG;
import static starchfilm.numerics.units.Units.MM_PER_M;
import static starchfilm.numerics.units.Units.PERCENT_PER_UNIT;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.Plate;
import starchfilm.casting.Room;
import starchfilm.casting.RoomUncertainty;
import starchfilm.casting.SwingingRoom;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.material.air.AirState;
import starchfilm.material.recipe.GlycerolPortion;
import starchfilm.material.recipe.GlycerolStock;
import starchfilm.material.recipe.Recipe;
import starchfilm.material.recipe.StarchPortion;
import starchfilm.material.recipe.VinegarPortion;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.units.Named;

/** The fields of a trial file that say what is cast. */
public final class CastingFields {
  private static final int DECIMALS = 6;

  /** Below it a file has no forecast. */
  private static final double COLDEST_C = 1;

  /** Half the width of a rectangle over its standard deviation. */
  private static final double HALF_WIDTH = Math.sqrt(3);

  private CastingFields() {}

  /**
   * The fields of what went into the pot.
   *
   * @param recipe the recipe
   * @param besideJar whether the file will lie beside the kept jar it takes from
   */
  public static ObjectValue recipe(Recipe recipe, boolean besideJar) {
    GlycerolPortion glycerol = recipe.glycerol();
    ObjectValue jar = grams(Located.object(), glycerol.massKg());
    Optional<VinegarPortion> vinegar =
        Optional.of(recipe.vinegar()).filter(sour -> sour.massKg().value() > 0);
    return Located.object()
        .with(
            "starch", Located.list(recipe.starches().stream().map(CastingFields::starch).toList()))
        .with(
            "glycerol",
            besideJar
                ? jar.with("jar", glycerol.stock().jar())
                : withContent(jar, glycerol.stock()))
        .with(
            "vinegar",
            vinegar.map(
                sour ->
                    grams(Located.object(), sour.massKg())
                        .with("acidity_pct", percent(sour.acidityFraction()))))
        .with("water", grams(Located.object(), recipe.waterKg()));
  }

  private static ObjectValue starch(StarchPortion starch) {
    return grams(Located.object().with("kind", starch.kind().tradeName()), starch.massKg())
        .with("moisture_pct", percent(starch.moistureFraction()));
  }

  /** What a recipe says to weigh, whose doubt is not of the scale. */
  private static ObjectValue grams(ObjectValue fields, Estimate massKg) {
    return fields.with("mass_g", figure(massKg.value() * G_PER_KG));
  }

  /** With what is in a jar of glycerol. */
  static ObjectValue withContent(ObjectValue jar, GlycerolStock stock) {
    return jar.with("purity_pct", percent(stock.glycerolFraction()))
        .with("salt_pct", percent(stock.saltFraction()))
        .with("origin", Named.of(stock.origin()));
  }

  /**
   * The fields of the place where it dries.
   *
   * @param place the place
   * @param log the log of its room, where that has one
   */
  public static ObjectValue room(DryingPlace place, Optional<Path> log) {
    AirState air = place.room().at(0);
    RoomUncertainty doubt = place.uncertainty();
    Optional<String> name =
        Optional.of(place.name()).filter(named -> !named.equals(DryingPlace.UNNAMED));
    // The name, so that what is poured there teaches of that room.
    ObjectValue windy =
        Located.object()
            .with("name", name.map(Located::text))
            .with(
                "air_speed_m_per_s",
                range(air.speedMPerS(), doubt.speedRelativeSd() * air.speedMPerS(), 0));
    ObjectValue room =
        log.isPresent()
            ? windy.with("log_csv", String.valueOf(log.get().getFileName()))
            : place
                .room()
                .map(
                    new Room.Kinds<>(
                        constant -> air(windy, air, doubt),
                        swinging -> windy.with("swing", swing(swinging)),
                        logged -> air(windy, air, doubt)));
    return room.with(
        "bench_C", place.benchTemperatureK().stream().mapToObj(CastingFields::celsius).findFirst());
  }

  private static ObjectValue air(ObjectValue room, AirState air, RoomUncertainty doubt) {
    double percent = air.relativeHumidity() * PERCENT_PER_UNIT;
    double dampest = Math.min(doubt.humiditySd(), (1 - air.relativeHumidity()) / HALF_WIDTH);
    return room.with(
            "air_C", range(air.temperatureK() - ZERO_CELSIUS_K, doubt.temperatureSdK(), COLDEST_C))
        .with("rh_pct", range(percent, dampest * PERCENT_PER_UNIT, 0));
  }

  /** A range that keeps its middle where it would reach below what a field allows. */
  private static Located range(double value, double sd, double least) {
    double half = Math.min(sd * HALF_WIDTH, Math.max(0, value - least));
    double plain = BigDecimal.valueOf(half).round(new MathContext(3)).doubleValue();
    return range(new Estimate(value, plain / HALF_WIDTH));
  }

  private static ObjectValue swing(SwingingRoom room) {
    double warmthK = room.mean().temperatureK();
    double humidity = room.mean().relativeHumidity();
    return Located.object()
        .with("coolest_C", celsius(warmthK - room.temperatureHalfSwingK()))
        .with("warmest_C", celsius(warmthK + room.temperatureHalfSwingK()))
        .with("driest_rh_pct", figure((humidity - room.humidityHalfSwing()) * PERCENT_PER_UNIT))
        .with("dampest_rh_pct", figure((humidity + room.humidityHalfSwing()) * PERCENT_PER_UNIT));
  }

  /** The areas of the second and the further plates. */
  public static Located otherAreas(List<Plate> each) {
    return Located.list(
        each.stream().skip(1).map(plate -> figure(plate.areaM2() * CM2_PER_M2)).toList());
  }

  /**
   * One plate, its rim as measured on the empty one; a casting's plate has what the pour leaves.
   *
   * @param plate the plate of a casting
   * @param wetThicknessM how thick it is poured (m)
   */
  public static ObjectValue plate(Plate plate, double wetThicknessM) {
    ObjectValue of = Located.object().with("material", plate.material().tradeName());
    ObjectValue sized =
        switch (plate.outline()) {
          case FREE -> of.with("area_cm2", figure(plate.areaM2() * CM2_PER_M2));
          case ELLIPSE ->
              plate.isRound()
                  ? of.with("diameter_mm", figure(plate.longestM() * MM_PER_M))
                  : sides(of.with("shape", "oval"), plate);
          case RECTANGLE -> sides(of, plate);
        };
    ObjectValue thick = sized.with("thickness_mm", figure(plate.thicknessM() * MM_PER_M));
    double rimMm = (plate.rimHeightM() + wetThicknessM) * MM_PER_M;
    return plate.rimHeightM() > 0
        ? thick.with("rim_height_mm", figure(Math.round(rimMm * 100) / 100.0))
        : thick;
  }

  private static ObjectValue sides(ObjectValue plate, Plate of) {
    return plate
        .with("length_mm", figure(of.longestM() * MM_PER_M))
        .with("width_mm", figure(of.shortestM() * MM_PER_M));
  }

  private static Located celsius(double kelvin) {
    return figure(kelvin - ZERO_CELSIUS_K);
  }

  /** A fraction in per cent, as {@link #range}. */
  private static Located percent(Estimate fraction) {
    return range(fraction.times(PERCENT_PER_UNIT), PERCENT_PER_UNIT);
  }

  /** A figure, or where it is uncertain the rectangle it lies in. */
  public static Located range(Estimate estimate) {
    return range(estimate, Double.POSITIVE_INFINITY);
  }

  private static Located range(Estimate estimate, double most) {
    double half = estimate.sd() * HALF_WIDTH;
    return half == 0
        ? figure(estimate.value())
        : Located.object()
            .with("from", figure(Math.max(0, estimate.value() - half)))
            .with("to", figure(Math.min(most, estimate.value() + half)));
  }

  /** A figure. */
  public static Located figure(double value) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP).stripTrailingZeros();
    return Located.number(rounded);
  }
}
