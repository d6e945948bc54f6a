package starchfilm.files.amount;

import java.time.Clock;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.WallClock;

/**
 * Reads moments as people type them, against a clock in the zone of this machine.
 *
 * @param clock what time it is now, in the zone of this machine
 */
public record MomentParser(Clock clock) {
  private static final String LASTING = "a time such as +6h or 2026-04-02T18:30";
  private static final String TYPED =
      "a time such as +6h, now, 20 min ago, 18:30, yesterday 18:30, friday 7:15, 2.4.2026 18:30 or"
          + " 2026-04-02 18:30";

  private static final Pattern ISO = SpokenTime.TYPED.get("iso");
  private static final Pattern AGO = SpokenTime.TYPED.get("ago");
  private static final Pattern IS_SPAN = SpokenTime.TYPED.get("span");
  private static final int LONGEST = 80;

  /** A span which no calendar runs out over; no film dries that long. */
  private static final double LONGEST_SPAN_S = Duration.ofDays(365_250).toSeconds();

  /**
   * Reads a moment that means the same whenever it is read, as a file needs it.
   *
   * @param text counted from the pour, {@code +6h}, or ISO, {@code 2026-04-02T18:30}; an offset at
   *     its end is left aside, the time is the clock's on the wall
   * @return the moment
   * @throws MistypedException where the text is neither
   */
  public static Moment lasting(String text) {
    return lasting(text.strip(), text)
        .orElseThrow(() -> new MistypedException(text, LASTING, "write it like one of these"));
  }

  /**
   * Reads date and time as a file has them.
   *
   * @param text in ISO; a date alone stands for its noon
   * @return empty where it is something else
   */
  public static Optional<LocalDateTime> dated(String text) {
    try {
      return lasting(isDateAlone(text) ? text + "T12:00" : text) instanceof Moment.ByTheClock clock
          ? Optional.of(clock.time())
          : Optional.empty();
    } catch (MistypedException neither) {
      return Optional.empty();
    }
  }

  /** Returns whether a file has a date without its time. */
  public static boolean isDateAlone(String text) {
    return text.matches("\\d{4}-\\d{2}-\\d{2}");
  }

  private static Optional<Moment> lasting(String typed, String text) {
    if (typed.startsWith("+")) {
      return Optional.of(new Moment.SincePour(seconds(typed.substring(1), text)));
    }
    return iso(typed, text).map(iso -> new Moment.ByTheClock(iso.time()));
  }

  /** Date and time as ISO writes them, with the offset from UTC where one stands behind them. */
  private record Iso(LocalDateTime time, Optional<ZoneOffset> offset) {
    /** The time that a clock shows then; its own where no offset is told. */
    LocalDateTime by(Clock clock) {
      return offset
          .map(told -> LocalDateTime.ofInstant(time.toInstant(told), clock.getZone()))
          .orElse(time);
    }
  }

  private static Optional<Iso> iso(String typed, String text) {
    Matcher iso = ISO.matcher(typed);
    if (!iso.matches()) {
      return Optional.empty();
    }
    LocalDate date = SpokenTime.date(text, iso.group(1), iso.group(2), iso.group(3));
    LocalTime time = time(iso.group(4), text);
    try {
      return Optional.of(
          new Iso(date.atTime(time), Optional.ofNullable(iso.group(5)).map(ZoneOffset::of)));
    } catch (DateTimeException e) {
      throw new MistypedException(
          text, "an offset from UTC, -18:00 to +18:00", "correct it, or leave it out");
    }
  }

  /**
   * Reads a moment that somebody just typed.
   *
   * @param text such as {@code +6h}, {@code yesterday 18:30} or {@code 20 min ago}
   * @return the moment; a bare time of day is the latest one that is not in the future; with an
   *     offset from UTC it is what this machine's clock showed then
   * @throws MistypedException where the text is no moment, or the clocks were put forward over it
   */
  public Moment parse(String text) {
    String typed = text.strip().toLowerCase(Locale.ROOT);
    if (typed.equals("now")) {
      return new Moment.ByTheClock(now());
    }
    if (typed.startsWith("+")) {
      return new Moment.SincePour(seconds(typed.substring(1), text));
    }
    Optional<Iso> iso = isoHere(text);
    if (iso.isPresent()) {
      return existing(iso.get().by(clock), text);
    }
    Matcher ago = AGO.matcher(typed);
    if (ago.matches()) {
      double seconds = seconds(ago.group(1), text);
      return new Moment.ByTheClock(
          LocalDateTime.ofInstant(
              clock.instant().minus(Duration.ofMillis(Math.round(seconds * 1000))),
              clock.getZone()));
    }
    SpokenTime spoken =
        spoken(text, false)
            .orElseThrow(() -> new MistypedException(text, TYPED, "write it like one of these"));
    if (!spoken.hasHour()) {
      throw new MistypedException(text, TYPED, "write the hour, too, such as " + typed + " 18:30");
    }
    return existing(spoken.time(), text);
  }

  /**
   * Noon of a day that is typed without its hour.
   *
   * @param text such as {@code 2026-04-02} or {@code friday}, the last one
   * @return empty for anything else
   * @throws MistypedException where it could be two days, or none of the calendar
   */
  public Optional<LocalDateTime> noonOf(String text) {
    return spoken(text, false).filter(day -> !day.hasHour()).map(SpokenTime::time);
  }

  private Optional<SpokenTime> spoken(String text, boolean coming) {
    return text.length() > LONGEST ? Optional.empty() : SpokenTime.of(text, now(), coming);
  }

  /**
   * Reads a moment to come; a day without an hour counts to its noon.
   *
   * @param text such as {@code friday}, {@code sat noon}, {@code in 2 days} or {@code 28.11. 18:00}
   * @return the moment; empty where it is no such thing
   * @throws MistypedException where it could be two days, or the clocks were put forward over it
   */
  public Optional<LocalDateTime> coming(String text) {
    String span = span(text);
    if (IS_SPAN.matcher(span).matches()) {
      return Optional.of(WallClock.after(now(), seconds(span, text)));
    }
    Optional<LocalDateTime> time =
        isoHere(text).map(iso -> iso.by(clock)).or(() -> spoken(text, true).map(SpokenTime::time));
    time.ifPresent(at -> existing(at, text));
    return time;
  }

  private static Optional<Iso> isoHere(String text) {
    return iso(text.strip().toUpperCase(Locale.ROOT), text);
  }

  private static double seconds(String span, String text) {
    double seconds = Dimension.TIME.si(span);
    if (seconds > LONGEST_SPAN_S) {
      throw new MistypedException(text, "a time of up to 1000 years", "check number and unit");
    }
    return seconds;
  }

  private static String span(String text) {
    return text.strip()
        .toLowerCase(Locale.ROOT)
        .replaceFirst("^(?:\\+|in|within|after|dans|en)\\s*(?=[\\d\\p{L}])", "")
        .replaceFirst("\\s*(?:from now|(?:from|after) the pour|later|after pouring)$", "");
  }

  /**
   * Returns whether a moment to come is named by its distance, such as {@code 5d after the pour},
   * from whenever that counts.
   *
   * @param text as typed
   * @return false for one that counts from now, such as {@code in 2 days}, or by the clock
   */
  public static boolean isSpan(String text) {
    String typed = text.strip().toLowerCase(Locale.ROOT);
    return !typed.startsWith("in ")
        && !typed.endsWith("from now")
        && IS_SPAN.matcher(span(typed)).matches();
  }

  /**
   * Refuses a moment that has not come yet.
   *
   * @param moment the moment
   * @param pouredAt when it was poured, if known
   * @param typed as it was typed
   * @throws MistypedException where it lies in the future; another device's clock may be a little
   *     ahead
   */
  public void refuseFuture(Moment moment, Optional<LocalDateTime> pouredAt, String typed) {
    Optional<LocalDateTime> at =
        moment instanceof Moment.ByTheClock clockTime
            ? Optional.of(clockTime.time())
            : pouredAt.map(pour -> WallClock.after(pour, ((Moment.SincePour) moment).s()));
    if (at.filter(time -> WallClock.secondsBetween(now(), time) > Trial.CLOCKS_APART_S)
        .isPresent()) {
      throw new MistypedException(
          typed,
          "a time up to now, " + now().withSecond(0).withNano(0),
          "check day and time; what has not happened yet cannot be noted");
    }
  }

  /**
   * A moment as a file keeps it: by the clock on the wall, or, where the clocks changed between the
   * pour and it, counted from the pour, so that no hour is lost.
   *
   * @param moment the moment
   * @param pouredAt when it was poured, if known
   * @return text that {@link #lasting} reads
   */
  public String lastingText(Moment moment, Optional<LocalDateTime> pouredAt) {
    if (moment instanceof Moment.SincePour since) {
      return sincePour(Math.round(since.s()));
    }
    LocalDateTime time = ((Moment.ByTheClock) moment).time().withNano(0);
    return pouredAt
        .filter(pour -> WallClock.putForwardS(pour, time) != 0)
        .map(pour -> WallClock.secondsBetween(pour, time))
        .filter(sinceS -> sinceS >= 0)
        .map(sinceS -> sincePour(Math.round(sinceS)))
        .orElseGet(time::toString);
  }

  private static String sincePour(long seconds) {
    long minutes = Math.round(seconds / 60.0);
    String hours = minutes >= 60 ? minutes / 60 + "h" : "";
    String rest = minutes % 60 > 0 || minutes == 0 ? minutes % 60 + "min" : "";
    return "+" + hours + (hours.isEmpty() || rest.isEmpty() ? "" : " ") + rest;
  }

  private LocalDateTime now() {
    return LocalDateTime.now(clock);
  }

  /** Refuses an hour that the clocks skipped; of an hour they ran twice, the first is meant. */
  private Moment existing(LocalDateTime time, String text) {
    if (clock.getZone().getRules().getValidOffsets(time).isEmpty()) {
      throw new MistypedException(
          text,
          "a time that the clocks showed",
          "the clocks skipped that hour; write one hour earlier or later");
    }
    return new Moment.ByTheClock(time);
  }

  private static LocalTime time(String typed, String text) {
    try {
      return LocalTime.parse(typed.indexOf(':') == 1 ? "0" + typed : typed);
    } catch (DateTimeException e) {
      throw new MistypedException(text, "a time of day, 0:00 to 23:59", "check hour and minute");
    }
  }
}
