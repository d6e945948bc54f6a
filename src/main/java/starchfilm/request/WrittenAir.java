package starchfilm.request;

import static starchfilm.files.amount.Dimension.SHARE;
import static starchfilm.files.amount.Dimension.SPEED;
import static starchfilm.files.amount.Dimension.TEMPERATURE;
import static starchfilm.numerics.units.Units.DAY_S;
import static starchfilm.numerics.units.Units.PERCENT;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.time.Clock;
import java.time.LocalTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import starchfilm.casting.ConstantRoom;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.Room;
import starchfilm.casting.SwingingRoom;
import starchfilm.casting.Use;
import starchfilm.files.amount.Dimension;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.TypedAmount;
import starchfilm.files.amount.Unit;
import starchfilm.files.findings.Allowed;
import starchfilm.files.json.PackedPatterns;
import starchfilm.material.air.AirState;

/**
 * Air as people write it, in any order and some of it left out: {@code 19C,55%}, {@code
 * 8-18C,50-80%} by night and day, {@code ~20C 0.3m/s}.
 */
final class WrittenAir {
  private static final PackedPatterns TYPED = PackedPatterns.of(WrittenAir.class, "air.patterns");

  private static final Pattern PART = TYPED.get("part");
  private static final Pattern FAN = TYPED.get("fan");
  private static final Pattern SWINGING = TYPED.get("swinging");

  private static final String BY_A_FAN = Allowed.plain(DryingPlace.FAN_M_PER_S) + " m/s";

  /** What is allowed of each part beside the plates, in the unit of its {@link AirSpan}. */
  private static final Map<Dimension, Allowed> BESIDE_PLATES =
      limits(1, 90, "write the air beside the plates");

  /** What is allowed of each part where a film is used. */
  private static final Map<Dimension, Allowed> IN_USE =
      limits(Use.COLDEST_C, Use.WARMEST_C, "write the air where the film is used");

  private static final LocalTime WARMEST_AT = LocalTime.of(15, 0);

  /** What is typed of the air: two ends by night and day, or a number, perhaps a rough one. */
  record AirSpan(double from, double to, boolean swings) {
    /** What is known so well. */
    static AirSpan of(double middle, double sd) {
      double half = sd * Math.sqrt(3);
      return new AirSpan(middle - half, middle + half, false);
    }

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

    /**
     * Relative uncertainty of what does not swing; where it is not known, its middle is above 0.
     */
    double relativeSd() {
      return half() == 0 ? 0 : half() / Math.sqrt(3) / middle();
    }
  }

  private WrittenAir() {}

  private static Map<Dimension, Allowed> limits(double coldestC, double warmestC, String mend) {
    return Map.of(
        TEMPERATURE,
        Allowed.between(coldestC, warmestC, "\u00B0C", mend),
        SHARE,
        Allowed.between(0, 100, "%", mend),
        SPEED,
        Allowed.between(0, 20, "m/s", mend));
  }

  /** The parts of the air beside the plates, each in \u00B0C, % or m/s. */
  static Map<Dimension, AirSpan> parts(String typed, String allowed) {
    return parts(typed, allowed, BESIDE_PLATES);
  }

  /** Whether a text is nothing but figures of the air. */
  static boolean isAir(String typed) {
    return PART.matcher(typed).replaceAll("").isBlank();
  }

  /** The parts of the air where a film is used. */
  static Map<Dimension, AirSpan> inUse(String typed, String allowed) {
    return parts(typed, allowed, IN_USE);
  }

  private static Map<Dimension, AirSpan> parts(
      String typed, String allowed, Map<Dimension, Allowed> limits) {
    Map<Dimension, AirSpan> parts = new EnumMap<>(Dimension.class);
    Matcher matcher = PART.matcher(typed);
    int end = 0;
    while (matcher.lookingAt()) {
      TypedAmount part =
          TypedAmount.read(matcher.group(1), allowed, List.of(TEMPERATURE, SHARE, SPEED));
      if (parts.put(part.unit().dimension(), within(typed, part, limits)) != null) {
        throw new MistypedException(
            typed, allowed, matcher.group(1) + " is the second figure of its kind; leave one out");
      }
      end = matcher.end();
      matcher.region(end, typed.length());
    }
    if (end == 0 || !SWINGING.matcher(typed.substring(end)).replaceFirst("").isBlank()) {
      throw unreadable(typed, allowed);
    }
    return parts;
  }

  static MistypedException unreadable(String typed, String allowed) {
    return new MistypedException(typed, allowed, "write it like this");
  }

  /** The one part that a text is to hold. */
  static AirSpan alone(String typed, String allowed, Dimension part) {
    return Optional.ofNullable(parts(typed, allowed).get(part))
        .orElseThrow(() -> new MistypedException(typed, allowed, "write it with its unit"));
  }

  /** The speed of the air as typed; that of a fan is assumed, which is said. */
  static AirSpan speed(EntryReader in, String typed) {
    if (FAN.matcher(typed).matches()) {
      in.assume("the air by a fan as " + BY_A_FAN);
      return speed(in, BY_A_FAN);
    }
    if (FAN.matcher(typed).lookingAt()) {
      throw new MistypedException(
          typed,
          "the speed of the air over the whole time, such as " + BY_A_FAN + " by a fan",
          "a fan for a part of it is not modelled; write the mean, or leave it out");
    }
    return within(typed, TypedAmount.inUnit("m/s", typed), BESIDE_PLATES);
  }

  private static AirSpan within(String typed, TypedAmount part, Map<Dimension, Allowed> limits) {
    Allowed allowed = Objects.requireNonNull(limits.get(part.unit().dimension()));
    Unit unit = Unit.known(allowed.unit()).orElseThrow();
    AirSpan span = new AirSpan(in(unit, part.leastSi()), in(unit, part.mostSi()), part.between());
    if (!allowed.contains(span.from()) || !allowed.contains(span.to())) {
      throw new MistypedException(typed, allowed.words(), allowed.mend());
    }
    return span;
  }

  /** Without what the way through SI adds behind the digits typed. */
  private static double in(Unit unit, double si) {
    return Math.rint(unit.of(si) * 1e9) / 1e9;
  }

  /** A room whose air swings between the ends; what is only rough is the same air all day. */
  static Room room(AirSpan air, AirSpan humidity, double speedMPerS, Clock clock) {
    AirState mean =
        new AirState(air.middle() + ZERO_CELSIUS_K, humidity.middle() * PERCENT, speedMPerS);
    double warmestAfterPourS =
        (WARMEST_AT.toSecondOfDay() - LocalTime.now(clock).toSecondOfDay() + DAY_S) % DAY_S;
    return air.swing() == 0 && humidity.swing() == 0
        ? new ConstantRoom(mean)
        : new SwingingRoom(mean, air.swing(), humidity.swing() * PERCENT, warmestAfterPourS);
  }
}
