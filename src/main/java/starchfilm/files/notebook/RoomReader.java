package starchfilm.files.notebook;

import static starchfilm.numerics.units.Units.DAY_S;
import static starchfilm.numerics.units.Units.PERCENT;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.OptionalDouble;
import starchfilm.casting.ConstantRoom;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.Room;
import starchfilm.casting.RoomUncertainty;
import starchfilm.casting.SwingingRoom;
import starchfilm.files.findings.Findings;
import starchfilm.files.findings.PlainLine;
import starchfilm.material.air.AirState;
import starchfilm.numerics.evidence.Estimate;

/** Reads {@code room}: constant, swinging by day and night, or logged in a CSV file. */
final class RoomReader {

  private static final Estimate ASSUMED_AIR_C = Estimate.between(15, 25);
  private static final Estimate ASSUMED_RH_PCT = Estimate.between(35, 70);
  private static final LocalTime ASSUMED_POUR_TIME = LocalTime.NOON;

  private final Findings findings;
  private final Path file;

  RoomReader(Findings findings, Path file) {
    this.findings = findings;
    this.file = file;
  }

  DryingPlace read(ObjectReader trial, Optional<LocalDateTime> pouredAt) {
    ObjectReader room = trial.section("room").orElseGet(() -> trial.empty("room"));
    String name = PlainLine.of(room.text("name").orElse("room"));
    Amount speed = room.amount("air_speed_m_per_s");
    Estimate speedTaken = speed.or(Estimate.exact(DryingPlace.STILL_AIR_M_PER_S));
    if (!speed.isKnown()) {
      findings.notRecorded(
          room.path("air_speed_m_per_s"),
          "0.1 m/s, a still room",
          "air speed affects the drying time more than anything else that is not" + " weighed");
    }
    OptionalDouble bench = room.number("bench_C");
    OptionalDouble benchK =
        bench.isPresent()
            ? OptionalDouble.of(bench.getAsDouble() + ZERO_CELSIUS_K)
            : OptionalDouble.empty();
    double speedDoubt = speedTaken.value() > 0 ? speedTaken.sd() / speedTaken.value() : 0;
    Amount airC = room.amount("air_C");
    Amount rh = room.amount("rh_pct");
    Optional<ObjectReader> swing = room.section("swing");
    Optional<String> log = room.text("log_csv");
    if (log.isPresent()) {
      leftAside(room, "log_csv", "air_C", "rh_pct", "swing");
      Optional<Room> logged =
          new RoomLog(findings, file)
              .read(room.placeOf("log_csv"), log.get(), pouredAt, speedTaken.value());
      if (logged.isPresent()) {
        return new DryingPlace(name, logged.get(), new RoomUncertainty(0, 0, speedDoubt), benchK);
      }
    } else if (swing.isPresent()) {
      leftAside(room, "swing", "air_C", "rh_pct");
      Room swinging = swinging(swing.get(), pouredAt, speedTaken.value());
      return new DryingPlace(name, swinging, new RoomUncertainty(0, 0, speedDoubt), benchK);
    }
    Estimate air = airC.or(ASSUMED_AIR_C);
    Estimate humidity = rh.or(ASSUMED_RH_PCT);
    if (log.isEmpty()) {
      sayNotRecorded(room, airC, rh);
    }
    AirState state =
        new AirState(air.value() + ZERO_CELSIUS_K, humidity.value() * PERCENT, speedTaken.value());
    RoomUncertainty doubt = new RoomUncertainty(air.sd(), humidity.sd() * PERCENT, speedDoubt);
    return new DryingPlace(name, new ConstantRoom(state), doubt, benchK);
  }

  private void sayNotRecorded(ObjectReader room, Amount airC, Amount rh) {
    if (!airC.isKnown()) {
      findings.notRecorded(
          room.path("air_C"),
          "15 to 25 \u00B0C",
          "a warm room dries about twice as fast as a cool one");
    }
    if (!rh.isKnown()) {
      findings.notRecorded(
          room.path("rh_pct"),
          "35 to 70 %",
          "a dry room dries about twice as fast as a damp one; put a hygrometer beside the plate");
    }
  }

  private void leftAside(ObjectReader room, String instead, String... keys) {
    for (String key : keys) {
      if (room.has(key)) {
        findings.notice(room.placeOf(key), "not used, since " + instead + " is given");
      }
    }
  }

  private Room swinging(ObjectReader swing, Optional<LocalDateTime> pouredAt, double speedMPerS) {
    double coolest = required(swing, "coolest_C", 20);
    double warmest = required(swing, "warmest_C", 20);
    double driest = required(swing, "driest_rh_pct", 50);
    double dampest = required(swing, "dampest_rh_pct", 50);
    if (coolest > warmest) {
      inverted(swing, "coolest_C", "warmest_C");
    }
    if (driest > dampest) {
      inverted(swing, "driest_rh_pct", "dampest_rh_pct");
    }
    LocalTime warmestAt = warmestAt(swing);
    LocalTime pourTime = pouredAt.map(LocalDateTime::toLocalTime).orElse(ASSUMED_POUR_TIME);
    if (pouredAt.isEmpty()) {
      findings.notRecorded(
          "poured_at",
          "poured at noon",
          "whether the first hours fall into the warm half of the day");
    }
    double afterPour = warmestAt.toSecondOfDay() - pourTime.toSecondOfDay();
    AirState mean =
        new AirState(
            (coolest + warmest) / 2 + ZERO_CELSIUS_K, (driest + dampest) / 2 * PERCENT, speedMPerS);
    return new SwingingRoom(
        mean,
        Math.abs(warmest - coolest) / 2,
        Math.abs(dampest - driest) / 2 * PERCENT,
        (afterPour + DAY_S) % DAY_S);
  }

  /** A field the swing needs; after its fault, reading goes on with {@code meanwhile}. */
  private double required(ObjectReader swing, String key, double meanwhile) {
    OptionalDouble value = swing.number(key);
    if (value.isEmpty() && !swing.has(key)) {
      findings.fault(
          swing.place(),
          "a swing without " + key,
          "coolest_C, warmest_C, driest_rh_pct and dampest_rh_pct",
          swing.allowed(key).mend());
    }
    return value.orElse(meanwhile);
  }

  private void inverted(ObjectReader swing, String lower, String upper) {
    findings.fault(
        swing.placeOf(lower),
        lower + " above " + upper,
        lower + " at most " + upper,
        "exchange the two");
  }

  private LocalTime warmestAt(ObjectReader swing) {
    Optional<String> text = swing.text("warmest_at");
    if (text.isEmpty()) {
      return LocalTime.of(15, 0);
    }
    try {
      return LocalTime.parse(text.get());
    } catch (DateTimeParseException e) {
      findings.fault(
          swing.placeOf("warmest_at"),
          '"' + text.get() + '"',
          "a time of day, \"00:00\" to \"23:59\"",
          "write it like \"15:00\"");
      return LocalTime.of(15, 0);
    }
  }
}
