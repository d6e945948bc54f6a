package starchfilm.planning;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import starchfilm.film.PasteBody;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;

/**
 * One starch of the cupboard, or all of them together.
 *
 * @param shares share of each kind in the dry starch; adds up to 1
 * @param castFrom least dry starch people cast at, but enough to hold its granules (kg per kg
 *     paste)
 * @param castTo most dry starch people cast at (kg per kg paste)
 * @param levelsUpTo above this the paste does not level (kg per kg paste)
 * @param mostDryKg dry starch that can be used in this blend (kg); positive infinity for plenty
 */
record StarchBlend(
    Map<StarchKind, Double> shares,
    double castFrom,
    double castTo,
    double levelsUpTo,
    double mostDryKg) {
  StarchBlend {
    shares = Collections.unmodifiableMap(new EnumMap<>(shares));
  }

  /**
   * What the search may choose from: each starch that an open pan gelatinises, and all of those
   * blended in proportion to what is at hand (in equal parts where there is plenty of one).
   */
  static List<StarchBlend> of(Supplies supplies) {
    List<StarchAtHand> usable =
        supplies.starches().stream().filter(s -> s.kind().cookGuide().openPanWorks()).toList();
    if (usable.isEmpty()) {
      throw new IllegalArgumentException(
          supplies.starches().get(0).kind()
              + " starch alone: an open pan does not gelatinise it; it needs 120 to 140 °C under"
              + " pressure. Name another starch beside it or instead");
    }
    List<StarchBlend> blends = new ArrayList<>();
    for (StarchAtHand starch : usable) {
      blends.add(of(Map.of(starch.kind(), 1.0), starch.dryKg()));
    }
    if (usable.size() > 1) {
      blends.add(together(usable));
    }
    return blends;
  }

  private static StarchBlend together(List<StarchAtHand> starches) {
    double all = starches.stream().mapToDouble(StarchAtHand::dryKg).sum();
    Map<StarchKind, Double> shares = new EnumMap<>(StarchKind.class);
    double most = Double.POSITIVE_INFINITY;
    for (StarchAtHand starch : starches) {
      double share = Double.isInfinite(all) ? 1.0 / starches.size() : starch.dryKg() / all;
      shares.put(starch.kind(), share);
      most = Math.min(most, starch.dryKg() / share);
    }
    return of(shares, most);
  }

  static StarchBlend of(Map<StarchKind, Double> shares, double mostDryKg) {
    PasteBody body = PasteBody.of(new Composition(shares, 0.04, 0, 0, 0, 0.96, 0));
    double from = 0;
    double to = 0;
    for (Map.Entry<StarchKind, Double> share : shares.entrySet()) {
      from += share.getValue() * share.getKey().usualCast().min();
      to += share.getValue() * share.getKey().usualCast().max();
    }
    return new StarchBlend(
        shares,
        Math.min(to, Math.max(from, body.settlesBelow())),
        to,
        body.levelsUpTo(),
        mostDryKg);
  }
}
