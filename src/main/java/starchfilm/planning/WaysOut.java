package starchfilm.planning;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
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
      drops.add(gone(Limit.DATE, Double.POSITIVE_INFINITY));
    }
    if (request.wish().dryThicknessM().isPresent()) {
      drops.add(gone(Limit.THINNEST_FILM, Double.POSITIVE_INFINITY));
    }
    for (Feel feel : List.of(Feel.STIFF, Feel.FLEXIBLE, Feel.STRETCHY)) {
      if (!request.wish().feel().equals(Optional.of(feel))) {
        drops.add(new Drop(Limit.WISH, Optional.of(feel), r -> r.with(r.wish().feeling(feel))));
      }
    }
    drops.add(gone(Limit.GLYCEROL, PLENTY_KG));
    drops.add(gone(Limit.STARCH, Double.POSITIVE_INFINITY));
    drops.add(gone(Limit.POT, PLENTY_M3));
    return drops;
  }

  private static Drop gone(Limit limit, double to) {
    return new Drop(limit, Optional.empty(), r -> limit.movedTo(to, r));
  }
}
