package starchfilm.planning;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import starchfilm.film.Feel;
import starchfilm.numerics.evidence.Refusal;
import starchfilm.numerics.units.Figures;

/**
 * The film that is wanted.
 *
 * @param feel what it should be like in the hand: stiff, flexible or stretchy; empty for whatever
 *     the numbers ask
 * @param strengthPa tensile strength it should have at least (Pa)
 * @param elongation stretch at break it should have at least (ratio)
 * @param dryThicknessM dry thickness it should have, give or take a tenth (m); empty for the usual
 *     0.05 to 0.25 mm
 */
public record Wish(
    Optional<Feel> feel,
    OptionalDouble strengthPa,
    OptionalDouble elongation,
    OptionalDouble dryThicknessM) {
  /** Film that people cast at home (m); common practice, no source. */
  static final double USUALLY_THINNEST_M = 0.05e-3;

  static final double USUALLY_THICKEST_M = 0.25e-3;

  static final double GIVE_OR_TAKE = 0.1;
  private static final double THINNEST_M = 0.01e-3;
  private static final double THICKEST_M = 1e-3;
  private static final double STRONGEST_PA = 200e6;
  private static final double MOST_ELONGATION = 3;

  /** Checks every figure; without feel and numbers, flexible film is taken. */
  public Wish {
    Refusal.unless(
        feel.filter(fault -> fault == Feel.BRITTLE || fault == Feel.STICKY).isEmpty(),
        "feel",
        feel.map(Feel::name).orElse("").toLowerCase(Locale.ROOT),
        "stiff, flexible or stretchy; the others are faults, not wishes");
    check("strength", strengthPa, 0, STRONGEST_PA, 1e-6, "0 to 200 MPa");
    check("stretch at break", elongation, 0, MOST_ELONGATION, 100, "0 to 300 %");
    check("dry thickness", dryThicknessM, THINNEST_M, THICKEST_M, 1e3, "0.01 to 1 mm");
    if (feel.isEmpty() && strengthPa.isEmpty() && elongation.isEmpty()) {
      feel = Optional.of(Feel.FLEXIBLE);
    }
  }

  private static void check(
      String what, OptionalDouble given, double least, double most, double factor, String allowed) {
    double figure = given.orElse(most);
    Refusal.unless(
        figure >= least && figure <= most,
        what,
        Figures.of(figure * factor, 3) + allowed.substring(allowed.lastIndexOf(' ')),
        allowed + "; cast starch film is never outside this");
  }

  double leastDryThicknessM() {
    return dryThicknessM.isPresent()
        ? dryThicknessM.getAsDouble() * (1 - GIVE_OR_TAKE)
        : USUALLY_THINNEST_M;
  }

  double mostDryThicknessM() {
    return dryThicknessM.isPresent()
        ? dryThicknessM.getAsDouble() * (1 + GIVE_OR_TAKE)
        : USUALLY_THICKEST_M;
  }

  /** The same wish without its feel and its numbers but for the thickness, and another feel. */
  Wish feeling(Feel other) {
    return new Wish(
        Optional.of(other), OptionalDouble.empty(), OptionalDouble.empty(), dryThicknessM);
  }

  /** The same wish for another dry thickness; empty for the usual. */
  Wish thick(OptionalDouble otherM) {
    return new Wish(feel, strengthPa, elongation, otherM);
  }
}
