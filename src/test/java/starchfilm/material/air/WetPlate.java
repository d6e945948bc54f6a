package starchfilm.material.air;

import java.util.function.DoubleSupplier;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** The steady temperature of a wet face, solved on its own. */
final class WetPlate {
  private static final Harrison1963 LATENT_HEAT = new Harrison1963();

  private WetPlate() {}

  /** Surface temperature (K) at which the heat that comes in is what the vapour takes away. */
  static double steadyK(PlateTransfer face, double airK, double benchWPerM2K) {
    return steadyK(face, airK, () -> face.radiationWPerM2K() + benchWPerM2K);
  }

  /** The same of a surface that takes its heat from the air alone, as a wet bulb does. */
  static double withoutRadiationK(PlateTransfer face, double airK) {
    return steadyK(face, airK, () -> 0);
  }

  private static double steadyK(PlateTransfer face, double airK, DoubleSupplier besidesWPerM2K) {
    double surfaceK =
        new BrentSolver(1e-9)
            .solve(
                200,
                t -> {
                  face.evaluate(t, 1);
                  return (face.convectionWPerM2K() + besidesWPerM2K.getAsDouble()) * (airK - t)
                      - LATENT_HEAT.jPerKg(t) * face.vapourFluxKgPerM2S();
                },
                airK - 40,
                airK + 1);
    face.evaluate(surfaceK, 1);
    return surfaceK;
  }
}
