package starchfilm.today;

/** The need of a plate, the most urgent first. */
public enum Need {
  /** Mould may show before it is dry, and soon. */
  MOULDS_SOON,
  /** Dry through by now in at least half of the likely cases. */
  PEEL,
  /** It should have been ready long ago, and nobody noted what became of it. */
  OVERDUE,
  /** The room never dries it. */
  NEVER_DRIES,
  /** Mould may show before it is dry, in some days. */
  MOULDS_LATER,
  /** A weighing would narrow the range clearly. */
  WEIGH,
  /** It may be ready any time now. */
  LOOK,
  /** Nothing until its next look. */
  WAIT
}
