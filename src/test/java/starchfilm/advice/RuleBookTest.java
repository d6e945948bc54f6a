package starchfilm.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import starchfilm.casting.trial.ObservedFault.Kind;
import starchfilm.casting.trial.ObservedFault.Place;
import starchfilm.change.Change;
import starchfilm.files.json.UnreadableFileException;
import starchfilm.numerics.evidence.Check;

/** The table of rules that comes with the program is whole, and a broken one is refused. */
class RuleBookTest {
  private static final RuleBook BOOK = RuleBook.packed();

  @ParameterizedTest
  @EnumSource(Kind.class)
  void everyFaultHasCausesWhereverItIsSeen(Kind fault) {
    for (Place where : Place.values()) {
      assertThat(BOOK.rulesFor(fault, where)).as("%s %s", fault, where).hasSizeGreaterThan(1);
    }
  }

  @ParameterizedTest
  @EnumSource(Cause.class)
  void everyCauseIsUsedAndAnsweredButStirringWhichNobodyNotes(Cause cause) {
    assertThat(BOOK.rules()).extracting(Rule::cause).contains(cause);
    if (cause != Cause.STIRRING) {
      assertThat(BOOK.answersTo(cause)).isNotEmpty();
    }
  }

  @Test
  void everyAdjustmentAndEveryMeasureIsUsed() {
    assertThat(BOOK.cures().stream().map(Cure::adjustment).collect(Collectors.toSet()))
        .containsExactlyInAnyOrder(Change.values());
    assertThat(BOOK.rules().stream().map(Rule::heldAgainst).collect(Collectors.toSet()))
        .containsExactlyInAnyOrder(Measure.values());
  }

  @Test
  void everyRowHasASourceAndCommonPracticeIsMarkedAsJudged() {
    assertThat(BOOK.rules()).allSatisfy(rule -> assertSourced(rule.source().citation()));
    assertThat(BOOK.cures()).allSatisfy(cure -> assertSourced(cure.source().citation()));
    assertThat(BOOK.rules())
        .filteredOn(rule -> rule.source().citation().contains("no source"))
        .allMatch(rule -> rule.source().check() == Check.JUDGED);
    assertThat(BOOK.cures())
        .filteredOn(cure -> cure.source().citation().contains("no source"))
        .allMatch(cure -> cure.source().check() == Check.JUDGED);
  }

  private static void assertSourced(String citation) {
    assertThat(citation.length()).as(citation).isGreaterThan(10);
  }

  @Test
  void noRowIsThereTwice() {
    for (Kind fault : Kind.values()) {
      for (Place where : Place.values()) {
        assertThat(BOOK.rulesFor(fault, where))
            .extracting(rule -> rule.cause() + " " + rule.heldAgainst())
            .doesNotHaveDuplicates();
      }
    }
    assertThat(BOOK.cures())
        .extracting(cure -> cure.cause() + " " + cure.adjustment())
        .doesNotHaveDuplicates();
  }

  @Test
  void aCauseThatIsHeldAgainstAMeasureOfTheModelCanBeRerunOrIsThatMeasureItself() {
    Set<Cause> themselves = EnumSet.of(Cause.PEELED_TOO_EARLY);
    assertThat(BOOK.rules())
        .filteredOn(rule -> rule.heldAgainst() != Measure.OWN_FIGURE)
        .allMatch(rule -> rule.cause().canBePutRight() || themselves.contains(rule.cause()));
  }

  @Test
  void aRowAddedIsARuleAdded() throws UnreadableFileException {
    RuleBook book =
        RuleBook.read(
            """
            {"rules": [
              {"fault": "cloudy", "where": "edge, all", "held_against": "own figure",
               "cause": "salt", "source": "a book, table 3", "check": "read"}],
             "cures": [
              {"cause": "salt", "adjust": "cleaner glycerol", "source": "a book", "check": "read"}]}
            """);
    assertThat(book.rulesFor(Kind.CLOUDY, Place.EDGE)).hasSize(1);
    assertThat(book.rulesFor(Kind.CLOUDY, Place.MIDDLE)).isEmpty();
    assertThat(book.answersTo(Cause.SALT)).containsExactly(Change.CLEANER_GLYCEROL);
  }

  @Test
  void aCauseNobodyKnowsIsRefusedWithItsLineAndTheKnownOnes() {
    UnreadableFileException fault =
        assertThrows(
            UnreadableFileException.class,
            () ->
                RuleBook.read(
                    """
                    {"rules": [
                      {"fault": "cloudy", "where": "all", "held_against": "own figure",
                       "cause": "full moon", "source": "a book", "check": "read"}],
                     "cures": []}
                    """));
    assertThat(fault.line()).hasValue(2);
    assertThat(fault.given()).isEqualTo("cause \"full moon\"");
    assertThat(fault.allowed())
        .isEqualTo(
            Arrays.stream(Cause.values()).map(Cause::tableName).collect(Collectors.joining(", ")));
  }

  @Test
  void aRowWithoutSourceIsRefused() {
    UnreadableFileException fault =
        assertThrows(
            UnreadableFileException.class,
            () ->
                RuleBook.read(
                    """
                    {"rules": [
                      {"fault": "cloudy", "where": "all", "held_against": "own figure",
                       "cause": "salt", "source": " ", "check": "read"}],
                     "cures": []}
                    """));
    assertThat(fault.given()).isEqualTo("no source");
  }

  @Test
  void aTableWithoutItsListsIsRefused() {
    assertThat(
            assertThrows(UnreadableFileException.class, () -> RuleBook.read("{\"rules\": []}"))
                .given())
        .isEqualTo("no list \"cures\"");
  }
}
