package starchfilm.files.amount;

import java.time.LocalDateTime;
import java.util.Optional;
import java.util.OptionalDouble;
import starchfilm.casting.trial.WallClock;

/** A moment: by the clock on the wall, or counted from the pour. */
public sealed interface Moment {
  /**
   * Counted from the pour.
   *
   * @param s seconds after it
   */
  record SincePour(double s) implements Moment {}

  /**
   * By the clock on the wall.
   *
   * @param time date and time there
   */
  record ByTheClock(LocalDateTime time) implements Moment {}

  /**
   * The seconds that passed between the pour and this moment.
   *
   * @param pouredAt when it was poured, if known
   * @return seconds, negative before the pour; empty where the pour is not known and needed
   */
  default OptionalDouble secondsSince(Optional<LocalDateTime> pouredAt) {
    if (this instanceof SincePour since) {
      return OptionalDouble.of(since.s());
    }
    if (this instanceof ByTheClock clock && pouredAt.isPresent()) {
      return OptionalDouble.of(WallClock.secondsBetween(pouredAt.get(), clock.time()));
    }
    return OptionalDouble.empty();
  }
}
