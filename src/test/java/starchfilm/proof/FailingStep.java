package starchfilm.proof;

import java.nio.file.FileSystemException;
import java.util.ArrayList;
import java.util.List;

/** Which step of a disk fails, and how; steps are counted from 0 as the program takes them. */
public final class FailingStep {
  /** How a step fails. */
  public enum StepFault {
    /** As on a broken disk. */
    BROKEN("Input/output error"),
    /** As on a full one. */
    FULL("No space left on device"),
    /** As if the program had been killed there: this step and all later ones are not taken. */
    KILLED("");

    private final String reason;

    StepFault(String reason) {
      this.reason = reason;
    }
  }

  /** Stands for the end of the program; nothing in it can be carried out any more. */
  public static final class Killed extends Error {
    private static final long serialVersionUID = 1L;
  }

  private final List<String> steps = new ArrayList<>();
  private final int failing;
  private final StepFault fault;
  private boolean dead;

  /**
   * A plan.
   *
   * @param failing the number of the step that fails; -1 for none
   * @param fault how it fails
   */
  public FailingStep(int failing, StepFault fault) {
    this.failing = failing;
    this.fault = fault;
  }

  /**
   * What was done so far, the failing step included.
   *
   * @return a word for each step
   */
  public List<String> steps() {
    return steps;
  }

  /** Takes a step; true where it is the one that fails. */
  boolean fails(String step) throws FileSystemException {
    if (dead) {
      throw new Killed();
    }
    steps.add(step);
    return steps.size() - 1 == failing;
  }

  /** What the failing step throws. */
  FileSystemException failure() {
    if (fault == StepFault.KILLED) {
      dead = true;
      throw new Killed();
    }
    return new FileSystemException(null, null, fault.reason);
  }

  /** Takes a step that is carried out whole or not at all. */
  void step(String step) throws FileSystemException {
    if (fails(step)) {
      throw failure();
    }
  }
}
