package starchfilm.material.recipe;

/** An ingredient that a maker can take more or less of. */
public enum Ingredient {
  /** Dry starch. */
  STARCH,
  /** Pure glycerol. */
  GLYCEROL,
  /** Vinegar, counted by its acetic acid. */
  VINEGAR,
  /** Water. */
  WATER,
  /** Salt: what was added, and what the jar of glycerol holds. */
  SALT
}
