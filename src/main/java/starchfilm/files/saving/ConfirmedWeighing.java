package starchfilm.files.saving;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.BooleanNode;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
    JsonNode trial;
    try {
      trial = new ObjectMapper().readTree(text);
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException("notes go only into files without a fault", impossible);
    }
    Optional<LocalDateTime> pouredAt =
        moment(trial.path("poured_at").asText())
            .filter(Moment.ByTheClock.class::isInstance)
            .map(clock -> ((Moment.ByTheClock) clock).time());
    OptionalDouble wanted = secondsS(at, pouredAt);
    List<String> times = new ArrayList<>();
    int nearest = -1;
    double apartS = SAME_TIME_S;
    JsonNode weighings = trial.path("weighings");
    for (int i = 0; i < weighings.size(); i++) {
      String time = weighings.path(i).path("at").asText();
      times.add(time);
      OptionalDouble noted = secondsS(time, pouredAt);
      if (wanted.isPresent()
          && noted.isPresent()
          && Math.abs(noted.getAsDouble() - wanted.getAsDouble()) <= apartS) {
        apartS = Math.abs(noted.getAsDouble() - wanted.getAsDouble());
        nearest = i;
      }
    }
    if (nearest < 0) {
      throw new UnreadableFileException(
          "no weighing at " + at,
          times.isEmpty() ? "a weighing that is noted" : "one of " + String.join(", ", times),
          "give the time of a weighing in the file");
    }
    return TextEdit.set(
        text, List.of("weighings", String.valueOf(nearest), "confirmed"), BooleanNode.TRUE);
  }

  private static Optional<Moment> moment(String text) {
    try {
      return Optional.of(MomentParser.lasting(text));
    } catch (MistypedException none) {
      return Optional.empty();
    }
  }

  private static OptionalDouble secondsS(String text, Optional<LocalDateTime> pouredAt) {
    return moment(text).map(at -> at.secondsSince(pouredAt)).orElseGet(OptionalDouble::empty);
  }
}
