package starchfilm.request;

import static starchfilm.numerics.units.Units.G_PER_KG;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.Objects;
import starchfilm.casting.Casting;
import starchfilm.casting.Setting;
import starchfilm.casting.trial.Trial;
import starchfilm.files.amount.Unit;
import starchfilm.files.json.Located.ObjectValue;

/**
 * Puts what a maker sets into the fields of a trial.
 *
 * @param trial what the fields make now
 * @param digits how finely figures are kept
 */
record SettingFields(Trial trial, MathContext digits) {
  private static final String PER_STARCH = "g per 100 g dry starch";

  private static final Map<Setting, Said> SAID =
      Map.ofEntries(
          said(Setting.WET_THICKNESS, "wet thickness", "mm", "pour.wet_thickness_mm"),
          said(
              Setting.UNEVENNESS,
              "thin edge and thick spot from the average",
              "%",
              "pour.unevenness_pct"),
          said(Setting.PASTE_TEMPERATURE, "paste when poured", "\u00B0C", "pour.paste_C"),
          said(Setting.GLYCEROL, "glycerol", PER_STARCH, "recipe.glycerol.mass_g"),
          said(Setting.VINEGAR, "acetic acid", PER_STARCH, "recipe.vinegar.mass_g"),
          said(Setting.CONCENTRATION, "starch in the paste", "%", "recipe.water.mass_g"),
          said(Setting.COOK_TEMPERATURE, "top of the cook", "\u00B0C", "cook.top_C"),
          said(Setting.COOK_TIME, "cook", "min", "cook.minutes"),
          said(Setting.AIR_TEMPERATURE, "air", "\u00B0C", "room.air_C"),
          said(Setting.HUMIDITY, "relative humidity", "%", "room.rh_pct"),
          said(Setting.AIR_SPEED, "air speed", "m/s", "room.air_speed_m_per_s"));

  /** A setting in words, its unit for a reader, and the field that it is set by. */
  private record Said(String words, String unit, String path) {}

  private static Map.Entry<Setting, Said> said(
      Setting setting, String words, String unit, String path) {
    return Map.entry(setting, new Said(words, unit, path));
  }

  private static Said said(Setting setting) {
    return Objects.requireNonNull(SAID.get(setting), () -> setting + " has no field");
  }

  /** A figure of a setting (SI) in the unit of a reader. */
  private static double shown(Setting setting, double si) {
    return Unit.known(said(setting).unit()).orElse(Unit.PER_CENT).of(si);
  }

  /** What a setting was and what it is, such as {@code wet thickness 3 -> 2.5 mm}. */
  String sentence(Setting setting, Casting after) {
    return "%s %s \u2192 %s %s"
        .formatted(
            said(setting).words(),
            plain(shown(setting, setting.of(trial.casting()))).toPlainString(),
            plain(shown(setting, setting.of(after))).toPlainString(),
            said(setting).unit());
  }

  /**
   * The fields with a setting elsewhere.
   *
   * @param to where (SI)
   */
  ObjectValue with(ObjectValue fields, Setting setting, double to) {
    double ratio = to / setting.of(trial.casting());
    String path = said(setting).path();
    ObjectValue rest =
        fields.without(
            path.replace("mass_g", "volume_ml"),
            setting == Setting.WET_THICKNESS ? "pour.poured_g" : path);
    double figure =
        switch (setting) {
          case GLYCEROL -> trial.recipe().glycerol().massKg().value() * ratio * G_PER_KG;
          case VINEGAR -> trial.recipe().vinegar().massKg().value() * ratio * G_PER_KG;
          case CONCENTRATION -> waterKg(to) * G_PER_KG;
          default -> shown(setting, to);
        };
    return rest.with(path, plain(figure));
  }

  /** The water that brings the starch to this share of the paste; as much boils away as before. */
  private double waterKg(double starchInPaste) {
    double pasteKg = trial.casting().paste().massKg();
    double starchKg = pasteKg * trial.casting().composition().dryStarch();
    double waterKg = trial.recipe().waterKg().value() + starchKg / starchInPaste - pasteKg;
    if (waterKg <= 0) {
      throw new IllegalArgumentException(
          "Starch in the paste: so much cannot be reached by leaving out water; powder, vinegar"
              + " and glycerol bring more. Move it down.");
    }
    return waterKg;
  }

  private BigDecimal plain(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).round(digits).stripTrailingZeros();
    return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
  }
}
