package starchfilm.request;

import static starchfilm.numerics.units.Units.DAY_S;
import static starchfilm.numerics.units.Units.PERCENT;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import starchfilm.casting.Use;
import starchfilm.files.amount.KnownName;
import starchfilm.files.amount.MistypedException;
import starchfilm.film.Feel;
import starchfilm.planning.Wish;

/** The film wanted, and where it will be used, as written. */
final class WrittenWish {
  static final Field FEEL = Field.of("wish.feel");
  static final Field STRENGTH = Field.of("wish.strength");
  static final Field STRETCH = Field.of("wish.stretch");
  static final Field THICKNESS = Field.of("wish.thickness");
  static final Field USE = Field.of("wish.use");
  static final Field AFTER = Field.of("wish.after");

  /** The standard atmosphere of ISO 291. */
  private static final Air USUAL_AIR = new Air(0.5, 23 + ZERO_CELSIUS_K);

  private record Air(double humidity, double kelvin) {}

  private WrittenWish() {}

  static Optional<Wish> read(EntryReader in) {
    return in.made(
        () ->
            new Wish(
                in.one(FEEL, WrittenWish::feel),
                in.number(STRENGTH, Quantities::strengthPa),
                in.number(STRETCH, Quantities::share),
                in.number(THICKNESS, Quantities::lengthM)));
  }

  static Optional<Use> use(EntryReader in) {
    return in.made(
        () -> {
          Optional<Air> air = in.one(USE, WrittenWish::air);
          if (!in.has(USE)) {
            in.assume("a film used in air of 50 % RH and 23 \u00B0C");
          }
          double ageS = in.usually(AFTER, Quantities::spanS, 7 * DAY_S, "7 days after it dried");
          Air used = air.orElse(USUAL_AIR);
          return new Use(used.humidity(), used.kelvin(), ageS);
        });
  }

  /** The same words as for a room, humidity first or last. */
  private static Air air(String typed) {
    WrittenPlace.Parts parts =
        WrittenPlace.parts(typed, "humidity and temperature, such as 50%,23C");
    if (parts.humidity() == null) {
      throw new MistypedException(typed, "humidity and temperature, such as 50%,23C", "write both");
    }
    return new Air(
        parts.humidity().middle() * PERCENT,
        parts.air() == null ? USUAL_AIR.kelvin() : parts.air().middle() + ZERO_CELSIUS_K);
  }

  private static Feel feel(String typed) {
    return KnownName.find(
        typed,
        List.of(Feel.STIFF, Feel.FLEXIBLE, Feel.STRETCHY),
        known -> List.of(known.name().toLowerCase(Locale.ROOT)));
  }
}
