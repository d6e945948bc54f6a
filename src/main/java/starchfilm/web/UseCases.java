package starchfilm.web;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import starchfilm.advice.Adviser;
import starchfilm.casting.trial.Trial;
import starchfilm.change.TrialAnalysis;
import starchfilm.learning.Workshop;
import starchfilm.learning.Workshops;

/**
 * What the pages ask the program, as the commands ask it.
 *
 * @param forecast forecasts a trial in full
 * @param glance forecasts a trial with the same figures, but not what changes would do
 * @param adviser makes what tells what to try next; its table is read once it is asked for
 * @param learner learns from the trials of a folder; writes nothing
 * @param workshops what was learnt from the trials of the folder
 */
public record UseCases(
    Function<Trial, TrialAnalysis> forecast,
    Function<Trial, TrialAnalysis> glance,
    Supplier<Adviser> adviser,
    Learning learner,
    Workshops workshops) {
  /** Learns. */
  @FunctionalInterface
  public interface Learning {
    /**
     * Learns from the trials of a folder; writes nothing.
     *
     * @param requireWanted called before each step; throws where the reader stopped it
     */
    Workshop from(Path folder, List<Trial> trials, Runnable requireWanted);
  }
}
