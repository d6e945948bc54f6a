package starchfilm.film;

import java.util.Map;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Cook;
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
    double glycerol = starch * plasticiser / 100;
    double salt = starch * saltPerStarch;
    return new Composition(
        Map.of(kind, 1.0), starch, glycerol, salt, acid, 1 - starch - glycerol - salt - acid);
  }

  static Cook cook(double minutes, double celsius) {
    return new Cook(
        Estimate.exact(60 * minutes), Estimate.exact(celsius + ZERO_CELSIUS_K), Estimate.exact(0));
  }

  /** A fresh film, 2 mm wet, well cooked, in a room of 50 % and 23 C. */
  static Casting fresh(Composition composition) {
    return in(0.5, composition);
  }

  static Casting in(double relativeHumidity, Composition composition) {
    return Castings.film(
        composition, 0, cook(15, 95), Estimate.exact(2e-3), relativeHumidity, ROOM_K, 0);
  }

  /** The same, cooked as any starch needs at most. */
  static Casting cookedUnderPressure(double relativeHumidity, Composition composition) {
    return Castings.film(
        composition, 0, cook(15, 130), Estimate.exact(2e-3), relativeHumidity, ROOM_K, 0);
  }
}
