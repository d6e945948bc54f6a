package starchfilm.planning;

import static starchfilm.numerics.units.Units.DAY_S;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import starchfilm.film.Feel;
import starchfilm.planning.PlanSearch.Found;

/** Which limits a recipe has run into, and what moving each would buy, by searching again. */
final class Relaxations {
  private static final double AT_THE_LIMIT = 0.01;
  private static final double MORE = 1.25;
  private static final double LESS = 0.8;
  private static final double LARGER_POT = 1.5;
  private static final double NOTICEABLE = 0.01;

  private final PlanSearch search;
  private final PlanRequest request;

  Relaxations(PlanSearch search, PlanRequest request) {
    this.search = search;
    this.request = request;
  }

  List<BindingLimit> of(Found found) {
    List<BindingLimit> limits = new ArrayList<>();
    for (Limit limit : binding(found)) {
      limits.add(moved(limit, found));
    }
    return limits;
  }

  private Set<Limit> binding(Found found) {
    Candidate candidate = found.candidate();
    Design design = candidate.design();
    Set<Limit> binding = EnumSet.noneOf(Limit.class);
    if (design.plates() < request.kitchen().plates()) {
      binding.add(scarcest(found));
    } else if (found.goal() == Goal.MOST_FILM) {
      binding.add(Limit.PLATES);
    }
    if (near(design.wetThicknessM(), candidate.ceilingM())) {
      if (candidate.ceiling() != Limit.DATE || request.byS().isPresent()) {
        binding.add(candidate.ceiling());
      }
    } else if (near(design.wetThicknessM(), candidate.floorM())) {
      binding.add(Limit.THINNEST_FILM);
    }
    if (near(design.starchInPaste(), found.space().mostStarch()) && found.goal() != Goal.CLOSEST) {
      binding.add(Limit.LEVELLING);
    }
    if (atEndOfWish(found)) {
      binding.add(Limit.WISH);
    }
    return binding;
  }

  private static boolean near(double a, double b) {
    return Math.abs(a / b - 1) < AT_THE_LIMIT;
  }

  private static boolean atEndOfWish(Found found) {
    WishWindow inner = found.space().innerWindow();
    double level = found.candidate().design().plasticiser();
    double slack = AT_THE_LIMIT * (inner.to() - inner.from());
    return (level < inner.from() + slack && inner.from() > 0) || level > inner.to() - slack;
  }

  /** Which of the two supplies runs out first. */
  private Limit scarcest(Found found) {
    Outcome outcome = found.outcome();
    double glycerolLeft = request.supplies().glycerolKg() / outcome.glycerolKg();
    double starchLeft = found.space().blend().mostDryKg() / outcome.starchKg();
    return glycerolLeft < starchLeft ? Limit.GLYCEROL : Limit.STARCH;
  }

  private BindingLimit moved(Limit limit, Found found) {
    Supplies supplies = request.supplies();
    Kitchen kitchen = request.kitchen();
    Candidate candidate = found.candidate();
    double dryM = found.outcome().dryThicknessM();
    return switch (limit) {
      case GLYCEROL -> {
        double more = supplies.glycerolKg() * MORE;
        yield moved(
            limit, supplies.glycerolKg(), more, request.with(supplies.withGlycerol(more)), found);
      }
      case STARCH -> {
        double now = found.space().blend().mostDryKg();
        yield moved(
            limit, now, now * MORE, request.with(supplies.withStarches(moreStarch())), found);
      }
      case POT -> {
        double larger = kitchen.potM3() * LARGER_POT;
        yield moved(limit, kitchen.potM3(), larger, request.with(kitchen.withPot(larger)), found);
      }
      case PLATES -> {
        int more = kitchen.plates() + 1;
        yield moved(limit, kitchen.plates(), more, request.with(kitchen.withPlates(more)), found);
      }
      case DATE -> {
        double now = request.byS().orElse(Double.POSITIVE_INFINITY);
        yield moved(limit, now, now + DAY_S, request.by(OptionalDouble.of(now + DAY_S)), found);
      }
      case THICKEST_FILM -> {
        double thicker = dryM * MORE / (1 + Wish.GIVE_OR_TAKE);
        yield moved(limit, dryM, dryM * MORE, request.with(thickness(thicker)), found);
      }
      case THINNEST_FILM -> {
        double thinner = dryM * LESS / (1 - Wish.GIVE_OR_TAKE);
        yield moved(limit, dryM, dryM * LESS, request.with(thickness(thinner)), found);
      }
      case RIM ->
          new BindingLimit(
              limit,
              found.goal(),
              kitchen.rimM(),
              kitchen.rimM(),
              found.outcome(),
              Optional.empty());
      case LEVELLING -> {
        Optional<Found> better =
            Optional.ofNullable(
                search.best(request, List.of(found.goal()), true).get(found.goal()));
        yield new BindingLimit(
            limit,
            found.goal(),
            found.space().mostStarch(),
            found.space().blend().levelsUpTo(),
            found.outcome(),
            better.filter(other -> isBetter(other, found)).map(Found::outcome));
      }
      case WISH -> {
        Optional<Feel> next = neighbour(candidate, found);
        yield next.isEmpty()
            ? new BindingLimit(limit, found.goal(), 0, 0, found.outcome(), Optional.empty())
            : moved(limit, 0, 0, request.with(request.wish().feeling(next.get())), found);
      }
    };
  }

  private BindingLimit moved(
      Limit limit, double now, double moved, PlanRequest relaxed, Found found) {
    return new BindingLimit(
        limit,
        found.goal(),
        now,
        moved,
        found.outcome(),
        search
            .best(relaxed, found.goal())
            .filter(other -> isBetter(other, found))
            .map(Found::outcome));
  }

  private static boolean isBetter(Found other, Found found) {
    Outcome after = other.outcome();
    Outcome before = found.outcome();
    return switch (found.goal()) {
          case MOST_FILM -> after.filmKg() > before.filmKg() * (1 + NOTICEABLE);
          case SOONEST -> after.readyS() < before.readyS() * (1 - NOTICEABLE);
          case SAFEST ->
              after.chance() * after.wishChance()
                  > before.chance() * before.wishChance() + NOTICEABLE;
          case CLOSEST -> after.wishChance() > before.wishChance() + NOTICEABLE;
        }
        || after.plates() > before.plates();
  }

  private Wish thickness(double m) {
    return request.wish().thick(OptionalDouble.of(m));
  }

  private List<StarchAtHand> moreStarch() {
    return request.supplies().starches().stream()
        .map(
            s ->
                new StarchAtHand(
                    s.kind(),
                    s.massKg().isPresent()
                        ? OptionalDouble.of(s.massKg().getAsDouble() * MORE)
                        : s.massKg(),
                    s.moistureFraction()))
        .toList();
  }

  /** The feel on the other side of the end of the wish that a recipe stands at. */
  private Optional<Feel> neighbour(Candidate candidate, Found found) {
    Optional<Feel> feel = request.wish().feel();
    if (feel.isEmpty()) {
      return Optional.empty();
    }
    boolean atStiffEnd = candidate.design().plasticiser() < found.space().window().centre();
    return switch (feel.get()) {
      case STIFF -> atStiffEnd ? Optional.empty() : Optional.of(Feel.FLEXIBLE);
      case FLEXIBLE -> Optional.of(atStiffEnd ? Feel.STIFF : Feel.STRETCHY);
      case STRETCHY -> atStiffEnd ? Optional.of(Feel.FLEXIBLE) : Optional.empty();
      case BRITTLE, STICKY -> Optional.empty();
    };
  }
}
