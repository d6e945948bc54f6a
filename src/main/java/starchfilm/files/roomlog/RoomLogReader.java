package starchfilm.files.roomlog;

import static starchfilm.numerics.units.Units.DAY_S;
import static starchfilm.numerics.units.Units.HOUR_S;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import starchfilm.casting.LoggedRoom;
import starchfilm.casting.LoggedRoom.RoomReading;
import starchfilm.casting.trial.WallClock;
import starchfilm.files.findings.Allowed;
import starchfilm.files.findings.Findings;
import starchfilm.files.findings.Words;
import starchfilm.files.json.Located.Place;
import starchfilm.files.json.UnreadableFileException;
import starchfilm.files.roomlog.LogTable.LogRow;
import starchfilm.numerics.units.Plural;

/**
 * Reads a hygrometer log: rows of time, degrees Celsius and per cent relative humidity.
 *
 * <p>Read as it comes: comma, semicolon or tab between cells, points or commas in numbers, rows in
 * any order, dates with numbers or month names, seconds since 1970, hours since the pour, degrees
 * Fahrenheit, lines above the head, comment lines, gaps, a few broken rows. Refused with the line:
 * more rows that cannot be a reading, and what nothing in the file tells apart: day and month,
 * humidity and temperature, Celsius and Fahrenheit.
 *
 * @param log takes what turns up in it, under its name
 */
public record RoomLogReader(Findings log) {
  private static final Allowed AIR =
      Allowed.between(-30, 90, "\u00B0C", "delete the row if the sensor failed");
  private static final Allowed AIR_F =
      Allowed.between(-22, 194, "\u00B0F", "delete the row if the sensor failed");
  private static final Allowed HUMIDITY =
      Allowed.between(0, 105, "% RH", "delete the row if the sensor failed");

  /** The model knows no ice; frost is read as this, and said (degrees Celsius). */
  private static final double LEAST_C = 1;

  /**
   * Span over which readings are averaged (s): 3 mm of paste on 4 mm of glass take 20 kJ/(m2 K) and
   * follow the air, which brings some 10 W/(m2 K), in half an hour, and then dry for days; judged.
   * Of 40 made-up logs of half-hours it moves half of all plates by less than 0.7e-3 of their
   * times, 90 % by less than 2e-3 and the worst by 1 %.
   */
  private static final double FELT_S = HOUR_S;

  private static final int FAULTS_LISTED = 10;

  /** One broken row in so many is passed over; judged. */
  private static final int ROWS_FOR_ONE_BROKEN = 10;

  /**
   * Reads the file.
   *
   * @param file the CSV file
   * @param pouredAt when the plate was poured; where it is not known, the log is taken to begin
   *     then
   * @param speedMPerS air speed (m/s)
   * @param findings takes over what turned up
   * @return the room, if the log has no fault
   */
  public Optional<LoggedRoom> read(
      Path file, Optional<LocalDateTime> pouredAt, double speedMPerS, Findings findings) {
    Optional<LoggedRoom> room = Optional.empty();
    try {
      List<LogReading> readings =
          readings(LogTable.of(LogText.read(file, log)), pouredAt.orElse(LogClock.ANY_START));
      if (log.faults().isEmpty()) {
        room = Optional.of(room(readings, pouredAt, speedMPerS));
      }
    } catch (UnreadableFileException e) {
      log.fault(e);
    }
    findings.takeOver(log);
    return log.faults().isEmpty() ? room : Optional.empty();
  }

  private List<LogReading> readings(LogTable table, LocalDateTime start)
      throws UnreadableFileException {
    if (table.rows().isEmpty()) {
      throw new UnreadableFileException(
          "a log without rows", "rows of time, \u00B0C and % RH", "export the log again");
    }
    LogBody body = LogBody.of(table, log);
    LogColumns columns = body.columns();
    boolean isMonthFirst = new LogDateOrder(log).isMonthFirst(body.rows(), columns);
    LogClock clock = LogClock.of(body.rows(), columns, isMonthFirst, start, log);
    List<LogReading> readings = new ArrayList<>();
    List<UnreadableFileException> broken = new ArrayList<>();
    for (LogRow row : body.rows()) {
      try {
        reading(row.line(), table.cells(row, columns.count()), columns, clock)
            .ifPresent(readings::add);
      } catch (UnreadableFileException e) {
        broken.add(e);
      }
    }
    tell(broken, body.rows());
    int withoutReading = body.rows().size() - broken.size() - readings.size();
    if (withoutReading > 0) {
      log.notice("left out, because they hold no reading: " + Plural.of(withoutReading, "row"));
    }
    if (readings.isEmpty() && log.faults().isEmpty()) {
      throw new UnreadableFileException(
          "a log without readings", "rows of time, \u00B0C and % RH", "export the log again");
    }
    if (log.faults().isEmpty()) {
      refuseUnsaidFahrenheit(columns, readings);
    }
    return readings;
  }

  /** A few broken rows are passed over and reported; more of them are a fault of the log. */
  private void tell(List<UnreadableFileException> broken, List<LogRow> rows) {
    boolean isSound = broken.size() * ROWS_FOR_ONE_BROKEN <= rows.size();
    for (UnreadableFileException row : broken.subList(0, Math.min(broken.size(), FAULTS_LISTED))) {
      if (isSound) {
        log.notice(row.place(), "skipped because it cannot be read: " + row.given());
      } else {
        log.fault(row);
      }
    }
    int more = broken.size() - FAULTS_LISTED;
    if (more > 0 && isSound) {
      log.notice(more + " more rows skipped");
    } else if (more > 0) {
      log.fault(
          Place.of(rows.get(rows.size() - 1).line()),
          more + " more rows that cannot be read",
          "rows of time, \u00B0C and % RH",
          "fix the rows above first");
    }
  }

  /**
   * A room of 65 degrees is one in Fahrenheit more likely than an oven; who has an oven says so.
   */
  private static void refuseUnsaidFahrenheit(LogColumns columns, List<LogReading> readings)
      throws UnreadableFileException {
    LogReading coolest =
        readings.stream().min(Comparator.comparingDouble(LogReading::airC)).orElseThrow();
    if (columns.scale() == LogColumns.Degrees.NOT_SAID
        && coolest.airC() > LogColumns.WARM_ROOM_C
        && !coolest.saidCelsius()) {
      throw new UnreadableFileException(
          Place.of(coolest.line()),
          "a log whose coolest reading is " + Allowed.plain(coolest.airC()),
          "degrees Celsius of a room, or a column that says its unit",
          "name the column air_F if it is Fahrenheit, or air_C if it is that warm");
    }
  }

  /** The reading of a row; empty where the logger has none there. */
  private static Optional<LogReading> reading(
      int line, List<String> cells, LogColumns columns, LogClock clock)
      throws UnreadableFileException {
    Place here = Place.of(line);
    Optional<String> moment = columns.moment(cells);
    if (moment.isEmpty() || cells.size() > columns.count()) {
      throw new UnreadableFileException(
          here,
          cells.size() + " cells",
          columns.count() + " cells as in the first row",
          "put numbers with a decimal comma in double quotes, or separate the cells by semicolons");
    }
    Optional<LogClock.LogMoment> time = clock.moment(moment.get());
    if (time.isEmpty()) {
      throw new UnreadableFileException(
          here,
          '"' + moment.get() + '"',
          "a date and time such as 2026-04-02 18:30 or 2.4.2026 18:30",
          "write the dates like one of these");
    }
    String air = cells.get(columns.air());
    String humidity = cells.get(columns.humidity());
    if (LogReading.isNothing(air) || LogReading.isNothing(humidity)) {
      return Optional.empty();
    }
    boolean fahrenheit =
        columns.scale() == LogColumns.Degrees.FAHRENHEIT || LogReading.unit(air).endsWith("F");
    double degrees = inRange(here, air, fahrenheit ? AIR_F : AIR);
    return Optional.of(
        new LogReading(
            line,
            time.get().time(),
            time.get().isByTheWall(),
            fahrenheit ? (degrees - 32) / 1.8 : degrees,
            inRange(here, humidity, HUMIDITY),
            fahrenheit || !LogReading.unit(air).isEmpty()));
  }

  private static double inRange(Place here, String cell, Allowed allowed)
      throws UnreadableFileException {
    OptionalDouble number = LogReading.number(cell);
    if (number.isEmpty() || !allowed.contains(number.getAsDouble())) {
      String given = number.isEmpty() ? '"' + cell + '"' : cell;
      throw new UnreadableFileException(here, given, allowed.words(), allowed.mend());
    }
    return number.getAsDouble();
  }

  private LoggedRoom room(
      List<LogReading> asLogged, Optional<LocalDateTime> pouredAt, double speedMPerS)
      throws UnreadableFileException {
    List<LogReading> readings = new LogOrder(log).inOrder(asLogged);
    readings.stream()
        .filter(r -> r.airC() < LEAST_C)
        .findFirst()
        .ifPresent(
            r ->
                log.notice(
                    Place.of(r.line()),
                    "temperatures below 1 \u00B0C are read as 1 \u00B0C; the forecast does"
                        + " not cover ice"));
    refuseFractions(readings);
    Instant start = pouredAt.map(WallClock::instant).orElse(readings.get(0).time());
    if (pouredAt.isEmpty()) {
      log.notRecorded(
          "poured_at",
          "time of the pour",
          "the first of the room log",
          "which air the plate had at what time");
    }
    Instant end = readings.get(readings.size() - 1).time();
    if (end.isBefore(start)) {
      throw new UnreadableFileException(
          "a log that ends at " + WallClock.at(end),
          "readings after the pour at " + WallClock.at(start),
          "name the log of these days, or check poured_at");
    }
    double late = seconds(start, readings.get(0).time());
    if (late > 3600) {
      log.notice(
          Place.of(readings.get(0).line()),
          "the log begins %s after the pour; its first reading is used for the time before"
              .formatted(Words.span(late)));
    }
    tellChangeOfClocks(readings, start);
    LoggedRoom logged =
        new LoggedRoom(
            readings.stream()
                .map(r -> atPourTime(r, start))
                .filter(r -> r.timeS() >= -DAY_S)
                .toList(),
            speedMPerS);
    LoggedRoom felt = logged.averaged(FELT_S);
    if (felt.readings().size() < logged.readings().size()) {
      log.notice(
          "%s readings are averaged over hours; faster changes hardly affect when a film is dry"
              .formatted(logged.readings().size()));
    }
    return felt;
  }

  /**
   * A logger whose clock stays as it was is an hour off from that night on, which nothing shows.
   */
  private void tellChangeOfClocks(List<LogReading> readings, Instant start) {
    for (int i = 1; i < readings.size(); i++) {
      LogReading before = readings.get(i - 1);
      LogReading after = readings.get(i);
      boolean isUsed = seconds(start, after.time()) >= -DAY_S;
      Duration shown = Duration.between(WallClock.at(before.time()), WallClock.at(after.time()));
      int forward = shown.compareTo(Duration.between(before.time(), after.time()));
      if (isUsed && before.isByTheWall() && after.isByTheWall() && forward != 0) {
        log.notice(
            Place.of(after.line()),
            """
            the clocks were put %s during this log; its times are read as the clock on the wall \
            showed them; if the logger's clock was not changed, they are an hour off from then on\
            """
                .formatted(forward > 0 ? "forward" : "back"));
        return;
      }
    }
  }

  private static RoomReading atPourTime(LogReading reading, Instant start) {
    return new RoomReading(
        seconds(start, reading.time()),
        Math.max(reading.airC(), LEAST_C) + ZERO_CELSIUS_K,
        Math.min(reading.humidityPct(), 100) / 100);
  }

  private static double seconds(Instant from, Instant to) {
    return Duration.between(from, to).toMillis() / 1e3;
  }

  private static void refuseFractions(List<LogReading> readings) throws UnreadableFileException {
    LogReading dampest =
        readings.stream().max(Comparator.comparingDouble(LogReading::humidityPct)).orElseThrow();
    if (dampest.humidityPct() > 0 && dampest.humidityPct() <= 1) {
      throw new UnreadableFileException(
          Place.of(dampest.line()),
          "a log whose dampest reading is " + Allowed.plain(dampest.humidityPct()) + " % RH",
          "relative humidity in per cent",
          "this looks like a fraction; multiply the column by 100");
    }
  }
}
