package starchfilm.request;

import static starchfilm.numerics.units.Units.G_PER_KG;
import static starchfilm.numerics.units.Units.MINUTE_S;
import static starchfilm.numerics.units.Units.MM_PER_M;
import static starchfilm.numerics.units.Units.PERCENT_PER_UNIT;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import starchfilm.casting.Casting;
import starchfilm.casting.Setting;
import starchfilm.casting.trial.Trial;
import starchfilm.change.Change;
import starchfilm.change.ChangeStep;
import starchfilm.files.amount.KnownName;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.json.Located.NumberValue;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.Located.Place;

/**
 * One thing changed in an earlier trial, by the clear step that {@link Change} has for it.
 *
 * @param word as a maker says it, such as {@code thinner}
 */
record OneChange(String word, Trial recipe, ChangeStep step) {
  /** What a maker can say, and the change it means. */
  private static final Map<String, Change> WORDS =
      Map.ofEntries(
          Map.entry("thinner", Change.POUR_THINNER),
          Map.entry("thicker", Change.POUR_THICKER),
          Map.entry("level", Change.LEVEL_THE_PLATE),
          Map.entry("poured hotter", Change.POUR_HOTTER),
          Map.entry("more glycerol", Change.MORE_GLYCEROL),
          Map.entry("less glycerol", Change.LESS_GLYCEROL),
          Map.entry("more water", Change.MORE_WATER),
          Map.entry("less water", Change.LESS_WATER),
          Map.entry("less vinegar", Change.LESS_VINEGAR),
          Map.entry("fan", Change.FAN),
          Map.entry("warmer", Change.WARMER_ROOM),
          Map.entry("cooked longer", Change.COOK_LONGER),
          Map.entry("cooked shorter", Change.COOK_SHORTER),
          Map.entry("cooked hotter", Change.COOK_HOTTER),
          Map.entry("cooked cooler", Change.COOK_COOLER));

  /** What may be said, in the order of the alphabet. */
  static List<String> words() {
    return WORDS.keySet().stream().sorted().toList();
  }

  /** The change that is meant, on the trial that is poured again. */
  static OneChange of(String typed, Optional<Trial> earlier) {
    String bare = typed.strip().toLowerCase(Locale.ROOT).replaceFirst("^(but|with a|with) ", "");
    String word = KnownName.find(bare, words(), List::of);
    Trial trial =
        earlier.orElseThrow(
            () ->
                new MistypedException(
                    typed,
                    "a change together with the earlier trial it applies to",
                    "name that trial's file with --from"));
    ChangeStep step =
        Optional.ofNullable(WORDS.get(word))
            .flatMap(change -> change.clearStep(trial.casting()))
            .orElseThrow(
                () ->
                    new MistypedException(
                        typed,
                        "a change that leaves a film worth pouring, and this trial has no such step",
                        "write the new value itself, such as --wet \"2 mm\""));
    return new OneChange(word, trial, step);
  }

  private Setting setting() {
    return step.change().setting();
  }

  /** What it was and what it is, in the reader's units. */
  String sentence() {
    return switch (setting()) {
      case WET_THICKNESS -> told("wet thickness", MM_PER_M, 0, " mm");
      case UNEVENNESS -> told("thin edge and thick spot from the average", 100, 0, " %");
      case PASTE_TEMPERATURE -> told("paste when poured", 1, ZERO_CELSIUS_K, " °C");
      case GLYCEROL -> told("glycerol", 100, 0, " g per 100 g dry starch");
      case CONCENTRATION -> told("starch in the paste", 100, 0, " %");
      case VINEGAR -> told("acetic acid", 100, 0, " g per 100 g dry starch");
      case COOK_TEMPERATURE -> told("top of the cook", 1, ZERO_CELSIUS_K, " °C");
      case COOK_TIME -> told("cook", 1 / MINUTE_S, 0, " min");
      case AIR_TEMPERATURE -> told("air", 1, ZERO_CELSIUS_K, " °C");
      case HUMIDITY -> told("relative humidity", 100, 0, " %");
      case AIR_SPEED -> told("air speed", 1, 0, " m/s");
      case STARCH, WATER, SALT -> throw new IllegalStateException(setting() + " has no word");
    };
  }

  private String told(String what, double factor, double zero, String unit) {
    return what
        + " "
        + shown(factor * (setting().of(step.before()) - zero))
        + " → "
        + shown(factor * (setting().of(step.after()) - zero))
        + unit;
  }

  private static String shown(double value) {
    return BigDecimal.valueOf(value).round(new MathContext(3)).stripTrailingZeros().toPlainString();
  }

  /** The fields of the earlier trial with the change in them. */
  ObjectValue on(ObjectValue fields) {
    Casting after = step.after();
    double to = setting().of(after);
    double ratio = to / setting().of(step.before());
    return switch (setting()) {
      case WET_THICKNESS ->
          with(fields.without("pour.poured_g"), "pour.wet_thickness_mm", to * MM_PER_M);
      case UNEVENNESS -> with(fields, "pour.unevenness_pct", to * PERCENT_PER_UNIT);
      case PASTE_TEMPERATURE -> with(fields, "pour.paste_C", to - ZERO_CELSIUS_K);
      case GLYCEROL ->
          amount(fields, "glycerol", recipe.recipe().glycerol().massKg().value() * ratio);
      case VINEGAR -> amount(fields, "vinegar", recipe.recipe().vinegar().massKg().value() * ratio);
      case CONCENTRATION -> amount(fields, "water", waterKg(to));
      case COOK_TEMPERATURE -> with(fields, "cook.top_C", to - ZERO_CELSIUS_K);
      case COOK_TIME -> with(fields, "cook.minutes", to / MINUTE_S);
      case AIR_TEMPERATURE, HUMIDITY, AIR_SPEED -> room(fields, after);
      case STARCH, WATER, SALT -> throw new IllegalStateException(setting() + " has no field");
    };
  }

  /** The water that brings the starch to this share of the paste; as much boils away as before. */
  private double waterKg(double starchInPaste) {
    Casting before = step.before();
    double pasteKg = before.paste().massKg();
    double dryKg = pasteKg * before.composition().dryStarch();
    return recipe.recipe().waterKg().value() + dryKg / starchInPaste - pasteKg;
  }

  private static ObjectValue room(ObjectValue fields, Casting casting) {
    var air = casting.room().at(0);
    ObjectValue trial = with(fields, "room.air_C", air.temperatureK() - ZERO_CELSIUS_K);
    trial = with(trial, "room.rh_pct", air.relativeHumidity() * PERCENT_PER_UNIT);
    return with(trial, "room.air_speed_m_per_s", air.speedMPerS());
  }

  private static ObjectValue amount(ObjectValue fields, String ingredient, double kg) {
    String path = "recipe." + ingredient;
    return with(fields.without(path + ".volume_ml"), path + ".mass_g", kg * G_PER_KG);
  }

  /** To three digits, as a scale shows them. */
  private static ObjectValue with(ObjectValue fields, String path, double value) {
    BigDecimal digits = BigDecimal.valueOf(value).round(new MathContext(3)).stripTrailingZeros();
    BigDecimal plain = digits.scale() < 0 ? digits.setScale(0) : digits;
    return fields.with(
        path, new NumberValue(new Place(path, 1, 1), plain.toPlainString(), plain.doubleValue()));
  }
}
