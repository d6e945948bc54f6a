package starchfilm.advice;

import static starchfilm.numerics.units.Units.PERCENT_PER_UNIT;

import java.util.ArrayList;
import java.util.List;
import starchfilm.advice.SingleChanges.SingleChange;
import starchfilm.casting.Spot;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.Milestone;
import starchfilm.forecast.TrialForecast;

/** Holds two trials against each other: reruns every change alone, and asks what was seen. */
final class Contrasting {
  private static final double VISIBLE = 0.05;
  private static final double PA_PER_MPA = 1e6;

  private final RuleBook book;
  private final Knowledge knowledge;

  Contrasting(RuleBook book, Knowledge knowledge) {
    this.book = book;
    this.knowledge = knowledge;
  }

  Contrast of(TrialForecast before, TrialForecast after) {
    ForecastCache was = new ForecastCache(before.trial().casting(), knowledge);
    ForecastCache is = new ForecastCache(after.trial().casting(), knowledge);
    List<Rerun> reruns = new ArrayList<>();
    SingleChanges changes = SingleChanges.between(before.trial(), after.trial());
    for (SingleChange change : changes.found()) {
      reruns.add(new Rerun(change, was.of(change.alone())));
    }
    List<Outcome> outcomes = new ArrayList<>();
    outcomes.addAll(new FaultOutcomes(book, before, after, was, is, reruns).all());
    outcomes.addAll(MeasuredOutcomes.of(before, after, was, is));
    return new Contrast(
        verdict(before.trial(), after.trial()),
        reruns.stream().map(rerun -> difference(was, rerun)).toList(),
        changes.notNoted(),
        outcomes);
  }

  /** One change alone and what the model makes of it. */
  record Rerun(SingleChange change, ForecastCache outlook) {}

  private static Difference difference(ForecastCache was, Rerun rerun) {
    SingleChange change = rerun.change();
    return new Difference(change.what(), change.from(), change.to(), effects(was, rerun.outlook()));
  }

  /** What moves in the middle case. */
  private static List<Effect> effects(ForecastCache was, ForecastCache is) {
    List<Effect> effects = new ArrayList<>();
    double driesWas = was.timeS(Spot.THICK_SPOT, Milestone.DRY_THROUGH);
    double driesIs = is.timeS(Spot.THICK_SPOT, Milestone.DRY_THROUGH);
    if (moved(driesWas, driesIs)) {
      effects.add(new Effect("dry through", Told.span(driesWas), Told.span(driesIs)));
    }
    String crackWas = Expectation.word(was.risks().crack().level());
    String crackIs = Expectation.word(is.risks().crack().level());
    if (!crackWas.equals(crackIs)) {
      effects.add(new Effect("cracking", crackWas, crackIs));
    }
    String mouldWas = Expectation.word(was.risks().mould().level());
    String mouldIs = Expectation.word(is.risks().mould().level());
    if (!mouldWas.equals(mouldIs)) {
      effects.add(new Effect("mould", mouldWas, mouldIs));
    }
    if (was.film().feel() != is.film().feel()) {
      effects.add(
          new Effect(
              "feel", Expectation.word(was.film().feel()), Expectation.word(is.film().feel())));
    }
    add(
        effects,
        "stretch at break",
        PERCENT_PER_UNIT * was.film().elongationAtBreak().middle(),
        PERCENT_PER_UNIT * is.film().elongationAtBreak().middle(),
        " %");
    add(
        effects,
        "tensile strength",
        was.film().tensileStrengthPa().middle() / PA_PER_MPA,
        is.film().tensileStrengthPa().middle() / PA_PER_MPA,
        " MPa");
    add(
        effects,
        "dry thickness",
        1e6 * was.film().dryThicknessM().middle(),
        1e6 * is.film().dryThicknessM().middle(),
        " µm");
    return effects;
  }

  private static void add(List<Effect> effects, String what, double was, double is, String unit) {
    if (moved(was, is)) {
      effects.add(new Effect(what, Told.number(was) + unit, Told.number(is) + unit));
    }
  }

  private static boolean moved(double was, double is) {
    return Math.abs(Math.log(is / was)) > VISIBLE;
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
