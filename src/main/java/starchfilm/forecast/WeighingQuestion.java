package starchfilm.forecast;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import starchfilm.casting.trial.Trial;

/**
 * Something odd about the weighings of a plate.
 *
 * @param text what is odd and what to answer, in sentences; {@code %s} where a time stands
 * @param timesS those times (s since the pour)
 * @param leftOutS the times of the weighings that are left out until their maker confirms the first
 */
public record WeighingQuestion(String text, List<Double> timesS, List<Double> leftOutS) {
  private static final double HOUR_S = 3600;

  /** One that no confirmation answers. */
  public WeighingQuestion(String words) {
    this(words.replace("%", "%%"), List.of(), List.of());
  }

  /** Its words, with times as commands take them: {@code at +21.5h}. */
  public String words() {
    return words(timeS -> "at +" + hours(timeS));
  }

  /** Its words, with times as the reader names them. */
  public String words(Function<Double, String> time) {
    return text.formatted(timesS.stream().map(time).toArray());
  }

  /** The time, such as {@code 21.5h}, of the weighing to confirm; empty where there is none. */
  public String confirmAt() {
    return leftOutS.isEmpty() ? "" : hours(leftOutS.get(0));
  }

  /**
   * With the command that answers it, for those who use commands.
   *
   * @param trial the trial as the plate shows it that is asked about
   */
  public String withCommand(Trial trial) {
    String words = words();
    String plate = confirmOf(trial);
    return leftOutS.isEmpty()
        ? words
        : "%s (note FILE --confirm %s%s)."
            .formatted(
                words.substring(0, words.length() - 1),
                confirmAt(),
                plate.isEmpty() ? "" : " --of " + plate);
  }

  /** The number of the plate that a trial shows; empty where its pour has no other. */
  public static String confirmOf(Trial trial) {
    return trial.plates() == 1 ? "" : String.valueOf(trial.seen().eachPlate().shown());
  }

  /** A time since the pour. */
  public static String hours(double timeS) {
    return String.format(Locale.ROOT, "%.1fh", timeS / HOUR_S).replace(".0h", "h");
  }
}
