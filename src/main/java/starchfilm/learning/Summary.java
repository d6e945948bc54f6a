package starchfilm.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import starchfilm.casting.Spot;
import starchfilm.drying.Milestone;
import starchfilm.drying.PlateSimulation;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.film.FilmProperty;
import starchfilm.learning.summary.DoubtedReading;
import starchfilm.learning.summary.FilmLearnt;
import starchfilm.learning.summary.KindLearnt;
import starchfilm.learning.summary.Learnt;
import starchfilm.learning.summary.LeftOut;
import starchfilm.learning.summary.ParameterLearnt;
import starchfilm.learning.summary.RoomLearnt;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.numerics.evidence.Estimate;

/** Puts what was learnt into the figures that are shown. */
final class Summary {
  private final Learner learner;
  private final SharedParameters shared;
  private final SharedParameters untaught;

  private Summary(Learner learner) {
    this.learner = learner;
    this.shared = learner.shared();
    this.untaught = SummedLikelihood.nothing(shared.space()).factors();
  }

  static Learnt of(Learner learner, StripLikelihoods strips, List<LeftOut> copies) {
    Summary summary = new Summary(learner);
    List<DoubtedReading> doubted = new ArrayList<>();
    for (Learner.FittedPlate plate : learner.plates()) {
      doubted.addAll(Doubts.of(plate.file(), plate.model().readings(), plate.fit()));
      plate.usable().odd().forEach(odd -> doubted.add(Doubts.of(plate.file(), odd)));
    }
    doubted.addAll(strips.doubted());
    List<LeftOut> leftOut = new ArrayList<>(learner.leftOut());
    leftOut.addAll(strips.leftOut());
    leftOut.addAll(copies);
    return new Learnt(
        summary.rooms(),
        summary.kinds(),
        summary.pours(),
        films(strips.likelihoods()),
        doubted,
        leftOut);
  }

  private List<RoomLearnt> rooms() {
    return learner.plates().stream()
        .collect(
            Collectors.groupingBy(
                plate -> plate.model().key().room(), TreeMap::new, Collectors.toList()))
        .entrySet()
        .stream()
        .map(room -> room(room.getKey(), room.getValue()))
        .toList();
  }

  private RoomLearnt room(String key, List<Learner.FittedPlate> plates) {
    RealMatrix parts = shared.space().ofRoom(key);
    Learner.FittedPlate latest = plates.get(plates.size() - 1);
    return new RoomLearnt(
        plates.get(0).trial().casting().place().name().strip(),
        plates.size(),
        plates.stream().mapToInt(plate -> plate.model().readings().count()).sum(),
        logDryingTime(latest, shared.seenThrough(parts)),
        factors(parts, factor -> VarianceShares.of(factor).room() > 0));
  }

  /**
   * How much longer a plate takes to be peelable with a room's deviations than without; the
   * uncertainty to first order in them. Dry-through would hang on the last points of humidity
   * wherever a room is damp, and not on the room's pace.
   */
  private static Optional<Estimate> logDryingTime(Learner.FittedPlate latest, Normal room) {
    PlateSimulation plate = new PlateSimulation(latest.trial().casting());
    RealVector mean = room.mean();
    double textbook = peelableS(plate, mean.mapMultiply(0));
    double there = peelableS(plate, mean);
    if (Double.isInfinite(textbook) || Double.isInfinite(there)) {
      return Optional.empty();
    }
    RealVector slopes = mean.mapMultiply(0);
    for (int i = 0; i < mean.getDimension(); i++) {
      double sd = room.sd(i);
      if (sd > 0) {
        // Over the whole range: where days and nights differ, a film is peelable a day later at
        // once.
        double more = peelableS(plate, moved(mean, i, sd));
        double less = peelableS(plate, moved(mean, i, -sd));
        if (Double.isInfinite(more) || Double.isInfinite(less)) {
          return Optional.empty();
        }
        slopes.setEntry(i, Math.log(more / less) / (2 * sd));
      }
    }
    double variance = slopes.dotProduct(room.covariance().operate(slopes));
    return Optional.of(new Estimate(Math.log(there / textbook), Math.sqrt(Math.max(0, variance))));
  }

  private static RealVector moved(RealVector from, int factor, double by) {
    RealVector moved = from.copy();
    moved.addToEntry(factor, by);
    return moved;
  }

  private static double peelableS(PlateSimulation plate, RealVector deviations) {
    return plate.milestoneS(
        Milestone.PEELABLE, Spot.NOMINAL, PlateReadings.full(deviations.toArray()));
  }

  private List<KindLearnt> kinds() {
    return learner.plates().stream()
        .flatMap(plate -> plate.model().key().starchShares().keySet().stream())
        .collect(Collectors.groupingBy(kind -> kind, TreeMap::new, Collectors.summingInt(one -> 1)))
        .entrySet()
        .stream()
        .map(plates -> kind(plates.getKey(), plates.getValue()))
        .toList();
  }

  private KindLearnt kind(StarchKind kind, int plates) {
    return new KindLearnt(
        kind,
        plates,
        factors(shared.space().ofKind(kind), factor -> VarianceShares.of(factor).kind() > 0));
  }

  private List<ParameterLearnt> pours() {
    if (learner.plates().isEmpty()) {
      return List.of();
    }
    return factors(
        shared.space().common(),
        factor -> factor == UncertainParameter.THICKNESS || factor == UncertainParameter.SOLIDS);
  }

  private List<ParameterLearnt> factors(RealMatrix parts, Predicate<UncertainParameter> wanted) {
    Normal now = shared.seenThrough(parts);
    Normal before = untaught.seenThrough(parts);
    return IntStream.range(0, VarianceShares.COUNT)
        .filter(i -> wanted.test(VarianceShares.factor(i)))
        .mapToObj(
            i ->
                new ParameterLearnt(
                    VarianceShares.factor(i), now.mean().getEntry(i), now.sd(i), before.sd(i)))
        .toList();
  }

  private static List<FilmLearnt> films(List<StripLikelihood> likelihoods) {
    List<FilmLearnt> films = new ArrayList<>();
    SharedStrips.byProperty(likelihoods)
        .forEach(
            (property, shared) ->
                shared
                    .kinds()
                    .forEach(kind -> films.add(film(property, kind, shared, likelihoods))));
    return films;
  }

  private static FilmLearnt film(
      FilmProperty property,
      StarchKind kind,
      SharedStrips shared,
      List<StripLikelihood> likelihoods) {
    int strips =
        likelihoods.stream()
            .filter(of -> of.property() == property && of.starchShares().containsKey(kind))
            .mapToInt(StripLikelihood::strips)
            .sum();
    Map<StarchKind, Double> pure = Map.of(kind, 1.0);
    return new FilmLearnt(
        property, kind.tradeName(), strips, shared.shared(pure), shared.sharedSdBefore(pure));
  }
}
