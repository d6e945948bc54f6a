package starchfilm.drying;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import starchfilm.drying.DryingVerdict.CaseOutcome;

/** One word on many likely cases, which the times below it never contradict. */
class DryingVerdictTest {
  /** At most one case in ten is left out of a word: 20 cases, so many of each kind. */
  @ParameterizedTest
  @CsvSource({
    "20, 0, 0, DRIES",
    "18, 2, 0, DRIES",
    "18, 0, 2, DRIES",
    "17, 3, 0, MAY_STAY_SOFT",
    "3, 17, 0, MAY_STAY_SOFT",
    "3, 0, 17, MAY_STAY_SOFT",
    "2, 18, 0, NEVER_PEELABLE",
    "0, 20, 0, NEVER_PEELABLE",
    "0, 10, 10, NEVER_PEELABLE",
    "1, 8, 11, TOO_DAMP",
    "2, 9, 9, NEVER_PEELABLE",
    "0, 0, 20, TOO_DAMP"
  })
  void followsFromTheLikelyCases(int firm, int soft, int wet, DryingVerdict verdict) {
    assertThat(DryingVerdict.of(cases(firm, soft, wet))).isEqualTo(verdict);
  }

  /** A plate whose thin edge peels is not called never peelable for its thick spot. */
  @ParameterizedTest
  @CsvSource({"20, DRIES", "10, MAY_STAY_SOFT", "0, NEVER_PEELABLE"})
  void isThatOfTheSpotThatDriesBest(int firmAtEdge, DryingVerdict verdict) {
    SpotSolution[] edge = cases(firmAtEdge, 20 - firmAtEdge, 0);
    SpotSolution[] thick = cases(0, 20, 0);
    assertThat(DryingVerdict.ofBest(edge, thick)).isEqualTo(verdict);
    assertThat(DryingVerdict.ofBest(thick, edge)).isEqualTo(verdict);
  }

  /** Firm below 0.35; else at most its own weight of water and half of what the paste had. */
  @ParameterizedTest
  @CsvSource({
    "0.349, 0.4, true",
    "0.351, 0.4, false",
    "0.45, 0.9, true",
    "0.451, 0.9, false",
    "1, 10, true",
    "1.001, 10, false"
  })
  void aGelIsNoFilm(double resting, double start, boolean dries) {
    assertThat(DryingVerdict.dries(resting, start)).isEqualTo(dries);
  }

  /** Peelable is timed by the cases that dry through later, so it never comes after dry-through. */
  @ParameterizedTest
  @EnumSource(
      value = DryingVerdict.class,
      names = {"DRIES", "MAY_STAY_SOFT"})
  void everyMilestoneIsTimedByTheSameCases(DryingVerdict verdict) {
    for (Milestone milestone : Milestone.values()) {
      assertThat(Stream.of(CaseOutcome.values()).filter(o -> verdict.tells(milestone, o)))
          .containsExactly(CaseOutcome.FIRM);
    }
  }

  /** A film that never peels still comes to rest, and is then dry through; a wet one never is. */
  @Test
  void aSoftFilmIsTimedToItsRestAndAWetOneNotAtAll() {
    for (Milestone milestone : Milestone.values()) {
      boolean rest = milestone == Milestone.DRY_THROUGH;
      assertThat(
              Stream.of(CaseOutcome.values())
                  .filter(o -> DryingVerdict.NEVER_PEELABLE.tells(milestone, o)))
          .isEqualTo(rest ? List.of(CaseOutcome.FIRM, CaseOutcome.SOFT) : List.of());
      assertThat(
              Stream.of(CaseOutcome.values())
                  .filter(o -> DryingVerdict.TOO_DAMP.tells(milestone, o)))
          .isEmpty();
    }
  }

  private static SpotSolution[] cases(int firm, int soft, int wet) {
    SpotSolution[] cases = new SpotSolution[firm + soft + wet];
    for (int i = 0; i < cases.length; i++) {
      cases[i] = new SpotSolution();
      cases[i].clear(0);
      cases[i].staysSoft = i >= firm;
      if (i < firm + soft) {
        cases[i].milestoneS[Milestone.DRY_THROUGH.ordinal()] = 1e5;
      }
    }
    return cases;
  }
}
