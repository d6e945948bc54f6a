package starchfilm.planning;

import java.util.ArrayList;
import java.util.List;

/**
 * The plates of one potful, shared out over as few potfuls as the pot allows, as equal as can be.
 *
 * @param plates plates poured from what is cooked for them; at least 1
 * @param times how often that is cooked
 * @param parts potfuls that what is cooked for these plates is divided into: 1, but where the pot
 *     is too small for even one plate
 */
public record PotShare(int plates, int times, int parts) {
  /** Paste that stays in the pot, over what is poured; assumed, no source. */
  public static final double LEFT_IN_POT = 0.05;

  /** Rounding may push the last plate a hair over the brim mark; that plate still fits. */
  private static final double HAIR = 0.01;

  /**
   * Shares plates out.
   *
   * @param inPotKg everything that goes into the pot for one plate (kg), the water for the steam
   *     included; taken as heavy as water
   * @param potM3 volume of the pot, brim-full (m3); it is filled to three quarters
   * @param plates plates in all; at least 1
   * @return the larger shares first; their plates add up
   */
  public static List<PotShare> of(double inPotKg, double potM3, int plates) {
    double holds = potM3 * Kitchen.HOLDS_KG_PER_M3 / inPotKg + HAIR;
    int fits = Math.max(1, (int) Math.floor(holds));
    int parts = holds >= 1 ? 1 : (int) Math.ceil(1 / holds);
    int count = (plates + fits - 1) / fits;
    int larger = plates % count;
    List<PotShare> shares = new ArrayList<>();
    if (larger > 0) {
      shares.add(new PotShare(plates / count + 1, larger, parts));
    }
    shares.add(new PotShare(plates / count, count - larger, parts));
    return shares;
  }
}
