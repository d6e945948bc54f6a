package starchfilm.film;

import java.util.Map;
import java.util.OptionalDouble;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * The body of a paste: enough to hold its granules, and little enough to level on the plate.
 *
 * <p>The critical concentration is where the swollen granules just fill the liquid at 95 °C; below
 * it the starch settles, far above it the paste does not level. For a blend the swollen volumes
 * add:
 *
 * <p>{@code 1/c* = sum(share_i/c*_i)}
 *
 * <p>"Far above" is read as one third above the upper end of the concentrations people cast at
 * (judged); for a blend the ends are averaged by share.
 *
 * @param starchInPaste dry starch (kg per kg paste)
 * @param settlesBelow critical concentration (kg dry starch per kg paste); 0 for starch that does
 *     not swell in an open pan
 * @param levelsUpTo concentration above which the paste does not level (kg dry starch per kg paste)
 */
public record PasteBody(double starchInPaste, double settlesBelow, double levelsUpTo) {
  /** Where the concentrations come from. */
  public static final Source SOURCE =
      new Source(
          "critical and cast concentrations of starch pastes: Swinkels 1985, Starch/Staerke 37:1;"
              + " BeMiller and Whistler 2009, Starch: Chemistry and Technology, 3rd ed.; levelling"
              + " limit of one third above the cast range judged",
          Check.RECALLED);

  private static final double ABOVE_CAST_RANGE = 4.0 / 3;

  /** The limit is uncertain; a quarter beyond it nobody doubts it (ratio; judged). */
  private static final double CLEARLY = 1.25;

  /**
   * The body of a paste.
   *
   * @param composition the paste
   * @return its concentration with both limits
   */
  public static PasteBody of(Composition composition) {
    Map<StarchKind, Double> shares = composition.starchShares();
    double swollen = 0;
    double castUpTo = 0;
    for (Map.Entry<StarchKind, Double> share : shares.entrySet()) {
      // Starch without one hardly swells below 100 °C and fills nothing.
      OptionalDouble critical = share.getKey().criticalConcentration();
      swollen += critical.isPresent() ? share.getValue() / critical.getAsDouble() : 0;
      castUpTo += share.getValue() * share.getKey().usualCast().max();
    }
    return new PasteBody(
        composition.dryStarch(), swollen > 0 ? 1 / swollen : 0, ABOVE_CAST_RANGE * castUpTo);
  }

  /**
   * The upper end of the concentrations people cast at.
   *
   * @return kg dry starch per kg paste
   */
  public double castUpTo() {
    return levelsUpTo / ABOVE_CAST_RANGE;
  }

  /**
   * Says whether the starch settles out of the paste.
   *
   * @return true below the critical concentration
   */
  public boolean settles() {
    return starchInPaste > 0 && starchInPaste < settlesBelow;
  }

  /**
   * Says whether the paste is too thick to level.
   *
   * @return true far above the concentrations people cast at
   */
  public boolean tooThickToLevel() {
    return starchInPaste > levelsUpTo;
  }

  /**
   * Says whether the paste surely does not level, uncertain as the limit is.
   *
   * @return true a quarter beyond the limit (judged)
   */
  public boolean clearlyTooThickToLevel() {
    return starchInPaste > CLEARLY * levelsUpTo;
  }
}
