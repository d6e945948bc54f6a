package starchfilm.jar.assay;

import java.util.OptionalDouble;
import starchfilm.material.recipe.Composition;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * The effect of the jar's salt on a film.
 *
 * <p>{@code f = k p/(1 + p + k p)}: salt in the dry solids; k: salt per glycerol in the jar; p:
 * glycerol per dry starch. Below 2 % of the dry solids it may be forgotten, above 5 % it lowers
 * strength and stretch and may bloom.
 *
 * <p>Source: that salt lowers strength, stretch, glass transition and crystallinity of potato
 * starch films and comes out as crystals: Venkatesh and Boldizar 2017 (read); the limits of 2 and 5
 * % are judged.
 *
 * @param ofDrySolidsAtUsual salt in the dry solids at 30 g glycerol per 100 g dry starch (kg per
 *     kg)
 * @param mostUnnoticed glycerol per dry starch (kg per kg) up to which salt stays below 2 % of the
 *     dry solids; empty where it does at any level
 * @param mostUsable the same for 5 %
 */
public record SaltAdvice(
    double ofDrySolidsAtUsual, OptionalDouble mostUnnoticed, OptionalDouble mostUsable) {
  /** The usual plasticiser level (kg glycerol per kg dry starch). */
  public static final double USUAL_PLASTICISER = 0.30;

  /** Where the advice comes from. */
  public static final Source SOURCE =
      new Source(
          "Venkatesh and Boldizar 2017, salt in potato starch film; limits of 2 and 5 % judged",
          Check.JUDGED);

  static SaltAdvice of(double saltPerGlycerol) {
    double k = saltPerGlycerol;
    double p = USUAL_PLASTICISER;
    return new SaltAdvice(
        k * p / (1 + p + k * p),
        most(k, Composition.SALT_UNNOTICED),
        most(k, Composition.SALT_TOO_MUCH));
  }

  /** f = limit solved for p. */
  private static OptionalDouble most(double k, double limit) {
    double slope = k * (1 - limit) - limit;
    return slope > 0 ? OptionalDouble.of(limit / slope) : OptionalDouble.empty();
  }
}
