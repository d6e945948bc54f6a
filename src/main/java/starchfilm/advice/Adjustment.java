package starchfilm.advice;

import java.util.List;
import java.util.Locale;
import starchfilm.casting.DryingPlace;

/**
 * One thing a person can turn, with the steps worth trying, mildest first, none beyond what is
 * sensible at a kitchen table.
 */
public enum Adjustment {
  /** Less paste a plate. */
  POUR_THINNER(Thing.THICKNESS, PourAdjustments::thinner),
  /** More paste a plate. */
  POUR_THICKER(Thing.THICKNESS, PourAdjustments::thicker),
  /** A level plate. */
  LEVEL_THE_PLATE(Thing.LEVEL, PourAdjustments::level),
  /** Hotter paste on the plate. */
  POUR_HOTTER(Thing.WARMTH, PourAdjustments::hotter),
  /** More glycerol to the same starch. */
  MORE_GLYCEROL(Thing.GLYCEROL, PasteAdjustments::moreGlycerol),
  /** Less glycerol to the same starch. */
  LESS_GLYCEROL(Thing.GLYCEROL, PasteAdjustments::lessGlycerol),
  /** Glycerol without salt. */
  CLEANER_GLYCEROL(Thing.GLYCEROL, PasteAdjustments::cleanerGlycerol),
  /** More water to the same starch. */
  MORE_WATER(Thing.WATER, PasteAdjustments::moreWater),
  /** Less water to the same starch. */
  LESS_WATER(Thing.WATER, PasteAdjustments::lessWater),
  /** Less vinegar to the same starch. */
  LESS_VINEGAR(Thing.VINEGAR, PasteAdjustments::lessVinegar),
  /** A starch with a clear paste. */
  CLEARER_STARCH(Thing.STARCH, PasteAdjustments::clearerStarch),
  /** No draught. */
  CALMER_AIR(Thing.AIR, RoomAdjustments::calmer),
  /** A cover that keeps the air over the plate damp. */
  COVER_THE_PLATE(Thing.AIR, RoomAdjustments::cover),
  /** A fan. */
  FAN(Thing.AIR, RoomAdjustments::fan),
  /** Drier air. */
  DRIER_ROOM(Thing.AIR, RoomAdjustments::drier),
  /** Warmer air. */
  WARMER_ROOM(Thing.AIR, RoomAdjustments::warmer),
  /** Another room of this notebook. */
  ANOTHER_ROOM(Thing.AIR, RoomAdjustments::another),
  /** A hotter cook. */
  COOK_HOTTER(Thing.COOK, CookAdjustments::hotter),
  /** A longer cook. */
  COOK_LONGER(Thing.COOK, CookAdjustments::longer),
  /** A cooler cook. */
  COOK_COOLER(Thing.COOK, CookAdjustments::cooler),
  /** A shorter cook. */
  COOK_SHORTER(Thing.COOK, CookAdjustments::shorter),
  /** Peeling or looking later. */
  WAIT_LONGER(Thing.TIME, PlateAdjustments::waitLonger),
  /** No rack before it is firm. */
  KEEP_IT_ON_THE_PLATE(Thing.PLATE, PlateAdjustments::keep),
  /** A plate that film comes off. */
  A_PLATE_THAT_LETS_GO(Thing.PLATE, PlateAdjustments::lettingGo),
  /** A plate that film stays on. */
  A_PLATE_THAT_HOLDS_ON(Thing.PLATE, PlateAdjustments::holdingOn);

  /** What is turned: never two adjustments of one thing at once. */
  enum Thing {
    THICKNESS,
    LEVEL,
    WARMTH,
    GLYCEROL,
    WATER,
    VINEGAR,
    STARCH,
    AIR,
    COOK,
    TIME,
    PLATE
  }

  private interface Ladder {
    List<Step> steps(FaultContext scene, List<DryingPlace> otherPlaces);
  }

  private final Thing thing;
  private final Ladder ladder;

  Adjustment(Thing thing, Ladder ladder) {
    this.thing = thing;
    this.ladder = ladder;
  }

  Thing thing() {
    return thing;
  }

  /**
   * The name of the adjustment in the table of rules.
   *
   * @return lower case, such as "pour thinner"
   */
  public String tableName() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** The steps from a scene's set-up; empty where there is nothing to turn. */
  List<Step> steps(FaultContext scene, List<DryingPlace> otherPlaces) {
    return ladder.steps(scene, otherPlaces);
  }
}
