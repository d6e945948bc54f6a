package starchfilm.planning;

import java.util.OptionalDouble;

/** A limit that keeps a recipe from giving more. */
public enum Limit {
  /** The glycerol at hand. */
  GLYCEROL,
  /** The starch at hand. */
  STARCH,
  /** One plate takes all the pot can hold. */
  POT,
  /** The number of plates. */
  PLATES,
  /** The date, as surely as it must be met. */
  DATE,
  /** The thickest film asked for, or the thickest people usually cast. */
  THICKEST_FILM,
  /** The thinnest film asked for, or the thinnest people usually cast. */
  THINNEST_FILM,
  /** The rim of the plate, or without one the height at which paste runs off. */
  RIM,
  /** The concentration above which the paste does not level well. */
  LEVELLING,
  /** The feel or the figures asked for. */
  WISH;

  /**
   * A request with this limit elsewhere.
   *
   * @param now where it stands: kg, m3, plates, s or m of dry film
   * @param to where it is moved; infinite where starch, date or thickness no longer limit
   * @throws IllegalArgumentException where the limit is no figure of a request
   */
  PlanRequest moved(double now, double to, PlanRequest request) {
    return switch (this) {
      case GLYCEROL -> request.with(request.supplies().withGlycerol(to));
      case STARCH ->
          request.with(
              request
                  .supplies()
                  .withStarches(
                      request.supplies().starches().stream().map(s -> s.times(to / now)).toList()));
      case POT -> request.with(request.kitchen().withPot(to));
      case PLATES -> request.with(request.kitchen().withPlates((int) to));
      case DATE -> request.by(finite(to));
      case THICKEST_FILM -> thick(to / (1 + Wish.GIVE_OR_TAKE), request);
      case THINNEST_FILM -> thick(to / (1 - Wish.GIVE_OR_TAKE), request);
      case RIM, LEVELLING, WISH ->
          throw new IllegalArgumentException(this + " is no figure of a request");
    };
  }

  private static PlanRequest thick(double dryM, PlanRequest request) {
    return request.with(request.wish().thick(finite(dryM)));
  }

  private static OptionalDouble finite(double value) {
    return Double.isInfinite(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
  }
}
