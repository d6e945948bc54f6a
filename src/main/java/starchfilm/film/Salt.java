package starchfilm.film;

import java.util.List;
import starchfilm.material.recipe.Composition;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;
import starchfilm.numerics.evidence.ValidRange;

/**
 * Salt lowers strength, elongation and stiffness of cast starch film.
 *
 * <p>{@code factor = exp(-5 max(s - 0.02, 0))}
 *
 * <p>s: kg salt per kg dry solids. So nothing below 2 %, -14 % at 5 %, -33 % at 10 %.
 *
 * <p>Valid for: up to 10 % salt (judged). Outside: extrapolated and flagged.
 *
 * <p>Source: Venkatesh and Boldizar 2017, potato film with sodium chloride: strength and elongation
 * both fall, and so do glass transition and crystallinity; the salt crystallises out at higher dose
 * (read; no figure seen). The slope and both thresholds are judged, so the uncertainty equals the
 * effect. Other salts differ: magnesium chloride lowers strength but raises elongation.
 */
final class Salt extends FilmInfluence {
  /** Where the effect and the thresholds come from. */
  static final Source SOURCE =
      new Source(
          "Venkatesh and Boldizar 2017, potato film with sodium chloride: strength and elongation"
              + " fall (read); slope and the limits of 2 and 5 % judged",
          Check.JUDGED);

  private static final double SLOPE = -5;

  static boolean isHigh(FilmState film) {
    return film.saltFractionOfDry() > Composition.SALT_TOO_MUCH;
  }

  Salt() {
    super(
        "effect of salt",
        List.of(
            new RuleLimit(
                new ValidRange("salt", 0, 10, "% of dry solids"),
                film -> 100 * film.saltFractionOfDry())),
        List.of(SOURCE));
  }

  @Override
  Effect on(FilmProperty property, FilmState film) {
    double excess = film.saltFractionOfDry() - Composition.SALT_UNNOTICED;
    return switch (property) {
      case TENSILE_STRENGTH, ELONGATION, YOUNGS_MODULUS ->
          excess > 0 ? new Effect(Math.exp(SLOPE * excess), -SLOPE * excess) : Effect.NONE;
      default -> Effect.NONE;
    };
  }
}
