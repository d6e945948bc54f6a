package starchfilm.jar.assay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import starchfilm.jar.recovery.Alcohol;
import starchfilm.jar.recovery.LaterAddition;
import starchfilm.jar.recovery.RecoveryBalance;
import starchfilm.jar.recovery.RecoveryLog;
import starchfilm.material.ingredient.Hoyt1934;
import starchfilm.material.ingredient.VolkKaehler2018;
import starchfilm.material.recipe.GlycerolOrigin;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;

/** Three ways into an assay, and what they say. */
class AssayerTest {
  private static final Estimate ROOM = new Estimate(293.15, 0.5);
  private static final Estimate EXACT_ROOM = Estimate.exact(293.15);
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
    RecoveryLog heavyJar = RecoveryLogs.withJar(RecoveryLogs.sunflower(List.of()), 0.300);
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

  private static final String WATER = "Water in the jar does no harm: .*";
  private static final String RANGE = " \\([\\d.]+ to [\\d.]+\\)";

  /** At 80 % and 20 °C; by hand in JarPartsTest. */
  private static final String MOVES =
      "Each 1 % of salt makes this reading show 2.8 % more glycerol, each 1 % of soap or fatty acid"
          + " 1.2 % less glycerol, each 1 % of alcohol 2.3 % less glycerol; all three are allowed"
          + " for in the range.";

  private static void says(Assay assay, String... patterns) {
    assertThat(assay.remarks()).hasSameSizeAs(patterns);
    for (int i = 0; i < patterns.length; i++) {
      assertThat(assay.remarks().get(i)).matches(patterns[i]);
    }
  }

  /** A label is good to half a per cent: what lies within has taken up no water. */
  @Test
  void aLabelIsHeldAgainstTheReading() {
    says(assayer.bought(HALF_KILO, 1, Optional.empty()), "An opened jar takes up water .*");
    says(
        assayer.bought(HALF_KILO, 0.995, Optional.of(density(0.85, 1))),
        "The label says 99.5 % glycerol, the reading 85 %"
            + RANGE
            + ": the jar has taken up water.",
        WATER);
    JarReading sharp = new DensityReading(density(0.854, 0.1).densityKgPerM3(), EXACT_ROOM);
    says(assayer.bought(HALF_KILO, 0.85, Optional.of(sharp)), WATER);
    assertThat(assayer.bought(HALF_KILO, 0.90, Optional.of(density(0.97, 1))).withheld())
        .hasValueSatisfying(
            why ->
                assertThat(why)
                    .matches(
                        "The label says 90 % glycerol, but the reading alone means 97 %"
                            + RANGE
                            + ", and a bought jar holds no more than its label says\\. .*"));
    for (double none : new double[] {0.19, 1.01}) {
      assertThat(
              assertThrows(
                  IllegalArgumentException.class,
                  () -> assayer.bought(HALF_KILO, none, Optional.empty())))
          .hasMessageContaining("given, allowed 20 to 100 %");
    }
    assertThat(in(assayer.bought(HALF_KILO, 0.2, Optional.empty())).glycerol().middle())
        .isCloseTo(0.2, within(1e-3));
  }

  @Test
  void whatIsAssumedOfAReadJarIsSaid() {
    JarReading reading = density(0.8, 1);
    Optional<Estimate> unknown = Optional.empty();
    says(assayer.measured(HALF_KILO, reading, unknown, GlycerolOrigin.BOUGHT), WATER);
    String assumed =
        "Salt and soap are unknown: assumed 0 to 6 %, up to half of it soap, and 0 to 5 % alcohol"
            + " \\(judged\\).";
    Assay recovered = assayer.measured(HALF_KILO, reading, unknown, GlycerolOrigin.RECOVERED);
    says(recovered, assumed, MOVES, WATER);
    assertThat(recovered.sources())
        .contains(reading.source(), SaltAdvice.SOURCE)
        .anyMatch(source -> source.citation().contains("JCGM 101:2008"));
    says(
        assayer.measured(HALF_KILO, reading, unknown, GlycerolOrigin.UNKNOWN),
        "The origin is unknown. If it was bought, the reading means 80 % glycerol"
            + RANGE
            + "; if it was recovered, 7[5-7].?\\d* %"
            + RANGE
            + ". The range above covers both; state the origin to narrow it.",
        assumed,
        MOVES,
        WATER);
    says(
        assayer.measured(HALF_KILO, reading, Optional.of(NONE), GlycerolOrigin.UNKNOWN),
        "The salt you gave is counted as salt, with 0 to 5 % alcohol assumed \\(judged\\).",
        MOVES,
        WATER);
  }

  /** A refractometer counts alcohol as water, so 4 % of salt leave 0.96 of what is read. */
  @Test
  void theSaltThatWasGivenIsSalt() {
    double index = new Hoyt1934().index(0.8, 293.15) + 0.04 * 0.145;
    JarReading reading = new RefractometerReading(new Estimate(index, 1e-4), EXACT_ROOM);
    Assay assay =
        assayer.measured(
            HALF_KILO, reading, Optional.of(Estimate.exact(0.04)), GlycerolOrigin.RECOVERED);
    assertThat(in(assay).glycerol().middle()).isCloseTo(0.96 * 0.8, within(0.003));
    assertThat(in(assay).stays().middle()).isCloseTo(0.04, within(1e-9));
  }

  /** By hand in JarPosteriorPublishedTest: the oil bound 104 g, of which 70 to 98 % are left. */
  @Test
  void recordAndReadingAreToldBesideEachOther() {
    RecoveryLog log = RecoveryLogs.sunflower(List.of());
    Assay alone = assayer.recovered(log, Optional.empty());
    assertThat(alone.remarks())
        .containsSubsequence(
            "Without a density or refractometer reading the glycerol is only as certain as the"
                + " share that was recovered, 70 to 98 % (judged); a reading narrows it.",
            "Methanol left: unknown, from none to 44 g; treat it as present.")
        .anyMatch(said -> said.startsWith("The oil bound 104 g glycerol"));
    assertThat(alone.sources().get(0)).isEqualTo(RecoveryBalance.SOURCE);
    assertThat(alone.recovery()).isPresent();
    Assay both = assayer.recovered(log, Optional.of(density(0.8, 1)));
    assertThat(both.remarks())
        .contains(MOVES)
        .anyMatch(
            said ->
                said.matches(
                    "The record alone means 8[3-5][\\d.]* g pure glycerol"
                        + RANGE
                        + ", the reading alone 9[\\d.]+ g"
                        + RANGE
                        + "; the figures shown satisfy both."));
    // What cannot be glycerol bounds the alcohol.
    assertThat(both.alcoholLeft().orElseThrow().mostKg())
        .isLessThan(0.5 * alone.alcoholLeft().orElseThrow().mostKg());
    assertThat(assayer.recovered(log, Optional.of(density(0.25, 1))).alcoholLeft())
        .isEqualTo(alone.recovery().map(RecoveryBalance::alcoholLeft));
  }

  /** 70 % of the 104 g of the oil and its 5 g of salt do not go into 50 g. */
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
}
