package starchfilm.jar.recovery;

import static starchfilm.numerics.figures.ReaderUnit.GRAM;

import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.figures.Figures;
import starchfilm.numerics.units.Named;

/**
 * Something put into the glycerol after it was neutralised.
 *
 * @param agent what
 * @param massKg how much (kg)
 * @param takenOutKg how much was taken out again, dry (kg); 0 where nobody weighed it
 */
public record LaterAddition(Agent agent, Estimate massKg, Estimate takenOutKg) {
  /** Checks the amounts. */
  public LaterAddition {
    double leastKg = Math.min(massKg.value(), takenOutKg.value());
    GRAM.requireNoneOrMore(agent.tradeName(), leastKg, "write what was added and taken out");
    if (takenOutKg.value() > massKg.value()) {
      throw new IllegalArgumentException(
          "%s: %s g taken out of %s g added; dry it before weighing, or leave it out"
              .formatted(
                  agent.tradeName(),
                  Figures.grams(takenOutKg.value()),
                  Figures.grams(massKg.value())));
    }
  }

  /** Something that people add. */
  public enum Agent implements Named {
    /** Methanol to thin it for filtering. */
    METHANOL(0, 1, false),
    /** Ethanol to thin it for filtering. */
    ETHANOL(0, 1, false),
    /** Magnesium sulfate to take up water; part of it dissolves. */
    MAGNESIUM_SULFATE(0.05, 0.5, true),
    /** Calcium chloride to take up water; glycerol dissolves it. */
    CALCIUM_CHLORIDE(0.5, 1, true),
    /** Sodium sulfate to take up water; little of it dissolves. */
    SODIUM_SULFATE(0, 0.2, true),
    /** Common salt, to salt the soap out. */
    COMMON_SALT(0.3, 1, false),
    /** Charcoal, clay or silica to clear it; fines pass the filter. */
    ADSORBENT(0, 0.02, false),
    /** Water. */
    WATER(0, 0, false);

    private final double leastStaying;
    private final double mostStaying;
    private final boolean hygroscopic;

    /** Shares that stay behind: judged, no source. */
    Agent(double leastStaying, double mostStaying, boolean hygroscopic) {
      this.leastStaying = leastStaying;
      this.mostStaying = mostStaying;
      this.hygroscopic = hygroscopic;
    }

    /** True for a salt that draws water out of the air. */
    boolean isHygroscopic() {
      return hygroscopic;
    }

    boolean isAlcohol() {
      return this == METHANOL || this == ETHANOL;
    }
  }

  /**
   * What stays behind for good: salt in solution, fines through the filter; not the alcohol.
   *
   * @return kg
   */
  Estimate solidsLeftKg() {
    if (agent.isAlcohol() || agent == Agent.WATER) {
      return Estimate.exact(0);
    }
    if (takenOutKg.value() > 0) {
      return massKg.minus(takenOutKg);
    }
    return massKg.times(Estimate.between(agent.leastStaying, agent.mostStaying));
  }
}
