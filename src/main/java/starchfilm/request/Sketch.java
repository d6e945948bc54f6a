package starchfilm.request;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import starchfilm.casting.trial.Trial;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.ListValue;
import starchfilm.files.json.Located.Member;
import starchfilm.files.json.Located.NumberValue;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.saving.FreshTrial;
import starchfilm.files.saving.NotWrittenException;

/**
 * A trial that was moved about, to be looked at before anybody pours it.
 *
 * @param figures where its handles stand, in their units; those that are missing are not moved
 */
public record Sketch(Map<Handle, Double> figures) {
  private static final Pattern AMOUNT =
      Pattern.compile("(?:\\.[^._][^.]*)*_(?:g|ml)(?:\\.(?:from|to))?");

  /** Paste that a pot holds beyond what is poured, at most (ratio); judged, no source. */
  private static final double MOST_SPARE = 0.25;

  /** From here on a kitchen scale of 1 g will do (g). */
  private static final double WHOLE_FROM_G = 100;

  /** Below this a scale of 0.1 g is too coarse (g). */
  private static final double HUNDREDTHS_BELOW_G = 2;

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
   * A new trial: the same without its history, poured this thick on this many plates, with as much
   * glycerol and water as its handles ask for, and everything in the pot scaled so that the paste
   * is enough. Where the pot of the trial held enough already, and no more than a quarter too much,
   * its amounts stay as they are written.
   *
   * @param base the trial
   * @param name what the new trial is called
   * @param plates plates poured from the pot
   * @param leastSpare paste that stays in the pot, over what is poured (ratio)
   * @return the new trial; scaled amounts are rounded to three digits or so
   * @throws NotWrittenException where it makes no trial
   */
  public TrialQuestion.Base applied(
      TrialQuestion.Base base, String name, int plates, double leastSpare)
      throws NotWrittenException {
    TrialQuestion.Base now =
        read(
            base,
            FreshTrial.of(base.fields())
                .with("name", name)
                .with("pour.plates", BigDecimal.valueOf(plates)));
    for (Handle handle : Handle.values()) {
      for (int round = 0; isMoved(handle, base.trial()) && round < rounds(handle); round++) {
        now = read(base, handle.moved(now, figures.getOrDefault(handle, 0.0)));
      }
    }
    double factor = factor(base.trial(), now.trial(), leastSpare);
    if (Math.abs(factor - 1) > 1e-6) {
      return read(base, (ObjectValue) scaled(now.fields(), "", List.of("recipe", "cook"), factor));
    }
    List<String> rounded = new ArrayList<>();
    if (isMoved(Handle.PLASTICISER, base.trial())) {
      rounded.add("recipe.glycerol");
    }
    if (isMoved(Handle.STARCH, base.trial())) {
      rounded.add("recipe.water");
    }
    return read(base, (ObjectValue) scaled(now.fields(), "", rounded, 1));
  }

  /** What steams off grows with the water, so that a concentration is reached in a few rounds. */
  private static int rounds(Handle handle) {
    return handle == Handle.STARCH ? 4 : 1;
  }

  private static TrialQuestion.Base read(TrialQuestion.Base base, ObjectValue fields)
      throws NotWrittenException {
    return TrialQuestion.Base.of(fields, base.trial().file());
  }

  /** Whether a handle stands elsewhere than the base has it. */
  private boolean isMoved(Handle handle, Trial base) {
    Double to = figures.get(handle);
    return to != null && handle.isFree(base.casting()) && to != handle.of(base.casting());
  }

  /** How many times the amounts of a trial are needed; the base's own spare paste is kept. */
  private static double factor(Trial base, Trial unscaled, double leastSpare) {
    double spare = base.casting().paste().massKg() / base.casting().pouredOnAllKg() - 1;
    double kept = Math.max(leastSpare, Math.min(MOST_SPARE, spare));
    return unscaled.casting().pouredOnAllKg() * (1 + kept) / unscaled.casting().paste().massKg();
  }

  /**
   * Multiplies whatever is in grams or millilitres in these parts; a field of the maker's own
   * stays.
   */
  private static Located scaled(Located value, String path, List<String> parts, double factor) {
    if (value instanceof ObjectValue object) {
      Map<String, Member> members = new LinkedHashMap<>(object.members());
      members.replaceAll(
          (key, member) ->
              new Member(member.key(), scaled(member.value(), path + "." + key, parts, factor)));
      return new ObjectValue(object.place(), members, object.repeated());
    }
    if (value instanceof ListValue list) {
      return new ListValue(
          list.place(),
          list.entries().stream().map(entry -> scaled(entry, path, parts, factor)).toList());
    }
    boolean isAmount =
        AMOUNT.matcher(path).matches()
            && parts.stream().anyMatch(part -> path.startsWith("." + part + "."));
    if (!isAmount || !(value instanceof NumberValue number)) {
      return value;
    }
    BigDecimal scaled = scaled(number.value() * factor);
    return new NumberValue(number.place(), scaled.toPlainString(), scaled.doubleValue());
  }

  private static BigDecimal scaled(double exact) {
    int places = exact >= WHOLE_FROM_G ? 0 : exact >= HUNDREDTHS_BELOW_G ? 1 : 2;
    return BigDecimal.valueOf(exact)
        .round(new MathContext(9))
        .setScale(places, RoundingMode.HALF_UP);
  }
}
