package starchfilm.trial;

import java.util.List;

/**
 * The trials of a folder or a list of files, and everything wrong with the rest.
 *
 * @param trials the trials that could be read, in order of pour, then of file name
 * @param faults every fault of every file
 */
public record Notebook(List<Trial> trials, List<Fault> faults) {
  /** Copies the lists. */
  public Notebook {
    trials = List.copyOf(trials);
    faults = List.copyOf(faults);
  }
}
