package starchfilm.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import starchfilm.casting.trial.PullTest;
import starchfilm.casting.trial.Trial;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.figures.Figures;
import starchfilm.numerics.figures.ReaderUnit;
import starchfilm.report.words.Plural;

/**
 * One property of the dry film as it was measured.
 *
 * @param values the single values, with unit
 * @param verdict how it compares with the forecast; empty where the forecast is not stated
 */
record Measured(FilmFigure property, double mean, String values, String expected, String verdict) {
  /** Strips that ASTM D882 asks for (recalled). */
  private static final int ENOUGH_STRIPS = 5;

  /**
   * What was measured on a trial's film.
   *
   * @return thickness, strength and elongation, as far as they were measured
   */
  public static List<Measured> of(TrialForecast forecast) {
    Trial trial = forecast.trial();
    List<Measured> measured = new ArrayList<>();
    for (FilmFigure property : FilmFigure.MEASURED) {
      of(property, values(property, trial.seen().dryThicknessesM(), trial.seen().pulls()), forecast)
          .ifPresent(measured::add);
    }
    return measured;
  }

  /**
   * How far the films of several plates lie apart.
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
              (plate, film) -> {
                OptionalDouble mean =
                    values(property, film.dryThicknessesM(), film.pulls()).stream()
                        .mapToDouble(Double::doubleValue)
                        .average();
                if (mean.isPresent()) {
                  double shown = property.unit().of(mean.getAsDouble());
                  means.addValue(shown);
                  each.add(Figures.three(shown) + unit + " (plate " + plate + ")");
                }
              });
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
   * What to mind about a trial's pull tests.
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

  private static Optional<Measured> of(
      FilmFigure property, List<Double> values, TrialForecast forecast) {
    if (values.isEmpty()) {
      return Optional.empty();
    }
    ReaderUnit unit = property.unit();
    double mean = values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    Band expected = property.of(forecast.film());
    String shown =
        String.join(", ", values.stream().map(value -> Figures.three(unit.of(value))).toList());
    return Optional.of(
        new Measured(
            property,
            mean,
            shown + " " + unit.symbol(),
            property.band(forecast.film()),
            property.withheld(forecast.film()).isEmpty() ? verdict(mean, expected) : ""));
  }

  private static String verdict(double mean, Band expected) {
    if (mean < expected.low()) {
      return "below the range";
    }
    return mean > expected.high() ? "above the range" : "as forecast";
  }
}
