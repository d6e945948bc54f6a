package starchfilm.film.risk;

import static starchfilm.numerics.units.Units.HOUR_S;

import java.util.List;
import starchfilm.casting.Casting;
import starchfilm.drying.PlateCourse;
import starchfilm.drying.SpotMoment;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.material.recipe.Composition;
import starchfilm.material.sorption.FilmIsotherm;

/**
 * What happens in the thin edge and the thick spot of a plate while it dries, in the middle case,
 * and the risks read from it.
 */
final class PlateHistory {
  private static final MouldGrowth GROWTH = new MouldGrowth();

  private final Composition composition;
  private final FilmIsotherm isotherm;
  private final double isothermFactor;
  private final List<SpotMoment> thick;

  private final StressHistory stress;
  private double weightedHours;
  private double growthFromS = Double.POSITIVE_INFINITY;

  private PlateHistory(Casting drying, ParameterSample middle, PlateCourse course) {
    this.composition = drying.composition();
    this.isotherm = FilmIsotherm.of(composition);
    this.isothermFactor = middle.multiplier(UncertainParameter.ISOTHERM);
    this.thick = course.thick();
    this.stress = StressHistory.of(drying, course);
    addUpMould();
  }

  static PlateHistory of(Casting drying, ParameterSample middle, double horizonS) {
    return new PlateHistory(drying, middle, PlateCourse.of(drying, middle, horizonS));
  }

  private void addUpMould() {
    for (int i = 1; i < thick.size(); i++) {
      SpotMoment before = thick.get(i - 1);
      SpotMoment after = thick.get(i);
      double temperatureK = (before.temperatureK() + after.temperatureK()) / 2;
      double activity =
          isotherm.activity(
              (before.coreMoisture() + after.coreMoisture())
                  / 2
                  / (isothermFactor * FilmIsotherm.warmth(temperatureK)));
      double hours =
          (after.timeS() - before.timeS())
              / HOUR_S
              * GROWTH.speed(activity, temperatureK)
              * MouldGrowth.slowedBy(composition);
      if (weightedHours < MouldRisk.SHOWS_AFTER_H
          && weightedHours + hours >= MouldRisk.SHOWS_AFTER_H) {
        double share = (MouldRisk.SHOWS_AFTER_H - weightedHours) / hours;
        growthFromS = before.timeS() + share * (after.timeS() - before.timeS());
      }
      weightedHours += hours;
    }
  }

  StressHistory stress() {
    return stress;
  }

  /** Energy of a crack over the toughness of the film, at most. */
  double crackRatio() {
    return stress.crackRatio();
  }

  double weightedMouldHours() {
    return weightedHours;
  }

  double growthFromS() {
    return growthFromS;
  }
}
