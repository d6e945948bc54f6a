package starchfilm.jar.reagent;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import starchfilm.numerics.figures.Figures;

/** The charge balance of a bath to which one solution is added; formula at {@link PhAdjustment}. */
record Titration(PhAdjustment.Bath bath, Reagent reagent) {
  /** Ion product of water at 25 C, (mol/m3)^2. */
  private static final double ION_PRODUCT = 1e-14 * 1e6;

  private static final double PH_ACCURACY = 1e-10;
  private static final int MOST_STEPS = 200;

  /** What has to be added to reach a pH (m3). */
  double volumeM3To(double ph, double molPerM3) {
    double wanted =
        bath.volumeM3() * (freeCharge(bath.ph()) - freeCharge(ph))
            + bath.soapMol() * (soapShare(ph) - soapShare(bath.ph()));
    double brought = freeCharge(ph) + molPerM3 * reagent.chargeBroughtAt(ph);
    if (!(wanted * brought > 0)) {
      throw new IllegalArgumentException(
          ("pH wanted: %s given, but %s of %s mol/L does not reach it, however"
                  + " much is added; ask for a pH nearer to 7 or use a stronger solution")
              .formatted(
                  Figures.of(ph, 3),
                  reagent.tradeName(),
                  Figures.of(molPerM3 / PhAdjustment.MOL_PER_M3_PER_MOL_PER_L, 3)));
    }
    return wanted / brought;
  }

  /** The pH once a volume has been added. */
  double phAfter(double addedM3, double molPerM3) {
    double fixedCharge =
        bath.soapMol() * soapShare(bath.ph()) - bath.volumeM3() * freeCharge(bath.ph());
    double least = -2;
    double most = 16;
    return new BrentSolver(PH_ACCURACY)
        .solve(
            MOST_STEPS,
            ph ->
                freeCharge(ph) * (bath.volumeM3() + addedM3)
                    + fixedCharge
                    + addedM3 * molPerM3 * reagent.chargeBroughtAt(ph)
                    - bath.soapMol() * soapShare(ph),
            least,
            most);
  }

  /** [H] - [OH] (mol/m3). */
  private static double freeCharge(double ph) {
    double hydrogen = Math.pow(10, -ph) * PhAdjustment.MOL_PER_M3_PER_MOL_PER_L;
    return hydrogen - ION_PRODUCT / hydrogen;
  }

  private static double soapShare(double ph) {
    return 1 / (1 + Math.pow(10, PhAdjustment.SOAP_PKA - ph));
  }
}
