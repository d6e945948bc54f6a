package starchfilm.cli;

import static starchfilm.numerics.units.Units.G_PER_KG;
import static starchfilm.numerics.units.Units.MM_PER_M;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import starchfilm.files.notebook.FileWord;

/**
 * A trial as options: what was weighed, poured and where it dries. Put over a trial file they ask
 * "what if"; without one they are the whole trial.
 */
final class RecipeOptions {

  @Option(
      names = "--starch",
      arity = "2",
      paramLabel = "KIND MASS",
      hideParamSyntax = true,
      description = "A starch powder and its mass, such as potato \"20 g\"; may be repeated.")
  private List<String> starches = List.of();

  @Option(
      names = "--glycerol",
      paramLabel = "MASS",
      description = "Glycerol as weighed from the jar; \"0 g\" for none.")
  private @Nullable String glycerol;

  @Option(
      names = "--purity",
      paramLabel = "SHARE",
      description = "Glycerol in the jar, such as 88 %%.")
  private @Nullable String purity;

  @Option(
      names = TypedOrigin.NAME,
      paramLabel = TypedOrigin.LABEL,
      description = TypedOrigin.DESCRIPTION)
  private @Nullable String origin;

  @Option(names = "--vinegar", paramLabel = "MASS", description = "Vinegar; \"0 g\" for none.")
  private @Nullable String vinegar;

  @Option(
      names = "--acidity",
      paramLabel = "SHARE",
      description = "Acid in the vinegar, as labelled.")
  private @Nullable String acidity;

  @Option(names = "--water", paramLabel = "MASS", description = "Water poured in.")
  private @Nullable String water;

  @Option(names = "--wet", paramLabel = "LENGTH", description = "Wet thickness, such as \"3 mm\".")
  private @Nullable String wet;

  @Option(
      names = "--uneven",
      paramLabel = "SHARE",
      description = "How far thin edge and thick spot are from the average, such as 25 %%.")
  private @Nullable String uneven;

  @Option(
      names = "--air",
      paramLabel = "TEMPERATURE",
      description = "Air temperature, such as \"20 C\".")
  private @Nullable String air;

  @Option(names = "--rh", paramLabel = "SHARE", description = "Relative humidity, such as 50 %%.")
  private @Nullable String humidity;

  @Option(
      names = "--speed",
      paramLabel = "M/S",
      description = "Air speed in metres a second: 0.1 in a still room, 1 by a fan.")
  private @Nullable String speed;

  /**
   * Whether nothing was given.
   *
   * @return true where the options leave a trial as it is
   */
  boolean isEmpty() {
    return over(JsonNodeFactory.instance.objectNode()).isEmpty();
  }

  /**
   * Puts the options over a trial.
   *
   * @param trial the tree of a trial file; changed
   * @return the same tree
   */
  ObjectNode over(ObjectNode trial) {
    recipe(trial);
    if (wet != null) {
      ObjectNode pour = section(trial, "pour");
      pour.remove(List.of("poured_g", "measured_from"));
      pour.put("wet_thickness_mm", MM_PER_M * TypedAmounts.lengthM("--wet", wet));
    }
    if (uneven != null) {
      section(trial, "pour").put("unevenness_pct", percent("--uneven", uneven));
    }
    if (air != null) {
      room(trial).put("air_C", TypedAmounts.temperatureK("--air", air) - ZERO_CELSIUS_K);
    }
    if (humidity != null) {
      room(trial).put("rh_pct", percent("--rh", humidity));
    }
    if (speed != null) {
      section(trial, "room")
          .put(
              "air_speed_m_per_s",
              TypedAmounts.number("--speed", speed, "metres a second, such as 0.1"));
    }
    return trial;
  }

  private void recipe(ObjectNode trial) {
    if (!starches.isEmpty()) {
      ArrayNode list = section(trial, "recipe").putArray("starch");
      for (int i = 0; i + 1 < starches.size(); i += 2) {
        list.addObject()
            .put("kind", starches.get(i))
            .put("mass_g", grams("--starch", starches.get(i + 1)));
      }
    }
    put(trial, "glycerol", "mass_g", glycerol == null ? null : grams("--glycerol", glycerol));
    put(trial, "glycerol", "purity_pct", purity == null ? null : percent("--purity", purity));
    TypedOrigin.stated(origin)
        .ifPresent(
            from -> section(section(trial, "recipe"), "glycerol").put("origin", FileWord.of(from)));
    put(trial, "vinegar", "mass_g", vinegar == null ? null : grams("--vinegar", vinegar));
    put(trial, "vinegar", "acidity_pct", acidity == null ? null : percent("--acidity", acidity));
    put(trial, "water", "mass_g", water == null ? null : grams("--water", water));
  }

  private static void put(ObjectNode trial, String ingredient, String key, @Nullable Double value) {
    if (value != null) {
      section(section(trial, "recipe"), ingredient).put(key, value);
    }
  }

  /** A steady room of one's own takes the place of a log or a daily swing. */
  private static ObjectNode room(ObjectNode trial) {
    ObjectNode room = section(trial, "room");
    room.remove(List.of("log_csv", "swing"));
    return room;
  }

  private static ObjectNode section(ObjectNode parent, String key) {
    return parent.get(key) instanceof ObjectNode present ? present : parent.putObject(key);
  }

  private static double grams(String option, String typed) {
    return G_PER_KG * TypedAmounts.massKg(option, typed).value();
  }

  private static double percent(String option, String typed) {
    return 100 * TypedAmounts.share(option, typed);
  }
}
