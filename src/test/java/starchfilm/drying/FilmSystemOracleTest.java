package starchfilm.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.numerics.diffusion.DiffusionSystem;
import starchfilm.numerics.diffusion.Grid;
import starchfilm.numerics.diffusion.ReferenceIntegrator;
import starchfilm.numerics.diffusion.RosenbrockIntegrator;
import starchfilm.numerics.diffusion.Tolerance;

/**
 * The equations of a drying film integrated by our method and by a general-purpose library method
 * (Dormand and Prince 8(5,3) of Apache Commons Math 3.6.1): the same cells, the same rates, so only
 * the integration is compared. They agree within 1e-5 in the mean moisture from a hot pour to rest.
 */
class FilmSystemOracleTest {
  private static final int NODES = 9;
  private static final double[] HOURS = {0.1, 1, 5, 15, 30, 40, 45, 50, 60};

  @Test
  void agreesWithALibraryIntegrator() {
    Casting drying = Castings.plate(3, Castings.paste(0.08, 0.3), Castings.room(20, 50, 0.1), 70);
    double[] ours = ours(drying);
    double[] library = library(drying);
    for (int i = 0; i < HOURS.length; i++) {
      assertThat(ours[i]).as("%s h", HOURS[i]).isCloseTo(library[i], offset(1e-5 * library[i]));
    }
  }

  private static double[] ours(Casting drying) {
    DiffusionSystem system = system(drying);
    double[] state = start(drying);
    double[] means = new double[HOURS.length];
    RosenbrockIntegrator integrator =
        ReferenceIntegrator.of(system, new Tolerance(1e-8, 1e-9, 1e-6));
    double time = 0;
    for (int i = 0; i < HOURS.length; i++) {
      integrator.integrate(time, HOURS[i] * 3600, 1, 1e9, state, step -> true);
      time = HOURS[i] * 3600;
      means[i] = system.mean(state);
    }
    return means;
  }

  private static double[] library(Casting drying) {
    DiffusionSystem system = system(drying);
    double[] state = start(drying);
    FirstOrderDifferentialEquations equations =
        new FirstOrderDifferentialEquations() {
          @Override
          public int getDimension() {
            return state.length;
          }

          @Override
          public void computeDerivatives(double time, double[] y, double[] rates) {
            system.rates(time, y, rates);
          }
        };
    double[] means = new double[HOURS.length];
    double time = 0;
    for (int i = 0; i < HOURS.length; i++) {
      new DormandPrince853Integrator(1e-8, 1e5, 1e-10, 1e-9)
          .integrate(equations, time, state, HOURS[i] * 3600, state);
      time = HOURS[i] * 3600;
      means[i] = system.mean(state);
    }
    return means;
  }

  private static double startMoisture(Casting drying) {
    return drying.composition().waterKgPerKgDry();
  }

  private static double solidsKgPerM2(Casting drying) {
    return drying.pour().wetThicknessM().value()
        / drying.composition().volumeM3PerKgDry(startMoisture(drying));
  }

  private static PlateExchange exchange(Casting drying, PreparedCase prepared) {
    PlateExchange exchange = new PlateExchange(drying, prepared.material().isotherm());
    exchange.setCase(ParameterSample.NONE, prepared.material(), solidsKgPerM2(drying));
    return exchange;
  }

  private static DiffusionSystem system(Casting drying) {
    PreparedCase prepared = PreparedCase.of(drying);
    return new DiffusionSystem(
        Grid.fineAtUpperFace(NODES, 2),
        prepared.material().potential().reader(),
        exchange(drying, prepared),
        solidsKgPerM2(drying));
  }

  private static double[] start(Casting drying) {
    PreparedCase prepared = PreparedCase.of(drying);
    double[] state = new double[NODES + 2];
    java.util.Arrays.fill(state, 0, NODES, startMoisture(drying));
    state[NODES] =
        exchange(drying, prepared)
            .startTemperatureK(drying.pour().pasteTemperatureK(), startMoisture(drying));
    return state;
  }
}
