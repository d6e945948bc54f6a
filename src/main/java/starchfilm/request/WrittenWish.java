package starchfilm.request;

import static starchfilm.files.amount.Dimension.LENGTH;
import static starchfilm.files.amount.Dimension.SHARE;
import static starchfilm.files.amount.Dimension.STRESS;
import static starchfilm.files.amount.Dimension.TIME;
import static starchfilm.numerics.units.Units.DAY_S;
import static starchfilm.numerics.units.Units.PERCENT;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import starchfilm.casting.Use;
import starchfilm.files.amount.Dimension;
import starchfilm.files.amount.MistypedException;
import starchfilm.film.Feel;
import starchfilm.planning.Wish;
import starchfilm.request.WrittenAir.AirSpan;

/** The film wanted, and where it will be used, as written. */
final class WrittenWish {

  /** The standard atmosphere of ISO 291. */
  private static final double USUAL_HUMIDITY = 0.5;

  private static final double USUAL_K = 23 + ZERO_CELSIUS_K;

  private WrittenWish() {}

  static Optional<Wish> read(EntryReader in) {
    if (!in.has("wish.thickness")) {
      in.assume("film of about 50 to 250 \u00B5m when dry, as people cast at home");
    }
    return in.made(
        "wish",
        () ->
            new Wish(
                in.choice("wish.feel", List.of(Feel.STIFF, Feel.FLEXIBLE, Feel.STRETCHY)),
                in.number("wish.strength", STRESS::si),
                in.number("wish.stretch", SHARE::si),
                in.number("wish.thickness", LENGTH::si)));
  }

  static Optional<Use> use(EntryReader in) {
    return in.made(
        () -> {
          if (!in.has("wish.use")) {
            in.assume("a film used in air of 50 % RH and 23 \u00B0C");
          }
          double ageS = in.usually("wish.after", TIME::si, 7 * DAY_S, "7 days after it dried");
          return in.one("wish.use", typed -> use(in, typed, ageS))
              .orElse(new Use(USUAL_HUMIDITY, USUAL_K, ageS));
        });
  }

  /** The same words as for a room, humidity first or last. */
  private static Use use(EntryReader in, String typed, double ageS) {
    String allowed = "humidity and temperature, such as 50%,23C";
    Map<Dimension, AirSpan> parts = WrittenAir.inUse(typed, allowed);
    AirSpan humidity = parts.get(Dimension.SHARE);
    AirSpan warmth = parts.get(Dimension.TEMPERATURE);
    if (humidity == null) {
      throw new MistypedException(typed, allowed, "write both");
    }
    if (warmth == null) {
      in.assume("23 \u00B0C where the film is used");
    }
    if (parts.values().stream().anyMatch(part -> part.half() != 0)) {
      in.remark("Of a range of the air that the film is used in, the middle counts.");
    }
    return new Use(
        humidity.middle() * PERCENT,
        warmth == null ? USUAL_K : warmth.middle() + ZERO_CELSIUS_K,
        ageS);
  }
}
