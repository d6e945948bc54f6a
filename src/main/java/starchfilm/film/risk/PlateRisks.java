package starchfilm.film.risk;

import static starchfilm.numerics.units.Units.DAY_S;

import java.util.List;
import starchfilm.casting.Casting;
import starchfilm.drying.PlateCourse;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.film.DryingMechanics;
import starchfilm.numerics.evidence.Source;

/**
 * The risks of one plate while it dries.
 *
 * @param crack cracking
 * @param curl letting go, shrinking in its plane and curling
 * @param mould mould
 */
public record PlateRisks(CrackRisk crack, CurlRisk curl, MouldRisk mould) {
  /** The sources of the risks, besides the drying. */
  public static final List<Source> SOURCES =
      List.of(
          DryingMechanics.SOURCE,
          FilmStress.SOURCE,
          Adhesion.SOURCE,
          MouldGrowth.SOURCE,
          MouldGrowth.ACID_SOURCE);

  /**
   * Nothing is followed longer than this: 30 days. A plate that is wet then has moulded long ago.
   */
  private static final double HORIZON_S = 30 * DAY_S;

  /**
   * The risks of one plate.
   *
   * @param drying the plate
   * @param factors what is known of the factors; the middle case is followed
   * @return cracking, curling and mould
   */
  public static PlateRisks of(Casting drying, ParameterDistribution factors) {
    ParameterSample middle = factors.mean();
    PlateCourse course = PlateCourse.of(drying, middle, HORIZON_S);
    StressHistory stress = StressHistory.of(drying, course);
    return new PlateRisks(
        stress.crack(), stress.curl(), MouldRisk.of(drying, middle, course.thick()));
  }
}
