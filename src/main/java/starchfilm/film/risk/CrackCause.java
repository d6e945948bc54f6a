package starchfilm.film.risk;

/** What makes a plate crack: the one whose change lowers the risk most. */
public enum CrackCause {
  /** The film stretches too little for its own shrinking. */
  TOO_BRITTLE,
  /** The layer is so thick that its skin is dry long before its core. */
  TOO_THICK,
  /** The air is so dry or so fast that the skin stiffens before the rest has shrunk. */
  TOO_FAST,
  /** The thin edge is dry while the thick spot still shrinks. */
  UNEVEN
}
