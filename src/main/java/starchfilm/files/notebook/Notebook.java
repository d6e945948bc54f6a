package starchfilm.files.notebook;

import java.util.List;
import starchfilm.casting.trial.Trial;
import starchfilm.files.findings.Fault;
import starchfilm.files.findings.Notice;

/**
 * The trials of a folder or a list of files, and everything wrong with the rest.
 *
 * @param trials the trials that could be read: in order of pour, those not poured yet last, then by
 *     name and file
 * @param putAway the sound trials that their owner put away, likewise; those that were asked for by
 *     name are among the trials, too
 * @param jars the jars kept beside them, with what is left
 * @param faults every fault of every file; a file with a fault gives no trial
 * @param notices what the reader should look at though the trial could be read
 */
public record Notebook(
    List<Trial> trials,
    List<Trial> putAway,
    List<JarLevel> jars,
    List<Fault> faults,
    List<Notice> notices) {
  /** Copies the lists. */
  public Notebook {
    trials = List.copyOf(trials);
    putAway = List.copyOf(putAway);
    jars = List.copyOf(jars);
    faults = List.copyOf(faults);
    notices = List.copyOf(notices);
  }
}
