package starchfilm.film.risk;

import java.util.List;
import starchfilm.film.DryingMechanics;
import starchfilm.numerics.evidence.Source;

/**
 * What may go wrong with one plate while it dries.
 *
 * @param crack cracking
 * @param curl letting go, shrinking in its plane and curling
 * @param mould mould
 */
public record PlateRisks(CrackRisk crack, CurlRisk curl, MouldRisk mould) {
  /** What the risks rest on, besides the drying. */
  public static final List<Source> SOURCES =
      List.of(
          DryingMechanics.SOURCE,
          FilmStress.SOURCE,
          Adhesion.SOURCE,
          MouldGrowth.SOURCE,
          MouldGrowth.ACID_SOURCE);
}
