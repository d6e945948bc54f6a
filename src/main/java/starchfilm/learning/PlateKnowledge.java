package starchfilm.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.Weighing;
import starchfilm.forecast.PlateParameters;
import starchfilm.forecast.WeighingQuestion;
import starchfilm.numerics.diffusion.IntegrationFailure;

/**
 * The knowledge of one plate once its weighings are taken in. A weighing that does not fit the
 * others is kept out, and its maker is asked about it, until it is confirmed in the file; where
 * most are doubted, all are kept out.
 */
final class PlateKnowledge {
  private static final int MOST_ASKED = 3;
  private static final double NO_STEP_S = Double.POSITIVE_INFINITY;

  private final Trial trial;
  private final UsableWeighings usable;
  private final int ofSiblings;
  private final PlateModel unweighed;
  private final Normal before;
  private final List<WeighingQuestion> questions;

  private PlateKnowledge(Trial trial, SharedParameters shared, int ofSiblings) {
    this.trial = trial;
    this.ofSiblings = ofSiblings;
    this.usable = UsableWeighings.of(trial);
    this.unweighed = new PlateModel(trial, List.of());
    this.before = unweighed.before(shared);
    this.questions = new ArrayList<>(Doubts.questions(usable));
  }

  /**
   * What is known of a plate.
   *
   * @param shared what others taught, the other plates of its pour included
   * @param ofSiblings how many weighings of those are in it
   */
  static PlateParameters of(Trial trial, SharedParameters shared, int ofSiblings) {
    return new PlateKnowledge(trial, shared, ofSiblings).known();
  }

  private PlateParameters known() {
    try {
      return usable.used().isEmpty() ? without() : fitted();
    } catch (IntegrationFailure e) {
      ask(
          "No likely drying fits the weighings of this plate: are their times,"
              + " the tare and the poured mass right? The forecast does not use them.");
      return without();
    }
  }

  private PlateParameters without() {
    return new PlateParameters(unweighed.model(before), true, ofSiblings, questions);
  }

  private PlateParameters fitted() {
    List<Weighing> used = usable.used();
    Fitted all = fitted(used, NO_STEP_S, false);
    List<Integer> doubted = all.fit().doubted();
    if (doubted.isEmpty()) {
      return with(all);
    }
    OptionalInt step = Doubts.likeliestStep(all.readings(), before);
    if (step.isPresent()) {
      Weighing first = used.get(step.getAsInt());
      Fitted apart = fitted(used, first.timeS(), false);
      if (apart.fit().doubted().isEmpty()) {
        if (first.confirmed()) {
          return with(apart);
        }
        questions.add(Doubts.question(apart.readings(), apart.fit(), step.getAsInt()));
        return without(used.subList(step.getAsInt(), used.size()));
      }
    }
    List<Integer> out = doubted.stream().filter(i -> !used.get(i).confirmed()).toList();
    out.stream()
        .limit(MOST_ASKED)
        .forEach(i -> questions.add(Doubts.slip(all.readings(), all.fit(), i)));
    if (out.size() > MOST_ASKED) {
      ask("The same holds for " + (out.size() - MOST_ASKED) + " more, which are left out too.");
    }
    return without(out.stream().map(used::get).toList());
  }

  private PlateParameters without(List<Weighing> out) {
    List<Weighing> kept = new ArrayList<>(usable.used());
    kept.removeAll(out);
    return kept.isEmpty() ? without() : with(fitted(kept, NO_STEP_S, true));
  }

  private PlateParameters with(Fitted fitted) {
    int counted = fitted.readings().count();
    if (2 * counted < usable.used().size() + usable.odd().size()) {
      ask("Most weighings of this plate look wrong, so the forecast uses none of them.");
      return without();
    }
    return new PlateParameters(
        unweighed.model(fitted.fit().posterior(before)), true, counted + ofSiblings, questions);
  }

  private void ask(String words) {
    questions.add(new WeighingQuestion(words));
  }

  private record Fitted(PlateReadings readings, PlateFit fit) {}

  private Fitted fitted(List<Weighing> weighings, double newLevelS, boolean trustConfirmed) {
    PlateReadings readings =
        new PlateReadings(trial.casting(), weighings, newLevelS, trustConfirmed, () -> {});
    return new Fitted(readings, PlateFit.of(readings, before));
  }
}
