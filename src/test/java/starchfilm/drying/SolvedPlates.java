package starchfilm.drying;

import starchfilm.casting.Casting;
import starchfilm.casting.Spot;
import starchfilm.drying.uncertainty.ParameterSample;

/** Plates solved in one case. */
final class SolvedPlates {
  private SolvedPlates() {}

  static SpotSolution spot(Casting drying, Spot spot, ParameterSample deviations) {
    PreparedCase prepared = PreparedCase.of(drying);
    SpotSolution trace = new SpotSolution();
    new SpotSolver(prepared, new double[0])
        .solve(spot, deviations, DryingForecaster.HORIZON_S, trace);
    return trace;
  }

  static double hours(Casting drying, Milestone milestone) {
    return spot(drying, Spot.NOMINAL, ParameterSample.NONE).milestoneS[milestone.ordinal()] / 3600;
  }

  static double hoursToDry(Casting drying) {
    return hours(drying, Milestone.DRY_THROUGH);
  }
}
