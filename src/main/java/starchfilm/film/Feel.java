package starchfilm.film;

/** The feel of a film in the hand. */
public enum Feel {
  /** Snaps when bent. */
  BRITTLE,
  /** Bends a little and stays stiff, like an overhead sheet. */
  STIFF,
  /** Bends and folds, like a shopping bag. */
  FLEXIBLE,
  /** Gives way and stretches. */
  STRETCHY,
  /** Soft and tacky, clings to itself. */
  STICKY
}
