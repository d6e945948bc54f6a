package starchfilm.today;

import static starchfilm.numerics.units.Units.DAY_S;
import static starchfilm.numerics.units.Units.HOUR_S;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.WallClock;
import starchfilm.casting.trial.Weighing;
import starchfilm.change.Rerun;
import starchfilm.drying.Milestone;
import starchfilm.forecast.CurveReading;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Band;

/**
 * The state at a moment of one plate, or of some plates of one pour that nobody distinguished.
 *
 * @param forecast the trial as the plate shows it
 * @param plates the numbers of the plates
 * @param of how many were poured
 * @param emptyKg the empty plate (kg), if weighed
 * @param nowS the moment (s since the pour)
 * @param scale what a scale shows
 * @param relief the change that helps most where it will mould
 */
public record Standing(
    TrialForecast forecast,
    List<Integer> plates,
    int of,
    OptionalDouble emptyKg,
    double nowS,
    ScaleForecast scale,
    Optional<Rerun> relief) {
  /** A weighing that leaves no more than this of the range is worth the walk; judged. */
  private static final double WORTH_WEIGHING = 0.75;

  /** A shorter range needs no narrowing (s); judged. */
  private static final double NARROW_ENOUGH_S = 3 * HOUR_S;

  /** So soon after a weighing another tells little (s); judged. */
  private static final double WEIGHED_JUST_NOW_S = 2 * HOUR_S;

  /** So long beyond the end of the range a plate is forgotten; judged. */
  private static final double FORGOTTEN_AFTER_S = 2 * DAY_S;

  /** The same in shares of the end of the range; judged. */
  private static final double FORGOTTEN_RATIO = 1.25;

  /** Mould that may show so soon is acted against now (s); judged. */
  private static final double MOULD_SOON_S = 1.5 * DAY_S;

  /** Longer after the pour no hour is named (s). */
  private static final double CALENDAR_UP_TO_S = 400 * DAY_S;

  public Standing {
    plates = List.copyOf(plates);
  }

  /**
   * A plate at a moment.
   *
   * @param forecast its trial as the plate shows it, poured at a known time
   * @param course what a scale under it shows, of that forecast
   * @param plates the numbers of the plates that are alike
   * @param now the moment by the clock on the wall, not before the pour
   * @return how it stands
   */
  public static Standing of(
      TrialForecast forecast, ScaleCourse course, List<Integer> plates, LocalDateTime now) {
    Trial trial = forecast.trial();
    double nowS = WallClock.secondsBetween(trial.pouredAt().orElseThrow(), now);
    OptionalDouble empty =
        Optional.ofNullable(trial.seen().eachPlate().emptyKg().get(plates.get(0)))
            .map(OptionalDouble::of)
            .orElse(OptionalDouble.empty());
    return new Standing(
        forecast, plates, trial.plates(), empty, nowS, course.at(nowS), course.relief());
  }

  /** The time at which its thick spot is dry through (s since the pour). */
  public Band readyS() {
    return forecast.drying().dryThroughS();
  }

  /**
   * The time at which the plate is dry through (s since the pour), as forecast without its own
   * weighings.
   */
  public Band readyAtThePourS() {
    return forecast.dryingAtThePour().dryThroughS();
  }

  /** Water still in the film, over what was poured (ratio, at most 1). */
  public Band waterLeft() {
    Band left =
        new CurveReading(forecast).moistureAt(nowS).times(1 / forecast.drying().startMoisture());
    return left.map(share -> Math.min(1, share));
  }

  /** Its last weighing up to now; one that lies in the future tells nothing. */
  public Optional<Weighing> last() {
    return forecast.trial().seen().weighings().stream()
        .filter(weighing -> weighing.timeS() <= nowS + Trial.CLOCKS_APART_S)
        .reduce((earlier, later) -> later);
  }

  /** Tells whether the last weighing shows no more than the plate weighs when it is dry through. */
  public boolean isDryByTheScale() {
    return last()
        .filter(Weighing::tared)
        .filter(
            weighing ->
                weighing.filmMassKg() <= scale.kgAt(Milestone.DRY_THROUGH) + weighing.massSdKg())
        .isPresent();
  }

  /** Finds what the plate needs. */
  public Need need() {
    Band ready = readyS();
    double mouldS = mouldFromS();
    if (mouldS < ready.middle() && mouldS - nowS < MOULD_SOON_S && nowS < ready.high()) {
      return Need.MOULDS_SOON;
    }
    if (nowS > FORGOTTEN_RATIO * ready.high() + FORGOTTEN_AFTER_S) {
      return Need.OVERDUE;
    }
    if (nowS >= ready.middle() || isDryByTheScale()) {
      return Need.PEEL;
    }
    if (Double.isInfinite(ready.middle())) {
      return Need.NEVER_DRIES;
    }
    if (mouldS < ready.middle()) {
      return Need.MOULDS_LATER;
    }
    if (scale.rangeLeft() <= WORTH_WEIGHING
        && ready.high() - Math.max(nowS, ready.low()) > NARROW_ENOUGH_S
        && last().stream().noneMatch(w -> nowS - w.timeS() < WEIGHED_JUST_NOW_S)) {
      return Need.WEIGH;
    }
    return nowS >= ready.low() ? Need.LOOK : Need.WAIT;
  }

  /**
   * The time at which mould may first show (s since the pour); infinite where that is not to be
   * expected.
   */
  public double mouldFromS() {
    return forecast.risks().mould().expectedFromS();
  }

  /** From when on it is to be looked at, by day (s since the pour); infinite for never. */
  public double lookFromS() {
    return byDay(mayBeReadyFromS(), WakingHours::atOrAfter);
  }

  /** By when it is looked at last, by day (s since the pour). */
  public double lookUntilS() {
    return Math.max(lookFromS(), byDay(mayBeReadyUntilS(), WakingHours::atOrBefore));
  }

  /** Tells whether it may be ready in a night, so that the look waits or comes sooner. */
  public boolean looksAroundNight() {
    return lookFromS() != mayBeReadyFromS() || lookUntilS() != mayBeReadyUntilS();
  }

  private double mayBeReadyFromS() {
    return Math.max(nowS, readyS().low());
  }

  private double mayBeReadyUntilS() {
    return Math.max(mayBeReadyFromS(), readyS().high());
  }

  private double byDay(double afterPourS, UnaryOperator<LocalDateTime> day) {
    if (afterPourS > CALENDAR_UP_TO_S) {
      return afterPourS;
    }
    LocalDateTime poured = forecast.trial().pouredAt().orElseThrow();
    LocalDateTime moment = WallClock.after(poured, afterPourS);
    LocalDateTime moved = day.apply(moment);
    return moved.equals(moment) ? afterPourS : WallClock.secondsBetween(poured, moved);
  }
}
