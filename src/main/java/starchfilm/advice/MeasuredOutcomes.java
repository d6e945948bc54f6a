package starchfilm.advice;

import static starchfilm.numerics.figures.ReaderUnit.MEGAPASCAL;
import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import starchfilm.advice.OutcomeDifference.Agreement;
import starchfilm.casting.trial.PullTest;
import starchfilm.casting.trial.Weighing;
import starchfilm.drying.CurvePoint;
import starchfilm.film.FilmProperty;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.figures.Figures;
import starchfilm.numerics.figures.Spans;

/**
 * What was measured on two trials, held against what the model says of both: how fast half of the
 * water went, and how the strips broke.
 *
 * <p>The model agrees where both ratios lie on the same side of 1, or both within a quarter of it
 * (judged: strips of one film differ by about that much).
 */
final class MeasuredOutcomes {
  private static final double ABOUT_THE_SAME = 1.25;
  private static final double HALF = 0.5;

  private MeasuredOutcomes() {}

  static List<OutcomeDifference> of(
      TrialForecast before, TrialForecast after, ForecastCache was, ForecastCache is) {
    List<OutcomeDifference> outcomes = new ArrayList<>();
    add(
        outcomes,
        "Half of the water was gone after %s → %s.",
        Spans::of,
        halfDryS(before),
        halfDryS(after),
        forecastHalfDryS(before),
        forecastHalfDryS(after));
    add(
        outcomes,
        "Strips bore %s → %s MPa.",
        pa -> Figures.brief(MEGAPASCAL.of(pa)),
        mean(before, pull -> OptionalDouble.of(pull.strengthPa())),
        mean(after, pull -> OptionalDouble.of(pull.strengthPa())),
        was.film().stated(FilmProperty.TENSILE_STRENGTH),
        is.film().stated(FilmProperty.TENSILE_STRENGTH));
    add(
        outcomes,
        "Strips stretched by %s → %s.",
        PERCENT::brief,
        mean(before, PullTest::stretchAtBreak),
        mean(after, PullTest::stretchAtBreak),
        was.film().stated(FilmProperty.ELONGATION),
        is.film().stated(FilmProperty.ELONGATION));
    return outcomes;
  }

  /** Adds what was measured on both. */
  private static void add(
      List<OutcomeDifference> outcomes,
      String seen,
      DoubleFunction<String> told,
      OptionalDouble was,
      OptionalDouble is,
      double modelWas,
      double modelIs) {
    if (was.isPresent() && is.isPresent()) {
      outcomes.add(
          outcome(
              seen.formatted(told.apply(was.getAsDouble()), told.apply(is.getAsDouble())),
              is.getAsDouble() / was.getAsDouble(),
              modelWas,
              modelIs));
    }
  }

  private static OutcomeDifference outcome(
      String seen, double seenRatio, double modelWas, double modelIs) {
    if (Double.isNaN(modelWas) || Double.isNaN(modelIs)) {
      return new OutcomeDifference(
          seen, Agreement.CANNOT_TELL, "The model states no figure of such film.");
    }
    if (Double.isInfinite(modelWas) || Double.isInfinite(modelIs)) {
      return new OutcomeDifference(
          seen, Agreement.CANNOT_TELL, "The model does not expect both to get that far.");
    }
    double modelRatio = modelIs / modelWas;
    boolean same = aboutOne(seenRatio) && aboutOne(modelRatio);
    boolean agrees = same || (seenRatio - 1) * (modelRatio - 1) > 0;
    return new OutcomeDifference(
        seen,
        agrees ? Agreement.AGREES : Agreement.DISAGREES,
        "%s: seen %s ×, expected %s ×."
            .formatted(
                same
                    ? "About the same, as the model says"
                    : agrees ? "The model says so too" : "The model says otherwise",
                Figures.brief(seenRatio),
                Figures.brief(modelRatio)));
  }

  private static boolean aboutOne(double ratio) {
    return ratio < ABOUT_THE_SAME && ratio > 1 / ABOUT_THE_SAME;
  }

  private static OptionalDouble mean(
      TrialForecast trial, Function<PullTest, OptionalDouble> figure) {
    return trial.trial().seen().pulls().stream()
        .map(figure)
        .flatMapToDouble(OptionalDouble::stream)
        .average();
  }

  /**
   * When half of the water was gone by the scale, between two weighings; empty where it is not, or
   * the plate's tare is unknown.
   */
  private static OptionalDouble halfDryS(TrialForecast forecast) {
    double solids = forecast.drySolidsKgPerPlate();
    double poured = forecast.pouredKgPerPlate();
    return fallsTo(
        solids + HALF * (poured - solids),
        poured,
        forecast.trial().seen().weighings().stream().filter(Weighing::tared).toList(),
        Weighing::timeS,
        Weighing::filmMassKg);
  }

  /** When half of the water is gone by the middle of the forecast; infinite where it never is. */
  private static double forecastHalfDryS(TrialForecast forecast) {
    double start = forecast.drying().startMoisture();
    return fallsTo(
            HALF * start,
            start,
            forecast.drying().curve(),
            CurvePoint::timeS,
            point -> point.nominal().middle())
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** When a figure has fallen to a level, along straight lines between its points. */
  private static <T> OptionalDouble fallsTo(
      double level,
      double start,
      List<T> points,
      ToDoubleFunction<T> timesS,
      ToDoubleFunction<T> figures) {
    double timeS = 0;
    double figure = start;
    for (T point : points) {
      double next = figures.applyAsDouble(point);
      double nextS = timesS.applyAsDouble(point);
      if (next <= level && next < figure) {
        return OptionalDouble.of(timeS + (figure - level) / (figure - next) * (nextS - timeS));
      }
      timeS = nextS;
      figure = next;
    }
    return OptionalDouble.empty();
  }
}
