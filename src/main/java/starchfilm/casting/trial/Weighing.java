package starchfilm.casting.trial;

/**
 * One weighing of a plate with its film.
 *
 * @param timeS time since the pour (s, 0 or more)
 * @param filmMassKg mass of the film alone (kg): the plate's tare is taken off
 * @param massSdKg standard uncertainty of that mass (kg)
 * @param confirmed true where its maker says that it is right, however odd
 * @param tared false where the plate's tare is unknown: then only differences between such
 *     weighings are known, and the first is set to the paste poured
 */
public record Weighing(
    double timeS, double filmMassKg, double massSdKg, boolean confirmed, boolean tared) {
  /** A weighing whose tare is known, and that nobody was asked about. */
  public Weighing(double timeS, double filmMassKg, double massSdKg) {
    this(timeS, filmMassKg, massSdKg, false, true);
  }
}
