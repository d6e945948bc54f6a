package starchfilm.request;

import static starchfilm.files.amount.Dimension.SHARE;
import static starchfilm.files.amount.Dimension.TEMPERATURE;
import static starchfilm.numerics.units.Units.PERCENT;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.OptionalDouble;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.LoggedRoom;
import starchfilm.casting.Room;
import starchfilm.casting.RoomUncertainty;
import starchfilm.casting.trial.Trial;
import starchfilm.files.amount.Dimension;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.findings.Allowed;
import starchfilm.files.findings.Fault;
import starchfilm.files.findings.Findings;
import starchfilm.files.findings.Notice;
import starchfilm.files.findings.PlainLine;
import starchfilm.files.notebook.NotebookReader;
import starchfilm.files.notebook.TrialField;
import starchfilm.files.roomlog.RoomLogReader;
import starchfilm.request.WrittenAir.AirSpan;
import starchfilm.request.WrittenPart.Said;

/**
 * Where plates dry, as people write it: {@code 19C,55%}, {@code 8-18C,50-80%} for a day and night,
 * or the name of a hygrometer log; or its air, humidity and speed one by one.
 *
 * @param place the place, its air from now on
 * @param log the log, where one was named
 * @param assumed the fields of a trial's room that words for the whole room leave open
 */
record WrittenPlace(DryingPlace place, Optional<Path> log, List<String> assumed) {
  static final String ROOM = "place.room";
  static final String AIR = "place.air";
  static final String HUMIDITY = "place.humidity";
  static final String SPEED = "place.speed";

  private static final String ALLOWED =
      "temperature and humidity, such as 19C,55% or 8-18C,50-80%, a hygrometer log, such as"
          + " shed.csv, a room of your trials, or one of: "
          + UsualPlace.names();

  /** {@code classroom 20C,45%}, as a line of what was cooked has it. */
  private static final WrittenPart NAMED_AIR = WrittenPart.beginningWith("place.name");

  private static final Allowed BENCH =
      TrialField.TRIAL.field("room").field("bench_C").allowed().orElseThrow();

  /** Parts of the air where nobody says them, as for a trial file; humidity and warmth judged. */
  private static final List<OpenPart> PARTS =
      List.of(
          new OpenPart(SHARE, "room.rh_pct", "a humidity of 35 to 70 %"),
          new OpenPart(TEMPERATURE, "room.air_C", "air of 15 to 25 \u00B0C"),
          new OpenPart(Dimension.SPEED, "room.air_speed_m_per_s", "a still room, 0.1 m/s"));

  private static final AirSpan UNKNOWN_HUMIDITY = new AirSpan(35, 70, false);
  private static final AirSpan UNKNOWN_AIR = new AirSpan(15, 25, false);

  /** A part of the air, the field of a trial that holds it, and what is taken for it. */
  private record OpenPart(Dimension part, String field, String taken) {}

  /**
   * Reads a place; nothing where there is a mistake in it.
   *
   * @param base another place, of which holds what nobody says otherwise
   * @param folder where a log lies
   * @param clock tells the time of the pour: now
   */
  static Optional<WrittenPlace> read(
      EntryReader in, Optional<DryingPlace> base, Path folder, Clock clock) {
    return in.made(
        () -> {
          if (in.has(ROOM)) {
            beside(in, AIR);
            beside(in, HUMIDITY);
          }
          Optional<Path> log = in.one(ROOM, typed -> file(typed, folder)).flatMap(file -> file);
          Optional<DryingPlace> known =
              log.map(file -> new DryingPlace(logged(in, file), OptionalDouble.empty()))
                  .or(() -> named(in, folder, clock));
          Map<Dimension, AirSpan> told = told(in, known.isPresent());
          List<OpenPart> open =
              PARTS.stream()
                  .filter(one -> !told.containsKey(one.part()))
                  .filter(
                      one ->
                          log.isPresent()
                              ? one.part() == Dimension.SPEED
                              : known.isEmpty() && (base.isEmpty() || in.has(ROOM)))
                  .toList();
          open.forEach(one -> in.assume(one.taken()));
          if (log.isPresent() && !in.has("so far.poured")) {
            in.assume("the pour at the first line of the log");
          }
          DryingPlace place =
              aired(
                  in,
                  known
                      .or(() -> base.filter(same -> !in.has(ROOM)))
                      .orElseGet(() -> unknown(clock)),
                  told,
                  clock);
          OptionalDouble benchK = in.number("place.bench", WrittenPlace::benchK);
          if (benchK.isEmpty()) {
            benchK =
                base.map(DryingPlace::benchTemperatureK)
                    .filter(OptionalDouble::isPresent)
                    .orElse(place.benchTemperatureK());
          }
          String name =
              in.one("place.name", String::strip)
                  .filter(one -> !one.isEmpty())
                  .or(
                      () ->
                          in.one(ROOM, typed -> named(typed).map(named -> named.get(0).words()))
                              .flatMap(before -> before))
                  .orElse(place.name());
          return new WrittenPlace(
              new DryingPlace(name, place.room(), place.uncertainty(), benchK),
              log,
              open.stream().map(OpenPart::field).toList());
        });
  }

  private static double benchK(String typed) {
    double benchK = TEMPERATURE.si(typed);
    if (!BENCH.contains(Math.rint((benchK - ZERO_CELSIUS_K) * 1e9) / 1e9)) {
      throw new MistypedException(typed, BENCH.words(), BENCH.mend());
    }
    return benchK;
  }

  private static boolean isName(String typed) {
    return typed.chars().noneMatch(Character::isDigit);
  }

  /** A place that is called by a name; empty where there are figures. */
  private static Optional<DryingPlace> named(EntryReader in, Path folder, Clock clock) {
    return in.one(ROOM, WrittenPlace::isName, false)
        ? Optional.of(in.one(ROOM, typed -> called(in, typed, folder, clock)).orElseThrow())
        : Optional.empty();
  }

  private static DryingPlace called(EntryReader in, String typed, Path folder, Clock clock) {
    Optional<UsualPlace> usual = UsualPlace.called(typed);
    if (usual.isPresent()) {
      in.assume(usual.get().assumption());
      if (!usual.get().remark().isEmpty()) {
        in.remark(usual.get().remark());
      }
      return usual.get().place(clock);
    }
    // The last trial poured there says what its air is like.
    Trial last =
        NotebookReader.read(List.of(folder)).trials().stream()
            .filter(trial -> trial.casting().place().name().equalsIgnoreCase(typed.strip()))
            .reduce((one, other) -> other)
            .orElseThrow(
                () ->
                    new MistypedException(
                        typed,
                        ALLOWED,
                        "no trial in this folder was poured in a room of that name"));
    DryingPlace place = last.casting().place();
    in.assume("the air of " + place.name() + " as in the trial " + last.name());
    return place;
  }

  /** The parts of the air that are written, each in its unit. */
  private static Map<Dimension, AirSpan> told(EntryReader in, boolean isKnown) {
    Map<Dimension, AirSpan> told = new EnumMap<>(Dimension.class);
    if (!isKnown) {
      in.one(ROOM, WrittenPlace::whole).ifPresent(told::putAll);
    }
    if (told.containsKey(Dimension.SPEED)) {
      beside(in, SPEED);
    }
    in.one(AIR, typed -> WrittenAir.alone(typed, "a temperature, such as 20 C", TEMPERATURE))
        .ifPresent(air -> told.put(TEMPERATURE, air));
    in.one(HUMIDITY, typed -> WrittenAir.alone(typed, "a share in per cent, such as 50 %", SHARE))
        .ifPresent(humidity -> told.put(SHARE, humidity));
    if (!isKnown && in.hasAny(ROOM, AIR, HUMIDITY) && told.isEmpty()) {
      throw new NoSuchElementException("air");
    }
    in.one(SPEED, typed -> WrittenAir.speed(in, typed))
        .ifPresent(speed -> told.put(Dimension.SPEED, speed));
    return told;
  }

  private static DryingPlace unknown(Clock clock) {
    return new DryingPlace(
        DryingPlace.UNNAMED,
        WrittenAir.room(UNKNOWN_AIR, UNKNOWN_HUMIDITY, DryingPlace.STILL_AIR_M_PER_S, clock),
        new RoomUncertainty(UNKNOWN_AIR.sd(), UNKNOWN_HUMIDITY.sd() * PERCENT, 0),
        OptionalDouble.empty());
  }

  /** A place with the air that is written, each part as well known as it is written. */
  private static DryingPlace aired(
      EntryReader in, DryingPlace from, Map<Dimension, AirSpan> told, Clock clock) {
    boolean isWarmthTold = told.containsKey(TEMPERATURE);
    boolean isDampTold = told.containsKey(SHARE);
    if (isWarmthTold != isDampTold && !from.room().isConstant()) {
      in.refuse(
          isWarmthTold ? AIR : HUMIDITY,
          "given over a room whose air changes; write "
              + in.quoted(isWarmthTold ? HUMIDITY : AIR)
              + " too");
    }
    Room room = from.room();
    RoomUncertainty unsure = from.uncertainty();
    if (isWarmthTold || isDampTold) {
      AirSpan warmth = told.getOrDefault(TEMPERATURE, warmth(from));
      AirSpan damp = told.getOrDefault(SHARE, damp(from));
      room = WrittenAir.room(warmth, damp, room.at(0).speedMPerS(), clock);
      unsure = new RoomUncertainty(warmth.sd(), damp.sd() * PERCENT, unsure.speedRelativeSd());
    }
    AirSpan speed = told.get(Dimension.SPEED);
    if (speed != null) {
      room = room.withSpeed(speed.middle());
      unsure =
          new RoomUncertainty(unsure.temperatureSdK(), unsure.humiditySd(), speed.relativeSd());
    }
    return new DryingPlace(from.name(), room, unsure, from.benchTemperatureK());
  }

  private static AirSpan warmth(DryingPlace place) {
    return AirSpan.of(
        place.room().at(0).temperatureK() - ZERO_CELSIUS_K, place.uncertainty().temperatureSdK());
  }

  private static AirSpan damp(DryingPlace place) {
    return AirSpan.of(
        place.room().at(0).relativeHumidity() / PERCENT,
        place.uncertainty().humiditySd() / PERCENT);
  }

  private static void beside(EntryReader in, String key) {
    in.refuseBeside(key, ROOM, ", which says it too; leave one out");
  }

  private static Map<Dimension, AirSpan> whole(String typed) {
    String air = named(typed).map(named -> named.get(1).words()).orElse(typed);
    Map<Dimension, AirSpan> parts = WrittenAir.parts(air, ALLOWED);
    if (!parts.containsKey(TEMPERATURE) && !parts.containsKey(SHARE)) {
      throw WrittenAir.unreadable(typed, ALLOWED);
    }
    return parts;
  }

  /** A name and the air behind it; empty where there is no such name. */
  private static Optional<List<Said>> named(String typed) {
    return Optional.of(NAMED_AIR.said(typed.strip()))
        .filter(said -> said.size() == 2 && WrittenAir.isAir(said.get(1).words()));
  }

  private static Optional<Path> file(String typed, Path folder) {
    try {
      Path path = folder.resolve(typed);
      boolean named = typed.toLowerCase(Locale.ROOT).endsWith(".csv");
      return named || Files.isRegularFile(path) ? Optional.of(path) : Optional.empty();
    } catch (InvalidPathException noFile) {
      return Optional.empty();
    }
  }

  /** The log is taken to begin with the pour. */
  private static Room logged(EntryReader in, Path file) {
    Findings findings = new Findings(PlainLine.of(file));
    Optional<LoggedRoom> room =
        new RoomLogReader(new Findings(findings.file()))
            .read(file, Optional.empty(), DryingPlace.STILL_AIR_M_PER_S, findings);
    findings.faults().stream().map(Fault::sentence).forEach(fault -> in.refuse(ROOM, fault));
    findings.notices().stream().map(Notice::sentence).forEach(in::remark);
    return room.orElseThrow();
  }
}
