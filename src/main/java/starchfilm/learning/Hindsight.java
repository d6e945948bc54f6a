package starchfilm.learning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import starchfilm.casting.Spot;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.Milestone;
import starchfilm.drying.uncertainty.ParameterSample;

/**
 * How near a trial could have been forecast on the day of its pour: by the textbook, and with what
 * the plates poured before it had taught by the weighings that are noted today.
 *
 * @param trial the trial
 * @param platesBefore how many plates had taught
 * @param textbook what the textbook would have said
 * @param learnt what the plates before would have made of it
 */
public record Hindsight(Trial trial, int platesBefore, Guess textbook, Guess learnt) {
  /**
   * A forecast of one plate, its middle case.
   *
   * @param missKg median distance of its weighings from what was expected of them (kg)
   * @param dryThroughS when the thick spot would be dry through (s), infinite for never
   */
  public record Guess(double missKg, double dryThroughS) {}

  /**
   * Looks back on trials in the order they were poured.
   *
   * @param trials the trials; those that were not weighed, whose pour is not dated or that nothing
   *     was learnt from are passed over
   * @param lessons what each weighed trial taught, by the trial's name in the workshop file
   */
  static List<Hindsight> over(
      List<Trial> trials, List<PlateLikelihood> lessons, Function<Trial, String> nameOf) {
    Map<String, PlateLikelihood> byName = new HashMap<>();
    lessons.forEach(lesson -> byName.put(lesson.file(), lesson));
    List<Trial> inOrder =
        trials.stream()
            .filter(trial -> trial.pouredAt().isPresent() && !trial.seen().weighings().isEmpty())
            .filter(trial -> byName.containsKey(nameOf.apply(trial)))
            .sorted(Comparator.comparing(trial -> trial.pouredAt().orElseThrow()))
            .toList();
    SummedLikelihood before =
        SummedLikelihood.nothing(
            new DesignMatrix(lessons.stream().map(PlateLikelihood::plate).toList()));
    List<Hindsight> looks = new ArrayList<>();
    for (Trial trial : inOrder) {
      PlateModel plate = new PlateModel(trial, UsableWeighings.of(trial).used());
      looks.add(
          new Hindsight(
              trial,
              looks.size(),
              guess(plate, SharedParameters.untaught()),
              guess(plate, before.factors())));
      before = before.plus(Objects.requireNonNull(byName.get(nameOf.apply(trial))));
    }
    return List.copyOf(looks);
  }

  private static Guess guess(PlateModel plate, SharedParameters shared) {
    double[] middle = plate.before(shared).mean().toArray();
    PlateReadings readings = plate.readings();
    RealVector evenly = new ArrayRealVector(readings.count(), 1);
    double[] misses = Arrays.stream(readings.missesKg(middle, evenly)).map(Math::abs).toArray();
    ParameterSample full = PlateReadings.full(middle);
    return new Guess(
        new Median().evaluate(misses),
        readings.simulation().milestoneS(Milestone.DRY_THROUGH, Spot.THICK_SPOT, full));
  }
}
