package starchfilm.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.Setting;
import starchfilm.casting.trial.Observations;
import starchfilm.casting.trial.ObservedFault;
import starchfilm.casting.trial.ObservedFault.Kind;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.forecast.TrialForecast;
import starchfilm.forecast.TrialForecaster;

/**
 * What faults teach together is told only where chance would seldom part the plates as clearly: the
 * probabilities are counted by hand.
 */
class TaughtTest {
  private static final TrialForecast ANY =
      new TrialForecaster(ParameterDistribution.textbook(), 20)
          .forecast(Seen.poured(Castings.USUAL));

  /** Two of five brittle, those with least glycerol: one in C(5, 2) = 10 by chance. */
  @Test
  void onePartingInTenIsTold() {
    assertThat(Taught.by(ofGlycerol(Kind.BRITTLE, 2, 0.1, 0.15, 0.3, 0.35, 0.4)))
        .containsExactly(
            "Of the 2 trials with 15 g or less of glycerol per 100 g dry starch, 2"
                + " cracked, broke apart or were brittle; of the other 3 none.");
  }

  /** Two of four: one in C(4, 2) = 6. */
  @Test
  void onePartingInSixIsNot() {
    assertThat(Taught.by(ofGlycerol(Kind.BRITTLE, 2, 0.1, 0.15, 0.3, 0.35))).isEmpty();
  }

  /** One of twelve would come by chance once in twelve, yet one plate is no lesson. */
  @Test
  void onePlateIsNoLesson() {
    assertThat(
            Taught.by(
                ofGlycerol(
                    Kind.BRITTLE,
                    1,
                    0.1,
                    0.2,
                    0.21,
                    0.22,
                    0.23,
                    0.24,
                    0.25,
                    0.26,
                    0.27,
                    0.28,
                    0.29,
                    0.3)))
        .isEmpty();
  }

  @Test
  void stickyFilmTeachesFromTheOtherSide() {
    assertThat(Taught.by(ofGlycerol(Kind.STICKY, 3, 0.6, 0.55, 0.5, 0.3, 0.25, 0.2)))
        .containsExactly(
            "Of the 3 trials with 50 g or more of glycerol per 100 g dry starch, 3"
                + " were sticky; of the other 3 none.");
  }

  /** The first so many trials show the fault. */
  private static List<TrialForecast> ofGlycerol(Kind kind, int faulty, double... levels) {
    List<TrialForecast> trials = new ArrayList<>();
    for (double level : levels) {
      Casting casting = Seen.usual(Setting.GLYCEROL, level);
      Trial trial =
          trials.size() < faulty ? Seen.poured(casting, Seen.fault(kind)) : Seen.poured(casting);
      trials.add(of(trial));
    }
    return trials;
  }

  private static TrialForecast of(Trial trial) {
    return new TrialForecast(
        trial,
        trial.casting().paste(),
        trial.casting().composition(),
        ANY.film(),
        ANY.drying(),
        ANY.risks(),
        ANY.weighed());
  }

  @Test
  void theBestTrialHasTheBestRatingThenTheFewestFaultsThenIsTheLast() {
    TrialForecast poor = rated(2);
    TrialForecast oneFault = rated(4, Kind.CURLED);
    TrialForecast twoFaults = rated(4, Kind.CURLED, Kind.STICKY);
    TrialForecast alike = rated(4, Kind.CLOUDY);

    assertThat(BestTrial.of(List.of(oneFault, poor))).containsSame(oneFault);
    assertThat(BestTrial.of(List.of(oneFault, twoFaults))).containsSame(oneFault);
    assertThat(BestTrial.of(List.of(twoFaults, oneFault))).containsSame(oneFault);
    assertThat(BestTrial.of(List.of(oneFault, alike))).containsSame(alike);
  }

  private static TrialForecast rated(int rating, Kind... faults) {
    List<ObservedFault> seen = List.of(faults).stream().map(Seen::fault).toList();
    return of(
        Seen.poured(
            Castings.USUAL,
            new Observations(
                List.of(),
                seen,
                List.of(),
                List.of(),
                OptionalInt.of(rating),
                List.of(),
                List.of())));
  }
}
