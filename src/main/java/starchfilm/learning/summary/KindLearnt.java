package starchfilm.learning.summary;

import java.util.List;
import starchfilm.material.ingredient.StarchKind;

/**
 * Figures learnt of film of one starch kind.
 *
 * @param kind which
 * @param plates weighed plates that hold it
 * @param factors the film-side factors, what all kinds have in common counted in
 */
public record KindLearnt(StarchKind kind, int plates, List<ParameterLearnt> factors) {
  public KindLearnt {
    factors = List.copyOf(factors);
  }
}
