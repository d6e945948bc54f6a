package starchfilm.files.saving;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

  static String in(String text, String at) throws UnreadableFileException {
    Located trial = LocatedReader.read(text);
    Optional<LocalDateTime> pouredAt = MomentParser.dated(trial.shown("poured_at"));
    List<String> times = new ArrayList<>();
    int nearest = -1;
    double apartS = SAME_TIME_S;
    for (Located weighing : trial.entries("weighings")) {
      String time = weighing.shown("at");
      double apart = Math.abs(secondsS(time, pouredAt) - secondsS(at, pouredAt));
      if (apart <= apartS) {
        apartS = apart;
        nearest = times.size();
      }
      times.add(time);
    }
    if (nearest < 0) {
      throw new UnreadableFileException(
          "no weighing at " + at,
          times.isEmpty() ? "a weighing that is noted" : "one of " + String.join(", ", times),
          "give the time of a weighing in the file");
    }
    return TextEdit.set(text, "weighings." + nearest + ".confirmed", Located.flag(true));
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
