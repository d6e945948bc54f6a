package starchfilm.files.amount;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.zone.ZoneRules;
import java.util.Optional;
import java.util.OptionalDouble;

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
  record ByTheClock(LocalDateTime time) implements Moment {
    /**
     * By how much the clocks of this machine's zone were put forward since another moment.
     *
     * @param since the other moment, by the clock on the wall
     * @return ms; negative where they were put back, 0 where they were left alone
     */
    public long putForwardMs(LocalDateTime since) {
      ZoneRules zone = ZoneId.systemDefault().getRules();
      return 1000L
          * (zone.getOffset(time).getTotalSeconds() - zone.getOffset(since).getTotalSeconds());
    }
  }

  /**
   * The seconds that passed between the pour and this moment; where the clocks of this machine's
   * zone changed between them, the hour they skipped or ran twice is counted as it passed.
   *
   * @param pouredAt when it was poured, if known
   * @return seconds, negative before the pour; empty where the pour is not known and needed
   */
  default OptionalDouble secondsSince(Optional<LocalDateTime> pouredAt) {
    if (this instanceof SincePour since) {
      return OptionalDouble.of(since.s());
    }
    if (this instanceof ByTheClock clock && pouredAt.isPresent()) {
      return OptionalDouble.of(
          (Duration.between(pouredAt.get(), clock.time()).toMillis()
                  - clock.putForwardMs(pouredAt.get()))
              / 1e3);
    }
    return OptionalDouble.empty();
  }
}
