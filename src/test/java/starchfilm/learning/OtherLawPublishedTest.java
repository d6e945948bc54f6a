package starchfilm.learning;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.Weighing;
import starchfilm.drying.PlateSimulation;
import starchfilm.drying.uncertainty.DrawnCases;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.ParameterSample;

/**
 * Plates that dry by another law than the model's: the two periods of the textbooks of drying, a
 * constant rate down to a critical moisture and from there a rate in proportion to the moisture
 * that is still free (Geankoplis 1993, Transport Processes and Unit Operations, 3rd ed., sections
 * 9.6 and 9.7, recalled). Four weighings of the first half are taken in; those of the second half
 * are held out. The next one lies in its 80 % range.
 *
 * <p>A miss: at the end the law dries sooner than any plate of the model, whose middle is 6 to 11 g
 * too heavy of 272 g poured; a twentieth is allowed.
 */
class OtherLawPublishedTest {
  private static final int DRAWS = 200;
  private static final double HOUR_S = 3_600;
  private static final double STEP_S = 60;

  @ParameterizedTest(name = "{0} g/h, critical moisture {1}, resting {2}")
  @CsvSource({"2.5, 0.6, 0.12", "4.0, 1.0, 0.12", "6.0, 1.5, 0.10", "9.0, 0.8, 0.10"})
  void weighingsOfTheFirstHalfForetellTheNextAndMissTheEndByATwentieth(
      double gramsPerHour, double criticalMoisture, double restingMoisture) {
    Trial bare = new SyntheticPlates(17).any("shed");
    double poured = bare.casting().pour().weighedKg().orElseThrow().value();
    double solids = poured * bare.casting().composition().drySolids();
    double rateKgPerS = gramsPerHour / 1000 / HOUR_S;
    double waterS = (poured - solids * (1 + criticalMoisture)) / rateKgPerS;
    double[] known =
        Arrays.stream(new double[] {0.15, 0.3, 0.45, 0.6}).map(s -> s * waterS).toArray();
    double[] heldOut = Arrays.stream(new double[] {0.75, 0.95, 1.1}).map(s -> s * waterS).toArray();
    List<Weighing> weighings = new ArrayList<>();
    for (double timeS : known) {
      weighings.add(
          new Weighing(
              timeS,
              massKg(timeS, poured, solids, rateKgPerS, criticalMoisture, restingMoisture),
              SyntheticPlates.SCALE_SD_KG));
    }
    Trial weighed = SyntheticPlates.weighed(bare, weighings);

    ParameterDistribution taught = Workshop.untaught(Path.of("")).drying(weighed).factors();

    double[][] likely = likelyMasses(weighed, taught, heldOut);
    double[] truths =
        Arrays.stream(heldOut)
            .map(at -> massKg(at, poured, solids, rateKgPerS, criticalMoisture, restingMoisture))
            .toArray();
    assertThat(truths[0]).isBetween(likely[0][DRAWS / 10], likely[0][DRAWS - 1 - DRAWS / 10]);
    for (int i = 1; i < truths.length; i++) {
      double tooHeavy = likely[i][DRAWS / 2] - truths[i];
      assertThat(tooHeavy).isBetween(0.0, 0.05 * poured);
    }
  }

  private static double massKg(
      double timeS, double poured, double solids, double rate, double critical, double resting) {
    double mass = poured;
    for (double t = 0; t < timeS; t += STEP_S) {
      double moisture = mass / solids - 1;
      double share = Math.min(1, (moisture - resting) / (critical - resting));
      mass -= rate * share * Math.min(STEP_S, timeS - t);
    }
    return mass;
  }

  private static double[][] likelyMasses(
      Trial trial, ParameterDistribution model, double[] timesS) {
    PlateSimulation plate = new PlateSimulation(trial.casting(), timesS);
    double[][] masses = new double[timesS.length][DRAWS];
    double[] one = new double[timesS.length];
    ParameterSample[] draws = DrawnCases.of(model, DRAWS);
    for (int draw = 0; draw < DRAWS; draw++) {
      plate.filmMassesKg(draws[draw], one);
      for (int i = 0; i < timesS.length; i++) {
        masses[i][draw] = one[i];
      }
    }
    for (double[] ofOneTime : masses) {
      Arrays.sort(ofOneTime);
    }
    return masses;
  }
}
