package starchfilm.planning;

import static starchfilm.numerics.units.Units.MINUTE_S;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import starchfilm.material.ingredient.CookGuide;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Cook;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.evidence.ValidRange;

/**
 * The cook of a starch or a blend: every kind in it must be done.
 *
 * @param gelatinisesFromK where the first kind begins to gelatinise (K)
 * @param gelatinisedAtK where the last kind has gelatinised (K)
 * @param topCelsius temperature to bring the whole pot to (C)
 * @param holdMinutes time to hold it there, stirring (min)
 * @param remarks one sentence a kind, for the cook
 */
public record CookSteps(
    double gelatinisesFromK,
    double gelatinisedAtK,
    ValidRange topCelsius,
    ValidRange holdMinutes,
    List<String> remarks) {

  static CookSteps of(Map<StarchKind, Double> shares) {
    List<StarchKind> kinds = List.copyOf(shares.keySet());
    List<CookGuide> guides = kinds.stream().map(StarchKind::cookGuide).toList();
    return new CookSteps(
        kinds.stream().mapToDouble(StarchKind::gelatinisationOnsetK).min().orElseThrow(),
        kinds.stream().mapToDouble(StarchKind::gelatinisationEndK).max().orElseThrow(),
        most(guides, CookGuide::topCelsius),
        most(guides, CookGuide::holdMinutes),
        guides.stream().map(CookGuide::remark).toList());
  }

  /** Every kind must be done: the range that goes furthest. */
  private static ValidRange most(List<CookGuide> guides, Function<CookGuide, ValidRange> range) {
    return guides.stream()
        .map(range)
        .max(Comparator.comparingDouble(ValidRange::max).thenComparingDouble(ValidRange::min))
        .orElseThrow();
  }

  /** The same cook held for another time (s). */
  CookSteps heldFor(double seconds) {
    return as(topCelsius, at(seconds / MINUTE_S, holdMinutes));
  }

  /** The same cook at the time and temperature that somebody wrote. */
  CookSteps as(Cook cook) {
    return as(
        at(cook.topTemperatureK().value() - ZERO_CELSIUS_K, topCelsius),
        at(cook.durationS().value() / MINUTE_S, holdMinutes));
  }

  private CookSteps as(ValidRange top, ValidRange hold) {
    return new CookSteps(gelatinisesFromK, gelatinisedAtK, top, hold, remarks);
  }

  private static ValidRange at(double figure, ValidRange range) {
    return new ValidRange(range.quantity(), figure, figure, range.unit());
  }

  /** The cook, with what the steam took. */
  Cook cook(Estimate waterLostKg) {
    return new Cook(
        Estimate.between(holdMinutes.min(), holdMinutes.max()).times(MINUTE_S),
        Estimate.between(topCelsius.min(), topCelsius.max()).plus(Estimate.exact(ZERO_CELSIUS_K)),
        waterLostKg);
  }
}
