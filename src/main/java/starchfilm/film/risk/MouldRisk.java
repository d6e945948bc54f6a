package starchfilm.film.risk;

import static starchfilm.numerics.units.Units.HOUR_S;

import java.util.List;
import starchfilm.casting.Casting;
import starchfilm.drying.SpotMoment;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.material.sorption.FilmIsotherm;

/**
 * The risk that a plate grows mould before it is dry.
 *
 * <p>The hours in which the wettest part of the thick spot lets mould grow are added up, each
 * weighted with its speed by {@link MouldGrowth}. Below 24 weighted hours the risk is low, to 48
 * watch, to 96 likely, beyond expected (judged; a freshly boiled paste in a clean kitchen is
 * assumed, and no preservative but the vinegar's acid).
 *
 * @param level how likely
 * @param weightedHours hours at full growing speed that the drying amounts to
 * @param growthFromS when growth may first show, since the pour (s); positive infinity for never
 */
public record MouldRisk(RiskLevel level, double weightedHours, double growthFromS) {
  private static final MouldGrowth GROWTH = new MouldGrowth();

  private static final double WATCH_FROM_H = 24;

  /** Weighted hours after which growth may show. */
  static final double SHOWS_AFTER_H = 48;

  private static final double EXPECTED_FROM_H = 96;

  /** The risk over the course of a thick spot in the middle case. */
  static MouldRisk of(Casting drying, ParameterSample middle, List<SpotMoment> thick) {
    FilmIsotherm isotherm = FilmIsotherm.of(drying.composition());
    double isothermFactor = middle.multiplier(UncertainParameter.ISOTHERM);
    double slowed = MouldGrowth.slowedBy(drying.composition());
    double weightedHours = 0;
    double growthFromS = Double.POSITIVE_INFINITY;
    for (int i = 1; i < thick.size(); i++) {
      SpotMoment before = thick.get(i - 1);
      SpotMoment after = thick.get(i);
      double temperatureK = (before.temperatureK() + after.temperatureK()) / 2;
      double activity =
          isotherm.activity(
              (before.coreMoisture() + after.coreMoisture())
                  / 2
                  / (isothermFactor * FilmIsotherm.warmth(temperatureK)));
      double lengthS = after.timeS() - before.timeS();
      double hours = lengthS / HOUR_S * GROWTH.speed(activity, temperatureK) * slowed;
      if (weightedHours < SHOWS_AFTER_H && weightedHours + hours >= SHOWS_AFTER_H) {
        growthFromS = before.timeS() + (SHOWS_AFTER_H - weightedHours) / hours * lengthS;
      }
      weightedHours += hours;
    }
    return new MouldRisk(level(weightedHours), weightedHours, growthFromS);
  }

  /** When it may first show, where that is likely (s since the pour); infinite where it is not. */
  public double expectedFromS() {
    return level.compareTo(RiskLevel.LIKELY) >= 0 ? growthFromS : Double.POSITIVE_INFINITY;
  }

  static RiskLevel level(double weightedHours) {
    return RiskLevel.of(weightedHours, WATCH_FROM_H, SHOWS_AFTER_H, EXPECTED_FROM_H);
  }
}
