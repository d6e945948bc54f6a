package starchfilm.request;

import static starchfilm.numerics.units.Units.G_PER_KG;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import starchfilm.casting.Casting;
import starchfilm.casting.Setting;
import starchfilm.casting.trial.Trial;
import starchfilm.files.amount.Unit;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.PackedText;
import starchfilm.files.notebook.Volumes;
import starchfilm.numerics.evidence.Estimate;

/**
 * Puts what a maker sets into the fields of a trial.
 *
 * @param trial what the fields make now
 * @param digits how finely figures are kept
 */
record SettingFields(Trial trial, MathContext digits) {
  private static final Map<Setting, SettingEntry> SAID =
      PackedText.rows(SettingFields.class, "settings.txt", 4).stream()
          .collect(
              Collectors.toMap(
                  row -> Setting.valueOf(row.get(0)),
                  row -> new SettingEntry(row.get(1), row.get(2), row.get(3))));

  /** A setting in words, its unit for a reader, and the field that it is set by. */
  private record SettingEntry(String words, String unit, String path) {}

  private static SettingEntry said(Setting setting) {
    return Objects.requireNonNull(SAID.get(setting), () -> setting + " has no field");
  }

  /** The unit of a setting for a reader, such as g per 100 g dry starch. */
  static String unit(Setting setting) {
    return said(setting).unit();
  }

  /** A figure of a setting (SI) in the unit of a reader. */
  static double shown(Setting setting, double si) {
    return inUnit(setting).of(si);
  }

  /** A figure of a setting in the unit of a reader, in SI. */
  static double si(Setting setting, double shown) {
    return inUnit(setting).si(Estimate.exact(shown)).value();
  }

  /** What is counted by dry starch or paste is so many hundredths. */
  private static Unit inUnit(Setting setting) {
    return Unit.known(unit(setting)).orElse(Unit.PER_CENT);
  }

  /** What a setting was and what it is, such as {@code wet thickness 3 -> 2.5 mm}. */
  String sentence(Setting setting, Casting after) {
    return "%s %s \u2192 %s %s"
        .formatted(
            said(setting).words(),
            plain(shown(setting, setting.of(trial.casting()))).toPlainString(),
            plain(shown(setting, setting.of(after))).toPlainString(),
            unit(setting));
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
            Volumes.field(path), setting == Setting.WET_THICKNESS ? "pour.poured_g" : path);
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
