package starchfilm.planning;

import static starchfilm.numerics.units.Units.DAY_S;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
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
    Kitchen kitchen = request.kitchen();
    double dryM = found.outcome().dryThicknessM();
    return switch (limit) {
      case GLYCEROL -> {
        double now = request.supplies().glycerolKg();
        yield moved(limit, now, now * MORE, found);
      }
      case STARCH -> {
        double now = found.space().blend().mostDryKg();
        yield moved(limit, now, now * MORE, limit.movedTo(MORE, request), found);
      }
      case POT -> moved(limit, kitchen.potM3(), kitchen.potM3() * LARGER_POT, found);
      case PLATES -> moved(limit, kitchen.plates(), kitchen.plates() + 1, found);
      case DATE -> {
        double now = request.byS().orElse(Double.POSITIVE_INFINITY);
        yield moved(limit, now, now + DAY_S, found);
      }
      case THICKEST_FILM -> film(limit, dryM, dryM * MORE, 1 + Wish.GIVE_OR_TAKE, found);
      case THINNEST_FILM -> film(limit, dryM, dryM * LESS, 1 - Wish.GIVE_OR_TAKE, found);
      case RIM -> withOther(limit, kitchen.rimM(), kitchen.rimM(), Optional.empty(), found);
      case LEVELLING ->
          withOther(
              limit,
              found.space().mostStarch(),
              found.space().blend().levelsUpTo(),
              Optional.ofNullable(
                  search.best(request, List.of(found.goal()), true).get(found.goal())),
              found);
      case WISH ->
          withOther(
              limit,
              0,
              0,
              neighbour(found)
                  .flatMap(
                      feel ->
                          search.best(request.with(request.wish().feeling(feel)), found.goal())),
              found);
    };
  }

  private BindingLimit film(Limit limit, double now, double to, double giveOrTake, Found found) {
    return moved(limit, now, to, limit.movedTo(to / giveOrTake, request), found);
  }

  private BindingLimit moved(Limit limit, double now, double to, Found found) {
    return moved(limit, now, to, limit.movedTo(to, request), found);
  }

  private BindingLimit moved(Limit limit, double now, double to, PlanRequest relaxed, Found found) {
    return withOther(limit, now, to, search.best(relaxed, found.goal()), found);
  }

  private BindingLimit withOther(
      Limit limit, double now, double to, Optional<Found> other, Found found) {
    return new BindingLimit(
        limit,
        found.goal(),
        now,
        to,
        found.outcome(),
        other.filter(better -> isBetter(better, found)).map(Found::outcome));
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

  /** The feel on the other side of the end of the wish that a recipe stands at. */
  private Optional<Feel> neighbour(Found found) {
    Optional<Feel> feel = request.wish().feel();
    if (feel.isEmpty()) {
      return Optional.empty();
    }
    boolean atStiffEnd = found.candidate().design().plasticiser() < found.space().window().centre();
    return switch (feel.get()) {
      case STIFF -> atStiffEnd ? Optional.empty() : Optional.of(Feel.FLEXIBLE);
      case FLEXIBLE -> Optional.of(atStiffEnd ? Feel.STIFF : Feel.STRETCHY);
      case STRETCHY -> atStiffEnd ? Optional.of(Feel.FLEXIBLE) : Optional.empty();
      case BRITTLE, STICKY -> Optional.empty();
    };
  }
}
