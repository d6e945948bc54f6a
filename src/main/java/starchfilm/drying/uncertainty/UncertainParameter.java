package starchfilm.drying.uncertainty;

/**
 * What is uncertain in a drying forecast, one name a factor, with its spread before anything is
 * learnt.
 *
 * <p>A log-normal factor multiplies; its deviation is a natural logarithm. A normal one shifts or
 * scales by its deviation. The spreads are the team's judgement of the literature's scatter
 * (assumed, no source), but for those of {@link #SOLIDS}, {@link #PLASTICISER} and {@link
 * #UNEVENNESS}, which the weighing of the ingredients adds to.
 */
public enum UncertainParameter {
  /** Transfer between surface and air: correlations at low air speed differ by a factor of two. */
  AIR_SIDE(0.35, true),
  /** Diffusivity of water in the film. */
  DIFFUSIVITY(0.5, true),
  /** Moisture the film holds at a given activity. */
  ISOTHERM(0.15, true),
  /** Heat passed by what the plate stands on. */
  BENCH(0.5, true),
  /** Relative humidity of the room, in hygrometer points over 100. */
  HUMIDITY(0.05, false),
  /** Air temperature (K). */
  AIR_TEMPERATURE(1, false),
  /** Wet thickness, relative. */
  THICKNESS(0.08, true),
  /** Dry solids of the paste, relative. */
  SOLIDS(0.03, true),
  /** Glycerol per dry starch, relative; no spread but what weighing and jar leave. */
  PLASTICISER(0, true),
  /** Unevenness of the plate; no spread where it was measured. */
  UNEVENNESS(0, true);

  private final double spread;
  private final boolean logNormal;

  UncertainParameter(double spread, boolean logNormal) {
    this.spread = spread;
    this.logNormal = logNormal;
  }

  /**
   * One standard deviation before anything is learnt.
   *
   * @return of the natural logarithm for a log-normal factor; else in the factor's own unit
   */
  public double spread() {
    return spread;
  }

  /**
   * Whether it multiplies by the exponential of its deviation.
   *
   * @return true for log-normal factors
   */
  public boolean isLogNormal() {
    return logNormal;
  }
}
