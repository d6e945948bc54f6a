package starchfilm.planning;

import starchfilm.casting.Casting;
import starchfilm.casting.Pour;
import starchfilm.numerics.evidence.Estimate;

/**
 * A paste that is ready, a plate, a room and a date: how thick may it be poured?
 *
 * @param casting the casting; how thick it is poured and what its rim leaves is not used
 * @param rimM height of the plate's rim above its floor (m); 0 for none
 * @param byS when it must be ready (s after the pour, above 0)
 */
public record ThicknessRequest(Casting casting, double rimM, double byS) {
  /** Checks air of use and date. */
  public ThicknessRequest {
    UseAir.require(casting.use());
    PlanRequest.requireAfterThePour(byS);
  }

  /** The casting poured exactly so thick. */
  Casting pouredTo(double wetM) {
    Pour pour = casting.pour();
    return casting
        .with(casting.plate().filledTo(wetM, rimM))
        .with(new Pour(Estimate.exact(wetM), pour.unevenness(), pour.pasteTemperatureK()));
  }
}
