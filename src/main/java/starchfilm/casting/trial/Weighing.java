package starchfilm.casting.trial;

/**
 * One weighing of a plate with its film.
 *
 * @param timeS time since the pour (s, 0 or more)
 * @param filmMassKg mass of the film alone (kg): the plate's tare is taken off
 * @param massSdKg standard uncertainty of that mass (kg)
 */
public record Weighing(double timeS, double filmMassKg, double massSdKg) {}
