package starchfilm.casting.trial;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What is noted of a photo.
 *
 * @param takenAtS when it was taken (s since the pour), if noted
 * @param caption what it shows, in the maker's words, if noted
 * @param plate which plate it shows, if noted
 */
public record PhotoNote(OptionalDouble takenAtS, Optional<String> caption, OptionalInt plate) {
  /** Nothing is noted. */
  public static final PhotoNote NOTHING =
      new PhotoNote(OptionalDouble.empty(), Optional.empty(), OptionalInt.empty());

  /** This note with what a later one says over it. */
  public PhotoNote with(PhotoNote later) {
    return new PhotoNote(
        later.takenAtS.isPresent() ? later.takenAtS : takenAtS,
        later.caption.or(() -> caption),
        later.plate.isPresent() ? later.plate : plate);
  }
}
