package starchfilm.files.notebook;

import static starchfilm.numerics.units.Units.HOUR_S;

import starchfilm.casting.trial.Weighing;
import starchfilm.files.findings.Words;

/**
 * The doubt whether a weighing is of the plate weighed before it: its film gained more than a
 * drying film can have.
 */
public final class PlateDoubt {
  /** A drying film gains no more than damp air gives it back in days; judged, no source. */
  private static final double GAIN = 0.1;

  /** Within an hour hardly any; judged, no source. */
  private static final double QUICK_GAIN = 0.01;

  private static final double SIGMAS = 3;

  private PlateDoubt() {}

  /**
   * Returns whether a weighing is heavier than the same plate can be.
   *
   * @param before the weighing before it
   * @param next the weighing
   * @return true where the film gained more than air and scale explain
   */
  public static boolean isDoubtful(Weighing before, Weighing next) {
    double gain = isQuick(before, next) ? QUICK_GAIN : GAIN;
    return next.filmMassKg()
        > before.filmMassKg() * (1 + gain)
            + SIGMAS * Math.hypot(before.massSdKg(), next.massSdKg());
  }

  /** Whether so little time lies between that it cannot be the air. */
  static boolean isQuick(Weighing before, Weighing next) {
    return next.timeS() - before.timeS() < HOUR_S;
  }

  /**
   * Returns what is odd about it.
   *
   * @param before the weighing before it
   * @param next the weighing
   * @return such as {@code a film 30 g heavier than 4 seconds before}
   */
  public static String told(Weighing before, Weighing next) {
    String heavier = Words.grams(next.filmMassKg() - before.filmMassKg());
    String span = Words.span(next.timeS() - before.timeS());
    return "a film %s heavier than %s before".formatted(heavier, span);
  }
}
