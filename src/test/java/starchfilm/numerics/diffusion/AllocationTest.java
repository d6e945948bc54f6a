package starchfilm.numerics.diffusion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A forecast runs thousands of integrations; none of them makes work for the collector. */
class AllocationTest {
  private static final int RUNS = 50;

  /** The counter and the JIT may take a little; one array a step would be a hundred times this. */
  private static final long ALLOWED_BYTES = 4096;

  private static final Grid GRID = Grid.fineAtUpperFace(40, 10);
  private static final DryingLikeFilm FILM = DryingLikeFilm.inASwingingRoom();

  @ParameterizedTest
  @EnumSource(IntegratorOrder.class)
  void integratesWithoutAllocating(IntegratorOrder order) {
    assumeTrue(
        ManagementFactory.getThreadMXBean() instanceof ThreadMXBean bean
            && bean.isThreadAllocatedMemorySupported()
            && bean.isThreadAllocatedMemoryEnabled(),
        "this virtual machine does not count allocated bytes");
    ThreadMXBean counter = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long self = Thread.currentThread().getId();
    RosenbrockIntegrator integrator =
        order.integrator(FILM.system(GRID), new Tolerance(1e-4, 1e-4, 1e-4));
    double[] start = FILM.start(GRID);
    double[] state = start.clone();
    long[] steps = {0};
    StepListener listener =
        step -> {
          steps[0]++;
          return step.at(0, step.end()) > -1;
        };
    run(integrator, start, state, listener);

    long before = counter.getThreadAllocatedBytes(self);
    long stepsBefore = steps[0];
    run(integrator, start, state, listener);
    long allocated = counter.getThreadAllocatedBytes(self) - before;

    assertThat(steps[0] - stepsBefore).isGreaterThan(20 * RUNS);
    assertThat(allocated).isLessThan(ALLOWED_BYTES);
  }

  private static void run(
      RosenbrockIntegrator integrator, double[] start, double[] state, StepListener listener) {
    for (int i = 0; i < RUNS; i++) {
      System.arraycopy(start, 0, state, 0, state.length);
      integrator.integrate(0, 8, 1e-5, 8, state, listener);
    }
  }
}
