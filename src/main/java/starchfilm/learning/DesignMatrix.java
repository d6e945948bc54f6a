package starchfilm.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.material.ingredient.StarchKind;

/**
 * The parts that plates share: one number for each factor in common, for each room, and for each
 * starch kind, where that level has a share of the factor.
 *
 * <p>A plate of mixed starch takes each kind's part by its share of the dry starch. Immutable.
 */
final class DesignMatrix {
  private enum Level {
    COMMON,
    ROOM,
    KIND
  }

  private record VarianceComponent(
      Level level, UncertainParameter factor, String owner, double priorVariance) {}

  private final SortedSet<String> rooms = new TreeSet<>();
  private final SortedSet<String> kinds = new TreeSet<>();
  private final List<VarianceComponent> parts = new ArrayList<>();

  /** The space that some plates span. */
  DesignMatrix(Iterable<PlateKey> plates) {
    for (PlateKey plate : plates) {
      rooms.add(plate.room());
      plate.starchShares().keySet().forEach(kind -> kinds.add(kind.name()));
    }
    for (int i = 0; i < VarianceShares.COUNT; i++) {
      UncertainParameter factor = VarianceShares.factor(i);
      VarianceShares sharing = VarianceShares.of(factor);
      add(Level.COMMON, factor, "", sharing.common());
      rooms.forEach(room -> add(Level.ROOM, factor, room, sharing.room()));
      kinds.forEach(kind -> add(Level.KIND, factor, kind, sharing.kind()));
    }
  }

  private void add(Level level, UncertainParameter factor, String owner, double share) {
    if (share > 0) {
      parts.add(
          new VarianceComponent(level, factor, owner, VarianceShares.variance(factor, share)));
    }
  }

  int size() {
    return parts.size();
  }

  /** The prior standard deviations of the parts, a diagonal matrix. */
  RealMatrix priorSds() {
    return MatrixUtils.createRealDiagonalMatrix(
        parts.stream().mapToDouble(part -> Math.sqrt(part.priorVariance())).toArray());
  }

  /** Fitted factors by parts: what a plate's shared deviations are made of. */
  RealMatrix partsOf(PlateKey plate) {
    return mapping(
        part ->
            part.factor() == UncertainParameter.THICKNESS && plate.pourWeighed()
                ? 0
                : switch (part.level()) {
                  case COMMON -> 1;
                  case ROOM -> part.owner().equals(plate.room()) ? 1 : 0;
                  case KIND ->
                      plate.starchShares().getOrDefault(StarchKind.valueOf(part.owner()), 0.0);
                });
  }

  /** Maps the parts that all plates have in common. */
  RealMatrix common() {
    return mapping(part -> part.level() == Level.COMMON ? 1 : 0);
  }

  /** What a room departs from the textbook by, the common part counted in. */
  RealMatrix ofRoom(String room) {
    return ofOwner(room, VarianceShares::room);
  }

  /** What a kind departs from the textbook by, the common part counted in. */
  RealMatrix ofKind(StarchKind kind) {
    return ofOwner(kind.name(), VarianceShares::kind);
  }

  private RealMatrix ofOwner(String owner, ToDoubleFunction<VarianceShares> share) {
    return mapping(
        part ->
            share.applyAsDouble(VarianceShares.of(part.factor())) > 0
                    && (part.level() == Level.COMMON || part.owner().equals(owner))
                ? 1
                : 0);
  }

  private RealMatrix mapping(ToDoubleFunction<VarianceComponent> weight) {
    RealMatrix mapping = new Array2DRowRealMatrix(VarianceShares.COUNT, parts.size());
    for (int i = 0; i < parts.size(); i++) {
      VarianceComponent part = parts.get(i);
      mapping.setEntry(part.factor().ordinal(), i, weight.applyAsDouble(part));
    }
    return mapping;
  }

  /** Variance of the parts of a plate's room and kinds that this space has no place for. */
  double[] variancesOfStrangers(PlateKey plate) {
    double[] variances = new double[VarianceShares.COUNT];
    for (int i = 0; i < variances.length; i++) {
      UncertainParameter factor = VarianceShares.factor(i);
      VarianceShares sharing = VarianceShares.of(factor);
      if (!rooms.contains(plate.room())) {
        variances[i] += VarianceShares.variance(factor, sharing.room());
      }
      for (var share : plate.starchShares().entrySet()) {
        if (!kinds.contains(share.getKey().name())) {
          variances[i] +=
              share.getValue() * share.getValue() * VarianceShares.variance(factor, sharing.kind());
        }
      }
    }
    return variances;
  }
}
