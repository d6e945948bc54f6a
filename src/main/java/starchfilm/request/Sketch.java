package starchfilm.request;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import starchfilm.casting.trial.Trial;
import starchfilm.files.findings.Fault;
import starchfilm.files.findings.Findings;
import starchfilm.files.notebook.TrialReader;
import starchfilm.files.saving.FreshTrial;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.TrialTree;

/**
 * A trial that was moved about, to be looked at before anybody pours it.
 *
 * @param figures where its handles stand, in their units; those that are missing are not moved
 */
public record Sketch(Map<Handle, Double> figures) {
  private static final String FILE = "sketch.json";
  private static final Map<Handle, String> OF_ROOM =
      Map.of(Handle.AIR, "air_C", Handle.RH, "rh_pct", Handle.FAN, "air_speed_m_per_s");

  /** Paste that a pot holds beyond what is poured, at most (ratio); judged, no source. */
  private static final double MOST_SPARE = 0.25;

  /** From here on a kitchen scale of 1 g will do (g). */
  private static final double WHOLE_FROM_G = 100;

  /** Below this a scale of 0.1 g is too coarse (g). */
  private static final double HUNDREDTHS_BELOW_G = 2;

  /** What steams off grows with the water, so that a concentration is reached in a few rounds. */
  private static final int ROUNDS = 4;

  public Sketch {
    figures = Map.copyOf(figures);
  }

  /**
   * A trial as it is.
   *
   * @param trial the trial
   * @return all handles that can be moved, where they stand
   */
  public static Sketch of(Trial trial) {
    Map<Handle, Double> figures = new EnumMap<>(Handle.class);
    for (Handle handle : Handle.values()) {
      if (handle.isFree(trial.casting())) {
        figures.put(handle, handle.of(trial.casting()));
      }
    }
    return new Sketch(figures);
  }

  /**
   * The same with a handle elsewhere.
   *
   * @param handle the handle
   * @param to where, in its unit
   * @return the moved sketch
   */
  public Sketch with(Handle handle, double to) {
    Map<Handle, Double> moved = new EnumMap<>(Handle.class);
    moved.putAll(figures);
    moved.put(handle, to);
    return new Sketch(moved);
  }

  /**
   * The text of a new trial file: the same trial without its history, poured this thick on this
   * many plates, with as much glycerol and water as its handles ask for, and everything in the pot
   * scaled so that the paste is enough. Where the pot of the trial held enough already, and no more
   * than a quarter too much, its amounts stay as they are written.
   *
   * @param base the trial
   * @param text the text of its file
   * @param name what the new trial is called
   * @param plates plates poured from the pot
   * @param leastSpare paste that stays in the pot, over what is poured (ratio)
   * @return the text of the new file; scaled amounts are rounded to three digits or so
   * @throws NotWrittenException where the text is no JSON object or makes no trial
   */
  public String applied(Trial base, String text, String name, int plates, double leastSpare)
      throws NotWrittenException {
    ObjectNode trial = FreshTrial.withoutHistory(text);
    trial.put("name", name);
    ObjectNode pour = child(trial, "pour");
    pour.put("plates", plates);
    moved(base, Handle.WET)
        .ifPresent(
            mm -> {
              pour.remove("poured_g");
              pour.put("wet_thickness_mm", figure(mm));
            });
    OptionalDouble level = moved(base, Handle.PLASTICISER);
    if (level.isPresent()) {
      double now = base.casting().composition().glycerolPerDryStarch();
      double jarG =
          1000 * base.recipe().glycerol().massKg().value() * level.getAsDouble() / (100 * now);
      put(child(child(trial, "recipe"), "glycerol"), jarG);
    }
    OptionalDouble share = moved(base, Handle.STARCH);
    if (share.isPresent()) {
      water(base, trial, share.getAsDouble() / 100);
    }
    OF_ROOM.forEach(
        (handle, field) ->
            moved(base, handle).ifPresent(to -> child(trial, "room").put(field, figure(to))));
    Trial unscaled = trial(base.file().resolveSibling(FILE), TrialTree.text(trial));
    double factor = factor(base, unscaled, leastSpare);
    if (Math.abs(factor - 1) > 1e-6) {
      scale(child(trial, "recipe"), factor);
      if (trial.get("cook") instanceof ObjectNode cook) {
        scale(cook, factor);
      }
    } else {
      if (level.isPresent()) {
        scale(child(child(trial, "recipe"), "glycerol"), 1);
      }
      if (share.isPresent()) {
        scale(child(child(trial, "recipe"), "water"), 1);
      }
    }
    return TrialTree.text(trial);
  }

  /** Where a handle stands if that is not where the base has it. */
  private OptionalDouble moved(Trial base, Handle handle) {
    Double to = figures.get(handle);
    return to == null || !handle.isFree(base.casting()) || to == handle.of(base.casting())
        ? OptionalDouble.empty()
        : OptionalDouble.of(to);
  }

  /** Adds or takes water until the paste holds this share of dry starch. */
  private static void water(Trial base, ObjectNode trial, double share) throws NotWrittenException {
    ObjectNode water = child(child(trial, "recipe"), "water");
    double waterKg = base.recipe().waterKg().value();
    for (int round = 0; round < ROUNDS; round++) {
      Trial now = trial(base.file().resolveSibling(FILE), TrialTree.text(trial));
      double pasteKg = now.casting().paste().massKg();
      double starchKg = pasteKg * now.casting().composition().dryStarch();
      waterKg += starchKg / share - pasteKg;
      if (waterKg <= 0) {
        throw new IllegalArgumentException(
            "Starch in the paste: so much cannot be reached by leaving out water; powder, vinegar"
                + " and glycerol bring more. Move it down.");
      }
      put(water, 1000 * waterKg);
    }
  }

  private static void put(ObjectNode ingredient, double grams) {
    ingredient.remove("volume_ml");
    ingredient.put("mass_g", BigDecimal.valueOf(grams).round(new MathContext(9)));
  }

  private static BigDecimal figure(double value) {
    BigDecimal plain = BigDecimal.valueOf(value).round(new MathContext(6)).stripTrailingZeros();
    return plain.scale() < 0 ? plain.setScale(0) : plain;
  }

  /** How many times the amounts of a trial are needed; the base's own spare paste is kept. */
  private static double factor(Trial base, Trial unscaled, double leastSpare) {
    double spare = base.casting().paste().massKg() / base.casting().pouredOnAllKg() - 1;
    double kept = Math.max(leastSpare, Math.min(MOST_SPARE, spare));
    return unscaled.casting().pouredOnAllKg() * (1 + kept) / unscaled.casting().paste().massKg();
  }

  /** Multiplies whatever is in grams or millilitres; a field of the maker's own stays. */
  private static void scale(JsonNode node, double factor) {
    if (node instanceof ObjectNode object) {
      for (String field : fieldNames(object)) {
        JsonNode value = object.get(field);
        boolean isAmount = field.endsWith("_g") || field.endsWith("_ml");
        if (field.startsWith("_")) {
          continue;
        }
        if (isAmount && value.isNumber()) {
          object.put(field, scaled(value, factor));
        } else if (isAmount && value instanceof ObjectNode range) {
          for (String end : List.of("from", "to")) {
            if (range.path(end).isNumber()) {
              range.put(end, scaled(range.get(end), factor));
            }
          }
        } else if (!isAmount) {
          scale(value, factor);
        }
      }
    } else if (node.isArray()) {
      node.forEach(entry -> scale(entry, factor));
    }
  }

  private static List<String> fieldNames(ObjectNode object) {
    List<String> names = new ArrayList<>();
    object.fieldNames().forEachRemaining(names::add);
    return names;
  }

  private static BigDecimal scaled(JsonNode amount, double factor) {
    double exact = amount.doubleValue() * factor;
    int places = exact >= WHOLE_FROM_G ? 0 : exact >= HUNDREDTHS_BELOW_G ? 1 : 2;
    return BigDecimal.valueOf(exact)
        .round(new MathContext(9))
        .setScale(places, RoundingMode.HALF_UP);
  }

  /**
   * Reads a text as the trial it would be.
   *
   * @param folder the folder it would lie in
   * @param text its text
   * @return the trial
   * @throws NotWrittenException where it has faults
   */
  public static Trial read(Path folder, String text) throws NotWrittenException {
    return trial(folder.resolve(FILE), text);
  }

  private static Trial trial(Path file, String text) throws NotWrittenException {
    Findings findings = new Findings("sketch");
    Optional<Trial> trial = new TrialReader().read(text, file, findings);
    List<Fault> faults = findings.faults();
    if (trial.isEmpty() || !faults.isEmpty()) {
      throw new NotWrittenException(faults);
    }
    return trial.get();
  }

  private static ObjectNode child(ObjectNode parent, String name) {
    return parent.get(name) instanceof ObjectNode there ? there : parent.putObject(name);
  }
}
