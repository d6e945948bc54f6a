package starchfilm.report.advice;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import starchfilm.advice.Adviser;
import starchfilm.advice.Contrast;
import starchfilm.advice.NextTrial;
import starchfilm.advice.NotebookAdvice;
import starchfilm.advice.TrialAdvice;
import starchfilm.casting.trial.Trial;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.diffusion.IntegrationFailure;
import starchfilm.report.caution.Cautions;
import starchfilm.report.words.PlainWords;

/**
 * The advice of the notebook, computed on all cores.
 *
 * @param over what to try next over all trials; empty where no plate has a history
 * @param after what it has to say of single trials, by their place among the trials, from 0
 * @param leftOut how many trials with a history are not advised on
 */
public record Advised(Optional<NotebookAdvice> over, Map<Integer, OfTrial> after, int leftOut) {
  /**
   * Every advice reruns the model some dozens of times, so that only as many trials as are read one
   * by one are advised on: the latest.
   */
  private static final int MOST = 12;

  /** No advice was asked for. */
  public static final Advised NOTHING = new Advised(Optional.empty(), Map.of(), 0);

  /**
   * Advice on one trial.
   *
   * @param advice what may be behind its faults, and what to try next
   * @param before held against the trial it was made from or else the one before, if there is one
   * @param best held against the best trial, if that is neither this one nor the one before
   */
  public record OfTrial(TrialAdvice advice, Optional<Against> before, Optional<Against> best) {}

  /**
   * A trial held against another.
   *
   * @param index the other's place among the trials, from 0
   * @param contrast what differs, and what came of it
   */
  public record Against(int index, Contrast contrast) {}

  /**
   * Asks for all advice.
   *
   * @param adviser whom to ask
   * @param trials the trials, in the order of the page
   * @return the advice; where none can be given on a trial, a sentence says so
   */
  public static Advised by(Adviser adviser, List<TrialForecast> trials) {
    List<Integer> poured =
        IntStream.range(0, trials.size())
            .filter(index -> trials.get(index).trial().hasHistory())
            .boxed()
            .toList();
    List<Integer> latest = poured.subList(Math.max(0, poured.size() - MOST), poured.size());
    OptionalInt best = Adviser.best(trials);
    ForkJoinTask<Optional<NotebookAdvice>> over =
        ForkJoinPool.commonPool()
            .submit(
                // The advice on single trials says why there is none.
                () -> advised(() -> adviser.over(trials), why -> Optional.<NotebookAdvice>empty()));
    Map<Integer, OfTrial> after =
        latest.parallelStream()
            .collect(
                Collectors.toConcurrentMap(
                    index -> index,
                    index -> ofTrial(adviser, trials, index, before(trials, poured, index), best)));
    return new Advised(over.join(), new HashMap<>(after), poured.size() - latest.size());
  }

  /**
   * What to try next over all trials, for who reads no page.
   *
   * @return whole sentences, with the cautions of the change; none where no plate has a history
   */
  public List<String> lines() {
    return over.stream().flatMap(Advised::lines).toList();
  }

  private static Stream<String> lines(NotebookAdvice advice) {
    String verdict =
        "What to try next: %s. %s".formatted(advice.from().trial().name(), advice.verdict());
    if (advice.next().isEmpty()) {
      return Stream.of(verdict);
    }
    NextTrial next = advice.next().get();
    String changes = String.join("; ", next.changes()) + ".";
    return Stream.of(
            Stream.of(
                verdict + " " + (verdict.endsWith(":") ? changes : PlainWords.capital(changes))),
            next.newCautions().stream().map(caution -> "! " + PlainWords.word(caution)),
            Cautions.of(next).stream().map(caution -> "! " + caution.sentence()))
        .flatMap(lines -> lines);
  }

  /** What was advised; where that cannot be computed, what is said instead. */
  private static <T> T advised(Supplier<T> advice, Function<String, T> instead) {
    try {
      return advice.get();
    } catch (IllegalArgumentException | IntegrationFailure failure) {
      // Both carry a sentence written for the reader; anything else is a fault of the program.
      return instead.apply(failure.getMessage());
    }
  }

  /** The trial it was made from; else the one poured before. */
  private static OptionalInt before(List<TrialForecast> trials, List<Integer> poured, int index) {
    Trial trial = trials.get(index).trial();
    OptionalInt madeFrom =
        IntStream.range(0, trials.size())
            .filter(other -> other != index && trial.isMadeFrom(trials.get(other).trial()))
            .findFirst();
    int place = poured.indexOf(index);
    return madeFrom.isPresent()
        ? madeFrom
        : place > 0 ? OptionalInt.of(poured.get(place - 1)) : OptionalInt.empty();
  }

  private static OfTrial ofTrial(
      Adviser adviser,
      List<TrialForecast> trials,
      int index,
      OptionalInt before,
      OptionalInt best) {
    OptionalInt apart =
        best.stream()
            .filter(other -> other != index && !OptionalInt.of(other).equals(before))
            .findFirst();
    List<Trial> notebook = trials.stream().map(TrialForecast::trial).toList();
    return new OfTrial(
        advised(
            () -> adviser.after(trials.get(index), notebook),
            why -> new TrialAdvice("No advice: " + why, List.of(), Optional.empty())),
        against(adviser, trials, before, index),
        against(adviser, trials, apart, index));
  }

  private static Optional<Against> against(
      Adviser adviser, List<TrialForecast> trials, OptionalInt other, int index) {
    return other.stream()
        .mapToObj(
            before ->
                new Against(
                    before,
                    advised(
                        () -> adviser.contrast(trials.get(before), trials.get(index)),
                        why -> new Contrast("Not held: " + why, List.of(), List.of(), List.of()))))
        .findFirst();
  }
}
