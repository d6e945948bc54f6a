package starchfilm.drying;

import java.util.Arrays;
import starchfilm.casting.Casting;
import starchfilm.casting.DryingLimits;
import starchfilm.casting.Spot;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.numerics.diffusion.Tolerance;

/**
 * One plate solved for one likely case after another: what a scale under it would show, and when
 * its milestones come. This is what weighings are fitted with.
 *
 * <p>A plate is uneven, and its thin parts stop losing water while its thick parts still dry. The
 * thickness is taken as spread evenly between the thin edge and the thick spot (assumed, no
 * source), and the mass is averaged over it by Gauss and Legendre's rule with two points, {@code 1
 * - 0.5774 u} and {@code 1 + 0.5774 u} with equal weights, u the unevenness. Source: Abramowitz and
 * Stegun 1964, Handbook of Mathematical Functions, table 25.4 (recalled).
 *
 * <p>A call allocates nothing that grows with the steps. One object serves one thread.
 */
public final class PlateSimulation {
  /**
   * Tighter than a forecast needs: a fit takes differences of masses, and where a factor hardly
   * moves them a coarse solve gives the difference of two errors.
   */
  private static final Tolerance SMOOTH = new Tolerance(1e-4, 2e-5, 0.1);

  private static final double SHORTEST_S = 60;
  private static final double GAUSS_NODE = 1 / Math.sqrt(3);

  private final PreparedCase prepared;
  private final double[] timesS;
  private final SpotSolver solver;
  private final SpotSolution trace = new SpotSolution();

  /**
   * A simulation of one plate.
   *
   * @param drying the plate
   * @param timesS when it is weighed: times since the pour (s, 0 or more), in order; may be empty
   */
  public PlateSimulation(Casting drying, double... timesS) {
    this(PreparedCase.of(drying), timesS.clone(), SMOOTH, true);
  }

  /**
   * A simulation with the steps of a forecast, for whatever is not differentiated closely.
   *
   * @param drying the plate
   * @param timesS as above
   * @return the simulation
   */
  public static PlateSimulation asForecast(Casting drying, double... timesS) {
    return new PlateSimulation(
        PreparedCase.of(drying), timesS.clone(), SpotSolver.TOLERANCE, false);
  }

  private PlateSimulation(
      PreparedCase prepared, double[] timesS, Tolerance tolerance, boolean fourthOrder) {
    for (int i = 0; i < timesS.length; i++) {
      if (!(timesS[i] >= (i == 0 ? 0 : timesS[i - 1]))) {
        throw new IllegalArgumentException(
            "times of weighing must be 0 s or more and in order, not " + Arrays.toString(timesS));
      }
    }
    this.prepared = prepared;
    this.timesS = timesS;
    Casting drying = prepared.drying();
    this.solver =
        new SpotSolver(
            prepared, timesS, SpotSolver.grid(drying, SpotSolver.NODES), tolerance, fourthOrder);
  }

  /**
   * The factors with what this paste, pour and room add to their uncertainty, as {@link
   * DryingForecaster} adds it.
   *
   * @param factors what is known apart from this plate
   * @return what is known of this plate
   */
  public ParameterDistribution doubted(ParameterDistribution factors) {
    return CastingUncertainty.addedTo(
        factors, prepared, DryingForecaster.solveOne(prepared, Spot.NOMINAL, factors.mean()));
  }

  /**
   * Mass of the film on the whole plate at the times of weighing.
   *
   * @param deviations the likely case
   * @param massesKg takes the masses (kg), one a time
   */
  public void filmMassesKg(ParameterSample deviations, double[] massesKg) {
    Arrays.fill(massesKg, 0);
    if (timesS.length == 0) {
      return;
    }
    double unevenness =
        Math.min(
            prepared.drying().pour().unevenness()
                * deviations.multiplier(UncertainParameter.UNEVENNESS),
            DryingLimits.UNEVENNESS.max());
    double area = prepared.drying().plate().areaM2();
    if (unevenness == 0) {
      addMasses(deviations, 1, area, massesKg);
      return;
    }
    addMasses(deviations, 1 - GAUSS_NODE * unevenness, area / 2, massesKg);
    addMasses(deviations, 1 + GAUSS_NODE * unevenness, area / 2, massesKg);
  }

  private void addMasses(
      ParameterSample deviations, double thicknessRatio, double areaM2, double[] massesKg) {
    double thickness = deviations.of(UncertainParameter.THICKNESS) + Math.log(thicknessRatio);
    solver.solve(
        Spot.NOMINAL, deviations.with(UncertainParameter.THICKNESS, thickness), untilS(), trace);
    for (int i = 0; i < timesS.length; i++) {
      massesKg[i] += areaM2 * trace.solidsKgPerM2 * (1 + trace.curve[i]);
    }
  }

  /** The last weighing, or a little after the pour: a solve needs somewhere to go. */
  private double untilS() {
    return Math.max(SHORTEST_S, timesS[timesS.length - 1]);
  }

  /**
   * When a milestone of one spot comes.
   *
   * @param milestone which
   * @param spot where
   * @param deviations the likely case
   * @return time since the pour (s), positive infinity where it does not come within {@link
   *     DryingForecaster#HORIZON_S}
   */
  public double milestoneS(Milestone milestone, Spot spot, ParameterSample deviations) {
    solver.solve(spot, deviations, DryingForecaster.HORIZON_S, trace);
    return trace.milestoneS[milestone.ordinal()];
  }
}
