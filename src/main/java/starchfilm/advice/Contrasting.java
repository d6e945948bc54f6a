package starchfilm.advice;

import java.util.ArrayList;
import java.util.List;
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
    List<Rerun> reruns = new ArrayList<>();
    SingleChanges changes =
        SingleChanges.between(
            FaultContext.of(before, was), FaultContext.of(after, is), book.compared());
    for (SingleChange change : changes.found()) {
      reruns.add(new Rerun(change, was.of(change.alone())));
    }
    return new Contrast(
        verdict(before.trial(), after.trial()),
        reruns.stream().map(rerun -> difference(was, rerun)).toList(),
        changes.notNoted(),
        Stream.concat(
                new FaultOutcomes(book, before, after, was, is, reruns).all().stream(),
                MeasuredOutcomes.of(before, after, was, is).stream())
            .toList());
  }

  /** One change alone and what the model makes of it. */
  record Rerun(SingleChange change, ForecastCache outlook) {}

  private static Difference difference(ForecastCache was, Rerun rerun) {
    SingleChange change = rerun.change();
    return new Difference(
        change.what(),
        change.from(),
        change.to(),
        Expectation.of(was).middlesTo(Expectation.of(rerun.outlook())));
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
