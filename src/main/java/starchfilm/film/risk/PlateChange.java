package starchfilm.film.risk;

import java.util.Optional;
import starchfilm.casting.Casting;
import starchfilm.casting.ConstantRoom;
import starchfilm.casting.Pour;
import starchfilm.film.risk.Remedy.Change;
import starchfilm.material.air.AirState;
import starchfilm.material.air.SaturationPressure;
import starchfilm.material.air.WagnerPruss1993;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Ingredient;

/**
 * One plate with one thing changed, as a person could change it: a quarter less paste, ten grams
 * more glycerol to a hundred of starch, half the unevenness, a cover, a fan, a drier or a warmer
 * room. A change of the air needs a constant room, for nobody can order other weather.
 *
 * @param drying the changed plate
 * @param from the figure before
 * @param to the figure after
 */
record PlateChange(Casting drying, double from, double to) {
  private static final double THINNER = 0.75;
  private static final double MORE_GLYCEROL = 0.10;
  private static final double MOST_GLYCEROL = 0.45;
  private static final double LEVELLER = 0.5;
  private static final double LEVEL_ENOUGH = 0.05;
  private static final double DAMPER = 0.15;
  private static final double DAMPEST = 0.70;
  private static final double FAN_M_PER_S = 0.5;
  private static final double DRIER = 0.15;
  private static final double DRIEST = 0.30;
  private static final double WARMER_K = 5;
  private static final double WARMEST_K = 308.15;
  private static final SaturationPressure SATURATION = new WagnerPruss1993();

  static Optional<PlateChange> apply(Change change, Casting drying) {
    return switch (change) {
      case POUR_THINNER -> thinner(drying);
      case MORE_GLYCEROL -> moreGlycerol(drying);
      case LEVEL_BETTER -> leveller(drying);
      case DRY_SLOWER -> air(drying, PlateChange::damper);
      case MORE_AIR -> air(drying, PlateChange::fanned);
      case DRIER_ROOM -> air(drying, PlateChange::drier);
      case WARMER_ROOM -> air(drying, PlateChange::warmer);
    };
  }

  private static Optional<PlateChange> thinner(Casting drying) {
    double from = drying.wetThicknessM();
    double to = from * THINNER;
    return Optional.of(new PlateChange(drying.pouredTo(to), from, to));
  }

  private static Optional<PlateChange> moreGlycerol(Casting drying) {
    double from = drying.composition().glycerolPerDryStarch();
    double to = Math.min(MOST_GLYCEROL, from + MORE_GLYCEROL);
    if (!(to > from)) {
      return Optional.empty();
    }
    Composition paste = drying.composition();
    return Optional.of(
        new PlateChange(
            drying.with(paste.with(Ingredient.GLYCEROL, to * paste.dryStarch())), from, to));
  }

  private static Optional<PlateChange> leveller(Casting drying) {
    Pour pour = drying.pour();
    double from = pour.unevenness();
    if (from < LEVEL_ENOUGH) {
      return Optional.empty();
    }
    double to = from * LEVELLER;
    return Optional.of(new PlateChange(drying.with(pour.withUnevenness(to)), from, to));
  }

  private interface OfAir {
    Optional<ChangedAir> change(AirState air);
  }

  private record ChangedAir(AirState air, double from, double to) {}

  private static Optional<PlateChange> air(Casting drying, OfAir change) {
    if (!(drying.room() instanceof ConstantRoom room)) {
      return Optional.empty();
    }
    return change
        .change(room.air())
        .map(
            changed ->
                new PlateChange(
                    drying.with(drying.place().with(new ConstantRoom(changed.air()))),
                    changed.from(),
                    changed.to()));
  }

  private static Optional<ChangedAir> damper(AirState air) {
    double to = Math.min(DAMPEST, air.relativeHumidity() + DAMPER);
    return to > air.relativeHumidity() ? Optional.of(withHumidity(air, to)) : Optional.empty();
  }

  private static Optional<ChangedAir> drier(AirState air) {
    double to = Math.max(DRIEST, air.relativeHumidity() - DRIER);
    return to < air.relativeHumidity() ? Optional.of(withHumidity(air, to)) : Optional.empty();
  }

  private static ChangedAir withHumidity(AirState air, double humidity) {
    return new ChangedAir(
        new AirState(air.temperatureK(), humidity, air.speedMPerS()),
        air.relativeHumidity(),
        humidity);
  }

  private static Optional<ChangedAir> fanned(AirState air) {
    return air.speedMPerS() < FAN_M_PER_S
        ? Optional.of(
            new ChangedAir(
                new AirState(air.temperatureK(), air.relativeHumidity(), FAN_M_PER_S),
                air.speedMPerS(),
                FAN_M_PER_S))
        : Optional.empty();
  }

  /** Warmed air keeps its vapour, so its relative humidity falls. */
  private static Optional<ChangedAir> warmer(AirState air) {
    double to = Math.min(WARMEST_K, air.temperatureK() + WARMER_K);
    if (!(to > air.temperatureK())) {
      return Optional.empty();
    }
    double humidity =
        air.relativeHumidity() * SATURATION.pa(air.temperatureK()) / SATURATION.pa(to);
    return Optional.of(
        new ChangedAir(new AirState(to, humidity, air.speedMPerS()), air.temperatureK(), to));
  }
}
