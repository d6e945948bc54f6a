package starchfilm.request;

import static starchfilm.files.amount.Dimension.SHARE;
import static starchfilm.files.amount.Dimension.TEMPERATURE;
import static starchfilm.numerics.units.Units.DAY_S;
import static starchfilm.numerics.units.Units.PERCENT;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import starchfilm.casting.ConstantRoom;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.LoggedRoom;
import starchfilm.casting.Room;
import starchfilm.casting.RoomUncertainty;
import starchfilm.casting.SwingingRoom;
import starchfilm.casting.trial.Trial;
import starchfilm.files.amount.Dimension;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.TypedAmount;
import starchfilm.files.findings.Fault;
import starchfilm.files.findings.Findings;
import starchfilm.files.findings.Notice;
import starchfilm.files.findings.PlainLine;
import starchfilm.files.notebook.NotebookReader;
import starchfilm.files.roomlog.RoomLogReader;
import starchfilm.material.air.AirState;

/**
 * Where plates dry, as people write it: {@code 19C,55%}, {@code 8-18C,50-80%} for a day and night,
 * or the name of a hygrometer log; or its air, humidity and speed one by one.
 *
 * @param place the place, its air from now on
 * @param log the log, where one was named
 */
record WrittenPlace(DryingPlace place, Optional<Path> log) {
  static final String ROOM = "place.room";
  static final String AIR = "place.air";
  static final String HUMIDITY = "place.humidity";
  static final String SPEED = "place.speed";

  private static final String ALLOWED =
      "temperature and humidity, such as 19C,55% or 8-18C,50-80%, a hygrometer log, such as shed.csv,"
          + " a room of your trials, or one of: "
          + UsualPlace.names();
  private static final String NUMBER = "-?[0-9]+(?:[.,][0-9]+)?";
  private static final Pattern PART =
      Pattern.compile(
          "[\\s,;]*((?:~|about )?"
              + NUMBER
              + "(?:\\s*(?:-|\u2013|to|\u00B1|\\+/?-)\\s*"
              + NUMBER
              + ")?\\s*(?:\u00B0?[CF]|%|m/s|km/h))(?:\\s*(?:RH|r\\.h\\.))?",
          Pattern.CASE_INSENSITIVE);
  private static final List<Dimension> AIR_SAYS = List.of(TEMPERATURE, SHARE, Dimension.SPEED);
  private static final double ROUNDING = 1e-9;

  /** What is allowed of the air, in the unit of a sentence. */
  private static final Map<Dimension, Limit> LIMITS =
      Map.of(
          TEMPERATURE,
          new Limit(ZERO_CELSIUS_K, 1, 1, 90, " \u00B0C"),
          SHARE,
          new Limit(0, 100, 0, 100, " %"),
          Dimension.SPEED,
          new Limit(0, 1, 0, 20, " m/s"));

  /** Where nobody measured, as for a trial file; judged. */
  private static final Span UNKNOWN_HUMIDITY = new Span(35, 70, false);

  private static final Span UNKNOWN_AIR = new Span(15, 25, false);
  private static final LocalTime WARMEST_AT = LocalTime.of(15, 0);

  /** What is typed of the air: two ends by night and day, or a number, perhaps a rough one. */
  record Span(double from, double to, boolean swings) {
    double middle() {
      return (from + to) / 2;
    }

    double half() {
      return (to - from) / 2;
    }

    double swing() {
      return swings ? half() : 0;
    }

    double sd() {
      return swings ? 0 : half() / Math.sqrt(3);
    }
  }

  /** How far an amount may go: its zero (SI), its unit per SI, and its ends in that unit. */
  private record Limit(double zero, double perSi, double least, double most, String unit) {}

  /** Whether anything is said of the place. */
  static boolean isAnyWritten(EntryReader in) {
    return in.hasAnyOf("place");
  }

  /**
   * Reads a place; nothing where there is a mistake in it.
   *
   * @param folder where a log lies
   * @param clock tells the time of the pour: now
   */
  static Optional<WrittenPlace> read(EntryReader in, Path folder, Clock clock) {
    return read(in, Optional.empty(), folder, clock);
  }

  /** The same over another place, of which holds what nobody says otherwise. */
  static Optional<WrittenPlace> read(
      EntryReader in, Optional<DryingPlace> base, Path folder, Clock clock) {
    return in.made(
        () -> {
          if (in.has(ROOM)) {
            beside(in, AIR);
            beside(in, HUMIDITY);
          }
          Optional<Path> log = in.one(ROOM, typed -> file(typed, folder)).flatMap(file -> file);
          DryingPlace place =
              log.map(file -> of(logged(in, file), RoomUncertainty.NONE))
                  .or(() -> named(in, folder, clock))
                  .or(() -> in.has(ROOM) ? Optional.empty() : base.map(same -> changed(in, same)))
                  .orElseGet(() -> aired(in, clock));
          OptionalDouble typedK = in.number("place.bench", TEMPERATURE::si);
          OptionalDouble benchK =
              Stream.of(Optional.of(typedK), base.map(DryingPlace::benchTemperatureK))
                  .flatMap(Optional::stream)
                  .filter(OptionalDouble::isPresent)
                  .findFirst()
                  .orElse(place.benchTemperatureK());
          String name =
              in.one("place.name", String::strip).filter(n -> !n.isEmpty()).orElse(place.name());
          return new WrittenPlace(
              new DryingPlace(name, place.room(), place.uncertainty(), benchK), log);
        });
  }

  /** Air that nobody gave a name. */
  private static DryingPlace of(Room room, RoomUncertainty uncertainty) {
    return new DryingPlace(DryingPlace.UNNAMED, room, uncertainty, OptionalDouble.empty());
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
    Optional<Double> speed = in.one(SPEED, WrittenPlace::speed);
    Optional<UsualPlace> usual = UsualPlace.called(typed);
    if (usual.isPresent()) {
      in.assume(usual.get().assumption());
      if (!usual.get().remark().isEmpty()) {
        in.remark(usual.get().remark());
      }
      return new DryingPlace(
          usual.get().name(),
          usual.get().room(speed, untilWarmestS(clock)),
          usual.get().uncertainty(speed.isPresent()),
          OptionalDouble.empty());
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
    return speed.isPresent() ? place.with(place.room().withSpeed(speed.get())) : place;
  }

  /** The air of a room, some of it written anew. */
  private static DryingPlace changed(EntryReader in, DryingPlace base) {
    Optional<Span> air = air(in);
    Optional<Span> humidity = humidity(in);
    OptionalDouble speed = in.number(SPEED, WrittenPlace::speed);
    Room room = base.room();
    RoomUncertainty unsure = base.uncertainty();
    if (air.isPresent() != humidity.isPresent() && !room.isConstant()) {
      in.refuse(
          air.isPresent() ? AIR : HUMIDITY,
          "given over a room whose air changes; write "
              + in.quoted(air.isPresent() ? HUMIDITY : AIR)
              + " too");
    }
    AirState was = room.at(0);
    double speedMPerS = speed.orElse(was.speedMPerS());
    RoomUncertainty left =
        new RoomUncertainty(
            air.isPresent() ? 0 : unsure.temperatureSdK(),
            humidity.isPresent() ? 0 : unsure.humiditySd(),
            speed.isPresent() ? 0 : unsure.speedRelativeSd());
    if (Stream.of(air, humidity).flatMap(Optional::stream).anyMatch(span -> span.half() != 0)) {
      in.refuse("a range of air is written with " + in.quoted(ROOM) + ", such as 8-18C,50-80%");
    }
    Room now =
        air.isEmpty() && humidity.isEmpty()
            ? room.withSpeed(speedMPerS)
            : new ConstantRoom(
                new AirState(
                    air.map(span -> span.middle() + ZERO_CELSIUS_K).orElse(was.temperatureK()),
                    humidity.map(span -> span.middle() * PERCENT).orElse(was.relativeHumidity()),
                    speedMPerS));
    return new DryingPlace(base.name(), now, left, base.benchTemperatureK());
  }

  private static Optional<Span> air(EntryReader in) {
    return in.one(AIR, typed -> alone(typed, "a temperature, such as 20 C", TEMPERATURE));
  }

  private static Optional<Span> humidity(EntryReader in) {
    return in.one(HUMIDITY, typed -> alone(typed, "a share in per cent, such as 50 %", SHARE));
  }

  private static DryingPlace aired(EntryReader in, Clock clock) {
    Map<Dimension, Span> whole = in.one(ROOM, WrittenPlace::whole).orElse(Map.of());
    Optional<Span> air = air(in).or(() -> Optional.ofNullable(whole.get(TEMPERATURE)));
    Optional<Span> humidity = humidity(in).or(() -> Optional.ofNullable(whole.get(SHARE)));
    Optional<Span> said = Optional.ofNullable(whole.get(Dimension.SPEED));
    if (said.isPresent()) {
      beside(in, SPEED);
    }
    if (in.hasAny(ROOM, AIR, HUMIDITY) && air.isEmpty() && humidity.isEmpty()) {
      throw new NoSuchElementException("air");
    }
    if (humidity.isEmpty()) {
      in.assume("a humidity of 35 to 70 %");
    }
    if (air.isEmpty()) {
      in.assume("air of 15 to 25 \u00B0C");
    }
    return room(
        air.orElse(UNKNOWN_AIR),
        humidity.orElse(UNKNOWN_HUMIDITY),
        said.isPresent() ? said.get().middle() : speedMPerS(in),
        clock);
  }

  private static void beside(EntryReader in, String key) {
    in.refuseBeside(key, ROOM, ", which says it too; leave one out");
  }

  private static double speedMPerS(EntryReader in) {
    return in.usually(
        SPEED, WrittenPlace::speed, DryingPlace.STILL_AIR_M_PER_S, "a still room, 0.1 m/s");
  }

  private static Map<Dimension, Span> whole(String typed) {
    Map<Dimension, Span> parts = parts(typed, ALLOWED);
    if (!parts.containsKey(TEMPERATURE) && !parts.containsKey(SHARE)) {
      throw unreadable(typed, ALLOWED);
    }
    return parts;
  }

  /** The words of a room, taken apart. */
  static Map<Dimension, Span> parts(String typed, String allowed) {
    Map<Dimension, Span> parts = new EnumMap<>(Dimension.class);
    Matcher matcher = PART.matcher(typed);
    int end = 0;
    while (matcher.lookingAt()) {
      TypedAmount part = TypedAmount.read(matcher.group(1), allowed, AIR_SAYS);
      AIR_SAYS.stream()
          .filter(part::is)
          .forEach(dimension -> parts.put(dimension, within(typed, part, dimension)));
      end = matcher.end();
      matcher.region(end, typed.length());
    }
    if (end == 0 || !typed.substring(end).isBlank()) {
      throw unreadable(typed, allowed);
    }
    return parts;
  }

  private static MistypedException unreadable(String typed, String allowed) {
    return new MistypedException(typed, allowed, "write it like this");
  }

  private static Span alone(String typed, String allowed, Dimension part) {
    return Optional.ofNullable(parts(typed, allowed).get(part))
        .orElseThrow(() -> new MistypedException(typed, allowed, "write it with its unit"));
  }

  private static double speed(String typed) {
    return within(typed, TypedAmount.inUnit("m/s", typed), Dimension.SPEED).middle();
  }

  /** Two ends are night and day; what is only rough is a doubt of the same air all day. */
  private static DryingPlace room(Span air, Span humidity, double speedMPerS, Clock clock) {
    AirState mean =
        new AirState(air.middle() + ZERO_CELSIUS_K, humidity.middle() * PERCENT, speedMPerS);
    RoomUncertainty unsure = new RoomUncertainty(air.sd(), humidity.sd() * PERCENT, 0);
    if (air.swing() == 0 && humidity.swing() == 0) {
      return of(new ConstantRoom(mean), unsure);
    }
    return of(
        new SwingingRoom(mean, air.swing(), humidity.swing() * PERCENT, untilWarmestS(clock)),
        unsure);
  }

  private static double untilWarmestS(Clock clock) {
    double now = LocalTime.now(clock).toSecondOfDay();
    return (WARMEST_AT.toSecondOfDay() - now + DAY_S) % DAY_S;
  }

  /** The ends of an amount in the unit of a sentence. */
  private static Span within(String typed, TypedAmount part, Dimension dimension) {
    Limit limit = Objects.requireNonNull(LIMITS.get(dimension));
    Span span =
        new Span(
            limit.perSi() * (part.leastSi() - limit.zero()),
            limit.perSi() * (part.mostSi() - limit.zero()),
            part.between());
    if (!(span.from() >= limit.least() - ROUNDING && span.to() <= limit.most() + ROUNDING)) {
      throw new MistypedException(
          typed,
          Math.round(limit.least()) + " to " + Math.round(limit.most()) + limit.unit(),
          "write the air beside the plates");
    }
    return span;
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
            .read(file, Optional.empty(), speedMPerS(in), findings);
    findings.faults().stream().map(Fault::sentence).forEach(fault -> in.refuse(ROOM, fault));
    findings.notices().stream().map(Notice::sentence).forEach(in::remark);
    in.assume("the pour at the first line of the log");
    return room.orElseThrow();
  }
}
