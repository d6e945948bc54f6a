package starchfilm.files.saving;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import starchfilm.files.findings.Fault;
import starchfilm.files.findings.Findings;
import starchfilm.files.notebook.TrialReader;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Paste;
import starchfilm.trial.Trial;

/**
 * A trial with another wet thickness and another plasticiser level, to be looked at before anybody
 * pours it.
 *
 * @param wetThicknessMm wet thickness (mm)
 * @param plasticiserPer100 glycerol per 100 g dry starch (g)
 */
public record Sketch(double wetThicknessMm, double plasticiserPer100) {
  /** What a scale of 0.1 g can weigh out of a jar (g). */
  private static final int GRAM_PLACES = 1;

  /**
   * A trial as it is.
   *
   * @param trial the trial
   * @return its thickness to 0.1 mm and its plasticiser to 1 g
   */
  public static Sketch of(Trial trial) {
    Composition paste = Paste.cooked(trial.recipe()).composition();
    return new Sketch(
        Math.round(1e4 * trial.pour().wetThicknessM().value()) / 10.0,
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
   * The text of a new trial file: the same trial without its history, poured this thick, with as
   * much from its jar as this plasticiser level needs.
   *
   * @param base the trial
   * @param text the text of its file
   * @param name what the new trial is called
   * @return the text of the new file; the glycerol to 0.1 g
   * @throws NotWrittenException where the text is no JSON object
   */
  public String applied(Trial base, String text, String name) throws NotWrittenException {
    ObjectNode trial = FreshTrial.withoutHistory(text);
    trial.put("name", name);
    ObjectNode pour = child(trial, "pour");
    pour.remove("poured_g");
    pour.put("wet_thickness_mm", BigDecimal.valueOf(wetThicknessMm).stripTrailingZeros());
    if (canMovePlasticiser(base)) {
      double now = Paste.cooked(base.recipe()).composition().glycerolPerDryStarch();
      double jarG =
          1000 * base.recipe().glycerol().massKg().value() * plasticiserPer100 / (100 * now);
      ObjectNode glycerol = child(child(trial, "recipe"), "glycerol");
      glycerol.remove("volume_ml");
      glycerol.put("mass_g", rounded(jarG));
    }
    return FreshTrial.text(trial);
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
    Findings findings = new Findings("sketch");
    Optional<Trial> trial = new TrialReader().read(text, folder.resolve("sketch.json"), findings);
    List<Fault> faults = findings.faults();
    if (trial.isEmpty() || !faults.isEmpty()) {
      throw new NotWrittenException(faults);
    }
    return trial.get();
  }

  private static BigDecimal rounded(double grams) {
    BigDecimal fine = BigDecimal.valueOf(grams).round(new MathContext(9));
    return fine.setScale(GRAM_PLACES, RoundingMode.HALF_UP);
  }

  private static ObjectNode child(ObjectNode parent, String name) {
    return parent.get(name) instanceof ObjectNode there ? there : parent.putObject(name);
  }
}
