package starchfilm.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import starchfilm.advice.OutcomeDifference.Agreement;
import starchfilm.casting.Casting;
import starchfilm.casting.Spot;
import starchfilm.casting.trial.Trial;
import starchfilm.change.Change;
import starchfilm.drying.DryingForecast;
import starchfilm.drying.DryingForecaster;
import starchfilm.drying.Milestone;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.film.Feel;
import starchfilm.film.FilmForecaster;
import starchfilm.film.LearntFilm;
import starchfilm.film.risk.PlateRisks;
import starchfilm.film.risk.RiskLevel;
import starchfilm.forecast.CastingForecaster;
import starchfilm.forecast.PlateParameters;
import starchfilm.forecast.SameForAll;
import starchfilm.forecast.TrialForecast;
import starchfilm.forecast.TrialForecaster;
import starchfilm.forecast.TrialKnowledge;
import starchfilm.numerics.evidence.Band;

/** Each trial of the demo was made to fail in a known way; the advice finds that way. */
class GardenAdviceTest {
  @Test
  void theDeepTrayStayedWetAndMouldedBecauseItWasDeepAndTheShedIsSlow() {
    TrialAdvice advice = Garden.adviceAfter(1);
    assertThat(causes(advice, 0)).startsWith(Cause.POURED_TOO_THICK).contains(Cause.SLOW_ROOM);
    assertThat(causes(advice, 1)).startsWith(Cause.POURED_TOO_THICK);
    NextTrial next = advice.next().orElseThrow();
    assertThat(next.adjustments()).contains(Change.POUR_THINNER);
    assertThat(next.after().risks().mould().level()).isLessThan(RiskLevel.LIKELY);
  }

  @Test
  void theFilmWithLittleGlycerolCrackedForThatAndGetsMore() {
    TrialAdvice advice = Garden.adviceAfter(2);
    assertThat(causes(advice, 0)).startsWith(Cause.TOO_LITTLE_GLYCEROL);
    assertThat(causes(advice, 1)).startsWith(Cause.TOO_LITTLE_GLYCEROL);
    NextTrial next = advice.next().orElseThrow();
    assertThat(next.adjustments()).containsExactly(Change.MORE_GLYCEROL);
    assertThat(next.after().film().feel()).isEqualTo(Feel.FLEXIBLE);
    assertThat(next.after().risks().crack().level()).isLessThan(RiskLevel.LIKELY);
  }

  @Test
  void theStickyFilmGetsLessGlycerol() {
    TrialAdvice advice = Garden.adviceAfter(3);
    assertThat(causes(advice, 0)).startsWith(Cause.TOO_MUCH_GLYCEROL);
    assertThat(causes(advice, 1)).contains(Cause.TOO_MUCH_GLYCEROL, Cause.PLATE_HOLDS_ON);
    NextTrial next = advice.next().orElseThrow();
    assertThat(next.adjustments()).containsExactly(Change.LESS_GLYCEROL);
    assertThat(next.after().film().feel()).isNotIn(Feel.STICKY, Feel.BRITTLE);
  }

  @Test
  void theWindowWithoutAFaultIsLeftAlone() {
    TrialAdvice advice = Garden.adviceAfter(4);
    assertThat(advice.verdict())
        .isEqualTo("No fault is noted, so there is no reason to change it.");
    assertThat(advice.diagnoses()).isEmpty();
    assertThat(advice.next()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 5, 6})
  void theVerdictCountsTheChanges(int number) {
    TrialAdvice advice = Garden.adviceAfter(number);
    assertThat(advice.verdict())
        .isEqualTo(
            advice.next().orElseThrow().changes().size() == 1
                ? "Change one thing, so that you can see what it did."
                : "Change these two things and nothing else, so that you can see what they did.");
  }

  @Test
  void theUnevenPlateIsLevelled() {
    TrialAdvice advice = Garden.adviceAfter(5);
    assertThat(causes(advice, 0)).startsWith(Cause.POURED_UNEVENLY);
    assertThat(advice.next().orElseThrow().adjustments()).containsExactly(Change.LEVEL_THE_PLATE);
  }

  @Test
  void theCurledFilmDriedFastAndUnevenly() {
    assertThat(causes(Garden.adviceAfter(6), 0))
        .contains(Cause.DRIED_TOO_FAST, Cause.POURED_UNEVENLY)
        .doesNotContain(Cause.POURED_TOO_THICK, Cause.MOVED_TOO_EARLY);
  }

  @ParameterizedTest
  @ValueSource(ints = {7, 8, 9})
  void aRecipeThatNobodyCastTellsNothing(int number) {
    TrialAdvice advice = Garden.adviceAfter(number);
    assertThat(advice.verdict()).contains("there is nothing to go on");
    assertThat(advice.next()).isEmpty();
  }

  @Test
  void theWholeNotebookGoesOnFromItsBestTrialWithOneChange() {
    NotebookAdvice advice = Garden.ADVISER.over(Garden.FORECASTS).orElseThrow();
    assertThat(advice.from()).isSameAs(Garden.trial(4));
    assertThat(advice.verdict()).startsWith("It is the best rated, 5 of 5, and has no fault");
    NextTrial next = advice.next().orElseThrow();
    assertThat(next.changes()).hasSize(1);
    assertThat(next.after().risks().crack().level())
        .isLessThanOrEqualTo(next.before().risks().crack().level());
    assertThat(next.newCautions()).isEmpty();
    // Each fault was seen on one plate or two: too few for a lesson.
    assertThat(advice.taught()).isEmpty();
  }

  @Test
  void asItWasAndWithTheChangeAreWorkedOutFromTheSameKnowledge() {
    // As after weighings of a plate that dries at half the textbook's pace.
    double[] slowAir = new double[UncertainParameter.values().length];
    slowAir[UncertainParameter.AIR_SIDE.ordinal()] = Math.log(0.5);
    List<TrialForecast> weighed =
        List.of(
            new TrialForecaster(
                    new SameForAll(
                        ParameterDistribution.learnt(
                            slowAir, ParameterDistribution.textbook().covariance())))
                .forecast(Garden.trial(4).trial()));

    NextTrial next = Garden.ADVISER.over(weighed).orElseThrow().next().orElseThrow();

    NextTrial plain =
        Garden.ADVISER.over(List.of(Garden.trial(4))).orElseThrow().next().orElseThrow();
    assertThat(next.before().dryThroughS()).isEqualTo(plain.before().dryThroughS());
    assertThat(next.after().dryThroughS().middle())
        .isLessThan(next.before().dryThroughS().middle());
  }

  @Test
  void nothingIsToldOverRecipesThatNobodyCast() {
    assertThat(Garden.ADVISER.over(Garden.FORECASTS.subList(6, 9))).isEmpty();
  }

  @Test
  void theFourthWasBetterThanTheThirdForItsGlycerol() {
    Contrast contrast = Garden.ADVISER.contrast(Garden.trial(3), Garden.trial(4));
    assertThat(contrast.verdict()).isEqualTo("Better: rated 2 → 5 of 5.");
    assertThat(contrast.notNoted()).containsExactly("unevenness");
    assertThat(contrast.outcomes().get(0).seen())
        .isEqualTo("“sticky” was noted before and is not now.");
    assertThat(contrast.outcomes().get(0).agreement()).isEqualTo(Agreement.AGREES);
    assertThat(contrast.outcomes().get(0).model())
        .contains("glycerol per 100 g dry starch 64 g → 29 g alone does nearly all of it");
  }

  @Test
  void theFifthDiffersFromTheFourthInRoomAndLevelAlone() {
    Contrast contrast = Garden.ADVISER.contrast(Garden.trial(4), Garden.trial(5));
    assertThat(contrast.verdict()).isEqualTo("Worse: rated 5 → 4 of 5.");
    assertThat(contrast.differences())
        .extracting(Difference::what)
        .containsExactly("unevenness", "room");
    assertThat(contrast.differences().get(1).effects())
        .extracting(ExpectedEffect::what)
        .contains("dry through");
    assertThat(contrast.outcomes())
        .hasSizeGreaterThan(1)
        .allMatch(outcome -> outcome.agreement() == Agreement.AGREES);
  }

  @Test
  void aTrialAgainstItselfShowsNoDifference() {
    Contrast contrast = Garden.ADVISER.contrast(Garden.trial(4), Garden.trial(4));
    assertThat(contrast.differences()).isEmpty();
    assertThat(contrast.verdict()).isEqualTo("Rated the same: 5 of 5.");
    assertThat(contrast.outcomes()).allMatch(each -> each.agreement() == Agreement.AGREES);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 5, 6})
  void theEffectToldIsAFreshForecastOfTheChange(int number) {
    NextTrial next = Garden.adviceAfter(number).next().orElseThrow();
    Casting setup = next.setup();
    DryingForecaster drying =
        new DryingForecaster(ParameterDistribution.textbook(), DryingForecaster.DRAWS);
    assertThat(next.after().dryThroughS()).isEqualTo(dryThroughS(drying.forecast(setup)));
    assertThat(next.after().film()).isEqualTo(new FilmForecaster().forecast(setup));
    assertThat(next.after().risks())
        .isEqualTo(PlateRisks.of(setup, ParameterDistribution.textbook()));
    assertThat(next.before().dryThroughS()).isEqualTo(dryThroughS(Garden.trial(number).drying()));
    next.effects().forEach(effect -> assertThat(next.sentence()).contains(effect.clause()));
  }

  /**
   * What was learnt of a room is asked for by the changed set-up, not by the trial it comes from.
   */
  @Test
  void theFactorsOfTheRoomThatIsProposedAreUsed() {
    ParameterDistribution kitchen = airSide(1.3);
    ParameterDistribution shed = airSide(0.8);
    Adviser adviser = new Adviser(byRoom(name -> name.equals("workroom") ? kitchen : shed));
    for (int trial : new int[] {1, 2}) {
      NextTrial next = adviser.after(Garden.trial(trial), Garden.trials()).next().orElseThrow();
      boolean inKitchen = next.setup().place().name().equals("workroom");
      assertThat(next.after().dryThroughS())
          .isEqualTo(
              dryThroughS(
                  new DryingForecaster(inKitchen ? kitchen : shed, DryingForecaster.DRAWS)
                      .forecast(next.setup())));
    }
  }

  private static ParameterDistribution airSide(double times) {
    double[] mean = new double[UncertainParameter.values().length];
    mean[UncertainParameter.AIR_SIDE.ordinal()] = Math.log(times);
    return ParameterDistribution.learnt(mean, ParameterDistribution.textbook().covariance());
  }

  @Test
  void theSameNotebookGivesTheSameAdvice() {
    List<TrialAdvice> once = IntStream.rangeClosed(1, 6).mapToObj(Garden::adviceAfter).toList();
    List<TrialAdvice> again =
        IntStream.rangeClosed(1, 6).parallel().mapToObj(Garden::adviceAfter).toList();
    for (int i = 0; i < once.size(); i++) {
      assertThat(again.get(i).diagnoses()).isEqualTo(once.get(i).diagnoses());
      assertThat(again.get(i).next().map(NextTrial::sentence))
          .isEqualTo(once.get(i).next().map(NextTrial::sentence));
    }
  }

  private static List<Cause> causes(TrialAdvice advice, int fault) {
    return advice.diagnoses().get(fault).suspicions().stream().map(Suspicion::cause).toList();
  }

  private static Band dryThroughS(DryingForecast drying) {
    return drying.at(Spot.THICK_SPOT).at(Milestone.DRY_THROUGH).timeS();
  }

  private static TrialKnowledge byRoom(Function<String, ParameterDistribution> factors) {
    return new TrialKnowledge() {
      @Override
      public PlateParameters drying(Trial trial) {
        return atThePour(trial);
      }

      @Override
      public PlateParameters atThePour(Trial trial) {
        return in(trial.casting());
      }

      private PlateParameters in(Casting casting) {
        return new PlateParameters(factors.apply(casting.place().name()), false);
      }

      @Override
      public LearntFilm film(Trial trial) {
        return LearntFilm.NOTHING;
      }

      @Override
      public CastingForecaster changed(Trial trial, Casting changed) {
        return new CastingForecaster(in(changed), new FilmForecaster());
      }
    };
  }
}
