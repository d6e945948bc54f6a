package starchfilm.report;

import static starchfilm.numerics.units.Units.HOUR_S;

import java.util.Optional;
import starchfilm.drying.DryingVerdict;
import starchfilm.forecast.CurveReading;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.figures.Figures;
import starchfilm.report.words.PourCalendar;

/**
 * "No lighter over twelve hours": the test of dryness that anyone with a scale can make, and from
 * when the forecast says that it holds.
 *
 * <p>A plate is no lighter where its film loses less than a hundredth of itself in twelve hours, or
 * less than half a gram, which a kitchen scale does not show (judged).
 */
final class ConstantMass {
  private static final double WAIT_S = 12 * HOUR_S;
  private static final double STEP_S = HOUR_S;
  private static final double SHARE = 0.01;
  private static final double UNSEEN_KG = 0.0005;

  private ConstantMass() {}

  /**
   * From when the test holds.
   *
   * @return one sentence; none where the room never dries a film
   */
  static Optional<String> of(TrialForecast trial) {
    if (trial.drying().verdict() == DryingVerdict.TOO_DAMP) {
      return Optional.empty();
    }
    CurveReading reading = new CurveReading(trial);
    double endS = trial.drying().curveEndS() + WAIT_S;
    double firmS = trial.drying().peelableS().middle();
    double fromS = Math.max(WAIT_S, Math.min(firmS, endS));
    // Past its end the curve stays level, so the film is at rest there at the latest.
    while (fromS < endS && !(holds(reading, fromS) && holds(reading, fromS + WAIT_S))) {
      fromS += STEP_S;
    }
    return Optional.of(
        ("The plate is dry when it loses no more than %s g in twelve hours; the forecast expects"
                + " that from %s hours after the pour (%s).")
            .formatted(
                Figures.two(1000 * toleranceKg(reading, fromS)),
                Math.round(fromS / HOUR_S),
                PourCalendar.of(trial.trial()).moment(fromS)));
  }

  private static boolean holds(CurveReading reading, double timeS) {
    double before = reading.massKg(reading.moistureAt(timeS - WAIT_S).middle());
    double now = reading.massKg(reading.moistureAt(timeS).middle());
    return before - now <= toleranceKg(reading, timeS);
  }

  private static double toleranceKg(CurveReading reading, double timeS) {
    return Math.max(SHARE * reading.massKg(reading.moistureAt(timeS).middle()), UNSEEN_KG);
  }
}
