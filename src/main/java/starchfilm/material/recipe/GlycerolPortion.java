package starchfilm.material.recipe;

import starchfilm.numerics.evidence.Estimate;

/**
 * Glycerol as weighed out of a jar.
 *
 * @param massKg what was weighed, water and salt included (kg)
 * @param stock what the jar holds
 */
public record GlycerolPortion(Estimate massKg, GlycerolStock stock) {
  /** Checks the mass. */
  public GlycerolPortion {
    Amounts.requireMass("glycerol", massKg);
  }

  /** Tells whether it may hold methanol: there is some, and nobody knows it to be bought. */
  public boolean mayHoldMethanol() {
    return massKg.value() > 0 && stock.origin().mayHoldMethanol();
  }
}
