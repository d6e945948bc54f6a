package starchfilm.change;

import starchfilm.casting.Casting;

/**
 * One thing changed by one step.
 *
 * @param change what is changed
 * @param before the casting as it was
 * @param after the casting with the change
 */
public record ChangeStep(Change change, Casting before, Casting after) {
  /** The figure that is set, as it was, in its SI unit. */
  public double from() {
    return change.setting().of(before);
  }

  /** The figure that is set, as it is then, in its SI unit. */
  public double to() {
    return change.setting().of(after);
  }
}
