package starchfilm.report;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import starchfilm.change.TrialAnalysis;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.units.Units;

/** One trial as a part of another page, as it stands on the comparison page. */
public final class TrialSheet {
  private TrialSheet() {}

  /**
   * What the template {@code trial :: whole} shows.
   *
   * @param forecast the trial
   * @return the template's value, by its name
   */
  public static Map<String, Object> whole(TrialAnalysis forecast) {
    return Map.of("trial", TrialView.of(forecast));
  }

  /**
   * What a page shows of a casting that is moved about.
   *
   * @param moved the moved casting
   * @param unmoved what it was
   * @param byDays when it must be ready (days after the pour), if there is such a day
   * @return the trial, and its drying over what it was, by their names
   */
  public static Map<String, Object> sketch(
      TrialAnalysis moved, TrialForecast unmoved, OptionalDouble byDays) {
    OptionalDouble byS =
        byDays.isEmpty()
            ? OptionalDouble.empty()
            : OptionalDouble.of(byDays.getAsDouble() * Units.DAY_S);
    return Map.of(
        "trial",
        TrialView.of(moved),
        "figure",
        DryingFigure.moved(moved.forecast(), unmoved, byS),
        "inTime",
        byS.isEmpty() ? "" : Headline.inTime(moved.forecast(), byS.getAsDouble()));
  }

  /**
   * A photo made small, upright and free of what its camera wrote beside it.
   *
   * @param photo the picture's file
   * @return a JPEG; empty where the picture cannot be read
   */
  public static Optional<byte[]> smallPhoto(Path photo) {
    return PhotoFrame.of(photo).jpeg();
  }
}
