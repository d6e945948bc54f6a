package starchfilm.planning;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.UnaryOperator;
import starchfilm.film.Feel;

/** Where no recipe fits, which wish to give up, or what to get more of; by searching again. */
final class WaysOut {
  /** Stands for as much as anybody likes (kg; m3 for a pot). */
  private static final double PLENTY_KG = 100;

  private static final double PLENTY_M3 = 1;

  private final PlanSearch search;
  private final PlanRequest request;

  WaysOut(PlanSearch search, PlanRequest request) {
    this.search = search;
    this.request = request;
  }

  private record Drop(Limit limit, Optional<Feel> feel, UnaryOperator<PlanRequest> drop) {}

  List<GiveUp> list() {
    List<Drop> drops = drops();
    List<GiveUp> ways = new ArrayList<>();
    for (Drop drop : drops) {
      way(Set.of(drop.limit()), drop.feel(), drop.drop().apply(request)).ifPresent(ways::add);
    }
    if (ways.isEmpty()) {
      for (int i = 0; i < drops.size(); i++) {
        for (int j = i + 1; j < drops.size(); j++) {
          both(drops.get(i), drops.get(j)).ifPresent(ways::add);
        }
      }
    }
    return ways;
  }

  private Optional<GiveUp> both(Drop a, Drop b) {
    if (a.limit() == b.limit()) {
      return Optional.empty();
    }
    return way(
        EnumSet.of(a.limit(), b.limit()),
        a.feel().or(b::feel),
        b.drop().apply(a.drop().apply(request)));
  }

  private Optional<GiveUp> way(Set<Limit> limits, Optional<Feel> feel, PlanRequest relaxed) {
    return search
        .best(relaxed, Goal.SOONEST)
        .map(found -> new GiveUp(limits, feel, measuredByTheFirstDate(found)));
  }

  /** A recipe found without a date still has a chance of being ready by the date asked for. */
  private Outcome measuredByTheFirstDate(PlanSearch.Found found) {
    return found.space().outcome(found.candidate(), request);
  }

  private List<Drop> drops() {
    List<Drop> drops = new ArrayList<>();
    if (request.byS().isPresent()) {
      drops.add(new Drop(Limit.DATE, Optional.empty(), r -> r.by(OptionalDouble.empty())));
    }
    if (request.wish().dryThicknessM().isPresent()) {
      drops.add(
          new Drop(
              Limit.THINNEST_FILM,
              Optional.empty(),
              r -> r.with(r.wish().thick(OptionalDouble.empty()))));
    }
    for (Feel feel : List.of(Feel.STIFF, Feel.FLEXIBLE, Feel.STRETCHY)) {
      if (!request.wish().feel().equals(Optional.of(feel))) {
        drops.add(new Drop(Limit.WISH, Optional.of(feel), r -> r.with(r.wish().feeling(feel))));
      }
    }
    drops.add(
        new Drop(
            Limit.GLYCEROL, Optional.empty(), r -> r.with(r.supplies().withGlycerol(PLENTY_KG))));
    drops.add(
        new Drop(
            Limit.STARCH,
            Optional.empty(),
            r ->
                r.with(
                    r.supplies()
                        .withStarches(
                            r.supplies().starches().stream()
                                .map(
                                    s ->
                                        new StarchAtHand(
                                            s.kind(), OptionalDouble.empty(), s.moistureFraction()))
                                .toList()))));
    drops.add(new Drop(Limit.POT, Optional.empty(), r -> r.with(r.kitchen().withPot(PLENTY_M3))));
    return drops;
  }
}
