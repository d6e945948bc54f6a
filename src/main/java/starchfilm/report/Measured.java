package starchfilm.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import starchfilm.casting.trial.PullTest;
import starchfilm.casting.trial.Trial;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Band;
import starchfilm.report.words.Figures;
import starchfilm.report.words.ReaderUnit;

/**
 * One property of the dry film as it was measured.
 *
 * @param values the single values, with unit
 */
record Measured(FilmFigure property, double mean, String values, String expected, String verdict) {
  /** Strips that ASTM D882 asks for (recalled). */
  private static final int ENOUGH_STRIPS = 5;

  /**
   * What was measured on a trial's film.
   *
   * @return thickness, strength and elongation, as far as they were measured
   */
  static List<Measured> of(TrialForecast forecast) {
    Trial trial = forecast.trial();
    List<Measured> measured = new ArrayList<>();
    of(FilmFigure.THICKNESS, trial.seen().dryThicknessesM(), forecast).ifPresent(measured::add);
    of(
            FilmFigure.STRENGTH,
            trial.seen().pulls().stream()
                .map(pull -> pull.loadN() / (pull.widthM() * pull.thicknessM()))
                .toList(),
            forecast)
        .ifPresent(measured::add);
    of(
            FilmFigure.ELONGATION,
            trial.seen().pulls().stream()
                .map(PullTest::stretchAtBreak)
                .filter(OptionalDouble::isPresent)
                .map(OptionalDouble::getAsDouble)
                .toList(),
            forecast)
        .ifPresent(measured::add);
    return measured;
  }

  /**
   * What to mind about a trial's pull tests.
   *
   * @return one sentence, or nothing where there are none or enough
   */
  static String pullNote(Trial trial) {
    int strips = trial.seen().pulls().size();
    return strips == 0 || strips >= ENOUGH_STRIPS
        ? ""
        : "From "
            + strips
            + (strips == 1 ? " strip" : " strips")
            + "; five give a mean to rely on (ASTM D882).";
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
            verdict(mean, expected)));
  }

  private static String verdict(double mean, Band expected) {
    if (mean < expected.low()) {
      return "below the range";
    }
    return mean > expected.high() ? "above the range" : "as forecast";
  }
}
