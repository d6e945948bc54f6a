package starchfilm.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumSet;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import starchfilm.casting.trial.ObservedFault.FaultKind;
import starchfilm.casting.trial.ObservedFault.FaultPlace;
import starchfilm.change.Change;
import starchfilm.change.Limits;
import starchfilm.numerics.evidence.Check;

/** The table of rules that comes with the program is whole, and a broken one is refused. */
class RuleBookTest {
  private static final RuleBook BOOK = RuleBook.packed();

  @ParameterizedTest
  @EnumSource(FaultKind.class)
  void everyFaultHasCausesWhereverItIsSeen(FaultKind fault) {
    for (FaultPlace where : FaultPlace.values()) {
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
        .isEqualTo(ofTheNextPour());
    assertThat(BOOK.rules().stream().map(Rule::heldAgainst).filter(Measure::isOfModel).distinct())
        .containsExactlyInAnyOrderElementsOf(BOOK.measures());
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
    for (FaultKind fault : FaultKind.values()) {
      for (FaultPlace where : FaultPlace.values()) {
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
        .filteredOn(rule -> rule.heldAgainst().isOfModel())
        .allMatch(rule -> rule.cause().canBePutRight() || themselves.contains(rule.cause()));
  }

  @Test
  void everyFigureThatASentenceCallsIsKnown() {
    Stream<String> causes =
        BOOK.rules().stream()
            .flatMap(rule -> rule.limits().stream())
            .flatMap(limit -> limit.words().stream());
    Stream<String> measures =
        BOOK.measures().stream().flatMap(each -> Stream.of(each.words(), each.moved()));
    Pattern name = Pattern.compile("\\{(?:(?:old|new|more) )?([^}]*)\\}");
    assertThat(Stream.of(causes, measures, BOOK.changes().values().stream()).flatMap(each -> each))
        .hasSizeGreaterThan(100)
        .allSatisfy(
            sentence ->
                name.matcher(sentence)
                    .results()
                    .forEach(found -> assertThat(AdviceFigure.called(found.group(1))).isNotNull()));
  }

  /** All but the rack, which is for a plate under way. */
  private static Set<Change> ofTheNextPour() {
    return EnumSet.complementOf(EnumSet.of(Change.ONTO_A_RACK));
  }

  @Test
  void everyChangeIsToldAndEveryCauseHasAFigure() {
    assertThat(BOOK.changes().keySet()).isEqualTo(ofTheNextPour());
    assertThat(BOOK.rules()).allSatisfy(rule -> assertThat(rule.limits()).isNotEmpty());
  }

  /** The same limit stands in the table of causes and in that of changes. */
  @Test
  void whatIsLevelIsTheSameForACauseAndForAChange() {
    assertThat(BOOK.rules())
        .filteredOn(rule -> rule.cause() == Cause.POURED_UNEVENLY)
        .allSatisfy(rule -> assertThat(rule.limits().get(0).harmless()).isEqualTo(Limits.LEVEL));
  }

  @Test
  void aRowAddedIsARuleAdded() {
    RuleBook book =
        RuleBook.read(
            """
            {"causes": [], "measures": [], "changes": {}, "compared": [],
             "rules": [
              {"fault": "cloudy", "where": ["edge", "all"], "held_against": "own figure",
               "cause": "salt", "source": {"citation": "a book, table 3", "check": "read"}}],
             "cures": [
              {"cause": "salt", "adjustment": "cleaner glycerol",
               "source": {"citation": "a book", "check": "read"}}]}
            """);
    assertThat(book.rulesFor(FaultKind.CLOUDY, FaultPlace.EDGE)).hasSize(1);
    assertThat(book.rulesFor(FaultKind.CLOUDY, FaultPlace.MIDDLE)).isEmpty();
    assertThat(book.answersTo(Cause.SALT)).containsExactly(Change.CLEANER_GLYCEROL);
  }

  @ParameterizedTest
  @CsvSource({"full moon, source, not one of the values", "salt, saurce, property 'source'"})
  void aRowThatNamesNothingKnownOrNoSourceIsRefused(String cause, String source, String why) {
    assertThatThrownBy(
            () ->
                RuleBook.read(
                    """
                    {"rules": [{"fault": "cloudy", "where": "all", "held_against": "own figure",
                                "cause": "%s", "%s": {"citation": "a book", "check": "read"}}]}
                    """
                        .formatted(cause, source)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(why)
        .hasMessageContaining("[\"rules\"]->java.util.ArrayList[0]");
  }
}
