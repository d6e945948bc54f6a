package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;

/** What one hand sent and was told, to be held against the files once the program was killed. */
final class Promises {
  private final List<String> kept = new ArrayList<>();
  private String open = "";

  /** Something is being sent. */
  synchronized void sent(String entry) {
    open = entry;
  }

  /** The program said whether it is saved. */
  synchronized void answered(boolean saved) {
    if (saved) {
      kept.add(open);
    }
    open = "";
  }

  /**
   * Whatever was answered as saved is there, once and in order, and nothing that was refused. What
   * was sent last may be there, though nobody could say so any more.
   */
  synchronized void holdAgainst(List<String> there) {
    if (!open.isEmpty() && there.size() == kept.size() + 1) {
      kept.add(open);
    }
    assertThat(there).isEqualTo(kept);
    open = "";
  }

  /** The same for something of which only the last value stays. */
  synchronized void holdAgainst(String there) {
    if (!open.isEmpty() && there.equals(open)) {
      kept.add(open);
    }
    if (!kept.isEmpty()) {
      assertThat(there).isEqualTo(kept.get(kept.size() - 1));
    }
    open = "";
  }

  synchronized int count() {
    return kept.size();
  }
}
