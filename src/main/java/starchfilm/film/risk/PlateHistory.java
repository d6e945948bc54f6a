package starchfilm.film.risk;

import static starchfilm.numerics.units.Units.HOUR_S;

import java.util.List;
import starchfilm.casting.Casting;
import starchfilm.drying.Milestone;
import starchfilm.drying.PlateCourse;
import starchfilm.drying.SpotMoment;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.film.SkinStretch;
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
  private final List<SpotMoment> edge;
  private final List<SpotMoment> thick;

  private double stretchNeeded;
  private double stretchAvailable = Double.POSITIVE_INFINITY;
  private double worstAtS;
  private double weightedHours;
  private double growthFromS = Double.POSITIVE_INFINITY;

  private PlateHistory(Composition composition, ParameterSample middle, PlateCourse course) {
    this.composition = composition;
    this.isotherm = FilmIsotherm.of(composition);
    this.isothermFactor = middle.multiplier(UncertainParameter.ISOTHERM);
    this.edge = course.edge();
    this.thick = course.thick();
    findWorstStretch();
    addUpMould();
  }

  static PlateHistory of(Casting drying, ParameterSample middle, double horizonS) {
    return new PlateHistory(drying.composition(), middle, PlateCourse.of(drying, middle, horizonS));
  }

  private void findWorstStretch() {
    SkinStretch stretch = SkinStretch.of(composition);
    for (int i = 0; i < thick.size(); i++) {
      worse(stretch, thick.get(i), thick.get(i).coreMoisture());
      worse(stretch, edge.get(i), thick.get(i).meanMoisture());
    }
  }

  /** Takes note where a firm part must stretch more, against what it can, than ever before. */
  private void worse(SkinStretch stretch, SpotMoment dry, double wetMoisture) {
    double skin = Math.max(0, dry.skinMoisture());
    double firmest = Milestone.FIRM_MOISTURE;
    if (skin >= firmest) {
      return;
    }
    double wet = Math.max(skin, Math.min(wetMoisture, firmest));
    double needed =
        Math.log(composition.volumeM3PerKgDry(wet) / composition.volumeM3PerKgDry(skin)) / 3;
    double available = stretch.stretchAtBreak(skin, dry.temperatureK());
    if (needed / available > crackRatio()) {
      stretchNeeded = needed;
      stretchAvailable = available;
      worstAtS = dry.timeS();
    }
  }

  private void addUpMould() {
    for (int i = 1; i < thick.size(); i++) {
      SpotMoment before = thick.get(i - 1);
      SpotMoment after = thick.get(i);
      double activity =
          isotherm.activity((before.coreMoisture() + after.coreMoisture()) / 2 / isothermFactor);
      double temperatureK = (before.temperatureK() + after.temperatureK()) / 2;
      double hours =
          (after.timeS() - before.timeS()) / HOUR_S * GROWTH.speed(activity, temperatureK);
      if (weightedHours < MouldRisk.SHOWS_AFTER_H
          && weightedHours + hours >= MouldRisk.SHOWS_AFTER_H) {
        double share = (MouldRisk.SHOWS_AFTER_H - weightedHours) / hours;
        growthFromS = before.timeS() + share * (after.timeS() - before.timeS());
      }
      weightedHours += hours;
    }
  }

  double stretchNeeded() {
    return stretchNeeded;
  }

  double stretchAvailable() {
    return stretchAvailable;
  }

  /** Needed over available stretch at the worst moment; 0 where nothing firm ever hangs on. */
  double crackRatio() {
    return Double.isInfinite(stretchAvailable) ? 0 : stretchNeeded / stretchAvailable;
  }

  double worstAtS() {
    return worstAtS;
  }

  double weightedMouldHours() {
    return weightedHours;
  }

  double growthFromS() {
    return growthFromS;
  }
}
