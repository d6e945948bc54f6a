package starchfilm.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.Weighing;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;

/** The most likely deviations of one plate, held against what makes them the most likely. */
class PlateFitTest {
  private static final SharedParameters TEXTBOOK = SharedParameters.untaught();

  private record Fitted(PlateModel plate, Normal before, PlateFit fit) {
    static Fitted of(Trial trial) {
      PlateModel plate = new PlateModel(trial, trial.seen().weighings());
      Normal before = plate.before(TEXTBOOK);
      return new Fitted(plate, before, PlateFit.of(plate.readings(), before));
    }

    double sigmasOff(int reading) {
      return fit.residualsKg().getEntry(reading) / plate.readings().get(reading).sdKg();
    }

    /** Where the prior would still move the deviations: from them to its mean. */
    RealVector priorsPull() {
      return new LUDecomposition(before.covariance())
          .getSolver()
          .solve(before.mean().subtract(fit.deviations()));
    }

    /** How far a step to the posterior's top would still go, in its standard deviations. */
    double stillToGo() {
      RealVector slope = fit.slope().add(priorsPull());
      return Math.sqrt(slope.dotProduct(fit.posterior(before).covariance().operate(slope)));
    }

    /** Minus the logarithm of the posterior of Student's t with 4 degrees of freedom. */
    double surprise(RealVector deviations) {
      double[] expected = plate.readings().expectedKg(deviations.toArray());
      RealVector fromMean = deviations.subtract(before.mean());
      double sum =
          fromMean.dotProduct(new LUDecomposition(before.covariance()).getSolver().solve(fromMean))
              / 2;
      for (int i = 0; i < expected.length; i++) {
        double r =
            (plate.readings().get(i).massKg() - expected[i]) / plate.readings().get(i).sdKg();
        sum += 2.5 * Math.log1p(r * r / 4);
      }
      return sum;
    }
  }

  private static Trial plate(long seed, double... shares) {
    ParameterSample truth =
        ParameterSample.NONE
            .with(UncertainParameter.AIR_SIDE, Math.log(0.7))
            .with(UncertainParameter.DIFFUSIVITY, Math.log(1.4));
    return SyntheticPlates.dried(new SyntheticPlates(seed).any("shed"), truth, shares);
  }

  /** The same plate with one of its weighings off by so many grams. */
  private static Trial slipped(Trial trial, int weighing, double grams) {
    List<Weighing> weighings = new ArrayList<>(trial.seen().weighings());
    Weighing was = weighings.get(weighing);
    weighings.set(
        weighing, new Weighing(was.timeS(), was.filmMassKg() + grams / 1000, was.massSdKg()));
    return SyntheticPlates.weighed(trial, weighings);
  }

  /** With a slip of the pen and without, what the weighings would move the prior holds back. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 3, -12, 25, 40})
  void atTheBestFitWeighingsAndPriorBalance(double slipG) {
    for (long seed = 1; seed <= 6; seed++) {
      Fitted fitted = Fitted.of(slipped(plate(seed, 0.1, 0.3, 0.45, 0.6, 0.75, 0.9), 2, slipG));

      assertThat(fitted.fit().slope().getNorm()).isPositive();
      assertThat(fitted.stillToGo()).as("plate %s", seed).isLessThan(0.15);
    }
  }

  /** A tenth of a posterior standard deviation aside in any direction is less likely. */
  @ParameterizedTest
  @ValueSource(doubles = {0, -12, 40})
  void theBestFitIsTheMostLikelyWithStudentsErrors(double slipG) {
    Fitted fitted = Fitted.of(slipped(plate(9, 0.15, 0.3, 0.45, 0.6, 0.75, 0.9), 3, slipG));
    RealMatrix wide = fitted.fit().posterior(fitted.before()).lower();
    double best = fitted.surprise(fitted.fit().deviations());
    for (int i = 0; i < VarianceShares.COUNT; i++) {
      for (double aside : new double[] {-0.5, 0.5}) {
        RealVector there =
            fitted.fit().deviations().add(wide.getColumnVector(i).mapMultiply(aside));
        assertThat(fitted.surprise(there)).as("%s by %s", i, aside).isGreaterThan(best);
      }
    }
  }

  /** Student's t with 4 degrees of freedom: r sigmas off counts {@code 5/(4 + r^2)}. */
  @Test
  void aReadingCountsTheLessTheFartherItIsOff() {
    Fitted fitted = Fitted.of(slipped(plate(4, 0.15, 0.3, 0.45, 0.6, 0.75, 0.9), 1, 25));

    for (int i = 0; i < 6; i++) {
      assertThat(fitted.fit().weights().getEntry(i))
          .isCloseTo(5 / (4 + Math.pow(fitted.sigmasOff(i), 2)), within(1e-9));
    }
    assertThat(fitted.fit().doubted()).containsExactly(1);
    assertThat(fitted.sigmasOff(1)).isGreaterThan(3.6);
  }

  /** What the weighings bind is {@code J'WJ}, J by differences of whole simulations. */
  @Test
  void whatTheWeighingsBindIsThatOfTheirSlopes() {
    Fitted fitted = Fitted.of(slipped(plate(4, 0.15, 0.3, 0.45, 0.6, 0.75, 0.9), 1, 25));
    PlateReadings readings = fitted.plate().readings();
    RealMatrix information =
        MatrixUtils.createRealMatrix(VarianceShares.COUNT, VarianceShares.COUNT);
    RealMatrix slopes = MatrixUtils.createRealMatrix(6, VarianceShares.COUNT);
    for (int factor = 0; factor < VarianceShares.COUNT; factor++) {
      double step = 0.2 * VarianceShares.factor(factor).spread();
      double[] more = fitted.fit().deviations().toArray();
      double[] less = more.clone();
      more[factor] += step;
      less[factor] -= step;
      for (int i = 0; i < 6; i++) {
        slopes.setEntry(
            i, factor, (readings.expectedKg(more)[i] - readings.expectedKg(less)[i]) / (2 * step));
      }
    }
    for (int i = 0; i < 6; i++) {
      RealVector row = slopes.getRowVector(i);
      double weight = fitted.fit().weights().getEntry(i) / Math.pow(readings.get(i).sdKg(), 2);
      information = information.add(row.outerProduct(row).scalarMultiply(weight));
    }
    double most = information.getNorm();
    for (int i = 0; i < VarianceShares.COUNT; i++) {
      for (int j = 0; j < VarianceShares.COUNT; j++) {
        assertThat(fitted.fit().information().getEntry(i, j))
            .isCloseTo(information.getEntry(i, j), within(0.03 * most));
      }
    }
  }

  /** A scale ten times as fine binds the plate more tightly, and is followed more closely. */
  @Test
  void aReadingThatWeighsMoreCountsMore() {
    Trial coarse = plate(5, 0.1, 0.2);
    List<Weighing> finer =
        coarse.seen().weighings().stream()
            .map(w -> new Weighing(w.timeS(), w.filmMassKg() - 0.004, 0.0001))
            .toList();
    List<Weighing> coarser =
        finer.stream().map(w -> new Weighing(w.timeS(), w.filmMassKg(), 0.01)).toList();
    Fitted fine = Fitted.of(SyntheticPlates.weighed(coarse, finer));
    Fitted rough = Fitted.of(SyntheticPlates.weighed(coarse, coarser));

    assertThat(Math.abs(fine.fit().residualsKg().getEntry(1)))
        .isLessThan(0.5 * Math.abs(rough.fit().residualsKg().getEntry(1)));
    for (int i = 0; i < VarianceShares.COUNT; i++) {
      assertThat(fine.fit().posterior(fine.before()).sd(i))
          .isLessThanOrEqualTo(rough.fit().posterior(rough.before()).sd(i) * (1 + 1e-9))
          .isLessThanOrEqualTo(fine.before().sd(i) * (1 + 1e-6));
    }
  }

  /** A reading that its maker confirmed counts in full, and pulls the fit to itself. */
  @Test
  void aConfirmedReadingCountsInFullHoweverFarItIsOff() {
    Trial slipped = slipped(plate(4, 0.15, 0.3, 0.45, 0.6, 0.75, 0.9), 1, 25);
    List<Weighing> weighings = new ArrayList<>(slipped.seen().weighings());
    Weighing slip = weighings.get(1);
    weighings.set(1, new Weighing(slip.timeS(), slip.filmMassKg(), slip.massSdKg(), true, true));
    Normal before = new PlateModel(slipped, weighings).before(TEXTBOOK);
    PlateReadings trusted =
        new PlateReadings(slipped.casting(), weighings, Double.POSITIVE_INFINITY, true, () -> {});
    PlateFit fit = PlateFit.of(trusted, before);
    Fitted unconfirmed = Fitted.of(slipped);

    assertThat(fit.weights().getEntry(1)).isEqualTo(1);
    assertThat(fit.residualsKg().getEntry(1))
        .isLessThan(0.8 * unconfirmed.fit().residualsKg().getEntry(1));
    assertThat(trusted.get(0).trusted()).isFalse();
  }

  /** Begun from its own answer, a fit stays where it is. */
  @Test
  void fittedAgainItStaysWhereItIs() {
    Fitted fitted = Fitted.of(slipped(plate(4, 0.15, 0.3, 0.45, 0.6, 0.75, 0.9), 1, 25));
    PlateFit again = fitted.fit().again(fitted.plate().readings(), fitted.before());
    for (int i = 0; i < VarianceShares.COUNT; i++) {
      assertThat(again.deviations().getEntry(i))
          .isCloseTo(
              fitted.fit().deviations().getEntry(i),
              within(0.05 * VarianceShares.factor(i).spread()));
    }
  }

  private static Trial untared(Trial trial, double offKg) {
    return SyntheticPlates.weighed(
        trial,
        trial.seen().weighings().stream()
            .map(w -> new Weighing(w.timeS(), w.filmMassKg() + offKg, w.massSdKg(), false, false))
            .toList());
  }

  /**
   * Where the tare is unknown, only losses tell: the level of what is left of the misses is 0 by
   * the weights that those misses give, a slip of the pen among them counts little.
   */
  @Test
  void withoutATareOnlyTheLossesTell() {
    Fitted tared = Fitted.of(plate(4, 0.1, 0.2, 0.3, 0.45, 0.6, 0.75, 0.9));
    Fitted bare =
        Fitted.of(untared(slipped(plate(4, 0.1, 0.2, 0.3, 0.45, 0.6, 0.75, 0.9), 3, 25), 0.004));
    int air = UncertainParameter.AIR_SIDE.ordinal();
    double level = 0;
    for (int i = 0; i < 7; i++) {
      assertThat(bare.fit().weights().getEntry(i))
          .isCloseTo(5 / (4 + Math.pow(bare.sigmasOff(i), 2)), within(0.01));
      level +=
          bare.fit().weights().getEntry(i)
              * bare.sigmasOff(i)
              / bare.plate().readings().get(i).sdKg();
    }
    assertThat(level).isCloseTo(0, within(1e-6));
    assertThat(bare.fit().doubted()).containsExactly(3);
    assertThat(bare.stillToGo()).isLessThan(0.15);
    assertThat(bare.fit().deviations().getEntry(air))
        .isCloseTo(tared.fit().deviations().getEntry(air), within(0.05));
    assertThat(bare.fit().posterior(bare.before()).sd(air))
        .isGreaterThan(tared.fit().posterior(tared.before()).sd(air));
  }

  /** A plate that takes the water off three times as slowly is believed, if it says so often. */
  @Test
  void aPlateFarFromTheTextbookIsFollowedThere() {
    ParameterSample slow =
        ParameterSample.NONE.with(UncertainParameter.AIR_SIDE, Math.log(1 / 3.0));
    Trial plate =
        SyntheticPlates.dried(new SyntheticPlates(2).any("shed"), slow, 0.1, 0.2, 0.3, 0.5);
    Fitted fitted = Fitted.of(plate);
    assertThat(fitted.fit().deviations().getEntry(UncertainParameter.AIR_SIDE.ordinal()))
        .isLessThan(-2 * UncertainParameter.AIR_SIDE.spread());
    assertThat(fitted.fit().doubted()).isEmpty();
  }

  /** Most of a search is solving the plate: one that fits is solved few times. */
  @Test
  void aSoundPlateIsSolvedFewTimes() {
    AtomicInteger solved = new AtomicInteger();
    Trial sound = plate(4, 0.1, 0.3, 0.45, 0.6, 0.75, 0.9);
    PlateModel model = new PlateModel(sound, sound.seen().weighings(), solved::incrementAndGet);
    PlateFit fit = PlateFit.of(model.readings(), model.before(TEXTBOOK));
    // Four times its slopes by eight factors, and twice as many places.
    assertThat(solved.get()).isLessThanOrEqualTo(4 * VarianceShares.COUNT + 8);
    solved.set(0);
    fit.again(model.readings(), model.before(TEXTBOOK));
    assertThat(solved.get()).isLessThanOrEqualTo(VarianceShares.COUNT + 1);
  }
}
