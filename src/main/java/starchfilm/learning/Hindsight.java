package starchfilm.learning;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
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
   * Looks back on trials in the order they were poured; of a trial with several weighed plates, on
   * the first.
   *
   * @param trials the trials; those that were not weighed, whose pour is not dated or that nothing
   *     was learnt from are passed over
   * @param shown those of them that are looked back on; the others only teach
   * @param likelihoods what each weighed plate taught, with the name of its trial in the workshop
   *     file
   */
  static List<Hindsight> over(
      List<Trial> trials,
      List<Trial> shown,
      List<PlateLikelihood> likelihoods,
      Function<Trial, String> nameOf) {
    Map<String, List<PlateLikelihood>> byName =
        likelihoods.stream().collect(Collectors.groupingBy(PlateLikelihood::file));
    Set<Path> lookedAt = shown.stream().map(Trial::file).collect(Collectors.toSet());
    List<Trial> inOrder =
        trials.stream()
            .filter(trial -> trial.pouredAt().isPresent())
            .filter(trial -> byName.containsKey(nameOf.apply(trial)))
            .sorted(Comparator.comparing(trial -> trial.pouredAt().orElseThrow()))
            .toList();
    SummedLikelihood before =
        SummedLikelihood.nothing(
            new DesignMatrix(likelihoods.stream().map(PlateLikelihood::plate).toList()));
    List<Hindsight> looks = new ArrayList<>();
    int platesBefore = 0;
    for (Trial trial : inOrder) {
      if (lookedAt.contains(trial.file())) {
        look(trial, platesBefore, before.factors()).ifPresent(looks::add);
      }
      for (PlateLikelihood likelihood : byName.getOrDefault(nameOf.apply(trial), List.of())) {
        before = before.plus(likelihood);
        platesBefore++;
      }
    }
    return List.copyOf(looks);
  }

  private static Optional<Hindsight> look(Trial trial, int platesBefore, SharedParameters before) {
    return trial.weighedPlates().stream()
        .map(plate -> new PlateModel(plate, UsableWeighings.of(plate).used()))
        .filter(plate -> plate.readings().count() > 0)
        .findFirst()
        .map(
            plate ->
                new Hindsight(
                    trial,
                    platesBefore,
                    guess(plate, SharedParameters.untaught()),
                    guess(plate, before)));
  }

  private static Guess guess(PlateModel plate, SharedParameters shared) {
    double[] middle = plate.before(shared).mean().toArray();
    PlateReadings readings = plate.readings();
    RealVector evenly = new ArrayRealVector(readings.count(), 1);
    double[] misses =
        Arrays.stream(readings.centred(readings.missesKg(middle), evenly)).map(Math::abs).toArray();
    ParameterSample full = PlateReadings.full(middle);
    return new Guess(
        new Median().evaluate(misses),
        readings.simulation().milestoneS(Milestone.DRY_THROUGH, Spot.THICK_SPOT, full));
  }
}
