package starchfilm.casting;

import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import starchfilm.material.recipe.GlycerolPortion;

/**
 * Ovens, dehydrators and airing cupboards: closed, heated, with a source of sparks. Film of
 * glycerol that may hold methanol is not dried in them.
 *
 * <p>They are known by the name of the room, or by air that no open room reaches. Source: common
 * practice; the temperature is judged.
 */
public final class ClosedHeat {
  /** Warmest air of an open room, a greenhouse in summer included (K). */
  private static final double OPEN_UP_TO_K = 45 + ZERO_CELSIUS_K;

  private static final Pattern NAMES =
      Pattern.compile(
          "\\b(ovens?|stoves?|dehydrators?|airing cupboard|drying cabinet|incubator|microwave)\\b");

  private ClosedHeat() {}

  /**
   * What is wrong with drying film of a glycerol in a place.
   *
   * @param glycerol what is in the recipe
   * @param place where it dries
   * @return what the place is, such as {@code air of 60 °C}; empty where nothing is wrong
   */
  public static Optional<String> of(GlycerolPortion glycerol, DryingPlace place) {
    if (!glycerol.mayHoldMethanol()) {
      return Optional.empty();
    }
    if (NAMES.matcher(place.name().toLowerCase(Locale.ROOT)).find()) {
      return Optional.of("a room called " + place.name());
    }
    double warmestK = place.room().warmestK();
    return warmestK > OPEN_UP_TO_K
        ? Optional.of(
            String.format(
                Locale.ROOT,
                "air of %1$.0f °C (%1$.0f °F would be %2$.0f °C)",
                warmestK - ZERO_CELSIUS_K,
                (warmestK - ZERO_CELSIUS_K - 32) / 1.8))
        : Optional.empty();
  }

  /** Where such film is dried. */
  public static String allowed() {
    return String.format(
        Locale.ROOT,
        "an open, aired room of at most %.0f °C with glycerol that is recovered or of unknown origin",
        OPEN_UP_TO_K - ZERO_CELSIUS_K);
  }

  /** What to do. */
  public static String mend() {
    return "its methanol could catch fire in an oven, dehydrator or airing"
        + " cupboard: dry it in the open, or state that the glycerol was bought"
        + " with a label";
  }
}
