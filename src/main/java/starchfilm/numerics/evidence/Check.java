package starchfilm.numerics.evidence;

/** How far a published figure was checked before it was put into this program. */
public enum Check {
  /** Read in the source itself or in a faithful copy of its text. */
  READ,
  /** Recalled from memory of the source and not seen again. */
  RECALLED,
  /** Computed or fitted by us from figures of the source. */
  COMPUTED,
  /** Our own judgement or assumption; no source. */
  JUDGED
}
