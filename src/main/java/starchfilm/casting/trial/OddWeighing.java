package starchfilm.casting.trial;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import starchfilm.casting.Casting;
import starchfilm.numerics.evidence.Estimate;

/**
 * A weighing that no drying plate can show, known from the weighings alone.
 *
 * <p>Two masses differ where they lie apart by three standard uncertainties of their difference,
 * which is a coverage of about 99 % (JCGM 100:2008, Guide to the expression of uncertainty in
 * measurement, 5.1.2 and 6.3.3, recalled). A film that holds more water than solids gains none
 * back: only air of some 95 % relative humidity keeps one as wet.
 *
 * @param weighing the weighing
 * @param kind what is odd about it
 * @param otherKg the mass it is held against (kg)
 * @param otherS the time of the weighing it is held against (s); its own where there is none
 */
public record OddWeighing(Weighing weighing, WeighingAnomaly kind, double otherKg, double otherS) {
  /** What is odd. */
  public enum WeighingAnomaly {
    /** The film weighs less than the solids poured. */
    BELOW_SOLIDS,
    /** Another weighing within two minutes shows another mass. */
    AT_ONCE,
    /** The film is heavier than it was before. */
    GAIN
  }

  private static final double SIGMAS = 3;
  private static final double AT_ONCE_S = 120;

  /** Water that a film must hold for a gain to be impossible (kg per kg dry solids). */
  private static final double TOO_WET_TO_GAIN = 1;

  /** The most a drier film gains back from damp air, over its mass; judged, no source. */
  private static final double MOST_REGAINED = 0.1;

  /** An unweighed pour is known to this (ratio): a ruler's; judged, no source. */
  private static final double UNWEIGHED_POUR_SD = 0.1;

  /**
   * The odd weighings of a plate; what its maker has confirmed is not odd.
   *
   * @param casting what was cast
   * @param weighings its weighings, in order of time
   * @return the odd ones, in order of time
   */
  public static List<OddWeighing> of(Casting casting, List<Weighing> weighings) {
    List<OddWeighing> odd = new ArrayList<>();
    Estimate solids = solidsKg(casting);
    List<Weighing> left = new ArrayList<>();
    for (int i = 0; i < weighings.size(); i++) {
      Weighing weighing = weighings.get(i);
      Optional<Weighing> twin = twin(weighings, i);
      if (weighing.confirmed()) {
        left.add(weighing);
      } else if (weighing.tared()
          && weighing.filmMassKg() + SIGMAS * Math.hypot(solids.sd(), weighing.massSdKg())
              < solids.value()) {
        odd.add(
            new OddWeighing(
                weighing, WeighingAnomaly.BELOW_SOLIDS, solids.value(), weighing.timeS()));
      } else if (twin.isPresent()) {
        odd.add(
            new OddWeighing(
                weighing, WeighingAnomaly.AT_ONCE, twin.get().filmMassKg(), twin.get().timeS()));
      } else {
        left.add(weighing);
      }
    }
    gains(left, solids.value()).forEach(odd::add);
    odd.sort((one, other) -> Double.compare(one.weighing.timeS(), other.weighing.timeS()));
    return odd;
  }

  private static Estimate solidsKg(Casting casting) {
    double kg = casting.pouredKg() * casting.composition().drySolids();
    double pourSd =
        casting
            .pour()
            .weighedKg()
            .map(poured -> poured.sd() / poured.value())
            .orElse(UNWEIGHED_POUR_SD);
    return new Estimate(kg, kg * Math.hypot(pourSd, casting.paste().solidsRelativeSd()));
  }

  private static boolean differ(Weighing one, Weighing other) {
    return Math.abs(one.filmMassKg() - other.filmMassKg())
        > SIGMAS * Math.hypot(one.massSdKg(), other.massSdKg());
  }

  /** Another weighing at nearly the same time that does not agree. */
  private static Optional<Weighing> twin(List<Weighing> weighings, int of) {
    Weighing one = weighings.get(of);
    for (int other : new int[] {of - 1, of + 1}) {
      if (other >= 0
          && other < weighings.size()
          && Math.abs(weighings.get(other).timeS() - one.timeS()) <= AT_ONCE_S
          && differ(one, weighings.get(other))) {
        return Optional.of(weighings.get(other));
      }
    }
    return Optional.empty();
  }

  /** Weighings in a run in which none gains, by its last and the run before that. */
  private record FallingRun(Weighing last, Optional<FallingRun> before, int length) {
    static Optional<FallingRun> longest(Stream<FallingRun> runs) {
      return runs.reduce((one, other) -> other.length > one.length ? other : one);
    }
  }

  /** All weighings outside the longest run, the earliest of equals, in which none gains. */
  private static List<OddWeighing> gains(List<Weighing> weighings, double solidsKg) {
    List<FallingRun> runs = new ArrayList<>();
    for (Weighing next : weighings) {
      Optional<FallingRun> before =
          FallingRun.longest(runs.stream().filter(run -> follows(run.last, next, solidsKg)));
      runs.add(new FallingRun(next, before, 1 + before.map(FallingRun::length).orElse(0)));
    }
    Set<Weighing> latestFirst = new LinkedHashSet<>();
    Optional<FallingRun> end = FallingRun.longest(runs.stream());
    while (end.isPresent()) {
      latestFirst.add(end.get().last);
      end = end.get().before;
    }
    return weighings.stream()
        .filter(weighing -> !latestFirst.contains(weighing) && !weighing.confirmed())
        .map(weighing -> against(weighing, latestFirst, solidsKg))
        .toList();
  }

  private static boolean follows(Weighing before, Weighing next, double solidsKg) {
    if (next.confirmed() || before.tared() != next.tared()) {
      return true;
    }
    double gain = next.filmMassKg() - before.filmMassKg();
    boolean mayGain =
        before.filmMassKg() < (1 + TOO_WET_TO_GAIN) * solidsKg
            && gain <= MOST_REGAINED * before.filmMassKg();
    return gain <= 0 || mayGain || !differ(before, next);
  }

  /** Held against the run: the last before it that is lighter, or else the first after, heavier. */
  private static OddWeighing against(
      Weighing weighing, Set<Weighing> latestFirst, double solidsKg) {
    Weighing other =
        latestFirst.stream()
            .filter(before -> before.timeS() < weighing.timeS())
            .filter(before -> !follows(before, weighing, solidsKg))
            .findFirst()
            .or(
                () ->
                    latestFirst.stream()
                        .filter(after -> after.timeS() > weighing.timeS())
                        .filter(after -> !follows(weighing, after, solidsKg))
                        .reduce((later, first) -> first))
            .orElse(weighing);
    return new OddWeighing(weighing, WeighingAnomaly.GAIN, other.filmMassKg(), other.timeS());
  }
}
