package starchfilm.jar.assay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import starchfilm.jar.recovery.Alcohol;
import starchfilm.jar.recovery.LaterAddition;
import starchfilm.jar.recovery.RecoveryLog;
import starchfilm.material.ingredient.VolkKaehler2018;
import starchfilm.material.recipe.GlycerolOrigin;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;

/** Three ways into an assay, what they say and what they refuse. */
class AssayerTest {
  private static final Estimate ROOM = new Estimate(293.15, 0.5);
  private static final Estimate HALF_KILO = new Estimate(0.5, 0.001);
  private static final Estimate NONE = Estimate.exact(0);
  private final Assayer assayer = new Assayer();

  @Test
  void labelIsTakenAtItsWord() {
    Assay assay = assayer.bought(HALF_KILO, 0.995, Optional.empty());

    assertThat(in(assay).pureGlycerolKg().middle()).isCloseTo(0.4975, within(1e-4));
    assertThat(in(assay).glycerol().high()).isLessThanOrEqualTo(1);
    assertThat(assay.origin()).isEqualTo(GlycerolOrigin.BOUGHT);
    assertThat(assay.remarks()).anyMatch(r -> r.startsWith("An opened jar takes up water"));
    assertThat(assay.saltAdvice().orElseThrow().mostUnnoticed()).isEmpty();
    assertThat(assay.alcoholLeft()).isEmpty();
  }

  @Test
  void readingCountsForMoreThanTheLabel() {
    Assay assay = assayer.bought(HALF_KILO, 0.995, Optional.of(density(0.85, 1)));

    assertThat(in(assay).glycerol().middle()).isCloseTo(0.85, within(1e-3));
    assertThat(assay.remarks().get(0))
        .startsWith("The label says 99.5 % glycerol, the reading 85 %");
  }

  @Test
  void rangeWidensWithTheReadingsError() {
    Assay fine =
        assayer.measured(HALF_KILO, density(0.8, 0.5), Optional.empty(), GlycerolOrigin.BOUGHT);
    Assay coarse =
        assayer.measured(HALF_KILO, density(0.8, 10), Optional.empty(), GlycerolOrigin.BOUGHT);

    double fineWidth = in(fine).glycerol().high() - in(fine).glycerol().low();
    double coarseWidth = in(coarse).glycerol().high() - in(coarse).glycerol().low();
    // 10 kg/m3 over 2.7 kg/m3 a per cent, 1.28 standard deviations on each side.
    assertThat(coarseWidth).isCloseTo(2 * 1.2816 * 10 / 270, within(0.006));
    assertThat(fineWidth).isLessThan(coarseWidth / 8);
  }

  @Test
  void recoveredJarOfUnknownHistoryIsTreatedWithCare() {
    Assay assay =
        assayer.measured(HALF_KILO, density(0.8, 1), Optional.empty(), GlycerolOrigin.RECOVERED);

    assertThat(assay.origin()).isEqualTo(GlycerolOrigin.RECOVERED);
    assertThat(assay.remarks())
        .anyMatch(r -> r.startsWith("Each 1 % of salt"))
        .anyMatch(r -> r.contains("each 1 % of soap or fatty acid"))
        .anyMatch(r -> r.contains("0 to 5 % alcohol (judged)"));
    assertThat(in(assay).glycerol().middle()).isLessThan(0.78);
    assertThat(in(assay).stays().middle()).isCloseTo(0.03, within(2e-3));
    assertThat(assay.remarks()).anyMatch(r -> r.startsWith("Salt and soap are unknown"));
  }

  @Test
  void fractionsOfTheJarAddUp() {
    Assay assay =
        assayer.measured(HALF_KILO, density(0.7, 2), Optional.of(NONE), GlycerolOrigin.RECOVERED);

    assertThat(
            in(assay).glycerol().middle()
                + in(assay).stays().middle()
                + in(assay).volatiles().middle())
        .isCloseTo(1, within(0.01));
    assertThat(in(assay).stock(assay.origin()).glycerolFraction().value())
        .isCloseTo(in(assay).glycerol().middle(), within(1e-12));
  }

  @Test
  void densityBeyondPureGlycerolWithinItsErrorIsPure() {
    DensityReading heavy = new DensityReading(new Estimate(1263, 2), ROOM);
    Assay assay = assayer.measured(HALF_KILO, heavy, Optional.empty(), GlycerolOrigin.BOUGHT);

    assertThat(in(assay).glycerol().middle()).isBetween(0.99, 0.999);
    assertThat(in(assay).glycerol().low()).isBetween(0.98, in(assay).glycerol().middle() - 0.002);
    assertThat(in(assay).glycerol().high()).isBetween(in(assay).glycerol().middle() + 0.0005, 1.0);
  }

  @Test
  void refusesADensityThatGlycerolAndWaterCannotHave() {
    DensityReading heavy = new DensityReading(new Estimate(1300, 2), ROOM);
    DensityReading nothing = new DensityReading(NONE, ROOM);

    assertThat(
            assertThrows(
                IllegalArgumentException.class,
                () ->
                    assayer.measured(HALF_KILO, nothing, Optional.empty(), GlycerolOrigin.BOUGHT)))
        .hasMessageStartingWith("density: 0.0 kg/m3 given, allowed 998.0 kg/m3 (water) to 1261.1");
    assertThat(
            assertThrows(
                IllegalArgumentException.class,
                () -> assayer.measured(HALF_KILO, heavy, Optional.empty(), GlycerolOrigin.BOUGHT)))
        .hasMessage(
            "density: 1300.0 kg/m3 given, allowed 998.0 kg/m3 (water) to 1261.1"
                + " kg/m3 (pure glycerol) at 20.0 °C; read again without bubbles; note"
                + " that dissolved salt makes a jar heavier, soap and alcohol lighter");
  }

  @Test
  void refusesAHotJar() {
    assertThat(
            assertThrows(
                IllegalArgumentException.class,
                () -> new DensityReading(new Estimate(1200, 2), new Estimate(333.15, 1))))
        .hasMessage(
            "temperature of the jar: 60 °C given, allowed 15 to 30 °C; let the jar stand in the"
                + " room for a few hours and read again");
  }

  @Test
  void refusesARefractiveIndexThatGlycerolAndWaterCannotHave() {
    RefractometerReading glass = new RefractometerReading(new Estimate(1.52, 0.0002), ROOM);

    assertThat(
            assertThrows(
                IllegalArgumentException.class,
                () -> assayer.measured(HALF_KILO, glass, Optional.empty(), GlycerolOrigin.BOUGHT)))
        .hasMessageStartingWith("refractive index: 1.5200 given, allowed 1.3330 (water) to 1.4740");
  }

  @Test
  void refusesAnEmptyJarAndAnEmptyLabel() {
    assertThrows(
        IllegalArgumentException.class, () -> assayer.bought(NONE, 0.99, Optional.empty()));
    assertThat(
            assertThrows(
                IllegalArgumentException.class,
                () -> assayer.bought(HALF_KILO, 0.00995, Optional.empty())))
        .hasMessage(
            "glycerol by the label: 0.995 % given, allowed 20 to 100 %; write the per cent of the mass,"
                + " such as 99.5 %");
  }

  /** A bottle of 50 g, 250 g with water, 300 g with the sample: 1.25 times water, by hand. */
  @Test
  void bottleWeighedThreeTimesGivesTheDensity() {
    Estimate gram = new Estimate(0, 0.0005);
    DensityReading reading =
        DensityReading.bottle(
            gram.plus(Estimate.exact(0.050)),
            gram.plus(Estimate.exact(0.250)),
            gram.plus(Estimate.exact(0.300)),
            ROOM);

    assertThat(reading.densityKgPerM3().value()).isCloseTo(1.25 * 998.05, within(0.1));
    // sqrt(0.5^2 + (1.25 x 0.5)^2 + (0.25 x 0.5)^2) g over 200 g of water.
    assertThat(reading.densityKgPerM3().sd())
        .isCloseTo(998.05 * Math.sqrt(0.25 + 0.390625 + 0.015625) / 200, within(0.01));
  }

  @Test
  void refusesABottleLighterFullThanEmpty() {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            DensityReading.bottle(
                Estimate.exact(0.3), Estimate.exact(0.25), Estimate.exact(0.4), ROOM));
  }

  @Test
  void recordAloneGivesAWideRangeAndAReadingNarrowsIt() {
    RecoveryLog log = RecoveryLogs.sunflower(List.of());
    Assay alone = assayer.recovered(log, Optional.empty());
    Assay read = assayer.recovered(log, Optional.of(density(0.85, 2)));

    // Alcohol that may be left keeps a density from telling as much as it could.
    assertThat(width(read)).isLessThan(0.6 * width(alone));
    assertThat(in(alone).stays().middle()).isBetween(0.03, 0.06);
    assertThat(alone.alcoholLeft().orElseThrow().alcohol()).isEqualTo(Alcohol.METHANOL);
    assertThat(alone.remarks()).anyMatch(r -> r.contains("treat it as present"));
  }

  @Test
  void dryingSaltIsCountedAndWarnedOf() {
    LaterAddition dryer =
        new LaterAddition(LaterAddition.Agent.MAGNESIUM_SULFATE, Estimate.exact(0.01), NONE);
    Assay plain = assayer.recovered(RecoveryLogs.sunflower(List.of()), Optional.empty());
    Assay dried = assayer.recovered(RecoveryLogs.sunflower(List.of(dryer)), Optional.empty());

    assertThat(in(dried).stays().middle()).isGreaterThan(in(plain).stays().middle() + 0.01);
    assertThat(dried.remarks()).anyMatch(r -> r.startsWith("Drying salt is left in it"));
    assertThat(plain.remarks()).noneMatch(r -> r.startsWith("Drying salt is left in it"));
  }

  @Test
  void withholdsTheFiguresWhereRecordAndReadingCannotBothBeTrue() {
    RecoveryLog heavyJar = withJar(RecoveryLogs.sunflower(List.of()), 0.300);
    Assay tooMuch = assayer.recovered(heavyJar, Optional.of(density(0.95, 1)));
    Assay tooLittle =
        assayer.recovered(RecoveryLogs.sunflower(List.of()), Optional.of(density(0.25, 1)));

    assertThat(tooMuch.content()).isEmpty();
    assertThat(tooMuch.withheld().orElseThrow()).contains("the oil held no more than 104 g");
    assertThat(tooLittle.content()).isEmpty();
    assertThat(tooLittle.withheld().orElseThrow()).contains("less of the batch went into it");
  }

  /** Each reading of a jar, from agreeing to impossible: nothing between is narrower than both. */
  @Test
  void aRangeCoversRecordAndReadingWhereTheyDoNotMeet() {
    Band record =
        in(assayer.recovered(RecoveryLogs.sunflower(List.of()), Optional.empty())).pureGlycerolKg();
    int apart = 0;
    for (double read = 0.25; read < 0.95; read += 0.05) {
      Assay assay =
          assayer.recovered(RecoveryLogs.sunflower(List.of()), Optional.of(density(read, 1)));
      if (assay.remarks().stream().anyMatch(remark -> remark.contains("do not overlap"))) {
        apart++;
        assertThat(assay.remarks()).anyMatch(remark -> remark.contains("range shown covers both"));
        Band shown = in(assay).pureGlycerolKg();
        assertThat(shown.low()).isLessThanOrEqualTo(record.low());
        assertThat(shown.high()).isGreaterThanOrEqualTo(record.high());
        assertThat(in(assay).glycerol().high() - in(assay).glycerol().low()).isGreaterThan(0.1);
        assertThat(shown.high())
            .isLessThanOrEqualTo(assay.recovery().orElseThrow().boundGlycerolKg().value());
      }
    }
    assertThat(apart).isPositive();
  }

  @Test
  void neverShowsMoreGlycerolThanTheOilHeldNorARangeOfNoWidth() {
    for (double read = 0.60; read < 0.95; read += 0.025) {
      Assay assay =
          assayer.recovered(RecoveryLogs.sunflower(List.of()), Optional.of(density(read, 2)));
      double boundKg = assay.recovery().orElseThrow().boundGlycerolKg().value();
      assay
          .content()
          .ifPresent(
              content -> {
                assertThat(content.pureGlycerolKg().high()).isLessThan(0.981 * boundKg);
                assertThat(content.pureGlycerolKg().low())
                    .isLessThan(content.pureGlycerolKg().middle() - 0.0003);
                assertThat(content.pureGlycerolKg().middle())
                    .isLessThan(content.pureGlycerolKg().high() - 0.0003);
              });
    }
  }

  @Test
  void aReadingOfUnknownOriginCoversBothAndNamesBoth() {
    JarReading reading = density(0.83, 1);
    Assay unknown = assayer.measured(HALF_KILO, reading, Optional.empty(), GlycerolOrigin.UNKNOWN);
    Assay bought = assayer.measured(HALF_KILO, reading, Optional.empty(), GlycerolOrigin.BOUGHT);
    Assay recovered =
        assayer.measured(HALF_KILO, reading, Optional.empty(), GlycerolOrigin.RECOVERED);

    assertThat(width(bought)).isLessThan(0.02);
    assertThat(width(recovered)).isGreaterThan(0.1);
    assertThat(in(unknown).glycerol().low()).isLessThan(in(bought).glycerol().low() - 0.04);
    assertThat(in(unknown).glycerol().high()).isGreaterThan(in(bought).glycerol().high());
    assertThat(unknown.remarks().get(0)).contains("If it was bought", "if it was recovered");
  }

  @Test
  void aLabelThatHoldsLessThanTheReadingMeansIsNotAverageAway() {
    Assay assay = assayer.bought(HALF_KILO, 0.90, Optional.of(density(0.97, 1)));

    assertThat(assay.content()).isEmpty();
    assertThat(assay.withheld().orElseThrow()).startsWith("The label says 90 % glycerol");
  }

  /** 5 % salt beside 80 % glycerol at 30 g per 100 g: 0.0625 x 0.3 / (1.3 + 0.01875) = 1.42 %. */
  @Test
  void saltAdviceFollowsThePlasticiserLevel() {
    SaltAdvice advice = SaltAdvice.of(0.05 / 0.80);

    assertThat(advice.ofDrySolidsAtUsual()).isCloseTo(0.01422, within(1e-5));
    double most = advice.mostUnnoticed().getAsDouble();
    assertThat(0.0625 * most / (1 + most + 0.0625 * most)).isCloseTo(0.02, within(1e-12));
    assertThat(advice.mostUsable().getAsDouble()).isGreaterThan(most);
    assertThat(SaltAdvice.of(0.01).mostUnnoticed()).isEmpty();
  }

  private static JarContent in(Assay assay) {
    return assay.content().orElseThrow();
  }

  private static double width(Assay assay) {
    return in(assay).glycerol().high() - in(assay).glycerol().low();
  }

  private static DensityReading density(double glycerol, double sdKgPerM3) {
    double kgPerM3 = new VolkKaehler2018().kgPerM3(glycerol, ROOM.value());
    return new DensityReading(new Estimate(kgPerM3, sdKgPerM3), ROOM);
  }

  private static RecoveryLog withJar(RecoveryLog log, double kg) {
    return new RecoveryLog(
        log.oil(),
        log.alcohol(),
        log.alcoholKg(),
        log.catalyst(),
        log.crudeLayerKg(),
        log.shareWorkedUp(),
        log.acid(),
        log.fattyLayerTakenOff(),
        log.saltTakenOutKg(),
        log.lye(),
        log.alcoholTakenOffKg(),
        log.additions(),
        Estimate.exact(kg));
  }
}
