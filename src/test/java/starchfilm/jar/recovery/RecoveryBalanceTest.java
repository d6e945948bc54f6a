package starchfilm.jar.recovery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import starchfilm.jar.reagent.Dose;
import starchfilm.jar.reagent.Reagent;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;

/** The sums over one batch, by moles worked out on paper. */
class RecoveryBalanceTest {
  private static final Estimate NONE = Estimate.exact(0);
  private static final Optional<Dose> NO_LYE = Optional.empty();

  /** 1 kg sunflower oil: 190.5 - 0.3 mg/g over 3 x 56.105 g/mol is 1.130 mol, 104.1 g glycerol. */
  @Test
  void countsTheGlycerolBoundInTheOil() {
    RecoveryBalance balance = RecoveryBalance.of(batch(acid(0.0875), NO_LYE, 0.120));

    assertThat(balance.boundGlycerolKg().value()).isCloseTo(0.10407, within(1e-5));
    // 200 g methanol over 32.042 g/mol over 1.130 mol.
    assertThat(balance.alcoholPerFat()).isCloseTo(5.52, within(0.01));
  }

  /** 3.5 g of pure NaOH is 0.0875 mol; with as much HCl it makes 0.0875 x 58.44 = 5.11 g NaCl. */
  @Test
  void saltIsWhatTheCatalystAndTheAcidMake() {
    RecoveryBalance balance = RecoveryBalance.of(batch(acid(0.0875), NO_LYE, 0.120));

    assertThat(balance.neutralisation().saltKg().value()).isCloseTo(5.114e-3, within(3e-6));
    assertThat(balance.soapKg().value()).isCloseTo(0, within(1e-5));
  }

  /** Acid in excess by 0.02 mol, lye back by 0.02 mol: 0.02 mol more of salt, nothing left over. */
  @Test
  void lyeBroughtBackMakesMoreSalt() {
    RecoveryBalance balance = RecoveryBalance.of(batch(acid(0.1075), lye(0.02), 0.120));

    assertThat(balance.neutralisation().saltKg().value())
        .isCloseTo(1e-3 * 58.44 * 0.1075, within(3e-6));
    assertThat(balance.neutralisation().netAcidMol().value()).isCloseTo(0, within(1e-5));
  }

  /** With half the acid 0.0438 mol of alkali stays, all of it soap at the most. */
  @Test
  void tooLittleAcidLeavesSoapOrLye() {
    Neutralisation left = RecoveryBalance.of(batch(acid(0.0437), NO_LYE, 0.130)).neutralisation();

    double alkaliLeft = 0.08750 - 0.0437;
    double half = Math.sqrt(3) * left.soapMol().sd();
    assertThat(left.soapMol().value() + half).isCloseTo(alkaliLeft, within(1e-4));
    // Free acid of the oil: 1000 g x 0.3 mg/g over 56.105 g/mol.
    assertThat(left.soapMol().value() - half).isCloseTo(0.3 / 56.105, within(1e-4));
    assertThat(left.netAcidMol().value()).isCloseTo(-alkaliLeft, within(1e-4));
    assertThat(left.isNearBalance()).isFalse();
  }

  @Test
  void withoutAcidNoSaltIsMade() {
    Neutralisation left =
        RecoveryBalance.of(batch(Optional.empty(), NO_LYE, 0.130)).neutralisation();

    assertThat(left.saltKg().value()).isZero();
    assertThat(left.soapMol().value()).isPositive();
    assertThat(left.fattyAcidMol().value()).isZero();
  }

  /** Every mole of alkali put in is found again as salt, soap or free lye, whatever was added. */
  @Test
  void alkaliIsNeitherLostNorMade() {
    for (double acidMol = 0.001; acidMol < 0.2; acidMol += 0.013) {
      for (double lyeMol = 0; lyeMol < 0.06; lyeMol += 0.011) {
        Neutralisation left =
            RecoveryBalance.of(batch(acid(acidMol), lye(lyeMol), 0.160)).neutralisation();
        double saltMol = left.saltKg().value() / 58.44e-3;
        double alkaliOut = saltMol + left.soapMol().value() + left.freeLyeMol().value();
        assertThat(alkaliOut).isCloseTo(3.5 / 39.997 + lyeMol, within(2e-5));
      }
    }
  }

  /** 200 g methanol, at least 0.7 x 3 x 1.130 mol x 32.04 g taken up: at most 124.0 g left over. */
  @Test
  void alcoholLeftIsARangeFromNone() {
    AlcoholLeft left = RecoveryBalance.of(batch(acid(0.0875), NO_LYE, 0.400)).alcoholLeft();

    assertThat(left.alcohol()).isEqualTo(Alcohol.METHANOL);
    assertThat(left.mostKg()).isCloseTo(0.12396, within(2e-5));
  }

  /** In a light jar there is no room for more than what its glycerol and salt leave. */
  @Test
  void alcoholLeftIsNoMoreThanTheJarHasRoomFor() {
    RecoveryBalance balance = RecoveryBalance.of(batch(acid(0.0875), NO_LYE, 0.105));

    assertThat(balance.alcoholLeft().mostKg()).isBetween(0.001, 0.105 - 0.070);
  }

  @Test
  void countsWhatWasAddedLater() {
    LaterAddition dryer =
        new LaterAddition(
            LaterAddition.Agent.CALCIUM_CHLORIDE, Estimate.exact(0.020), Estimate.exact(0.005));
    LaterAddition thinner =
        new LaterAddition(LaterAddition.Agent.METHANOL, Estimate.exact(0.050), NONE);
    RecoveryLog plain = batch(acid(0.0875), NO_LYE, 0.400);
    RecoveryBalance before = RecoveryBalance.of(plain);
    RecoveryBalance after =
        RecoveryBalance.of(changed(plain, Optional.empty(), List.of(dryer, thinner)));

    assertThat(after.saltKg().value() - before.saltKg().value()).isCloseTo(0.015, within(1e-9));
    assertThat(after.hygroscopicSalt()).isTrue();
    assertThat(before.hygroscopicSalt()).isFalse();
    assertThat(after.alcoholLeft().mostKg() - before.alcoholLeft().mostKg())
        .isCloseTo(0.050, within(1e-9));
  }

  /** A jar that may hold both alcohols is handled for the poisonous one. */
  @Test
  void methanolThatWasAddedToABatchOfEthanolIsWarnedOf() {
    assertThat(afterEthanol(LaterAddition.Agent.METHANOL)).isEqualTo(Alcohol.METHANOL);
    assertThat(afterEthanol(LaterAddition.Agent.ETHANOL)).isEqualTo(Alcohol.ETHANOL);
    assertThat(afterEthanol(LaterAddition.Agent.WATER)).isEqualTo(Alcohol.ETHANOL);
  }

  private static Alcohol afterEthanol(LaterAddition.Agent added) {
    RecoveryLog log = batch(acid(0.0875), NO_LYE, 0.400);
    return RecoveryBalance.of(
            new RecoveryLog(
                log.oil(),
                Alcohol.ETHANOL,
                Estimate.exact(0.300),
                log.catalyst(),
                Optional.empty(),
                log.shareWorkedUp(),
                log.acid(),
                true,
                NONE,
                NO_LYE,
                NONE,
                List.of(new LaterAddition(added, Estimate.exact(0.020), NONE)),
                log.jarKg()))
        .alcoholLeft()
        .alcohol();
  }

  /** Acid that met all alkali has freed the fatty acid; 5 mmol of lye make 5 mmol of it soap. */
  @Test
  void lyeMakesSoapOfTheFattyAcidThatWasLeftIn() {
    Neutralisation leftIn = neutralised(false);
    assertThat(leftIn.soapMol().value()).isCloseTo(0.005, within(1e-5));
    assertThat(leftIn.freeLyeMol().value()).isCloseTo(0, within(1e-5));
    Neutralisation takenOff = neutralised(true);
    assertThat(takenOff.soapMol().value()).isCloseTo(0, within(1e-5));
    assertThat(takenOff.freeLyeMol().value()).isCloseTo(0.005, within(1e-5));
  }

  private static Neutralisation neutralised(boolean fattyLayerTakenOff) {
    RecoveryLog log = batch(acid(3.5 / 39.997), lye(0.005), 0.200);
    return RecoveryBalance.of(
            new RecoveryLog(
                log.oil(),
                log.alcohol(),
                log.alcoholKg(),
                log.catalyst(),
                Optional.empty(),
                log.shareWorkedUp(),
                log.acid(),
                fattyLayerTakenOff,
                NONE,
                log.lye(),
                NONE,
                List.of(),
                log.jarKg()))
        .neutralisation();
  }

  @Test
  void fryingOilIsSourerThanFreshOil() {
    assertThat(OilBatch.of(OilKind.USED_FRYING_OIL, Estimate.exact(1)).acidMgPerG())
        .isEqualTo(Estimate.between(1, 8));
    assertThat(OilBatch.of(OilKind.SUNFLOWER, Estimate.exact(1)).acidMgPerG())
        .isEqualTo(Estimate.between(0, 0.6));
  }

  @Test
  void refusesALayerAndAJarOfNothing() {
    assertThatThrownBy(() -> crude(batch(acid(0.0875), NO_LYE, 0.1), 0))
        .hasMessageStartingWith("crude layer: 0 g given, allowed more than 0 to 1200 g; ");
    assertThatThrownBy(() -> batch(acid(0.0875), NO_LYE, 0))
        .hasMessage(
            "what the jar holds: 0 g given, allowed more than 0 g; weigh it without the jar");
  }

  /**
   * Whatever was done, the least glycerol and what it is mixed with fit the jar, or the jar is
   * refused in one sentence.
   */
  @Test
  void partsNeverOutweighTheJar() {
    Random random = new Random(31L);
    int answered = 0;
    for (int i = 0; i < 2000; i++) {
      RecoveryLog log = anyLog(random);
      RecoveryBalance balance;
      try {
        balance = RecoveryBalance.of(log);
      } catch (IllegalArgumentException refusal) {
        assertThat(refusal).hasMessageContaining(" given, allowed ");
        continue;
      }
      answered++;
      Estimate bound = balance.boundGlycerolKg();
      double parts =
          balance.leastRecovered() * (bound.value() - Band.Z90 * bound.sd())
              + balance.saltKg().value()
              + balance.soapKg().value()
              + balance.fattyAcidKg().value();
      assertThat(parts).isLessThanOrEqualTo(log.jarKg().value() * (1 + 1e-12));
      assertThat(balance.saltKg().value()).isNotNegative();
      assertThat(balance.alcoholLeft().mostKg()).isNotNegative();
    }
    assertThat(answered).isBetween(200, 1999);
  }

  @Test
  void refusesAJarLighterThanItsGlycerol() {
    assertThat(
            assertThrows(
                IllegalArgumentException.class,
                () -> RecoveryBalance.of(batch(acid(0.0875), NO_LYE, 0.050))))
        .hasMessageStartingWith("what the jar holds: 50 g given, allowed 7")
        .hasMessageEndingWith("or say how much of the crude layer went in");
  }

  @Test
  void refusesACrudeLayerThatCannotBe() {
    RecoveryLog plain = batch(acid(0.0875), NO_LYE, 0.120);

    assertThat(
            assertThrows(
                IllegalArgumentException.class, () -> RecoveryBalance.of(crude(plain, 0.050))))
        .hasMessageStartingWith("crude layer: 50 g given, allowed 72.8 g");
    assertThat(assertThrows(IllegalArgumentException.class, () -> crude(plain, 2.0)))
        .hasMessage(
            "crude layer: 2000 g given, allowed more than 0 to 1200 g; oil, alcohol and lye"
                + " together weigh no more; weigh the lower layer alone");
    assertThat(RecoveryBalance.of(crude(plain, 0.180)).glycerolOfCrude().getAsDouble())
        .isBetween(0.4, 0.6);
  }

  @Test
  void refusesImpossibleAdditionsAndDoses() {
    assertThat(
            assertThrows(
                IllegalArgumentException.class,
                () ->
                    new LaterAddition(
                        LaterAddition.Agent.SODIUM_SULFATE,
                        Estimate.exact(0.01),
                        Estimate.exact(0.02))))
        .hasMessage(
            "sodium sulfate: 20 g taken out of 10 g added; dry it before weighing, or leave"
                + " it out");
    assertThrows(
        IllegalArgumentException.class,
        () -> Dose.weighed(Reagent.CITRIC_ACID, Estimate.exact(0.01), Estimate.exact(20)));
    assertThrows(
        IllegalArgumentException.class, () -> OilBatch.of(OilKind.CORN, Estimate.exact(0)));
  }

  /** 10 mL of 0.1 mol/L hydrochloric acid, neutralised with NaOH, makes 58 mg salt. */
  @Test
  void tenMillilitresOfDecinormalAcidMakeFiftyEightMilligrams() {
    Dose measured =
        Dose.measured(Reagent.HYDROCHLORIC_ACID, Estimate.exact(10e-6), Estimate.exact(100));
    Dose weighed =
        Dose.weighed(Reagent.HYDROCHLORIC_ACID, Estimate.exact(0.36461e-3), Estimate.exact(0.1));

    assertThat(measured.chargeMol().value()).isCloseTo(1e-3, within(1e-12));
    assertThat(weighed.chargeMol().value()).isCloseTo(1e-3, within(1e-7));
    assertThat(
            1e-3
                * (Reagent.SODIUM_HYDROXIDE.ionKgPerMolOfCharge()
                    + Reagent.HYDROCHLORIC_ACID.ionKgPerMolOfCharge()))
        .isCloseTo(58.4e-6, within(0.1e-6));
  }

  private static RecoveryLog anyLog(Random random) {
    LaterAddition.Agent[] agents = LaterAddition.Agent.values();
    return new RecoveryLog(
        OilBatch.of(OilKind.values()[random.nextInt(14)], estimate(random, 0.5, 2)),
        Alcohol.values()[random.nextInt(2)],
        estimate(random, 0.05, 0.6),
        Dose.weighed(
            Reagent.lyes().get(random.nextInt(2)),
            estimate(random, 0.002, 0.02),
            Estimate.between(0.85, 0.99)),
        Optional.empty(),
        Estimate.exact(0.2 + 0.8 * random.nextDouble()),
        random.nextBoolean()
            ? Optional.of(
                new Dose(Reagent.acids().get(random.nextInt(5)), estimate(random, 0, 0.4)))
            : Optional.empty(),
        random.nextBoolean(),
        estimate(random, 0, 0.005),
        random.nextBoolean() ? lye(0.05 * random.nextDouble()) : NO_LYE,
        estimate(random, 0, 0.1),
        List.of(
            new LaterAddition(
                agents[random.nextInt(agents.length)], estimate(random, 0, 0.05), NONE)),
        estimate(random, 0.03, 0.4));
  }

  private static Estimate estimate(Random random, double from, double to) {
    double value = from + (to - from) * random.nextDouble();
    return new Estimate(value, 0.03 * value);
  }

  private static RecoveryLog crude(RecoveryLog log, double kg) {
    return changed(log, Optional.of(Estimate.exact(kg)), List.of());
  }

  private static RecoveryLog changed(
      RecoveryLog log, Optional<Estimate> crude, List<LaterAddition> additions) {
    return new RecoveryLog(
        log.oil(),
        log.alcohol(),
        log.alcoholKg(),
        log.catalyst(),
        crude,
        log.shareWorkedUp(),
        log.acid(),
        true,
        NONE,
        log.lye(),
        NONE,
        additions,
        log.jarKg());
  }

  private static RecoveryLog batch(Optional<Dose> acid, Optional<Dose> lye, double jarKg) {
    return new RecoveryLog(
        OilBatch.of(OilKind.SUNFLOWER, Estimate.exact(1)),
        Alcohol.METHANOL,
        Estimate.exact(0.200),
        Dose.weighed(Reagent.SODIUM_HYDROXIDE, Estimate.exact(0.0035), Estimate.exact(1)),
        Optional.empty(),
        Estimate.exact(1),
        acid,
        true,
        NONE,
        lye,
        NONE,
        List.of(),
        Estimate.exact(jarKg));
  }

  private static Optional<Dose> acid(double mol) {
    return Optional.of(new Dose(Reagent.HYDROCHLORIC_ACID, Estimate.exact(mol)));
  }

  private static Optional<Dose> lye(double mol) {
    return Optional.of(new Dose(Reagent.SODIUM_HYDROXIDE, Estimate.exact(mol)));
  }
}
