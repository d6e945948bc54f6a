package starchfilm.casting;

import java.util.List;
import starchfilm.numerics.figures.Spans;

/**
 * From a moment on, other faces of the film are open to the air.
 *
 * @param timeS time since the pour (s)
 * @param open which faces are open from then on
 */
public record FaceChange(double timeS, OpenFaces open) {
  /** Which faces of the film exchange with the air. */
  public enum OpenFaces {
    /** On its plate: the upper face only. */
    UPPER,
    /** Peeled and turned over on the plate: what was below is open, what was above is not. */
    TURNED,
    /** On a rack, a mesh or a line: both, and the bench no longer warms it. */
    BOTH;

    private String words() {
      return switch (this) {
        case UPPER -> "back on its plate";
        case TURNED -> "turned over";
        case BOTH -> "on a rack";
      };
    }

    /**
     * Whether the face that was poured uppermost is open.
     *
     * @return true for {@link #UPPER} and {@link #BOTH}
     */
    public boolean upper() {
      return this != TURNED;
    }

    /**
     * Whether the face that was poured onto the plate is open.
     *
     * @return true for {@link #TURNED} and {@link #BOTH}
     */
    public boolean lower() {
      return this != UPPER;
    }

    /**
     * Whether the film lies on its plate, and the plate on its bench.
     *
     * @return false where both faces are open
     */
    public boolean onPlate() {
      return this != BOTH;
    }
  }

  /**
   * What was done to a film while it dried.
   *
   * @param changes in order of time
   * @param none what stands for none
   * @return such as {@code turned over after 2.0 days}
   */
  public static String words(List<FaceChange> changes, String none) {
    return changes.stream()
        .map(change -> change.open().words() + " after " + Spans.of(change.timeS()))
        .reduce((first, then) -> first + ", " + then)
        .orElse(none);
  }
}
