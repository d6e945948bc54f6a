package starchfilm.material.air;

import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** The steady temperature of a wet face, solved on its own. */
final class WetPlate {
  private static final LatentHeat LATENT_HEAT = new Harrison1963();

  private WetPlate() {}

  /** Surface temperature (K) at which the heat that comes in is what the vapour takes away. */
  static double steadyK(PlateTransfer face, double airK, double benchWPerM2K) {
    double surfaceK =
        new BrentSolver(1e-9)
            .solve(200, t -> heatWPerM2(face, airK, benchWPerM2K, t), airK - 40, airK + 1);
    face.evaluate(surfaceK, 1);
    return surfaceK;
  }

  private static double heatWPerM2(
      PlateTransfer face, double airK, double benchWPerM2K, double surfaceK) {
    face.evaluate(surfaceK, 1);
    return (face.convectionWPerM2K() + face.radiationWPerM2K() + benchWPerM2K) * (airK - surfaceK)
        - LATENT_HEAT.jPerKg(surfaceK) * face.vapourFluxKgPerM2S();
  }
}
