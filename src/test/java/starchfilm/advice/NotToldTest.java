package starchfilm.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import starchfilm.casting.trial.NotRecorded;
import starchfilm.casting.trial.ObservedFault.FaultKind;
import starchfilm.casting.trial.ObservedFault.FaultPlace;
import starchfilm.casting.trial.Trial;
import starchfilm.forecast.SameForAll;
import starchfilm.numerics.units.Named;

/** Where the notebook does not hold the figures, it does not tell, and says what to note. */
class NotToldTest {
  @Test
  void bubblesInATrialWithoutNotesOfTheCookAreNotExplained() {
    Trial trial =
        MadeUpTrials.with(
            List.of(SeenFaults.fault(FaultKind.BUBBLES)),
            missing("cook.top_C", "cook.minutes", "pour.paste_C", "room.air_C", "room.rh_pct"));
    TrialAdvice advice = advice(trial);
    Diagnosis diagnosis = advice.diagnoses().get(0);
    assertThat(diagnosis.notNoted())
        .contains(
            "how hot the paste got",
            "how warm the paste was when poured",
            "how warm and damp the room was",
            "how it was stirred");
    assertThat(diagnosis.suspicions())
        .extracting(Suspicion::cause)
        .doesNotContain(Cause.BOILED, Cause.POURED_TOO_COOL, Cause.DRIED_TOO_FAST);
  }

  @Test
  void aScorchedPotWithoutNotesOfTheCookIsNotExplainedAtAll() {
    Trial trial =
        MadeUpTrials.with(
            List.of(SeenFaults.fault(FaultKind.SCORCHED)),
            missing("cook.top_C", "cook.minutes", "recipe.water"));
    TrialAdvice advice = advice(trial);
    String suspects =
        RuleBook.packed().rulesFor(FaultKind.SCORCHED, FaultPlace.ALL).stream()
            .map(rule -> Named.of(rule.cause()))
            .distinct()
            .limit(5)
            .collect(Collectors.joining("; "));
    assertThat(suspects).contains("overcooked");
    assertThat(advice.verdict())
        .isEqualTo(
            "Your notes don't explain it. The usual suspects, to rule out one at a time: "
                + suspects
                + ".");
    assertThat(advice.diagnoses().get(0).tells()).isFalse();
    assertThat(advice.diagnoses().get(0).model())
        .isEqualTo("The model does not compute this; the causes rest on common practice.");
    assertThat(advice.next()).isEmpty();
  }

  @Test
  void aWetPlateWithoutATimeIsNotHeldAgainstTheClock() {
    Diagnosis diagnosis =
        advice(MadeUpTrials.with(List.of(SeenFaults.fault(FaultKind.STILL_WET)), List.of()))
            .diagnoses()
            .get(0);
    assertThat(diagnosis.notNoted()).contains("when it was seen", "when the plate was looked at");
    assertThat(diagnosis.suspicions())
        .extracting(Suspicion::cause)
        .doesNotContain(Cause.POURED_TOO_THICK, Cause.SLOW_ROOM, Cause.LOOKED_TOO_EARLY);
  }

  @Test
  void anAssumedUnevennessIsNeverACause() {
    Trial trial =
        MadeUpTrials.with(
            List.of(SeenFaults.fault(FaultKind.UNEVEN)), missing("pour.unevenness_pct"));
    Diagnosis diagnosis = advice(trial).diagnoses().get(0);
    assertThat(diagnosis.notNoted()).contains("how uneven the pour was");
    assertThat(diagnosis.suspicions())
        .extracting(Suspicion::cause)
        .doesNotContain(Cause.POURED_UNEVENLY);
  }

  @Test
  void whatOneOfTwoFilesLeavesOutIsNoDifferenceButIsNamed() {
    List<Trial> two = MadeUpTrials.drawn(7, 2);
    Trial bare = MadeUpTrials.with(List.of(), missing("recipe.glycerol", "pour.paste_C"));
    Contrast contrast =
        adviser().contrast(SeenFaults.forecast(two.get(0)), SeenFaults.forecast(bare));
    assertThat(contrast.notNoted())
        .contains("glycerol", "salt", "warmth of the paste")
        .doesNotContain("water");
    assertThat(contrast.differences())
        .extracting(Difference::what)
        .doesNotContain("glycerol per 100 g dry starch", "paste when poured");
  }

  private static TrialAdvice advice(Trial trial) {
    return adviser().after(SeenFaults.forecast(trial), List.of(trial));
  }

  private static Adviser adviser() {
    return new Adviser(SameForAll.TEXTBOOK);
  }

  private static List<NotRecorded> missing(String... fields) {
    return Stream.of(fields)
        .map(field -> new NotRecorded(field, field, "a guess", "a little"))
        .toList();
  }
}
