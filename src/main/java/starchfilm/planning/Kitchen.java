package starchfilm.planning;

import static java.util.Collections.nCopies;
import static starchfilm.numerics.figures.ReaderUnit.GRAM;
import static starchfilm.numerics.figures.ReaderUnit.LITRE;
import static starchfilm.numerics.figures.ReaderUnit.MILLIMETRE;
import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

import java.util.List;
import starchfilm.casting.Plate;
import starchfilm.material.recipe.Composition;
import starchfilm.numerics.evidence.Refusal;

/**
 * The pot, balance and plates that paste is cooked in, weighed on and poured on.
 *
 * @param potM3 volume of the pot, brim-full (m3)
 * @param scaleStepKg step of the balance's display (kg)
 * @param plate one plate; its own rim height is not used, {@code rimM} is
 * @param rimM height of the plate's rim above its floor (m); 0 for none
 * @param plates how many plates there are; at least 1
 * @param unevenness how far thin edge and thick spot are from the average (ratio, 0 to 0.9)
 * @param sizes the sizes where there are several, of which the plate is the mean; one or none else
 */
public record Kitchen(
    double potM3,
    double scaleStepKg,
    Plate plate,
    double rimM,
    int plates,
    double unevenness,
    List<EqualPlates> sizes) {
  /** Plates of one size. */
  public record EqualPlates(Plate plate, int count) {}

  /**
   * What a pot takes over what it holds brim-full (kg per m3): paste heaves and spits, so it is
   * filled to three quarters (judged, no source), and is as heavy as water.
   */
  static final double HOLDS_KG_PER_M3 = 0.75 * Composition.WATER_KG_PER_M3;

  private static final int MOST_PLATES = 1000;
  private static final double SMALLEST_SIDE_M = 0.01;
  private static final double LARGEST_SIDE_M = 5;

  /** Checks every figure. */
  public Kitchen {
    sizes = List.copyOf(sizes);
    LITRE.requireSome("pot", potM3, 1000, "write how much the pot holds");
    GRAM.requireSome(
        "step of the balance",
        scaleStepKg,
        100,
        "write the smallest step its display shows, such as 1 g or 0.1 g");
    Refusal.unless(
        plates >= 1 && plates <= MOST_PLATES,
        "plates",
        String.valueOf(plates),
        "1 to 1000; write how many plates you have");
    Refusal.unless(
        Math.min(plate.longestM(), plate.shortestM()) >= SMALLEST_SIDE_M
            && Math.max(plate.longestM(), plate.shortestM()) <= LARGEST_SIDE_M,
        "sides of a plate",
        plate.size(),
        "1 to 500 cm; write length and width of one plate");
    MILLIMETRE.require(
        "rim", rimM, 0, 200, "write how high the rim stands above the plate, 0 mm for none");
    PERCENT.require(
        "unevenness",
        unevenness,
        0,
        90,
        "write how far the thin edge is below the average; 25 % if nobody measured it");
  }

  /** Each plate, in the order in which they were written. */
  public List<Plate> eachPlate() {
    return sizes.size() > 1
        ? sizes.stream().flatMap(size -> nCopies(size.count(), size.plate()).stream()).toList()
        : nCopies(plates, plate);
  }

  /** The plate with what its rim leaves above a pour. */
  Plate platePoured(double wetThicknessM) {
    return plate.filledTo(wetThicknessM, rimM);
  }

  /** The same kitchen with another pot. */
  Kitchen withPot(double m3) {
    return new Kitchen(m3, scaleStepKg, plate, rimM, plates, unevenness, sizes);
  }

  /** The same kitchen with another number of plates. */
  Kitchen withPlates(int count) {
    return new Kitchen(potM3, scaleStepKg, plate, rimM, count, unevenness, sizes);
  }
}
