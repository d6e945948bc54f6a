package starchfilm.planning;

import static starchfilm.numerics.figures.ReaderUnit.MEGAPASCAL;
import static starchfilm.numerics.figures.ReaderUnit.MICROMETRE;
import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import starchfilm.film.Feel;
import starchfilm.film.FilmCaution;
import starchfilm.numerics.evidence.Refusal;

/**
 * The film that is wanted.
 *
 * @param feel what it should be like in the hand: stiff, flexible or stretchy; empty for whatever
 *     the numbers ask
 * @param strengthPa tensile strength it should have at least (Pa)
 * @param elongation stretch at break it should have at least (ratio)
 * @param dryThicknessM dry thickness it should have, give or take a tenth (m); empty for the usual
 *     0.05 to 0.25 mm
 */
public record Wish(
    Optional<Feel> feel,
    OptionalDouble strengthPa,
    OptionalDouble elongation,
    OptionalDouble dryThicknessM) {
  static final double GIVE_OR_TAKE = 0.1;

  private static final String NEVER = "cast starch film is never outside this";

  /** Checks every figure; without feel and numbers, flexible film is taken. */
  public Wish {
    Refusal.unless(
        feel.filter(fault -> fault == Feel.BRITTLE || fault == Feel.STICKY).isEmpty(),
        "feel",
        feel.map(Feel::name).orElse("").toLowerCase(Locale.ROOT),
        "stiff, flexible or stretchy; the others are faults, not wishes");
    strengthPa.ifPresent(pa -> MEGAPASCAL.require("strength", pa, 0, 200, NEVER));
    elongation.ifPresent(ratio -> PERCENT.require("stretch at break", ratio, 0, 300, NEVER));
    dryThicknessM.ifPresent(m -> MICROMETRE.require("dry thickness", m, 10, 1_000, NEVER));
    if (feel.isEmpty() && strengthPa.isEmpty() && elongation.isEmpty()) {
      feel = Optional.of(Feel.FLEXIBLE);
    }
  }

  double leastDryThicknessM() {
    return dryThicknessM.isPresent()
        ? dryThicknessM.getAsDouble() * (1 - GIVE_OR_TAKE)
        : FilmCaution.USUALLY_THINNEST_M;
  }

  double mostDryThicknessM() {
    return dryThicknessM.isPresent()
        ? dryThicknessM.getAsDouble() * (1 + GIVE_OR_TAKE)
        : FilmCaution.USUALLY_THICKEST_M;
  }

  /** A wish for another feel and the same thickness, without numbers of strength and stretch. */
  Wish feeling(Feel other) {
    return new Wish(
        Optional.of(other), OptionalDouble.empty(), OptionalDouble.empty(), dryThicknessM);
  }

  /** The same wish for another dry thickness; empty for the usual. */
  Wish thick(OptionalDouble otherM) {
    return new Wish(feel, strengthPa, elongation, otherM);
  }
}
