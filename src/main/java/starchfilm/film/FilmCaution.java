package starchfilm.film;

/** What the film rules warn of. */
public enum FilmCaution {
  /** So little glycerol that the film may crack off the plate. */
  MAY_CRACK_OFF,
  /** A little glycerol may make the film more brittle than none. */
  ANTIPLASTICISED,
  /** Starch and glycerol may part into two phases. */
  MAY_SEPARATE,
  /** Glycerol may sweat out as beads. */
  MAY_SWEAT,
  /** Tacky in this air. */
  TACKY,
  /** Salt over 2 % of the dry solids widens the bands. */
  SALT_NOTICEABLE,
  /** Salt over 5 % of the dry solids lowers strength and stretch and may bloom. */
  SALT_HIGH,
  /** An open pan does not gelatinise this starch. */
  NEEDS_PRESSURE_COOK,
  /** The paste is too thick to level. */
  TOO_THICK_TO_LEVEL,
  /** The paste is so thin that the starch settles. */
  MAY_SETTLE,
  /** The top temperature was below the end of gelatinisation. */
  UNDERCOOKED,
  /** The dry film is over 0.3 mm: slow, curling, cracking. */
  THICK_FILM
}
