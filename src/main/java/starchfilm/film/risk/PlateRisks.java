package starchfilm.film.risk;

import java.util.List;
import starchfilm.numerics.evidence.Source;

/**
 * What may go wrong with one plate while it dries.
 *
 * @param crack cracking
 * @param mould mould
 */
public record PlateRisks(CrackRisk crack, MouldRisk mould) {
  /** What the risks rest on, besides the drying. */
  public static final List<Source> SOURCES = List.of(CrackRisk.SOURCE, MouldGrowth.SOURCE);
}
