package starchfilm.film;

import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;
import starchfilm.numerics.evidence.Estimate;

/** Pastes and cases for the tests of this room. */
final class Pastes {
  static final double ZERO_CELSIUS_K = 273.15;
  static final double ROOM_K = 23 + ZERO_CELSIUS_K;

  private Pastes() {}

  /** A paste of 4 % starch with a plasticiser level in g per 100 g dry starch. */
  static Composition paste(StarchKind kind, double plasticiser) {
    return paste(kind, 0.04, plasticiser, 0, 0);
  }

  static Composition paste(
      StarchKind kind, double starch, double plasticiser, double saltPerStarch, double acid) {
    return Castings.paste(kind, starch, plasticiser / 100, saltPerStarch, acid);
  }

  /** A fresh film, 2 mm wet, well cooked, in a room of 50 % and 23 C. */
  static Casting fresh(Composition composition) {
    return in(0.5, composition);
  }

  static Casting in(double relativeHumidity, Composition composition) {
    return Castings.film(
        composition, 0, Castings.cook(15, 95), Estimate.exact(2e-3), relativeHumidity, ROOM_K, 0);
  }

  /** The same, cooked as any starch needs at most. */
  static Casting cookedUnderPressure(double relativeHumidity, Composition composition) {
    return Castings.film(
        composition, 0, Castings.cook(15, 130), Estimate.exact(2e-3), relativeHumidity, ROOM_K, 0);
  }
}
