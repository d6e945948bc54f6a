package starchfilm.web;

import java.util.List;
import starchfilm.jar.assay.Assay;
import starchfilm.planning.Plan;

/**
 * Questions that the commands answer too, asked in the words of their command lines, so that page
 * and command read the same words alike.
 */
public interface Questions {
  /**
   * What is in a jar.
   *
   * @param words the words of the command {@code assay}
   * @return the assay
   * @throws NotAnswered where the words cannot be read or the jar cannot be
   */
  Assay assay(List<String> words);

  /**
   * What can be made.
   *
   * @param words the words of the command {@code plan}
   * @return the plan
   * @throws NotAnswered where the words cannot be read or contradict each other
   */
  Planned plan(List<String> words);

  /**
   * A plan and what goes with it.
   *
   * @param plan the plan
   * @param remarks what was assumed, a sentence each
   * @param trialTexts for each recipe the text of a trial file
   */
  record Planned(Plan plan, List<String> remarks, List<String> trialTexts) {
    /** Copies the lists. */
    public Planned {
      remarks = List.copyOf(remarks);
      trialTexts = List.copyOf(trialTexts);
    }
  }

  /** There is no answer; the message says why, with the command's names of the options. */
  final class NotAnswered extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /**
     * No answer.
     *
     * @param sentence why
     */
    public NotAnswered(String sentence) {
      super(sentence);
    }

    /**
     * Why.
     *
     * @return one sentence
     */
    public String sentence() {
      return String.valueOf(getMessage());
    }
  }
}
