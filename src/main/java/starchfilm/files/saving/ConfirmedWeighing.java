package starchfilm.files.saving;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.Moment;
import starchfilm.files.amount.MomentParser;
import starchfilm.files.json.TextEdit;
import starchfilm.files.json.UnreadableFileException;

/** Marks a weighing of a trial file as right, found by its time. */
final class ConfirmedWeighing {
  /** A time typed in hours with one decimal is that of the weighing (s). */
  private static final double SAME_TIME_S = 190;

  private ConfirmedWeighing() {}

  static String in(String text, String at) throws UnreadableFileException {
    JsonNode trial = TrialTree.read(text);
    Optional<LocalDateTime> pouredAt =
        moment(trial.path("poured_at").asText())
            .filter(Moment.ByTheClock.class::isInstance)
            .map(clock -> ((Moment.ByTheClock) clock).time());
    List<String> times = new ArrayList<>();
    int nearest = -1;
    double apartS = SAME_TIME_S;
    for (JsonNode weighing : TrialTree.entries(trial.path("weighings"))) {
      String time = weighing.path("at").asText();
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
    return TextEdit.set(text, "weighings." + nearest + ".confirmed", BooleanNode.TRUE);
  }

  private static Optional<Moment> moment(String text) {
    try {
      return Optional.of(MomentParser.lasting(text));
    } catch (MistypedException none) {
      return Optional.empty();
    }
  }

  /** Seconds after the pour; none that could be compared where a time cannot be read. */
  private static double secondsS(String text, Optional<LocalDateTime> pouredAt) {
    return moment(text).map(at -> at.secondsSince(pouredAt).orElse(Double.NaN)).orElse(Double.NaN);
  }
}
