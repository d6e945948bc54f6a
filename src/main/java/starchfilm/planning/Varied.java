package starchfilm.planning;

import static starchfilm.numerics.units.Units.G_PER_KG;
import static starchfilm.numerics.units.Units.MINUTE_S;
import static starchfilm.numerics.units.Units.MM_PER_M;
import static starchfilm.numerics.units.Units.PERCENT_PER_UNIT;

import starchfilm.casting.Casting;
import starchfilm.material.recipe.Recipe;

/** The one thing that the groups of a series differ in, in the unit a maker writes it in. */
public enum Varied {
  /** Glycerol. */
  GLYCEROL("glycerol", "g per 100 g dry starch", 0, 60),
  /** Thickness of the fresh paste. */
  THICKNESS("wet thickness", "mm", 0.5, 12),
  /** Dry starch in the paste. */
  STARCH("starch in the paste", "%", 1, 12),
  /** Vinegar in the pot of a group. */
  VINEGAR("vinegar in a pot", "g", 0, 1000),
  /** Time at the top temperature. */
  COOK("cook", "min", 1, 120);

  private final String words;
  private final String unit;
  private final double least;
  private final double most;

  Varied(String words, String unit, double least, double most) {
    this.words = words;
    this.unit = unit;
    this.least = least;
    this.most = most;
  }

  /** Its name, a noun. */
  public String words() {
    return words;
  }

  /** The unit of its values. */
  public String unit() {
    return unit;
  }

  /** The least that may be asked for, in its unit. */
  public double least() {
    return least;
  }

  /** The most that may be asked for, in its unit. */
  public double most() {
    return most;
  }

  /** A design with another value of it; every other ratio of the paste stays as it is. */
  Design in(Design design, double value, PlanRequest request) {
    return switch (this) {
      case GLYCEROL -> design.with(design.starchInPaste(), value / 100, design.vinegarInPaste());
      case STARCH ->
          design.with(value / PERCENT_PER_UNIT, design.plasticiser(), design.vinegarInPaste());
      case VINEGAR -> {
        double potKg = design.plates() * request.pouredKg(design) * (1 + PotShare.LEFT_IN_POT);
        yield design.with(design.starchInPaste(), design.plasticiser(), value / G_PER_KG / potKg);
      }
      case THICKNESS -> design.poured(value / MM_PER_M);
      case COOK -> design;
    };
  }

  /** How the pot of a group is cooked. */
  CookSteps in(CookSteps steps, double value) {
    return this == COOK ? steps.heldFor(value * MINUTE_S) : steps;
  }

  /** The value in a recipe once that is rounded to the balance, in its unit. */
  public double of(Recipe recipe, Casting casting) {
    return switch (this) {
      case GLYCEROL -> 100 * casting.composition().glycerolPerDryStarch();
      case THICKNESS -> MM_PER_M * casting.wetThicknessM();
      case STARCH -> PERCENT_PER_UNIT * casting.composition().dryStarch();
      case VINEGAR -> G_PER_KG * recipe.vinegar().massKg().value();
      case COOK -> recipe.cook().durationS().value() / MINUTE_S;
    };
  }
}
