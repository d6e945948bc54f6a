package starchfilm.planning;

/** What keeps a recipe from giving more. */
public enum Limit {
  /** The glycerol at hand. */
  GLYCEROL,
  /** The starch at hand. */
  STARCH,
  /** One plate takes all the pot can hold. */
  POT,
  /** The number of plates. */
  PLATES,
  /** The date, as surely as it must be met. */
  DATE,
  /** The thickest film asked for, or the thickest people usually cast. */
  THICKEST_FILM,
  /** The thinnest film asked for, or the thinnest people usually cast. */
  THINNEST_FILM,
  /** The rim of the plate, or without one the height at which paste runs off. */
  RIM,
  /** The concentration above which the paste does not level well. */
  LEVELLING,
  /** The feel or the figures asked for. */
  WISH
}
