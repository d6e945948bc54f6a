package starchfilm.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Many cases from one seed, each with a number that brings it back.
 *
 * <p>{@code -Dstarchfilm.cases=100000} sets how many there are in all tests together, {@code
 * -Dstarchfilm.seed=2} takes others, {@code -Dstarchfilm.case=417} runs one alone.
 */
public final class Cases {
  private static final int ALL = Integer.getInteger("starchfilm.cases", 2_000);
  private static final long SEED = Long.getLong("starchfilm.seed", 1);
  private static final int ONLY = Integer.getInteger("starchfilm.case", -1);
  private static final long MOST_NS = 2_000_000_000;
  private static final int MOST_FAULTS = 10;
  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  private Cases() {}

  /** One case. */
  @FunctionalInterface
  public interface RandomCase {
    /**
     * Tries it.
     *
     * @param random decides everything about the case
     * @param number its number
     * @throws Exception where it fails
     */
    void tryOut(Random random, int number) throws Exception;
  }

  /**
   * Tries a share of all cases. None may take more than 2 s of a processor: not of the clock, which
   * on a busy machine also counts the work of others.
   *
   * @param perMille share of all cases (1/1000)
   * @param one a case
   */
  public static void forEach(int perMille, RandomCase one) {
    int count = ALL * perMille / 1_000;
    List<AssertionError> faults = new ArrayList<>();
    for (int number = ONLY < 0 ? 0 : ONLY; number < (ONLY < 0 ? count : ONLY + 1); number++) {
      try {
        long start = THREADS.getCurrentThreadCpuTime();
        one.tryOut(new Random(mixed(number)), number);
        assertThat(THREADS.getCurrentThreadCpuTime() - start).as("ns taken").isLessThan(MOST_NS);
      } catch (Throwable fault) {
        faults.add(
            new AssertionError(
                "case " + number + " of seed " + SEED + " (-Dstarchfilm.case=" + number + ")",
                fault));
        if (faults.size() == MOST_FAULTS) {
          break;
        }
      }
    }
    if (!faults.isEmpty()) {
      AssertionError first = faults.remove(0);
      faults.forEach(first::addSuppressed);
      throw first;
    }
  }

  /** Neighbouring seeds give neighbouring first draws; this sets them apart (Stafford's mix 13). */
  private static long mixed(int number) {
    long z = SEED * 0x9e3779b97f4a7c15L + number;
    z = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
    z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
    return z ^ (z >>> 31);
  }
}
