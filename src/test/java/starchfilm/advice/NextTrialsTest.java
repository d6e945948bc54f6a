package starchfilm.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.RoomUncertainty;
import starchfilm.casting.trial.ObservedFault.FaultKind;
import starchfilm.casting.trial.Trial;
import starchfilm.change.Change;
import starchfilm.forecast.SameForAll;
import starchfilm.forecast.TrialKnowledge;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/** What a next trial is made of: the rooms of the notebook, and what it is for. */
class NextTrialsTest {
  /** A book in which a slow room is answered by another room alone. */
  private static final RuleBook ROOMS_ALONE =
      new RuleBook(
          List.of(),
          List.of(),
          List.of(
              new Cure(
                  Cause.SLOW_ROOM, Change.ANOTHER_ROOM, new Source("a book, table 1", Check.READ))),
          Map.of(),
          List.of());

  private static final TrialKnowledge TEXTBOOK = SameForAll.TEXTBOOK;

  @Test
  void aRoomIsTakenAsItWasInItsBestTrial() {
    assertThat(roomAfter(in("kitchen", 24, 3), in("kitchen", 27, 5), in("kitchen", 21, 4)))
        .contains(27.0);
    assertThat(roomAfter(in("kitchen", 24, 3), in("kitchen", 27, 3))).contains(27.0);
    assertThat(roomAfter(in("kitchen", 24, 3), in("kitchen", 27, 0))).contains(24.0);
  }

  @Test
  void aRoomOfARecipeThatNobodyCastIsNone() {
    Trial cast = in("sauna", 30, 3);
    assertThat(roomAfter(cast)).contains(30.0);
    assertThat(roomAfter(SeenFaults.recipeOf(cast))).isEmpty();
  }

  /** A plate in the shed is only moved where that has it dry a tenth sooner (judged). */
  @Test
  void aRoomThatIsHardlyQuickerIsNoReason() {
    assertThat(roomAfter(in("other shed", 10.3, 3))).isEmpty();
    assertThat(roomAfter(in("other shed", 13, 3))).contains(13.0);
  }

  /** Warmth (°C) of the room in which a plate of the shed would be dry sooner. */
  private static Optional<Double> roomAfter(Trial... others) {
    Trial shed = in("shed", 10, 3);
    List<Trial> notebook = new ArrayList<>(List.of(shed));
    notebook.addAll(List.of(others));
    return new NextTrials(ROOMS_ALONE, TEXTBOOK)
        .sooner(SeenFaults.forecast(shed), notebook)
        .map(next -> Math.round(10 * (next.setup().room().at(0).temperatureK() - 273.15)) / 10.0);
  }

  /** Rated 1 to 5, or 0 where it is not. */
  private static Trial in(String name, double celsius, int rating) {
    Casting casting =
        Castings.plate(1.5, Castings.paste(0.06, 0.3), Castings.room(20, 50, 0.1), 60)
            .with(
                new DryingPlace(
                    name,
                    Castings.room(celsius, 50, 0.1),
                    RoomUncertainty.NONE,
                    OptionalDouble.empty()));
    return SeenFaults.rated(casting, rating == 0 ? OptionalInt.empty() : OptionalInt.of(rating));
  }

  /** A pour that is thinner answers that it stayed wet and that it moulded: both are told. */
  @Test
  void everyTroubleThatTheChangeAnswersIsToldOnce() {
    NextTrial next = Garden.adviceAfter(1).next().orElseThrow();
    assertThat(next.adjustments()).contains(Change.POUR_THINNER);
    assertThat(next.aims())
        .anyMatch(aim -> aim.startsWith("it would be dry through in "))
        .anyMatch(aim -> aim.startsWith("mould grows as much as in "))
        .doesNotHaveDuplicates();
    assertThat(next.sentence()).contains(next.aims());
  }

  /** Of a sticky film that was also looked at too early, less glycerol answers the first alone. */
  @Test
  void aTroubleThatTheChangeDoesNotAnswerIsNotTold() {
    NextTrial next = Garden.adviceAfter(3).next().orElseThrow();
    assertThat(next.adjustments()).containsExactly(Change.LESS_GLYCEROL);
    assertThat(next.aims()).singleElement().asString().startsWith("glycerol is at ");
    assertThat(next.waitUntilS()).isEmpty();
  }

  /** Nobody is told to wait for a plate that hardly ever dries. */
  @Test
  void waitingIsNoRemedyWhereItNeverDries() {
    Casting damp = Castings.plate(3, Castings.paste(0.08, 0.3), Castings.room(20, 99, 0.1), 60);
    FaultContext scene =
        SeenFaults.on(damp, SeenFaults.fault(FaultKind.STILL_WET)).lookedAtS(86_400);
    assertThat(AdvisedStep.of(Change.WAIT_LONGER, scene, RuleBook.packed(), List.of())).isEmpty();
  }
}
