package starchfilm.advice;

import java.util.stream.Stream;
import starchfilm.advice.SingleChanges.SingleChange;
import starchfilm.casting.trial.Trial;
import starchfilm.forecast.TrialForecast;
import starchfilm.forecast.TrialKnowledge;

/** Holds two trials against each other: reruns every change alone, and asks what was seen. */
record Contrasting(RuleBook book, TrialKnowledge knowledge) {
  Contrast of(TrialForecast before, TrialForecast after) {
    ForecastCache was = new ForecastCache(before.trial(), knowledge);
    ForecastCache is = new ForecastCache(after.trial(), knowledge);
    SingleChanges changes =
        SingleChanges.between(
            FaultContext.of(before, was), FaultContext.of(after, is), book.compared());
    return new Contrast(
        verdict(before.trial(), after.trial()),
        changes.found().stream().map(change -> difference(was, change)).toList(),
        changes.notNoted(),
        Stream.concat(
                new FaultOutcomes(book, before, after, was, is, changes.found()).all().stream(),
                MeasuredOutcomes.of(before, after, was, is).stream())
            .toList());
  }

  private static Difference difference(ForecastCache was, SingleChange change) {
    return new Difference(
        change.what(),
        change.from(),
        change.to(),
        Expectation.of(was).middlesTo(Expectation.of(change.alone())));
  }

  private static String verdict(Trial before, Trial after) {
    if (before.seen().rating().isEmpty() || after.seen().rating().isEmpty()) {
      return "At least one has no rating, so they can't be ranked.";
    }
    int was = before.seen().rating().getAsInt();
    int is = after.seen().rating().getAsInt();
    String word = is > was ? "Better" : is < was ? "Worse" : "Rated the same";
    return word + (is == was ? ": " + is + " of 5." : ": rated " + was + " → " + is + " of 5.");
  }
}
