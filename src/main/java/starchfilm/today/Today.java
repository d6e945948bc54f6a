package starchfilm.today;

import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import starchfilm.casting.trial.Stage;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.WallClock;
import starchfilm.forecast.TrialForecast;

/**
 * The plates that need their maker at a moment.
 *
 * @param now the moment, by the clock on the wall
 * @param standings the plates that are drying, the most urgent first
 * @param planned trials that nobody has poured yet
 * @param ahead trials that were poured in the future, by that clock
 * @param ended plates that need nobody any more, of the pours of the last two months
 */
public record Today(
    LocalDateTime now,
    List<Standing> standings,
    List<Trial> planned,
    List<Trial> ahead,
    List<Ended> ended) {
  private static final long ENDED_DAYS = 60;

  /**
   * A plate that is off, given up or rated.
   *
   * @param trial its trial
   * @param plate its number, from 1
   */
  public record Ended(Trial trial, int plate) {}

  /**
   * Looks at trials.
   *
   * @param trials the trials
   * @param now the moment, by the clock on the wall
   * @param forecaster forecasts a trial as one of its plates shows it; empty where it cannot be.
   *     Called from several threads at once
   * @param courses gives what a scale under a plate shows; called from several threads at once
   * @return what needs doing
   */
  public static Today of(
      List<Trial> trials,
      LocalDateTime now,
      Function<Trial, Optional<TrialForecast>> forecaster,
      Function<TrialForecast, ScaleCourse> courses) {
    List<Standing> standings =
        alike(trials, now).parallelStream()
            .flatMap(
                plates ->
                    forecaster.apply(plates.as()).stream()
                        .map(
                            forecast ->
                                Standing.of(
                                    forecast, courses.apply(forecast), plates.numbers(), now)))
            .sorted(
                Comparator.comparing(Standing::need)
                    .thenComparing(Today::dueAt)
                    .thenComparing(standing -> standing.forecast().trial().file()))
            .toList();
    List<Trial> unpoured =
        trials.stream().filter(trial -> Stage.of(trial, now) == Stage.PLANNED).toList();
    return new Today(
        now,
        standings,
        unpoured.stream().filter(trial -> trial.pouredAt().isEmpty()).toList(),
        unpoured.stream().filter(trial -> trial.pouredAt().isPresent()).toList(),
        ended(trials, now));
  }

  private static List<Ended> ended(List<Trial> trials, LocalDateTime now) {
    return trials.stream()
        .filter(
            trial ->
                trial
                    .pouredAt()
                    .filter(pour -> pour.isAfter(now.minusDays(ENDED_DAYS)))
                    .isPresent())
        .flatMap(
            trial ->
                plates(trial, now, Stage.ENDED, Stage.GIVEN_UP)
                    .mapToObj(plate -> new Ended(trial, plate)))
        .toList();
  }

  /**
   * Plates of one pour that nobody distinguished.
   *
   * @param as the trial as each of them shows it
   * @param numbers their numbers
   */
  public record Alike(Trial as, List<Integer> numbers) {}

  /**
   * The plates of some trials that are drying.
   *
   * @param trials the trials
   * @param now the moment, by the clock on the wall
   * @return those of one pour that nobody distinguished together, in the order of the trials
   */
  public static List<Alike> alike(List<Trial> trials, LocalDateTime now) {
    return trials.stream()
        .flatMap(
            trial ->
                plates(trial, now, Stage.DRYING)
                    .boxed()
                    .collect(
                        Collectors.groupingBy(
                            plate -> facts(trial, plate), LinkedHashMap::new, Collectors.toList()))
                    .values()
                    .stream()
                    .map(numbers -> new Alike(trial.ofPlate(numbers.get(0)), numbers)))
        .toList();
  }

  /** What distinguishes a plate from others of its pour. */
  private static List<Object> facts(Trial trial, int plate) {
    return List.of(
        trial.ofPlate(plate).seen().weighings(),
        trial.ofPlate(plate).casting().plate().areaM2(),
        Optional.ofNullable(trial.seen().eachPlate().emptyKg().get(plate)));
  }

  private static IntStream plates(Trial trial, LocalDateTime now, Stage... stages) {
    return IntStream.rangeClosed(1, trial.plates())
        .filter(plate -> List.of(stages).contains(Stage.of(trial, plate, now)));
  }

  /** When something is to be done about it; whoever waits longest comes first. */
  private static LocalDateTime dueAt(Standing standing) {
    double atS =
        switch (standing.need()) {
          case MOULDS_SOON, MOULDS_LATER -> standing.mouldFromS();
          case PEEL, OVERDUE -> standing.readyS().low();
          case NEVER_DRIES, WEIGH -> standing.nowS();
          case LOOK, WAIT -> standing.readyS().low();
        };
    LocalDateTime poured = standing.forecast().trial().pouredAt().orElseThrow();
    return WallClock.after(poured, Math.min(atS, 1e9));
  }

  /** The next plate to be looked at when nothing else is to be done. */
  public Optional<Standing> nextLook() {
    return standings.stream()
        .filter(standing -> Double.isFinite(standing.lookFromS()))
        .min(Comparator.comparing(standing -> dueAt(standing)));
  }
}
