package starchfilm.material.ingredient;

import java.util.Locale;
import starchfilm.numerics.evidence.Estimate;

/**
 * The part of a flour that is neither starch nor water: protein, fibre, fat and ash, by its grain.
 *
 * <p>Source: U.S. Department of Agriculture, FoodData Central, SR Legacy, per 100 g: wheat flour,
 * white, all-purpose (protein 10.3, fibre 2.7, fat 1.0, ash 0.5; read in a copy); rice flour, white
 * (5.9, 2.4, 1.4, 0.6; read in a copy, fibre recalled); potato flour (6.9, 5.9, 0.3, 3.1; read in a
 * copy, ash recalled); corn flour, whole-grain, yellow (6.9, 7.3, 3.9, 1.5; recalled). Mills
 * differ: 0.7 to 1.5 times that is taken, wholemeal not included (judged).
 */
public final class Flour {
  /**
   * Flour as spooned (kg/m3), sifted to shaken down: 125 g a US cup of wheat flour, same table,
   * read in a copy; the spread is judged.
   */
  public static final Estimate BULK_KG_PER_M3 = Estimate.between(470, 590);

  private static final double LEAST = 0.7;
  private static final double MOST = 1.5;

  private Flour() {}

  /** The share of the powder, as people write it, such as {@code 10-22 %}. */
  public static String range(StarchKind grain) {
    double percent =
        switch (grain) {
          case WHEAT -> 14.5;
          case RICE -> 10.3;
          case POTATO -> 16.2;
          default -> 19.6;
        };
    return String.format(Locale.ROOT, "%.0f-%.0f %%", LEAST * percent, MOST * percent);
  }
}
