package starchfilm.report.today;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import starchfilm.casting.trial.Trial;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.figures.Spans;
import starchfilm.numerics.units.Plural;
import starchfilm.report.DryingFigure;
import starchfilm.report.chart.CurveFigure;
import starchfilm.report.words.PourCalendar;

/**
 * One trial as it stands now: a part for each of its plates that somebody distinguished.
 *
 * @param forecast its forecast
 * @param plates its plates that are drying; empty where none is
 */
public record TrialNow(TrialForecast forecast, List<PlateNow> plates) {
  /** What became of more plates is stated where each was noted. */
  private static final int MOST_ENDS = 6;

  /** Its curve as forecast, whether it dries or not. */
  public CurveFigure figure() {
    return DryingFigure.of(forecast, OptionalDouble.empty());
  }

  /** The readings of the curve, at even steps along its axis. */
  public List<String> readOuts() {
    return DryingFigure.readOuts(forecast, OptionalDouble.empty(), OptionalDouble.empty());
  }

  /** The ends of its plates and its rating; empty where none is noted, or a plate still dries. */
  public String ended() {
    return plates.isEmpty() ? (ended(forecast.trial()) + rated(forecast.trial())).strip() : "";
  }

  private static String rated(Trial trial) {
    int faults = trial.seen().faults().size();
    return trial.seen().rating().isEmpty()
        ? ""
        : " Rated %s of 5, %s."
            .formatted(
                trial.seen().rating().getAsInt(),
                faults == 0 ? "without a fault" : "with " + Plural.of(faults, "fault"));
  }

  private static String ended(Trial trial) {
    PourCalendar calendar = PourCalendar.of(trial);
    Map<String, List<String>> plates = new LinkedHashMap<>();
    trial
        .seen()
        .eachPlate()
        .ends()
        .forEach(
            (plate, end) ->
                plates
                    .computeIfAbsent(
                        end.givenUp().map(why -> "Given up, " + why).orElse("Off the plate")
                            + (end.atS().isPresent()
                                ? ", " + calendar.moment(end.atS().getAsDouble())
                                : ""),
                        what -> new ArrayList<>())
                    .add(plate.toString()));
    boolean isOne = plates.size() == 1;
    return plates.size() > MOST_ENDS
        ? ""
        : plates.entrySet().stream()
            .map(
                end ->
                    end.getKey()
                        + (isOne ? "" : " (plate " + String.join(", ", end.getValue()) + ")")
                        + ".")
            .collect(Collectors.joining(" "));
  }

  /** The spread between its plates; empty for one. */
  public String spread() {
    double[] readyS =
        plates.stream()
            .mapToDouble(plate -> plate.standing().readyS().middle())
            .filter(Double::isFinite)
            .sorted()
            .toArray();
    if (readyS.length < 2) {
      return "";
    }
    double mean = Arrays.stream(readyS).average().orElseThrow();
    return "Its plates are dry through after %s in the mean, and %s apart."
        .formatted(Spans.of(mean), Spans.of(readyS[readyS.length - 1] - readyS[0]));
  }

  /**
   * The film and the date that its plan was asked for.
   *
   * @param trial the trial
   * @return a sentence; empty where nobody asked for anything
   */
  public static String wanted(Trial trial) {
    List<String> words = new ArrayList<>();
    trial.wanted().film().ifPresent(words::add);
    trial
        .wanted()
        .byS()
        .ifPresent(byS -> words.add("ready " + Spans.given(byS) + " after the pour"));
    return words.isEmpty() ? "" : "Planned as: " + String.join("; ", words) + ".";
  }
}
