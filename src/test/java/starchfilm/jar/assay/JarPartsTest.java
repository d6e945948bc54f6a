package starchfilm.jar.assay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import starchfilm.jar.recovery.RecoveryBalance;
import starchfilm.material.ingredient.Hoyt1934;
import starchfilm.material.ingredient.VolkKaehler2018;
import starchfilm.numerics.evidence.Estimate;

/** What an assay is put together from, each part by hand. */
class JarPartsTest {
  private static final Estimate AT_20_C = Estimate.exact(293.15);
  private static final Dissolved SALT = new Dissolved(0.01, 0, 0);
  private static final Dissolved SOAP = new Dissolved(0, 0.01, 0);
  private static final Dissolved ALCOHOL = new Dissolved(0, 0, 0.01);

  /**
   * 80 % glycerol, 1,208.5 kg/m3 at 20 °C, where 998 to 1,261 is 0 to 100 %. The other 99 % of a
   * jar with 1 % of salt of 0.325 L/kg has 0.99/(1/1208.5 - 0.00000325) = 1,201.1 kg/m3: 2.8 % more
   * is shown. Soap of 1.04 L/kg and alcohol of 1.23 L/kg make it lighter.
   */
  @Test
  void saltMakesADensityShowMoreSoapAndAlcoholLess() {
    DensityReading reading = new DensityReading(Estimate.exact(1208.5), AT_20_C);
    assertThat(reading.falseGlycerol(SALT)).isCloseTo(0.0280, within(2e-4));
    assertThat(reading.falseGlycerol(SOAP)).isCloseTo(-0.0119, within(2e-4));
    assertThat(reading.falseGlycerol(ALCOHOL)).isCloseTo(-0.0227, within(2e-4));
    assertThat(reading.falseGlycerol(Dissolved.NOTHING)).isCloseTo(0, within(1e-12));
  }

  /** 0.145 and 0.075 of index a share of salt and soap, over 1.47399 - 1.33303 of Hoyt's table. */
  @Test
  void saltAndSoapMakeAnIndexShowMoreAndAlcoholCountsAsWater() {
    RefractometerReading reading = new RefractometerReading(Estimate.exact(1.44), AT_20_C);
    assertThat(reading.falseGlycerol(SALT)).isCloseTo(0.00145 / 0.14096, within(1e-5));
    assertThat(reading.falseGlycerol(SOAP)).isCloseTo(0.00075 / 0.14096, within(1e-5));
    assertThat(reading.falseGlycerol(ALCOHOL)).isZero();
  }

  /**
   * A jar of 77 % glycerol, 20 % water, 1 % of each of the three: what reads so, on average, is 77
   * % again. By hand, in m3/kg: 0.97 of a mixture of 79.38 %, 1,206.9 kg/m3, and 0.00325, 0.0104,
   * 0.0123 L: 1,203.4 kg/m3.
   */
  @Test
  void whatElseIsInAJarIsTakenOffItsDensity() {
    double mixture = new VolkKaehler2018().kgPerM3(0.77 / 0.97, 293.15);
    double volume = 0.97 / mixture + 0.01 * (0.325e-3 + 1.04e-3 + 1.23e-3);
    DensityReading reading = new DensityReading(Estimate.exact(1 / volume), AT_20_C);
    Dissolved all = new Dissolved(0.01, 0.01, 0.01);
    Inversion table = reading.inversion();
    assertThat(mean(draws -> reading.glycerol(table, all, draws))).isCloseTo(0.77, within(0.001));
  }

  /** The same of an index: 0.97 is none of the salt and soap, alcohol reads as water. */
  @Test
  void whatElseIsInAJarIsTakenOffItsIndex() {
    RefractometerReading reading =
        new RefractometerReading(Estimate.exact(1.4429 + 0.00145 + 0.00075), AT_20_C);
    Dissolved all = new Dissolved(0.01, 0.01, 0.01);
    Inversion table = reading.inversion();
    assertThat(mean(draws -> reading.glycerol(table, all, draws)))
        .isCloseTo(0.98 * 0.8, within(0.001));
  }

  /**
   * A thermometer good to 2 K: glycerol expands by 0.4 per thousand a kelvin, 0.97 of the 2.7 kg/m3
   * that a per cent makes; the rule's own 0.31 kg/m3 beside it.
   */
  @Test
  void anUnsureTemperatureWidensADensity() {
    DensityReading reading = new DensityReading(Estimate.exact(1208.5), new Estimate(293.15, 2));
    Inversion table = reading.inversion();
    assertThat(sd(draws -> reading.glycerol(table, Dissolved.NOTHING, draws)))
        .isCloseTo(Math.hypot(0.967, 0.312) / 270, within(2e-4));
  }

  /** 2.04e-4 of index a kelvin at 80 %, 1.0e-4 + 1.3e-4 w; the table's own 1e-4 beside it. */
  @Test
  void anUnsureTemperatureWidensAnIndex() {
    RefractometerReading reading =
        new RefractometerReading(new Estimate(1.4429, 3e-4), new Estimate(293.15, 2));
    double index = Math.sqrt(4.08e-4 * 4.08e-4 + 1e-4 * 1e-4 + 3e-4 * 3e-4);
    Inversion table = reading.inversion();
    assertThat(sd(draws -> reading.glycerol(table, Dissolved.NOTHING, draws)))
        .isCloseTo(index / 0.1525, within(1e-4));
  }

  /** 252.5 g in 200 ml, known within 0.5 g and 1 ml: 1,262.5 kg/m3 within 0.54 %. */
  @Test
  void aWeighedVolumeHasADensity() {
    DensityReading reading =
        DensityReading.weighedVolume(
            new Estimate(0.2525, 0.0005), new Estimate(200e-6, 1e-6), AT_20_C);
    assertThat(reading.densityKgPerM3().value()).isCloseTo(1262.5, within(1e-6));
    assertThat(reading.densityKgPerM3().sd())
        .isCloseTo(1262.5 * Math.hypot(0.5 / 252.5, 1 / 200.0), within(1e-6));
  }

  @Test
  void readingsOfNothingAreRefused() {
    assertThatThrownBy(
            () ->
                DensityReading.weighedVolume(Estimate.exact(0), Estimate.exact(123.4e-6), AT_20_C))
        .hasMessage("mass and volume: 0 g and 123 ml given, allowed more than 0 of each");
    assertThatThrownBy(
            () -> DensityReading.weighedVolume(Estimate.exact(0.2), Estimate.exact(0), AT_20_C))
        .hasMessage("mass and volume: 200 g and 0 ml given, allowed more than 0 of each");
    for (double[] grams : new double[][] {{-1, 250, 300}, {50, 50, 300}, {50, 250, 50}}) {
      assertThatThrownBy(
              () ->
                  DensityReading.bottle(
                      Estimate.exact(grams[0] / 1000),
                      Estimate.exact(grams[1] / 1000),
                      Estimate.exact(grams[2] / 1000),
                      AT_20_C))
          .hasMessageStartingWith("bottle: " + (int) grams[0] + " g empty, " + (int) grams[1]);
    }
    assertThat(
            DensityReading.bottle(
                    Estimate.exact(0), Estimate.exact(0.2), Estimate.exact(0.24), AT_20_C)
                .densityKgPerM3()
                .value())
        .isCloseTo(1.2 * 998.05, within(0.1));
  }

  @ParameterizedTest
  @CsvSource({"14.9, false", "15, true", "30, true", "30.1, false"})
  void aJarIsReadAtTheTemperatureOfARoom(double celsius, boolean taken) {
    Estimate kelvin = Estimate.exact(celsius + 273.15);
    List<ThrowingCallable> readings =
        List.of(
            () -> new RefractometerReading(Estimate.exact(1.4), kelvin),
            () -> new DensityReading(Estimate.exact(1200), kelvin));
    for (ThrowingCallable reading : readings) {
      if (taken) {
        assertThatCode(reading).doesNotThrowAnyException();
      } else {
        assertThatThrownBy(reading)
            .hasMessageStartingWith(
                "temperature of the jar: "
                    + celsius
                    + " °C given, allowed 15 to 30 °C; let the jar");
      }
    }
  }

  @Test
  void aReadingThatNoMixtureGivesIsToldWhatAMixtureGives() {
    assertThat(new DensityReading(Estimate.exact(1300), AT_20_C).refusal())
        .startsWith(
            "density: 1300.0 kg/m3 given, allowed 998.0 kg/m3 (water) to 1261.1 kg/m3 (pure"
                + " glycerol) at 20.0 °C; read again without bubbles");
    assertThat(new RefractometerReading(Estimate.exact(1.52), AT_20_C).refusal())
        .isEqualTo(
            "refractive index: 1.5200 given, allowed 1.3330 (water) to 1.4740 (pure glycerol) at"
                + " 20.0 °C; set the zero with water, wipe the prism and read again");
  }

  /**
   * Half a kilogram that reads as 80 % once 4 % of salt are off: 0.96 of 80 % is glycerol, the rest
   * of the 96 % leaves; of alcohol there are at most 5 % in a recovered jar, 25 g.
   */
  @Test
  void whatAReadingLeavesIsWaterAndAlcohol() {
    JarReading reading = new RefractometerReading(Estimate.exact(1.4429 + 0.04 * 0.145), AT_20_C);
    JarPrior salty = JarPrior.reading(1, Estimate.exact(0.04), 0, 0);
    JarContent content =
        new JarPosterior(Estimate.exact(0.5), salty, Optional.of(reading)).content();
    assertThat(content.glycerol().middle()).isCloseTo(0.96 * 0.8, within(0.002));
    assertThat(content.stays().middle()).isCloseTo(0.04, within(1e-9));
    assertThat(content.volatiles().middle()).isCloseTo(0.96 * 0.2, within(0.002));
    assertThat(content.pureGlycerolKg().middle()).isCloseTo(0.48 * 0.8, within(0.001));
    JarPrior spirited = JarPrior.reading(1, Estimate.exact(0), 0, 0.05);
    JarPosterior posterior =
        new JarPosterior(
            Estimate.exact(0.5),
            spirited,
            Optional.of(new RefractometerReading(Estimate.exact(1.40), AT_20_C)));
    assertThat(posterior.mostAlcoholKg()).isBetween(0.0249, 0.025);
    assertThat(posterior.possible()).isEqualTo(1);
    assertThat(posterior.allowed()).isEqualTo(1);
  }

  /** Nobody pours less than nothing: of a jar of 100 g within 100 g no likely case is below 0. */
  @Test
  void noJarIsLighterThanNothing() {
    JarPrior label = JarPrior.label(Estimate.between(0.895, 0.905));
    JarContent content =
        new JarPosterior(new Estimate(0.1, 0.1), label, Optional.empty()).content();
    assertThat(content.pureGlycerolKg().low()).isPositive();
    assertThat(content.pureGlycerolKg().middle()).isGreaterThan(0.09);
  }

  /**
   * A refractometer counts alcohol as water, so a jar that reads 98 % glycerol has room for 2 % of
   * it: of cases with 0 to 5 %, two in five are possible.
   */
  @Test
  void thereIsNoMoreInAJarThanAllOfIt() {
    JarPosterior posterior =
        new JarPosterior(
            Estimate.exact(1),
            JarPrior.reading(1, Estimate.exact(0), 0, 0.05),
            Optional.of(
                new RefractometerReading(
                    Estimate.exact(new Hoyt1934().index(0.98, 293.15)), AT_20_C)));
    assertThat(posterior.allowed()).isCloseTo(0.4, within(0.02));
    assertThat(posterior.mostAlcoholKg()).isBetween(0.015, 0.035);
    assertThat(posterior.content().volatiles().low()).isGreaterThan(0.01);
  }

  /** A quarter of a kilogram that kept the salt, soap and acid of its batch, and some alcohol. */
  @Test
  void whatABatchLeftIsSharedOutOverItsJar() {
    RecoveryBalance balance = RecoveryBalance.of(RecoveryLogs.sunflower(List.of()));
    JarPrior prior = JarPrior.recovered(balance, 0.01);
    assertThat(mean(draws -> prior.beside().draw(0.25, draws).salt()))
        .isCloseTo(balance.saltKg().value() / 0.25, within(1e-4));
    assertThat(mean(draws -> prior.beside().draw(0.25, draws).fatty()))
        .isCloseTo((balance.soapKg().value() + balance.fattyAcidKg().value()) / 0.25, within(1e-3));
    assertThat(mean(draws -> prior.beside().draw(0.25, draws).alcohol()))
        .isCloseTo(0.005 / 0.25, within(3e-4));
  }

  @Test
  void onlyAClearJarIsReadAsItStands() {
    assertThat(Looks.CLEAR.whatToDo()).isEmpty();
    assertThat(Looks.MILKY.whatToDo()).contains("filter");
    assertThat(Looks.LAYERS.whatToDo()).contains("draw the clear lower layer off");
  }

  /** A rule that is a square: 0.3 reads 1.09, and back. Between its nodes it is read straight. */
  @Test
  void aReadingIsTurnedBackAlongItsTable() {
    Inversion table = new Inversion(w -> 1 + w * w);
    assertThat(table.water()).isEqualTo(1);
    assertThat(table.glycerol()).isEqualTo(2);
    for (double w : new double[] {0, 0.3, 0.7, 1}) {
      assertThat(table.mixture(1 + w * w)).isCloseTo(w, within(1e-12));
    }
    assertThat(table.mixture(1.25 + 0.25 * (0.505 * 0.505 - 0.25)))
        .isCloseTo(0.50125, within(1e-9));
    assertThat(table.mixture(0.999)).isNaN();
    assertThat(table.mixture(2.001)).isNaN();
  }

  /** Four in five jars stayed closed; one in five took up water, at most its own mass. */
  @ParameterizedTest
  @CsvSource({"0.90, 80.442", "0.70, 0.442", "0.4526, 0.442", "0.45, 0", "0.91, 0"})
  void aLabelAllowsForAJarThatStoodOpen(double glycerol, double density) {
    JarPrior prior = JarPrior.label(Estimate.between(0.895, 0.905));
    assertThat(prior.density().of(glycerol, 1, new Draws())).isCloseTo(density, within(1e-3));
    Draws draws = new Draws();
    for (int i = 0; i < 100; i++) {
      assertThat(prior.glycerol().draw(1, draws)).isBetween(0.895, 0.905);
      assertThat(prior.beside().draw(1, draws)).isEqualTo(Dissolved.NOTHING);
    }
  }

  /** 0 to 6 % of salt and soap, up to half of it soap, 0 to 5 % alcohol, in the half recovered. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.5, 1})
  void aJarOfUnknownHistoryHoldsWhatIsAssumed(double recovered) {
    JarPrior prior = JarPrior.reading(recovered, Estimate.between(0, 0.06), 0.5, 0.05);
    assertThat(mean(draws -> prior.beside().draw(1, draws).salt()))
        .isCloseTo(recovered * 0.0225, within(3e-4));
    assertThat(mean(draws -> prior.beside().draw(1, draws).fatty()))
        .isCloseTo(recovered * 0.0075, within(2e-4));
    assertThat(mean(draws -> prior.beside().draw(1, draws).alcohol()))
        .isCloseTo(recovered * 0.025, within(4e-4));
    assertThat(mean(draws -> prior.sober().beside().draw(1, draws).alcohol())).isZero();
    assertThat(mean(draws -> prior.sober().beside().draw(1, draws).stays()))
        .isCloseTo(recovered * 0.03, within(4e-4));
    assertThat(prior.density().of(0.3, 1, new Draws())).isEqualTo(1);
    assertThat(mean(draws -> prior.glycerol().draw(1, draws))).isCloseTo(0.5, within(0.005));
  }

  /** A rectangle spreads by its width over the root of 12, a normal distribution by its own. */
  @Test
  void casesAreDrawnAsTheyAreSpread() {
    Estimate estimate = Estimate.between(2, 8);
    assertThat(mean(draws -> draws.rectangle(estimate))).isCloseTo(5, within(0.03));
    assertThat(sd(draws -> draws.rectangle(estimate))).isCloseTo(6 / Math.sqrt(12), within(0.02));
    assertThat(mean(draws -> draws.normal(estimate))).isCloseTo(5, within(0.03));
    assertThat(sd(draws -> draws.normal(estimate))).isCloseTo(6 / Math.sqrt(12), within(0.03));
    assertThat(new Draws().normal(Estimate.exact(7))).isEqualTo(7);
    assertThat(sd(draws -> draws.normal(new Estimate(5, 1)))).isCloseTo(1, within(0.02));
    assertThat(mean(draws -> draws.between(2, 8))).isCloseTo(5, within(0.03));
  }

  private static double mean(ToDoubleFunction<Draws> figure) {
    Draws draws = new Draws();
    return IntStream.range(0, 20_000)
        .mapToDouble(i -> figure.applyAsDouble(draws))
        .average()
        .orElse(0);
  }

  private static double sd(ToDoubleFunction<Draws> figure) {
    double mean = mean(figure);
    return Math.sqrt(mean(draws -> Math.pow(figure.applyAsDouble(draws) - mean, 2)));
  }
}
