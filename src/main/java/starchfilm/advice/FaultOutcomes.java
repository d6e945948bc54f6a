package starchfilm.advice;

import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import starchfilm.advice.OutcomeDifference.Agreement;
import starchfilm.advice.SingleChanges.SingleChange;
import starchfilm.casting.trial.ObservedFault.FaultKind;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.units.Named;

/**
 * Faults that went or came between two trials, held against what the model says of both.
 *
 * <p>Of the rows of the table for the fault, the one whose trouble moves furthest the same way is
 * looked at; the model agrees where it moves by at least {@link #MOVES} (judged). The change that
 * does most of it is the one that, made alone, moves that trouble furthest.
 */
record FaultOutcomes(
    RuleBook book,
    TrialForecast before,
    TrialForecast after,
    ForecastCache was,
    ForecastCache is,
    List<SingleChange> changes) {
  private static final double MOVES = 0.3;
  private static final double MOST_OF_IT = 0.4;
  private static final double NEARLY_ALL = 0.9;
  private static final int MOST_REASONS = 2;

  List<OutcomeDifference> all() {
    return Stream.concat(
            only(before, after, was)
                .map(scene -> outcome(scene, "was noted before and is not now", 1)),
            only(after, before, is).map(scene -> outcome(scene, "is new", -1)))
        .toList();
  }

  /** The first fault of each kind that one trial shows and the other does not. */
  private static Stream<FaultContext> only(
      TrialForecast one, TrialForecast other, ForecastCache outlook) {
    Set<FaultKind> told = EnumSet.noneOf(FaultKind.class);
    other.trial().seen().faults().forEach(fault -> told.add(fault.kind()));
    return one.trial().seen().faults().stream()
        .filter(fault -> told.add(fault.kind()))
        .map(fault -> FaultContext.of(one.trial(), fault, one.drying(), outlook));
  }

  /** One row's trouble in both trials, the change counted towards what was seen. */
  private record Shift(Rule rule, double from, double to, double wanted) {
    double worst() {
      return Math.max(from, to);
    }
  }

  private OutcomeDifference outcome(FaultContext scene, String what, int direction) {
    String name = Named.of(scene.fault().kind());
    String seen = "“" + name + "” " + what + ".";
    List<Shift> shifts = shifts(scene, direction);
    if (shifts.isEmpty()) {
      return new OutcomeDifference(seen, Agreement.CANNOT_TELL, "Your notes don't show why.");
    }
    Shift furthest = shifts.get(0);
    if (furthest.wanted() < MOVES) {
      Shift worst = shifts.stream().max(Comparator.comparingDouble(Shift::worst)).orElse(furthest);
      return new OutcomeDifference(
          seen, Agreement.DISAGREES, "The model shows no reason: " + figures(worst, scene) + ".");
    }
    Set<String> reasons = new LinkedHashSet<>();
    for (Shift shift : shifts) {
      if (shift.wanted() >= MOVES && reasons.size() < MOST_REASONS) {
        reasons.add(figures(shift, scene));
      }
    }
    return new OutcomeDifference(
        seen,
        Agreement.AGREES,
        "The model says so too: " + String.join("; and ", reasons) + mostly(furthest, scene) + ".");
  }

  /** How every row moved of which both trials tell, furthest towards what was seen first. */
  private List<Shift> shifts(FaultContext scene, int direction) {
    List<Shift> shifts = new ArrayList<>();
    for (Rule rule : book.rulesFor(scene.fault().kind(), scene.fault().where())) {
      OptionalDouble from = rule.trouble(scene.with(was));
      OptionalDouble to = rule.trouble(scene.with(is));
      if (from.isPresent() && to.isPresent()) {
        double wanted = direction * (from.getAsDouble() - to.getAsDouble());
        shifts.add(new Shift(rule, from.getAsDouble(), to.getAsDouble(), wanted));
      }
    }
    shifts.sort(Comparator.comparingDouble(Shift::wanted).reversed());
    return shifts;
  }

  private String figures(Shift shift, FaultContext scene) {
    Rule rule = shift.rule();
    if (rule.isRerun()) {
      return rule.heldAgainst().moved(scene.with(was), scene.with(is));
    }
    boolean worseNow = shift.to() > shift.from();
    return (worseNow ? "now " : "before, ") + rule.read(scene.with(worseNow ? is : was)).words();
  }

  private String mostly(Shift shift, FaultContext scene) {
    SingleChange strongest = null;
    double most = MOST_OF_IT;
    for (SingleChange change : changes) {
      OptionalDouble alone = shift.rule().trouble(scene.with(change.alone()));
      double share =
          alone.isPresent()
              ? (alone.getAsDouble() - shift.from()) / (shift.to() - shift.from())
              : 0;
      if (share > most) {
        most = share;
        strongest = change;
      }
    }
    if (strongest == null) {
      return "; no single change does most of it";
    }
    return "; %s %s → %s alone does %s of it"
        .formatted(
            strongest.what(),
            strongest.from(),
            strongest.to(),
            most >= NEARLY_ALL ? "nearly all" : PERCENT.brief(most));
  }
}
