package starchfilm.planning;

import static starchfilm.numerics.units.Units.DAY_S;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import starchfilm.film.Feel;
import starchfilm.planning.PlanSearch.Found;

/**
 * What moving the limits of a request does, by searching again: a little, for what that would buy a
 * recipe that has run into them; or out of the way, where nothing fits.
 */
record LimitMoves(PlanSearch search, PlanRequest request) {
  /** A recipe so near to a limit has run into it (ratio; judged). */
  private static final double AT_THE_LIMIT = 0.01;

  /** How far a limit is moved, to see (ratios; judged). */
  private static final double MORE = 1.25;

  private static final double LESS = 0.8;
  private static final double LARGER_POT = 1.5;

  /** A gain by less is none (ratio; judged). */
  private static final double NOTICEABLE = 0.01;

  /** Stands for as much as anybody likes (kg; m3 for a pot). */
  private static final double PLENTY_KG = 100;

  private static final double PLENTY_M3 = 1;

  /** Which limits a recipe has run into, and what moving each would buy. */
  List<BindingLimit> bindingOn(Found found) {
    return binding(found).stream().map(limit -> moved(limit, found)).toList();
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
    double level = found.design().plasticiser();
    double slack = AT_THE_LIMIT * (inner.to() - inner.from());
    return (level < inner.from() + slack && inner.from() > 0) || level > inner.to() - slack;
  }

  /** Which of the two supplies runs out first. */
  private Limit scarcest(Found found) {
    RecipeOutcome outcome = found.outcome();
    double glycerolLeft = request.supplies().glycerolKg() / outcome.glycerolKg();
    double starchLeft = found.space().blend().mostDryKg() / outcome.starchKg();
    return glycerolLeft < starchLeft ? Limit.GLYCEROL : Limit.STARCH;
  }

  private BindingLimit moved(Limit limit, Found found) {
    RecipeSpace space = found.space();
    double now =
        switch (limit) {
          case GLYCEROL -> request.supplies().glycerolKg();
          case STARCH -> space.blend().mostDryKg();
          case POT -> request.kitchen().potM3();
          case PLATES -> request.kitchen().plates();
          case DATE -> request.byS().orElse(Double.POSITIVE_INFINITY);
          case THICKEST_FILM, THINNEST_FILM -> found.outcome().dryThicknessM();
          case RIM -> request.kitchen().rimM();
          case LEVELLING -> space.mostStarch();
          case WISH -> 0;
        };
    double to =
        switch (limit) {
          case GLYCEROL, STARCH, THICKEST_FILM -> now * MORE;
          case THINNEST_FILM -> now * LESS;
          case POT -> now * LARGER_POT;
          case PLATES -> now + 1;
          case DATE -> now + DAY_S;
          case LEVELLING -> space.blend().levelsUpTo();
          case RIM, WISH -> now;
        };
    Optional<Found> other =
        switch (limit) {
          case RIM -> Optional.empty();
          case LEVELLING -> search.best(request, found.goal(), true);
          case WISH -> neighbour(found).flatMap(feel -> best(feeling(feel).apply(request), found));
          default -> best(limit.moved(now, to, request), found);
        };
    return new BindingLimit(
        limit,
        found.goal(),
        now,
        to,
        found.outcome(),
        other.filter(better -> isBetter(better, found)).map(Found::outcome));
  }

  private Optional<Found> best(PlanRequest relaxed, Found found) {
    return search.best(relaxed, found.goal(), false);
  }

  private static boolean isBetter(Found other, Found found) {
    RecipeOutcome after = other.outcome();
    RecipeOutcome before = found.outcome();
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

  /** The feel on the other side of the end of the wish that a recipe stands at. */
  private Optional<Feel> neighbour(Found found) {
    Optional<Feel> feel = request.wish().feel();
    if (feel.isEmpty()) {
      return Optional.empty();
    }
    boolean atStiffEnd = found.design().plasticiser() < found.space().window().centre();
    return switch (feel.get()) {
      case STIFF -> atStiffEnd ? Optional.empty() : Optional.of(Feel.FLEXIBLE);
      case FLEXIBLE -> Optional.of(atStiffEnd ? Feel.STIFF : Feel.STRETCHY);
      case STRETCHY -> atStiffEnd ? Optional.of(Feel.FLEXIBLE) : Optional.empty();
      case BRITTLE, STICKY -> Optional.empty();
    };
  }

  /** Limits out of the way. */
  private record Drop(Set<Limit> limits, Optional<Feel> feel, UnaryOperator<PlanRequest> drop) {
    Drop and(Drop other) {
      Set<Limit> both = EnumSet.copyOf(limits);
      both.addAll(other.limits);
      return new Drop(both, feel.or(other::feel), r -> other.drop.apply(drop.apply(r)));
    }
  }

  /** Where no recipe fits: each wish given up or plenty of something, two where one is too few. */
  List<GiveUp> waysOut() {
    List<Drop> drops = drops();
    List<GiveUp> ways = ways(drops);
    return ways.isEmpty()
        ? ways(
            IntStream.range(0, drops.size())
                .boxed()
                .flatMap(i -> drops.stream().skip(i + 1).map(drops.get(i)::and))
                .filter(both -> both.limits().size() == 2)
                .toList())
        : ways;
  }

  /** A recipe found without a date still has a chance of being ready by the date asked for. */
  private List<GiveUp> ways(Collection<Drop> drops) {
    return drops.stream()
        .flatMap(
            drop ->
                search.best(drop.drop().apply(request), Goal.SOONEST, false).stream()
                    .map(
                        found ->
                            new GiveUp(
                                drop.limits(),
                                drop.feel(),
                                found.space().outcome(found.candidate(), request))))
        .toList();
  }

  private List<Drop> drops() {
    List<Drop> drops = new ArrayList<>();
    if (request.byS().isPresent()) {
      drops.add(gone(Limit.DATE));
    }
    if (request.wish().dryThicknessM().isPresent()) {
      drops.add(gone(Limit.THINNEST_FILM));
    }
    Stream.of(Feel.STIFF, Feel.FLEXIBLE, Feel.STRETCHY)
        .filter(feel -> !request.wish().feel().equals(Optional.of(feel)))
        .forEach(feel -> drops.add(new Drop(Set.of(Limit.WISH), Optional.of(feel), feeling(feel))));
    Stream.of(Limit.GLYCEROL, Limit.STARCH, Limit.POT).forEach(limit -> drops.add(gone(limit)));
    return drops;
  }

  private static Drop gone(Limit limit) {
    return new Drop(Set.of(limit), Optional.empty(), r -> plenty(limit, r));
  }

  /** A request that a limit does not bind. */
  static PlanRequest plenty(Limit limit, PlanRequest request) {
    double to =
        switch (limit) {
          case GLYCEROL -> PLENTY_KG;
          case POT -> PLENTY_M3;
          default -> Double.POSITIVE_INFINITY;
        };
    return limit.moved(1, to, request);
  }

  private static UnaryOperator<PlanRequest> feeling(Feel feel) {
    return r -> r.with(r.wish().feeling(feel));
  }
}
