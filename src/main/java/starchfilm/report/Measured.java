package starchfilm.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import starchfilm.casting.trial.Observations;
import starchfilm.casting.trial.PullTest;
import starchfilm.casting.trial.Trial;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.figures.Figures;
import starchfilm.numerics.figures.ReaderUnit;
import starchfilm.numerics.units.Plural;

/**
 * One property of the dry film as it was measured.
 *
 * @param all the single values (SI); at least one
 */
record Measured(FilmFigure property, List<Double> all, TrialForecast forecast) {
  /** Strips that ASTM D882 asks for (recalled). */
  private static final int ENOUGH_STRIPS = 5;

  /**
   * The measurements on a trial's film.
   *
   * @return thickness, strength and elongation, as far as they were measured
   */
  public static List<Measured> of(TrialForecast forecast) {
    Observations seen = forecast.seen();
    return FilmFigure.MEASURED.stream()
        .map(one -> new Measured(one, values(one, seen.dryThicknessesM(), seen.pulls()), forecast))
        .filter(one -> !one.all().isEmpty())
        .toList();
  }

  /** Their mean (SI). */
  double mean() {
    return all.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
  }

  /** The single values, with unit. */
  public String values() {
    ReaderUnit unit = property.unit();
    return String.join(", ", all.stream().map(value -> Figures.three(unit.of(value))).toList())
        + " "
        + unit.symbol();
  }

  /** The forecast. */
  public String expected() {
    return property.band(forecast.film());
  }

  /** The comparison with the forecast; empty where that is not stated. */
  public String verdict() {
    Band expected = property.of(forecast.film());
    if (property.withheld(forecast.film()).isPresent()) {
      return "";
    }
    return mean() < expected.low()
        ? "below the range"
        : mean() > expected.high() ? "above the range" : "as forecast";
  }

  /**
   * The spread between the films of several plates.
   *
   * @return a sentence a property that was measured of more than one plate
   */
  public static List<String> betweenPlates(Trial trial) {
    List<String> sentences = new ArrayList<>();
    for (FilmFigure property : FilmFigure.MEASURED) {
      String unit = " " + property.unit().symbol();
      DescriptiveStatistics means = new DescriptiveStatistics();
      List<String> each = new ArrayList<>();
      trial
          .seen()
          .eachPlate()
          .films()
          .forEach(
              (plate, film) ->
                  values(property, film.dryThicknessesM(), film.pulls()).stream()
                      .mapToDouble(property.unit()::of)
                      .average()
                      .ifPresent(
                          mean -> {
                            means.addValue(mean);
                            each.add(Figures.three(mean) + unit + " (plate " + plate + ")");
                          }));
      if (each.size() > 1) {
        sentences.add(
            "Between the plates: %s %s; mean %s%s, standard deviation %s%s."
                .formatted(
                    property.label(),
                    String.join(", ", each),
                    Figures.three(means.getMean()),
                    unit,
                    Figures.two(means.getStandardDeviation()),
                    unit));
      }
    }
    return sentences;
  }

  private static List<Double> values(
      FilmFigure property, List<Double> thicknessesM, List<PullTest> pulls) {
    return switch (property) {
      case THICKNESS -> thicknessesM;
      case STRENGTH -> pulls.stream().map(PullTest::strengthPa).toList();
      default ->
          pulls.stream()
              .map(PullTest::stretchAtBreak)
              .filter(OptionalDouble::isPresent)
              .map(OptionalDouble::getAsDouble)
              .toList();
    };
  }

  /**
   * A note on how far a trial's pull tests can be relied on.
   *
   * @return one sentence, or nothing where there are none or enough
   */
  public static Optional<String> pullNote(Trial trial) {
    int strips = trial.seen().pulls().size();
    return strips == 0 || strips >= ENOUGH_STRIPS
        ? Optional.empty()
        : Optional.of(
            "From %s; five give a mean to rely on (ASTM D882)."
                .formatted(Plural.of(strips, "strip")));
  }
}
