package starchfilm.request;

import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import starchfilm.casting.Casting;
import starchfilm.casting.Setting;
import starchfilm.casting.trial.Trial;
import starchfilm.change.Change;
import starchfilm.change.ChangeStep;
import starchfilm.files.amount.KnownName;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.PackedText;

/**
 * One thing changed in an earlier trial, by the clear step that {@link Change} has for it.
 *
 * @param word as a maker says it, such as {@code thinner}
 */
record OneChange(String word, Trial recipe, ChangeStep step) {
  /** How far (ratio) rounding to the balance may take an amount; judged. */
  private static final double ROUNDING = 0.02;

  /** What a maker can say, and the change it means. */
  private static final Map<String, Change> WORDS =
      PackedText.rows(OneChange.class, "changes.txt", 2).stream()
          .collect(Collectors.toMap(row -> row.get(0), row -> Change.valueOf(row.get(1))));

  private static final List<Setting> AIR =
      List.of(Setting.AIR_TEMPERATURE, Setting.HUMIDITY, Setting.AIR_SPEED);

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

  private SettingFields fields() {
    return new SettingFields(recipe, new MathContext(3));
  }

  /** What it was and what it is, in the reader's units. */
  String sentence() {
    return fields().sentence(step.change().setting(), step.after());
  }

  /** Whether a casting is as the change made it, up to rounding. */
  boolean isMadeIn(Casting casting) {
    Setting setting = step.change().setting();
    double wanted = setting.of(step.after());
    return Math.abs(setting.of(casting) - wanted) <= ROUNDING * Math.abs(wanted);
  }

  /** The fields of the earlier trial with the change in them; with the air its damp changes. */
  ObjectValue on(ObjectValue fields) {
    Setting setting = step.change().setting();
    ObjectValue changed = fields;
    for (Setting one : AIR.contains(setting) ? AIR : List.of(setting)) {
      changed = fields().with(changed, one, one.of(step.after()));
    }
    return changed;
  }
}
