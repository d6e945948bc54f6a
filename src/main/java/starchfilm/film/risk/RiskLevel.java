package starchfilm.film.risk;

/** How likely a plate is to fail in one way; the limits between the levels are judged. */
public enum RiskLevel {
  /** Not expected. */
  LOW,
  /** Possible: look at the plate. */
  WATCH,
  /** More likely than not. */
  LIKELY,
  /** Expected. */
  EXPECTED
}
