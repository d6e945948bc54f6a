package starchfilm.files.saving;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.MomentParser;
import starchfilm.files.json.Located;
import starchfilm.files.json.LocatedReader;
import starchfilm.files.json.TextEdit;
import starchfilm.files.json.UnreadableFileException;

/** Marks a weighing of a trial file as right, found by its time. */
final class ConfirmedWeighing {
  /** A time typed in hours with one decimal is that of the weighing (s). */
  private static final double SAME_TIME_S = 190;

  private ConfirmedWeighing() {}

  /**
   * The text with a weighing marked.
   *
   * @param at its time
   * @param of the number of its plate; empty where none is named
   */
  static String in(String text, String at, Optional<String> of) throws UnreadableFileException {
    Located trial = LocatedReader.read(text);
    Optional<LocalDateTime> pouredAt = MomentParser.dated(trial.shown("poured_at"));
    List<Located> weighings = trial.entries("weighings");
    List<Integer> there = new ArrayList<>();
    double apartS = SAME_TIME_S;
    for (int i = 0; i < weighings.size(); i++) {
      double apart =
          Math.abs(secondsS(weighings.get(i).shown("at"), pouredAt) - secondsS(at, pouredAt));
      boolean isOfIt = of.isEmpty() || of.get().equals(plate(weighings.get(i)));
      if (isOfIt && apart <= apartS) {
        if (apart < apartS) {
          there.clear();
        }
        apartS = apart;
        there.add(i);
      }
    }
    String plate = of.map(number -> " of plate " + number).orElse("");
    if (there.isEmpty()) {
      throw new UnreadableFileException(
          "no weighing" + plate + " at " + at,
          weighings.isEmpty()
              ? "a weighing that is noted"
              : "one of "
                  + weighings.stream()
                      .map(one -> one.shown("at"))
                      .collect(Collectors.joining(", ")),
          "give the time of a weighing in the file");
    }
    if (there.size() > 1) {
      throw new UnreadableFileException(
          "several weighings at " + at,
          "one weighing",
          "say of which plate it is, such as --of "
              + plate(weighings.get(there.get(there.size() - 1))));
    }
    return TextEdit.set(text, "weighings." + there.get(0) + ".confirmed", Located.flag(true));
  }

  private static String plate(Located weighing) {
    return weighing.get("plate").map(Located::shown).orElse("1");
  }

  /** Seconds after the pour; none that could be compared where a time cannot be read. */
  private static double secondsS(String text, Optional<LocalDateTime> pouredAt) {
    try {
      return MomentParser.lasting(text).secondsSince(pouredAt).orElse(Double.NaN);
    } catch (MistypedException none) {
      return Double.NaN;
    }
  }
}
