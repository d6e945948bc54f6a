package starchfilm.casting.trial;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a plan was asked for, kept with its trial.
 *
 * @param film the film, in words
 * @param byS when it must be ready (s after the pour), if it must
 */
public record Wanted(Optional<String> film, OptionalDouble byS) {
  /** Nobody asked for anything. */
  public static final Wanted NOTHING = new Wanted(Optional.empty(), OptionalDouble.empty());
}
