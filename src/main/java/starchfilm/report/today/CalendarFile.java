package starchfilm.report.today;

import static starchfilm.numerics.units.Units.HOUR_S;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.WallClock;
import starchfilm.today.Need;
import starchfilm.today.Standing;
import starchfilm.today.Today;
import starchfilm.today.WakingHours;

/**
 * A calendar file of the times to look at each plate.
 *
 * <p>Source: RFC 5545, Internet Calendaring and Scheduling Core Object Specification (iCalendar),
 * 2009: lines of at most 75 octets (3.1), text escaped (3.3.11), local times without a zone, which
 * are those of the clock on the wall (3.3.5, form 1). An event keeps its UID, so that the file of a
 * later hour, which has a higher SEQUENCE (3.8.7.4), moves it, and one made after the plate is off
 * cancels it (3.8.1.11).
 */
public final class CalendarFile {
  private static final DateTimeFormatter LOCAL =
      DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss", Locale.ROOT);
  private static final DateTimeFormatter UTC =
      DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);
  private static final int LONGEST_LINE = 75;

  /**
   * The longest time to look that stands in the calendar whole; of a longer one its likeliest hour
   * (s).
   */
  private static final double WHOLE_UP_TO_S = 12 * HOUR_S;

  private final StringBuilder text = new StringBuilder();
  private final Instant made;
  private final Set<String> live = new HashSet<>();

  private CalendarFile(Instant made) {
    this.made = made;
  }

  /**
   * The calendar.
   *
   * @param today what to do
   * @param made when the file is made
   * @param name how a trial's file is called; it makes the event known again
   * @return the text of an iCalendar file
   */
  public static String of(Today today, Instant made, Function<Trial, String> name) {
    CalendarFile file = new CalendarFile(made);
    file.lines(
        "BEGIN:VCALENDAR",
        "VERSION:2.0",
        "PRODID:-//starchfilm//plates to look after//EN",
        "METHOD:PUBLISH");
    today.standings().stream()
        .filter(standing -> Double.isFinite(standing.lookFromS()))
        .forEach(
            standing -> file.event(standing, today.now(), name.apply(standing.forecast().trial())));
    today.ended().forEach(plate -> file.cancelled(plate, name.apply(plate.trial())));
    file.lines("END:VCALENDAR");
    return file.text.toString();
  }

  private void event(Standing standing, LocalDateTime now, String file) {
    PlateNow words = new PlateNow(standing);
    boolean ready = standing.need() == Need.PEEL || standing.need() == Need.OVERDUE;
    LocalDateTime poured = standing.forecast().trial().pouredAt().orElseThrow();
    double fromS = standing.lookFromS();
    double untilS = standing.lookUntilS();
    boolean whole = untilS - fromS <= WHOLE_UP_TO_S;
    double startS = whole ? fromS : Math.max(fromS, standing.readyS().middle());
    LocalDateTime start =
        WakingHours.atOrAfter(
            upToHour(ready ? now : WallClock.after(poured, Math.min(startS, 1e9))));
    LocalDateTime end = WallClock.after(poured, Math.min(untilS, 1e9));
    boolean longer = whole && !ready && Duration.between(start, end).compareTo(HOUR) > 0;
    begin(file, standing.plates().get(0), start);
    String who = escaped(words.who());
    lines(
        "DTEND:" + LOCAL.format(longer ? upToHour(end) : start.plus(HOUR)),
        "SUMMARY:" + (ready ? "Peel " : "Look at ") + who,
        "DESCRIPTION:" + escaped(words.sentence() + " Look: " + words.look() + "."),
        "BEGIN:VALARM",
        "ACTION:DISPLAY",
        "DESCRIPTION:" + who,
        "TRIGGER;RELATED=START:PT0S",
        "END:VALARM",
        "END:VEVENT");
  }

  /** Who never imported the plate's event is shown nothing by it. */
  private void cancelled(Today.Ended plate, String file) {
    if (live.contains(uid(file + "#" + plate.plate()))) {
      return;
    }
    begin(file, plate.plate(), plate.trial().pouredAt().orElseThrow());
    lines(
        "STATUS:CANCELLED",
        "SUMMARY:" + escaped(plate.trial().name() + ": off the plate"),
        "END:VEVENT");
  }

  private void begin(String file, int plate, LocalDateTime start) {
    String uid = uid(file + "#" + plate);
    live.add(uid);
    lines(
        "BEGIN:VEVENT",
        "UID:" + uid,
        "DTSTAMP:" + UTC.format(made),
        "SEQUENCE:" + made.getEpochSecond() / 60,
        "DTSTART:" + LOCAL.format(start));
  }

  private static final Duration HOUR = Duration.ofHours(1);

  private static LocalDateTime upToHour(LocalDateTime moment) {
    LocalDateTime hour = moment.truncatedTo(ChronoUnit.HOURS);
    return hour.equals(moment) ? hour : hour.plusHours(1);
  }

  private static String uid(String plate) {
    return UUID.nameUUIDFromBytes(plate.getBytes(StandardCharsets.UTF_8)) + "@starchfilm";
  }

  private static String escaped(String words) {
    return words
        .replace("\\", "\\\\")
        .replace(";", "\\;")
        .replace(",", "\\,")
        .replaceAll("\\R", "\\\\n");
  }

  private void lines(String... contents) {
    Arrays.stream(contents).forEach(this::line);
  }

  /** Folds a line where it would have more than 75 octets, never within a character. */
  private void line(String content) {
    int octets = 0;
    for (int at = 0; at < content.length(); ) {
      int character = content.codePointAt(at);
      String one = Character.toString(character);
      int length = one.getBytes(StandardCharsets.UTF_8).length;
      if (octets + length > LONGEST_LINE) {
        text.append("\r\n ");
        octets = 1;
      }
      text.append(one);
      octets += length;
      at += Character.charCount(character);
    }
    text.append("\r\n");
  }
}
