package starchfilm.advice;

import java.util.EnumSet;
import java.util.Set;
import starchfilm.film.PasteBody;
import starchfilm.material.ingredient.StarchKind;

/**
 * The body and the clarity of the paste.
 *
 * <p>Limits: {@link PasteBody}; potato, tapioca and waxy corn give clear pastes, corn, wheat and
 * rice cloudy ones (Swinkels 1985, Starch/Staerke 37:1, recalled).
 */
final class PasteCauses {
  private static final Set<StarchKind> CLEAR =
      EnumSet.of(StarchKind.POTATO, StarchKind.TAPIOCA, StarchKind.WAXY_CORN);

  /**
   * The upper end of what people cast at, over the limit of levelling: by that limit's own rule.
   */
  private static final double CAST_RANGE_ENDS = 0.75;

  private static final double SURELY_AFLOAT = 0.8;
  private static final double SURELY_SETTLES = 1.05;
  private static final double LITTLE_OPAQUE = 0.2;
  private static final double MOSTLY_OPAQUE = 0.8;

  private PasteCauses() {}

  static Reading tooStiff(FaultContext scene) {
    if (!scene.notes("recipe.water")) {
      return Reading.untold("how much water went in");
    }
    PasteBody body = PasteBody.of(scene.setup().composition());
    return Reading.of(
        body.starchInPaste() / body.levelsUpTo(),
        CAST_RANGE_ENDS,
        1,
        "the paste holds "
            + Told.percent(body.starchInPaste())
            + " dry starch; this starch is cast at up to "
            + Told.percent(CAST_RANGE_ENDS * body.levelsUpTo())
            + " and hardly levels above "
            + Told.percent(body.levelsUpTo()));
  }

  static Reading settled(FaultContext scene) {
    if (!scene.notes("recipe.water")) {
      return Reading.untold("how much water went in");
    }
    PasteBody body = PasteBody.of(scene.setup().composition());
    return Reading.of(
        body.settlesBelow() / body.starchInPaste(),
        SURELY_AFLOAT,
        SURELY_SETTLES,
        "the paste holds "
            + Told.percent(body.starchInPaste())
            + " dry starch; below "
            + Told.percent(body.settlesBelow())
            + " this starch settles");
  }

  static Reading opaque(FaultContext scene) {
    double share =
        scene.setup().composition().starchShares().entrySet().stream()
            .filter(kind -> !CLEAR.contains(kind.getKey()))
            .mapToDouble(kind -> kind.getValue())
            .sum();
    return Reading.of(
        share,
        LITTLE_OPAQUE,
        MOSTLY_OPAQUE,
        Told.percent(share) + " of the starch is of a kind whose paste is cloudy by nature");
  }
}
