package starchfilm.jar.assay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import starchfilm.jar.reagent.Dose;
import starchfilm.jar.reagent.Reagent;
import starchfilm.jar.recovery.Alcohol;
import starchfilm.jar.recovery.OilBatch;
import starchfilm.jar.recovery.RecoveryBalance;
import starchfilm.jar.recovery.RecoveryLog;
import starchfilm.material.ingredient.VolkKaehler2018;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;

/** The jar by record and reading together, against sums done by hand and by textbook formulas. */
class JarPosteriorPublishedTest {
  private static final Estimate ROOM = Estimate.exact(293.15);
  private static final Estimate NONE = Estimate.exact(0);

  /**
   * 1,000 g of sunflower oil of saponification value 190.5 (middle of Codex CXS 210-1999, 187 to
   * 194) and acid value 0.3 mg KOH/g. By hand, KOH 56.105 and glycerol 92.094 g/mol (IUPAC 2021):
   * 190.2 g of KOH for the fat = 3.3901 mol, a third of it fat = 1.13003 mol, which binds 104.07 g
   * of glycerol. Of that 70 to 98 % come into the jar: 72.85 to 101.99 g; of a rectangle 8 cases in
   * 10 lie between 75.76 and 99.07 g, around 87.42 g. Agreement: the drawing, 0.3 g.
   */
  @Test
  void recordAloneIsTheBalanceDoneByHand() {
    RecoveryBalance balance = RecoveryBalance.of(log());
    Band pure =
        new JarPosterior(log().jarKg(), JarPrior.recovered(balance, 0), Optional.empty())
            .content()
            .pureGlycerolKg()
            .times(1000);

    assertThat(1000 * balance.boundGlycerolKg().value()).isCloseTo(104.07, within(0.02));
    assertThat(pure.low()).isCloseTo(75.76, within(0.3));
    assertThat(pure.middle()).isCloseTo(87.42, within(0.3));
    assertThat(pure.high()).isCloseTo(99.07, within(0.3));
  }

  /**
   * A rectangle known before and a normal reading give a normal distribution cut off at the
   * rectangle's ends (JCGM 101:2008, 6.4, with Bayes' theorem; Johnson, Kotz and Balakrishnan 1994,
   * Continuous Univariate Distributions, vol. 1, section 10.1): its quantile of p is that of {@code
   * F(a) + p (F(b) - F(a))} of the whole. The reading stands within, near and beyond the upper end.
   * Agreement: a twentieth of a standard deviation, from the drawing.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.55, 0.63, 0.66})
  void recordAndReadingGiveTheTruncatedNormalOfTheTexts(double read) {
    RecoveryLog log = log();
    RecoveryBalance balance = RecoveryBalance.of(log);
    // Methanol, salt and soap of this made-up batch are taken out, so that nothing else is spread.
    double kgPerM3 = new VolkKaehler2018().kgPerM3(read, ROOM.value());
    double sdKgPerM3 = 5;
    DensityReading reading = new DensityReading(new Estimate(kgPerM3, sdKgPerM3), ROOM);
    Band jar =
        new JarPosterior(log.jarKg(), plain(balance), Optional.of(reading)).content().glycerol();
    double slope =
        (new VolkKaehler2018().kgPerM3(read + 0.01, ROOM.value())
                - new VolkKaehler2018().kgPerM3(read - 0.01, ROOM.value()))
            / 0.02;
    double sd = Math.hypot(sdKgPerM3, new VolkKaehler2018().kgPerM3Sd()) / slope;
    NormalDistribution whole = new NormalDistribution(read, sd);
    double bound = 0.10407 / 0.160;
    double below = whole.cumulativeProbability(0.70 * bound);
    double within = whole.cumulativeProbability(0.98 * bound) - below;

    for (double[] point :
        List.of(
            new double[] {0.1, jar.low()},
            new double[] {0.5, jar.middle()},
            new double[] {0.9, jar.high()})) {
      assertThat(point[1])
          .isCloseTo(
              whole.inverseCumulativeProbability(below + point[0] * within), within(sd / 20));
    }
  }

  private static JarPrior plain(RecoveryBalance balance) {
    return JarPrior.recovered(
        new RecoveryBalance(
            Estimate.exact(balance.boundGlycerolKg().value()),
            balance.alcoholPerFat(),
            balance.neutralisation(),
            NONE,
            NONE,
            NONE,
            balance.leastRecovered(),
            balance.mostRecovered(),
            balance.glycerolOfCrude(),
            balance.alcoholLeft(),
            false,
            false),
        0);
  }

  private static RecoveryLog log() {
    return new RecoveryLog(
        new OilBatch(Estimate.exact(1), Estimate.exact(190.5), Estimate.exact(0.3)),
        Alcohol.METHANOL,
        Estimate.exact(0.2),
        Dose.weighed(Reagent.SODIUM_HYDROXIDE, Estimate.exact(0.0035), Estimate.exact(1)),
        Optional.empty(),
        Estimate.exact(1),
        Optional.of(new Dose(Reagent.HYDROCHLORIC_ACID, Estimate.exact(0.0875))),
        true,
        NONE,
        Optional.empty(),
        NONE,
        List.of(),
        Estimate.exact(0.160));
  }
}
