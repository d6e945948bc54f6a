package starchfilm.request;

import java.math.MathContext;
import java.util.Locale;
import starchfilm.casting.Casting;
import starchfilm.casting.Setting;
import starchfilm.files.json.Located.ObjectValue;

/**
 * A figure of a recipe that can be moved before it is poured, in the reader's unit. Travel and
 * usual ranges are common practice, no source.
 */
public enum Handle {
  /** Wet thickness, averaged over the plate. */
  WET("Wet thickness", 0.1, new Travel(0.5, 12), new Travel(1.5, 4), Setting.WET_THICKNESS),
  /** Glycerol, by dry starch. */
  PLASTICISER("Glycerol", 1, new Travel(5, 70), new Travel(20, 45), Setting.GLYCEROL),
  /** Dry starch in the paste, by more or less water. */
  STARCH("Starch in the paste", 0.1, new Travel(2, 15), new Travel(4, 8), Setting.CONCENTRATION),
  /** Air temperature. */
  AIR("Air", 1, new Travel(8, 45), new Travel(18, 25), Setting.AIR_TEMPERATURE),
  /** Relative humidity. */
  RH("Relative humidity", 1, new Travel(15, 85), new Travel(40, 60), Setting.HUMIDITY),
  /** Air speed over the plate; a fan makes 0.5 to 2 m/s. */
  FAN("Air over the plate", 0.05, new Travel(0, 2), new Travel(0.05, 0.2), Setting.AIR_SPEED);

  /**
   * From where to where.
   *
   * @param least the low end
   * @param most the high end
   */
  public record Travel(double least, double most) {}

  private final String label;
  private final double step;
  private final Travel ends;
  private final Travel usual;
  private final Setting setting;

  Handle(String label, double step, Travel ends, Travel usual, Setting setting) {
    this.label = label;
    this.step = step;
    this.ends = ends;
    this.usual = usual;
    this.setting = setting;
  }

  /** Its name in a form. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Its name on a page. */
  public String label() {
    return label;
  }

  /** The unit of its figures. */
  public String unit() {
    return SettingFields.unit(setting);
  }

  /** The step it moves by, in its unit. */
  public double step() {
    return step;
  }

  /** The range that people usually choose. */
  public Travel usual() {
    return usual;
  }

  /** Its ends; wide enough for the casting it starts from. */
  public Travel ends(Casting from) {
    double now = of(from);
    return new Travel(Math.min(ends.least(), now), Math.max(ends.most(), now));
  }

  /**
   * Tells whether there is something to move: glycerol to begin with, and air that stays the same.
   */
  public boolean isFree(Casting casting) {
    return setting.isFree(casting)
        && (this != PLASTICISER || casting.composition().glycerolPerDryStarch() > 0);
  }

  /** The figure of a casting, rounded to the handle's step. */
  public double of(Casting casting) {
    return toStep(SettingFields.shown(setting, setting.of(casting)));
  }

  /** The fields of a trial with it elsewhere, in its unit. */
  ObjectValue moved(TrialQuestion.Base trial, double to) {
    return new SettingFields(trial.trial(), new MathContext(9))
        .with(trial.fields(), setting, SettingFields.si(setting, to));
  }

  /** A figure to the nearest step. */
  public double toStep(double figure) {
    double inverse = 1 / step;
    return Math.round(figure * inverse) / inverse;
  }
}
