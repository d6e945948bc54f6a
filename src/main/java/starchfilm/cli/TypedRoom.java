package starchfilm.cli;

import static starchfilm.numerics.units.Units.DAY_S;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import starchfilm.casting.ConstantRoom;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.Room;
import starchfilm.casting.SwingingRoom;
import starchfilm.material.air.AirState;

/**
 * A room as people type it: {@code 19C,55%}, {@code 8-18C,50-80%} for a day and night, or the name
 * of a hygrometer log.
 *
 * @param room its air from now on
 * @param section the same as the field {@code room} of a trial file
 * @param log the log, where one was named
 */
record TypedRoom(Room room, ObjectNode section, Optional<Path> log) {
  private static final String ALLOWED =
      "temperature and humidity, such as 19C,55% or 8-18C,50-80%, or a hygrometer log, such as"
          + " shed.csv";
  private static final String NUMBER = "(-?[0-9]+(?:[.,][0-9]+)?)";
  private static final Pattern PART =
      Pattern.compile(
          "[\\s,;]*" + NUMBER + "(?:\\s*(?:-|\u2013|to)\\s*" + NUMBER + ")?\\s*(\u00B0?C|%|m/s)",
          Pattern.CASE_INSENSITIVE);
  private static final double COLDEST_C = 1;
  private static final double WARMEST_C = 90;
  private static final double FASTEST_M_PER_S = 20;

  private static final LocalTime WARMEST_AT = LocalTime.of(15, 0);

  private record Span(double from, double to) {
    double middle() {
      return (from + to) / 2;
    }

    double half() {
      return (to - from) / 2;
    }
  }

  /**
   * Reads a room.
   *
   * @param option the option's name, for the sentence
   * @param typed as typed
   * @param surroundings the folder of the log, and the time of the pour: now
   * @return the room
   */
  static TypedRoom parse(String option, String typed, CommandContext surroundings) {
    Optional<Path> file = file(typed, surroundings);
    if (file.isPresent()) {
      return logged(option, file.get());
    }
    Span air = null;
    Span humidity = null;
    Span speed = null;
    Matcher matcher = PART.matcher(typed);
    int end = 0;
    while (matcher.lookingAt()) {
      double from = number(matcher.group(1));
      double to = matcher.group(2) == null ? from : number(matcher.group(2));
      Span span = new Span(Math.min(from, to), Math.max(from, to));
      String unit = matcher.group(3);
      if (unit.equals("%")) {
        humidity = within(option, span, 0, 100, " %");
      } else if (unit.equalsIgnoreCase("m/s")) {
        speed = within(option, span, 0, FASTEST_M_PER_S, " m/s");
      } else {
        air = within(option, span, COLDEST_C, WARMEST_C, " °C");
      }
      end = matcher.end();
      matcher.region(end, typed.length());
    }
    if (air == null || humidity == null || !typed.substring(end).isBlank()) {
      throw CommandFailure.wrongInput(
          option
              + ": \""
              + typed
              + "\" given, allowed "
              + ALLOWED
              + "; write it like one of these");
    }
    return of(
        air,
        humidity,
        speed == null ? DryingPlace.STILL_AIR_M_PER_S : speed.middle(),
        surroundings);
  }

  private static TypedRoom of(
      Span air, Span humidity, double speedMPerS, CommandContext surroundings) {
    AirState mean =
        new AirState(air.middle() + ZERO_CELSIUS_K, humidity.middle() / 100, speedMPerS);
    ObjectNode section = JsonNodeFactory.instance.objectNode();
    section.put("air_speed_m_per_s", speedMPerS);
    if (air.half() == 0 && humidity.half() == 0) {
      section.put("air_C", air.from());
      section.put("rh_pct", humidity.from());
      return new TypedRoom(new ConstantRoom(mean), section, Optional.empty());
    }
    ObjectNode swing = section.putObject("swing");
    swing.put("coolest_C", air.from());
    swing.put("warmest_C", air.to());
    swing.put("driest_rh_pct", humidity.from());
    swing.put("dampest_rh_pct", humidity.to());
    double now = LocalTime.now(surroundings.clock()).toSecondOfDay();
    double untilWarmest = (WARMEST_AT.toSecondOfDay() - now + DAY_S) % DAY_S;
    return new TypedRoom(
        new SwingingRoom(mean, air.half(), humidity.half() / 100, untilWarmest),
        section,
        Optional.empty());
  }

  private static Span within(String option, Span span, double least, double most, String unit) {
    if (span.from() < least || span.to() > most) {
      String given =
          span.half() == 0 ? plain(span.from()) : plain(span.from()) + " to " + plain(span.to());
      throw CommandFailure.wrongInput(
          option
              + ": "
              + given
              + unit
              + " given, allowed "
              + plain(least)
              + " to "
              + plain(most)
              + unit
              + "; write the air beside the plates");
    }
    return span;
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? String.valueOf(Math.round(value)) : String.valueOf(value);
  }

  private static double number(String digits) {
    return Double.parseDouble(digits.replace(',', '.'));
  }

  private static Optional<Path> file(String typed, CommandContext surroundings) {
    try {
      Path path = surroundings.resolve(Path.of(typed));
      boolean named = typed.toLowerCase(java.util.Locale.ROOT).endsWith(".csv");
      return named || Files.isRegularFile(path) ? Optional.of(path) : Optional.empty();
    } catch (InvalidPathException noFile) {
      return Optional.empty();
    }
  }

  private static TypedRoom logged(String option, Path file) {
    ObjectNode section = JsonNodeFactory.instance.objectNode();
    section.put("air_speed_m_per_s", DryingPlace.STILL_AIR_M_PER_S);
    section.put("log_csv", String.valueOf(file.getFileName()));
    return new TypedRoom(LoggedRooms.read(option, file, section), section, Optional.of(file));
  }
}
