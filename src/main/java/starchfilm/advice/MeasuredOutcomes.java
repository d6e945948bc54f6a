package starchfilm.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import starchfilm.advice.Outcome.Agreement;
import starchfilm.casting.trial.PullTest;
import starchfilm.casting.trial.Weighing;
import starchfilm.drying.CurvePoint;
import starchfilm.forecast.TrialForecast;

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

  static List<Outcome> of(
      TrialForecast before, TrialForecast after, ForecastCache was, ForecastCache is) {
    List<Outcome> outcomes = new ArrayList<>();
    add(
        outcomes,
        "Half of the water was gone after %s → %s.",
        Told::span,
        halfDryS(before),
        halfDryS(after),
        forecastHalfDryS(after) / forecastHalfDryS(before));
    add(
        outcomes,
        "Strips bore %s → %s MPa.",
        pa -> Told.number(pa / 1e6),
        mean(before, pull -> OptionalDouble.of(pull.strengthPa())),
        mean(after, pull -> OptionalDouble.of(pull.strengthPa())),
        is.film().tensileStrengthPa().middle() / was.film().tensileStrengthPa().middle());
    add(
        outcomes,
        "Strips stretched by %s → %s.",
        Told::percent,
        mean(before, PullTest::stretchAtBreak),
        mean(after, PullTest::stretchAtBreak),
        is.film().elongationAtBreak().middle() / was.film().elongationAtBreak().middle());
    return outcomes;
  }

  /** Adds what was measured on both. */
  private static void add(
      List<Outcome> outcomes,
      String seen,
      DoubleFunction<String> told,
      OptionalDouble was,
      OptionalDouble is,
      double modelRatio) {
    if (was.isPresent() && is.isPresent()) {
      outcomes.add(
          outcome(
              seen.formatted(told.apply(was.getAsDouble()), told.apply(is.getAsDouble())),
              is.getAsDouble() / was.getAsDouble(),
              modelRatio));
    }
  }

  private static Outcome outcome(String seen, double seenRatio, double modelRatio) {
    if (!Double.isFinite(modelRatio)) {
      return new Outcome(
          seen, Agreement.CANNOT_TELL, "The model does not expect both to get that far.");
    }
    String ratios =
        "seen " + Told.number(seenRatio) + " ×, expected " + Told.number(modelRatio) + " ×";
    if (aboutOne(seenRatio) && aboutOne(modelRatio)) {
      return new Outcome(
          seen, Agreement.AGREES, "About the same, as the model says: " + ratios + ".");
    }
    return (seenRatio - 1) * (modelRatio - 1) > 0
        ? new Outcome(seen, Agreement.AGREES, "The model says so too: " + ratios + ".")
        : new Outcome(seen, Agreement.DISAGREES, "The model says otherwise: " + ratios + ".");
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

  /** When half of the water was gone by the scale, between two weighings; empty where it is not. */
  private static OptionalDouble halfDryS(TrialForecast forecast) {
    double solids = forecast.drySolidsKgPerPlate();
    double half = solids + HALF * (forecast.pouredKgPerPlate() - solids);
    double timeS = 0;
    double mass = forecast.pouredKgPerPlate();
    for (Weighing weighing : forecast.trial().seen().weighings()) {
      if (weighing.filmMassKg() <= half && weighing.filmMassKg() < mass) {
        double share = (mass - half) / (mass - weighing.filmMassKg());
        return OptionalDouble.of(timeS + share * (weighing.timeS() - timeS));
      }
      timeS = weighing.timeS();
      mass = weighing.filmMassKg();
    }
    return OptionalDouble.empty();
  }

  /** When half of the water is gone by the middle of the forecast; infinite where it never is. */
  private static double forecastHalfDryS(TrialForecast forecast) {
    double half = HALF * forecast.drying().startMoisture();
    CurvePoint before = forecast.drying().curve().get(0);
    for (CurvePoint point : forecast.drying().curve()) {
      if (point.nominal().middle() <= half) {
        double fall = before.nominal().middle() - point.nominal().middle();
        double share = fall > 0 ? (before.nominal().middle() - half) / fall : 0;
        return before.timeS() + share * (point.timeS() - before.timeS());
      }
      before = point;
    }
    return Double.POSITIVE_INFINITY;
  }
}
