package starchfilm.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.SimpleBounds;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.BOBYQAOptimizer;
import starchfilm.planning.PlanSearch.Found;

/**
 * Finds the best recipe for one goal in one space: a coarse lattice, and from its best points the
 * bounded quadratic approximation of Powell 2009 (BOBYQA).
 *
 * <p>Nothing here is random: the same space gives the same recipe with any number of threads.
 */
final class GoalSearch {
  /** Below every score of a recipe that can be made. */
  private static final double IMPOSSIBLE = -1e3;

  private static final double[] LATTICE = {0, 0.25, 0.5, 0.75, 1};
  private static final double[] ANY_THICKNESS = {0, 0.5, 1};
  private static final double FIRST_VINEGAR = 0.1;
  private static final int STARTS = 2;
  private static final int MOST_EVALUATIONS = 120;
  private static final double FIRST_STEP = 0.12;
  private static final double LAST_STEP = 1e-4;

  private final Goal goal;
  private final RecipeSpace space;
  private Optional<Found> best = Optional.empty();

  GoalSearch(Goal goal, RecipeSpace space) {
    this.goal = goal;
    this.space = space;
  }

  private record Start(double starch, double plasticiser, double thickness, double score) {
    double[] point() {
      return new double[] {starch, plasticiser, FIRST_VINEGAR, thickness};
    }
  }

  /** The best recipe; empty where none can be made. */
  Optional<Found> run() {
    double[] thicknesses =
        goal.thickness().isPresent()
            ? new double[] {goal.thickness().getAsDouble()}
            : ANY_THICKNESS;
    List<Start> starts = new ArrayList<>();
    for (double starch : LATTICE) {
      for (double plasticiser : LATTICE) {
        for (double thickness : thicknesses) {
          double score = score(new double[] {starch, plasticiser, FIRST_VINEGAR, thickness});
          starts.add(new Start(starch, plasticiser, thickness, score));
        }
      }
    }
    starts.sort(Comparator.comparingDouble(Start::score).reversed());
    if (starts.get(0).score() > IMPOSSIBLE) {
      starts.stream().limit(STARTS).forEach(start -> climb(start.point()));
    }
    return best;
  }

  private void climb(double[] start) {
    OptionalDouble thickness = goal.thickness();
    int free = thickness.isPresent() ? RecipeSpace.DIMENSIONS - 1 : RecipeSpace.DIMENSIONS;
    double[] upper = new double[free];
    Arrays.fill(upper, 1);
    try {
      new BOBYQAOptimizer(2 * free + 1, FIRST_STEP, LAST_STEP)
          .optimize(
              GoalType.MAXIMIZE,
              new ObjectiveFunction(
                  point -> {
                    double[] whole = Arrays.copyOf(point, RecipeSpace.DIMENSIONS);
                    thickness.ifPresent(place -> whole[free] = place);
                    return score(whole);
                  }),
              new InitialGuess(Arrays.copyOf(start, free)),
              new SimpleBounds(new double[free], upper),
              new MaxEval(MOST_EVALUATIONS));
    } catch (MathIllegalStateException e) {
      // After all the evaluations there are, or where two limits meet and the quadratic model
      // cannot be improved: every point was remembered, so the best of them stands.
      return;
    }
  }

  private double score(double[] point) {
    Candidate candidate = space.at(point);
    if (!candidate.isPossible()) {
      return IMPOSSIBLE - candidate.gap();
    }
    double score = goal.score(candidate, space);
    if (best.isEmpty() || score > best.get().score()) {
      best = Optional.of(new Found(goal, candidate, space, score));
    }
    return score;
  }
}
