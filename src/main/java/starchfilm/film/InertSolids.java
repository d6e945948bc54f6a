package starchfilm.film;

import java.util.List;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;
import starchfilm.numerics.evidence.ValidRange;

/**
 * Inert solids in the film make its figures less certain: protein and fibre of a flour, citric
 * acid, chalk.
 *
 * <p>What they do depends on what they are: a filler that does not cling weakens the film, a fibre
 * that clings stiffens it, citric acid softens it. So the middle stays, and the logarithm's
 * standard deviation is the whole effect of hard round grains of which they take the volume
 * fraction v:
 *
 * <p>{@code elongation 1 - v^(1/3), strength 1 - 1.21 v^(2/3), stiffness 1 + 2.5 v, permeability (1
 * - v)/(1 + v/2)}
 *
 * <p>Valid for: up to 30 % of the dry solids (judged). Outside: extrapolated and flagged.
 *
 * <p>Source: Nielsen 1966, J. Appl. Polym. Sci. 10:97 (elongation); Nicolais and Narkis 1971,
 * Polym. Eng. Sci. 11:194 (strength without adhesion); Einstein 1906 (stiffness); Maxwell 1873
 * (permeability around spheres); all recalled. The volume fraction is taken as the share of the dry
 * solids.
 */
final class InertSolids extends FilmInfluence {
  /** Inert solids that are warned of (kg per kg dry solids; judged). */
  static final double SHOWS = 0.01;

  static final Source SOURCE =
      new Source(
          "solids that are neither starch nor glycerol: bands widened by what hard grains would do,"
              + " Nielsen 1966 (elongation), Nicolais and Narkis 1971 (strength), Einstein 1906"
              + " (stiffness), Maxwell 1873 (permeability); recalled",
          Check.RECALLED);

  private static final double MOST = 0.3;

  InertSolids() {
    super(
        "effect of other solids",
        List.of(
            new RuleLimit(
                new ValidRange(
                    "solids that are neither starch nor glycerol", 0, 30, "% of dry solids"),
                film -> 100 * film.inertFractionOfDry())),
        List.of(SOURCE));
  }

  @Override
  Effect on(FilmProperty property, FilmState film) {
    double v = Math.min(MOST, film.inertFractionOfDry());
    double factor =
        switch (property) {
          case ELONGATION -> 1 - Math.cbrt(v);
          case TENSILE_STRENGTH -> 1 - 1.21 * Math.pow(v, 2.0 / 3);
          case YOUNGS_MODULUS -> 1 + 2.5 * v;
          case VAPOUR_PERMEABILITY -> (1 - v) / (1 + v / 2);
          default -> 1;
        };
    return new Effect(1, Math.abs(Math.log(factor)));
  }
}
