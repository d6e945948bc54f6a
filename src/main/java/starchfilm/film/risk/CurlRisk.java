package starchfilm.film.risk;

import java.util.OptionalDouble;

/**
 * The risk that a film lets go of its plate while it dries; loose, it shrinks in its plane and
 * curls.
 *
 * <p>The energy that pulls it off is held against the adhesion of its plate: below a third low, to
 * 1 watch, to 3 likely, beyond expected, as far as the adhesion is known. A film that was peeled
 * before it was dry through is loose from then on. Loose, it shrinks by {@code 1 - (v_end/v)^(1/3)}
 * and bends to a radius of about {@code 3 h/ln(v_core/v_skin)} (thin elastic layers), which lifts
 * its edges by {@code L^2/(8 radius)}: up at first, in the end towards the plate's side.
 *
 * <p>Against the forces and moments of 41 layers summed step by step, on four castings of 3 to 11
 * mm, this radius is 0.4 to 1.3 times the last one of plasticised film, and 0.3 times that of a
 * glass that lets go late: it bends too tightly, if anything. The lift, at most a quarter of the
 * plate, came out the same within a tenth, so the sums are not made. They bend the same way: up at
 * first, then past flat.
 *
 * @param level how likely
 * @param pullOverAdhesion energy that pulls the film off over the adhesion, at most (ratio)
 * @param looseFromS when it lets go or is peeled, since the pour (s); empty where it stays stuck
 * @param leastShrinking how much shorter each side becomes if it sticks three times as well (ratio)
 * @param shrinking how much shorter each side becomes from then on; where it stays stuck, of a film
 *     peeled as soon as it is firm (ratio)
 * @param edgeLiftM how far the edges lift (m, at most a quarter of the plate); 0 where it stays
 *     stuck
 */
public record CurlRisk(
    RiskLevel level,
    double pullOverAdhesion,
    OptionalDouble looseFromS,
    double leastShrinking,
    double shrinking,
    double edgeLiftM) {
  static RiskLevel level(double pullOverAdhesion) {
    return RiskLevel.of(pullOverAdhesion, 1 / Adhesion.BAND, 1, Adhesion.BAND);
  }
}
