package starchfilm.film;

/** Why a figure of the film is not stated: a number there would promise what nobody can know. */
public enum Withheld {
  /** Without starch there is no film. */
  NO_STARCH,
  /** Half the starch or more has not gelatinised. */
  UNDERCOOKED,
  /** The paste was noted as scorched. */
  SCORCHED,
  /** Damp air makes the film limp and tacky. */
  LIMP_IN_DAMP_AIR,
  /** Damp air softens the film, which is still a glass. */
  LEATHERY_IN_DAMP_AIR,
  /** So damp that moisture, and what follows from it, is not known. */
  NEARLY_SATURATED_AIR,
  /** Far more glycerol than in any film that was tested. */
  TOO_MUCH_GLYCEROL,
  /** Far colder or warmer than any film that was tested. */
  OUTSIDE_TESTED_TEMPERATURES
}
