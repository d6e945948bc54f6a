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
  EXPECTED;

  /** The level of a figure, by where each of the upper three begins. */
  static RiskLevel of(double figure, double watch, double likely, double expected) {
    if (figure < likely) {
      return figure < watch ? LOW : WATCH;
    }
    return figure < expected ? LIKELY : EXPECTED;
  }
}
