package starchfilm.drying;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import starchfilm.casting.Casting;
import starchfilm.casting.DryingLimits;
import starchfilm.casting.Spot;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;

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
    for (int i = 0; i < timesS.length; i++) {
      if (!(timesS[i] >= (i == 0 ? 0 : timesS[i - 1]))) {
        throw new IllegalArgumentException(
            "times of weighing must be 0 s or more and in order, not " + Arrays.toString(timesS));
      }
    }
    this.prepared = PreparedCase.of(drying);
    this.timesS = timesS.clone();
    this.solver = new SpotSolver(prepared, this.timesS);
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
   * When the steps of the solver ended, for each part of the plate that is solved for: what another
   * case is solved with where the difference of the two must be smooth. It has to lie close: steps
   * that do not turn where a film turns from wet to damp lead to nonsense.
   */
  public static final class Steps {
    private final List<double[]> endsS = new ArrayList<>();
  }

  /**
   * Mass of the film on the whole plate at the times of weighing.
   *
   * @param deviations the likely case
   * @param massesKg takes the masses (kg), one a time
   * @return the steps that were taken
   */
  public Steps filmMassesKg(ParameterSample deviations, double[] massesKg) {
    Steps taken = new Steps();
    addUp(
        deviations,
        massesKg,
        (part, one) -> {
          solver.solve(Spot.NOMINAL, one, untilS(), trace);
          taken.endsS.add(trace.stepEndsS());
        });
    return taken;
  }

  /**
   * The same with the steps of another case: so near that case the masses change smoothly with the
   * deviations, where by own steps they jump by what a step may be off.
   *
   * @param deviations the likely case
   * @param steps the steps
   * @param massesKg takes the masses (kg), one a time
   */
  public void filmMassesKg(ParameterSample deviations, Steps steps, double[] massesKg) {
    addUp(
        deviations,
        massesKg,
        (part, one) -> solver.curve(Spot.NOMINAL, one, steps.endsS.get(part), trace));
  }

  private interface Solve {
    void of(int part, ParameterSample deviations);
  }

  private void addUp(ParameterSample deviations, double[] massesKg, Solve solve) {
    Arrays.fill(massesKg, 0);
    if (timesS.length == 0) {
      return;
    }
    double unevenness =
        Math.min(
            prepared.drying().pour().unevenness()
                * deviations.multiplier(UncertainParameter.UNEVENNESS),
            DryingLimits.UNEVENNESS.max());
    double[] parts = {1 - GAUSS_NODE * unevenness, 1 + GAUSS_NODE * unevenness};
    for (int part = 0; part < parts.length; part++) {
      double thickness = deviations.of(UncertainParameter.THICKNESS) + Math.log(parts[part]);
      solve.of(part, deviations.with(UncertainParameter.THICKNESS, thickness));
      double areaM2 = prepared.drying().plate().areaM2() / parts.length;
      for (int i = 0; i < timesS.length; i++) {
        massesKg[i] += areaM2 * trace.solidsKgPerM2 * (1 + trace.curve[i]);
      }
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
