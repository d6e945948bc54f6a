package starchfilm.files.saving;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import starchfilm.casting.trial.Trial;
import starchfilm.files.findings.Fault;
import starchfilm.files.findings.Findings;
import starchfilm.files.notebook.TrialReader;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Paste;

/**
 * A trial with another wet thickness and another plasticiser level, to be looked at before anybody
 * pours it.
 *
 * @param wetThicknessMm wet thickness (mm)
 * @param plasticiserPer100 glycerol per 100 g dry starch (g)
 */
public record Sketch(double wetThicknessMm, double plasticiserPer100) {
  private static final String FILE = "sketch.json";

  /** Paste that a pot holds beyond what is poured, at most (ratio); judged, no source. */
  private static final double MOST_SPARE = 0.25;

  /** From here on a kitchen scale of 1 g will do (g). */
  private static final double WHOLE_FROM_G = 100;

  /** Below this a scale of 0.1 g is too coarse (g). */
  private static final double HUNDREDTHS_BELOW_G = 2;

  /**
   * A trial as it is.
   *
   * @param trial the trial
   * @return its thickness to 0.1 mm and its plasticiser to 1 g
   */
  public static Sketch of(Trial trial) {
    Composition paste = Paste.cooked(trial.recipe()).composition();
    return new Sketch(
        Math.round(1e4 * trial.casting().pour().wetThicknessM().value()) / 10.0,
        Math.round(100 * paste.glycerolPerDryStarch()));
  }

  /**
   * Whether the plasticiser of a trial can be moved: there must be some to begin with.
   *
   * @param trial the trial
   * @return false for a recipe without glycerol
   */
  public static boolean canMovePlasticiser(Trial trial) {
    return trial.recipe().glycerol().massKg().value() > 0;
  }

  /**
   * The text of a new trial file: the same trial without its history, poured this thick on this
   * many plates, with as much from its jar as this plasticiser level needs, and everything in the
   * pot scaled so that the paste is enough. Where the pot of the trial held enough already, and no
   * more than a quarter too much, its amounts stay as they are written.
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
    Sketch unmoved = of(base);
    ObjectNode pour = child(trial, "pour");
    pour.put("plates", plates);
    if (wetThicknessMm != unmoved.wetThicknessMm()) {
      pour.remove("poured_g");
      pour.put("wet_thickness_mm", BigDecimal.valueOf(wetThicknessMm).stripTrailingZeros());
    }
    boolean softer = canMovePlasticiser(base) && plasticiserPer100 != unmoved.plasticiserPer100();
    if (softer) {
      double now = Paste.cooked(base.recipe()).composition().glycerolPerDryStarch();
      double jarG =
          1000 * base.recipe().glycerol().massKg().value() * plasticiserPer100 / (100 * now);
      ObjectNode glycerol = child(child(trial, "recipe"), "glycerol");
      glycerol.remove("volume_ml");
      glycerol.put("mass_g", BigDecimal.valueOf(jarG).round(new MathContext(9)));
    }
    Trial unscaled = trial(base.file().resolveSibling(FILE), TrialTree.text(trial));
    double factor = factor(base, unscaled, leastSpare);
    if (Math.abs(factor - 1) > 1e-6) {
      scale(child(trial, "recipe"), factor);
      if (trial.get("cook") instanceof ObjectNode cook) {
        scale(cook, factor);
      }
    } else if (softer) {
      scale(child(child(trial, "recipe"), "glycerol"), 1);
    }
    return TrialTree.text(trial);
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
