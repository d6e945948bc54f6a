package starchfilm.files.notebook;

import static starchfilm.numerics.units.Units.DAY_S;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.OptionalDouble;
import starchfilm.casting.ConstantRoom;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.LoggedRoom;
import starchfilm.casting.Room;
import starchfilm.casting.RoomUncertainty;
import starchfilm.casting.SwingingRoom;
import starchfilm.files.findings.Findings;
import starchfilm.files.findings.PlainLine;
import starchfilm.files.roomlog.RoomLogReader;
import starchfilm.material.air.AirState;
import starchfilm.numerics.evidence.Estimate;

/** Reads {@code room}: constant, swinging by day and night, or logged in a CSV file. */
final class RoomReader {

  private static final double ANY_ROOM_K = 293.15;
  private static final double ANY_HUMIDITY = 0.5;
  private static final LocalTime ASSUMED_POUR_TIME = LocalTime.NOON;

  private RoomReader() {}

  static DryingPlace read(ObjectReader trial, Path file, Optional<LocalDateTime> pouredAt) {
    ObjectReader room = trial.sectionOrEmpty("room");
    String name = PlainLine.of(room.text("name").orElse("room"));
    Estimate speed = room.taken("air_speed_m_per_s");
    OptionalDouble benchK = room.number("bench_C");
    double speedDoubt = speed.value() > 0 ? speed.sd() / speed.value() : 0;
    RoomAccount account = RoomAccount.of(room);
    account.otherKeys().forEach(key -> room.leftAside(key, "since " + account.key() + " is given"));
    Optional<? extends Room> changing =
        switch (account) {
          case AIR -> Optional.empty();
          case SWING ->
              room.section(account.key()).map(swing -> swinging(swing, pouredAt, speed.value()));
          case LOG -> logged(room, file, pouredAt, speed.value());
        };
    if (changing.isPresent()) {
      return new DryingPlace(name, changing.get(), new RoomUncertainty(0, 0, speedDoubt), benchK);
    }
    Estimate air = room.taken("air_C");
    Estimate humidity = room.taken("rh_pct");
    AirState state = new AirState(air.value(), humidity.value(), speed.value());
    RoomUncertainty doubt = new RoomUncertainty(air.sd(), humidity.sd(), speedDoubt);
    return new DryingPlace(name, new ConstantRoom(state), doubt, benchK);
  }

  /** The log that lies beside the trial's file. */
  private static Optional<LoggedRoom> logged(
      ObjectReader room, Path file, Optional<LocalDateTime> pouredAt, double speedMPerS) {
    Optional<Path> log = room.beside("log_csv", file);
    if (log.isEmpty()) {
      return Optional.empty();
    }
    if (!Files.exists(log.get())) {
      room.fault(
          "log_csv",
          '"' + room.text("log_csv").orElse("") + "\", a file that is not there",
          "the log of a hygrometer beside this file",
          "check its name and folder");
      return Optional.empty();
    }
    String named = String.valueOf(file.resolveSibling(room.text("log_csv").orElse("")));
    return new RoomLogReader(new Findings(named.replace('\\', '/')))
        .read(log.get(), pouredAt, speedMPerS, room.findings());
  }

  private static Room swinging(
      ObjectReader swing, Optional<LocalDateTime> pouredAt, double speedMPerS) {
    // After a fault reading goes on with any room.
    double coolest = swing.number("coolest_C").orElse(ANY_ROOM_K);
    double warmest = swing.number("warmest_C").orElse(ANY_ROOM_K);
    double driest = swing.number("driest_rh_pct").orElse(ANY_HUMIDITY);
    double dampest = swing.number("dampest_rh_pct").orElse(ANY_HUMIDITY);
    if (coolest > warmest) {
      inverted(swing, "coolest_C", "warmest_C");
    }
    if (driest > dampest) {
      inverted(swing, "driest_rh_pct", "dampest_rh_pct");
    }
    LocalTime warmestAt = warmestAt(swing);
    LocalTime pourTime = pouredAt.map(LocalDateTime::toLocalTime).orElse(ASSUMED_POUR_TIME);
    if (pouredAt.isEmpty()) {
      swing
          .findings()
          .notRecorded(
              "poured_at",
              "time of the pour",
              "noon",
              "whether the first hours fall into the warm half of the day");
    }
    double afterPour = warmestAt.toSecondOfDay() - pourTime.toSecondOfDay();
    AirState mean = new AirState((coolest + warmest) / 2, (driest + dampest) / 2, speedMPerS);
    return new SwingingRoom(
        mean,
        Math.abs(warmest - coolest) / 2,
        Math.abs(dampest - driest) / 2,
        (afterPour + DAY_S) % DAY_S);
  }

  private static void inverted(ObjectReader swing, String lower, String upper) {
    swing.fault(lower, lower + " above " + upper, lower + " at most " + upper, "exchange the two");
  }

  private static LocalTime warmestAt(ObjectReader swing) {
    Optional<String> text = swing.text("warmest_at");
    if (text.isEmpty()) {
      return LocalTime.of(15, 0);
    }
    try {
      return LocalTime.parse(text.get());
    } catch (DateTimeParseException e) {
      swing.fault(
          "warmest_at",
          '"' + text.get() + '"',
          "a time of day, \"00:00\" to \"23:59\"",
          "write it like \"15:00\"");
      return LocalTime.of(15, 0);
    }
  }
}
