package starchfilm.proof;

import java.util.Random;

/**
 * How often programs are killed, and when.
 *
 * <p>{@code -Dstarchfilm.kills=200} kills that often in each test, {@code -Dstarchfilm.seed=8} at
 * other moments.
 */
public final class Kills {
  /** How many. */
  public static final int COUNT = Integer.getInteger("starchfilm.kills", 4);

  /** Whether there is time, so that disks are filled up, too. */
  public static final boolean LONG = COUNT > 50;

  private static final int SEED = Integer.getInteger("starchfilm.seed", 7);

  private Kills() {}

  /**
   * Draws that decide about the moments.
   *
   * @return the same again in every run with the same seed
   */
  public static Random moments() {
    return new Random(SEED);
  }

  /**
   * Kills a program a random moment from now: mostly soon, sometimes in the midst of longer work.
   *
   * @param program the program
   * @param random decides about the moment
   * @throws InterruptedException where the test is stopped
   */
  public static void soon(Process program, Random random) throws InterruptedException {
    Thread.sleep(random.nextInt(random.nextInt(4) == 0 ? 400 : 25));
    program.destroyForcibly().waitFor();
  }
}
