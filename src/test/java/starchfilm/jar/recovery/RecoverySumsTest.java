package starchfilm.jar.recovery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.jar.reagent.Dose;
import starchfilm.jar.reagent.Reagent;
import starchfilm.numerics.evidence.Estimate;

/**
 * One mole of triolein, 885.43 g, step by step on paper: 92.094 g of glycerol and 282.47 g of oleic
 * acid a mole; a mole of sodium makes 304.45 g of soap; the 90 % point of the normal distribution
 * is 1.28155.
 */
class RecoverySumsTest {
  private static final double Z = 1.2815516;
  private static final double KOH = 56.105;
  private static final double TRIOLEIN_SV = 3 * KOH / 885.43 * 1000;

  private double acidValue;
  private double saponificationSd;
  private Alcohol alcohol = Alcohol.METHANOL;
  private Estimate alcoholKg = Estimate.exact(0.3);
  private Dose catalyst = dose(Reagent.SODIUM_HYDROXIDE, 0);
  private Optional<Estimate> crude = Optional.empty();
  private double share = 1;
  private Optional<Dose> acid = Optional.empty();
  private boolean fattyLayerTakenOff;
  private Estimate saltTakenOut = Estimate.exact(0);
  private Optional<Dose> lye = Optional.empty();
  private Estimate alcoholTakenOff = Estimate.exact(0);
  private final List<LaterAddition> additions = new ArrayList<>();
  private Estimate jar = Estimate.exact(1);

  private RecoveryLog log() {
    return new RecoveryLog(
        new OilBatch(
            Estimate.exact(0.88543),
            new Estimate(TRIOLEIN_SV + acidValue, saponificationSd),
            Estimate.exact(acidValue)),
        alcohol,
        alcoholKg,
        catalyst,
        crude,
        Estimate.exact(share),
        acid,
        fattyLayerTakenOff,
        saltTakenOut,
        lye,
        alcoholTakenOff,
        additions,
        jar);
  }

  private RecoveryBalance balance() {
    return RecoveryBalance.of(log());
  }

  private static Dose dose(Reagent reagent, double mol) {
    return new Dose(reagent, Estimate.exact(mol));
  }

  private void add(LaterAddition.Agent agent, double grams, double takenOutGrams) {
    additions.add(
        new LaterAddition(
            agent, Estimate.exact(grams / 1000), Estimate.exact(takenOutGrams / 1000)));
  }

  /** 2.4 mol of methanol, 76.9 g, turn 0.8 mol of fat; four fifths of the layer went in. */
  @Test
  void tooLittleAlcoholGivesLessGlycerol() {
    alcoholKg = Estimate.exact(2.4 * 0.032042);
    share = 0.8;
    RecoveryBalance balance = balance();
    assertThat(balance.boundGlycerolKg().value()).isCloseTo(0.8 * 0.092094, within(1e-6));
    assertThat(balance.alcoholPerFat()).isCloseTo(2.4, within(1e-4));
    assertThat(balance.leastRecovered()).isCloseTo(0.7 * 0.8, within(1e-4));
    assertThat(balance.mostRecovered()).isCloseTo(0.98 * 0.8, within(1e-4));
  }

  /** A gram of adsorbent holds back a gram: 20 of 92.094 g; 100 g could hold back all of it. */
  @Test
  void adsorbentHoldsGlycerolBackAndNothingElseDoes() {
    add(LaterAddition.Agent.WATER, 50, 0);
    assertThat(balance().leastRecovered()).isCloseTo(0.7, within(1e-9));
    assertThat(balance().finesLikely()).isFalse();
    add(LaterAddition.Agent.ADSORBENT, 20, 0);
    assertThat(balance().leastRecovered()).isCloseTo(0.7 - 20 / 92.094, within(1e-5));
    assertThat(balance().finesLikely()).isTrue();
    add(LaterAddition.Agent.ADSORBENT, 80, 0);
    assertThat(balance().leastRecovered()).isZero();
  }

  /** 0.1 mol of acid and of alkali make 5.844 g of salt; 2 g were filtered off, or 10. */
  @Test
  void saltTakenOutIsNoLongerThere() {
    catalyst = dose(Reagent.SODIUM_HYDROXIDE, 0.1);
    acid = Optional.of(dose(Reagent.HYDROCHLORIC_ACID, 0.1));
    saltTakenOut = Estimate.exact(0.002);
    assertThat(balance().saltKg().value()).isCloseTo(3.844e-3, within(2e-6));
    saltTakenOut = Estimate.exact(0.010);
    assertThat(balance().saltKg().value()).isZero();
  }

  /** Potassium from the catalyst first, then sodium of the lye, as far as there is acid. */
  @ParameterizedTest
  @CsvSource({
    "0.06, 0, 0.06, 0",
    "0.1, 0, 0.1, 0",
    "0.15, 0, 0.1, 0",
    "0.15, 0.02, 0.1, 0.02",
    "0.15, 0.07, 0.1, 0.05",
    "0.06, 0.02, 0.06, 0"
  })
  void saltIsOfTheMetalThatMetTheAcid(
      double acidMol, double lyeMol, double potassiumMol, double sodiumMol) {
    catalyst = dose(Reagent.POTASSIUM_HYDROXIDE, 0.1);
    acid = Optional.of(dose(Reagent.HYDROCHLORIC_ACID, acidMol));
    lye = lyeMol > 0 ? Optional.of(dose(Reagent.SODIUM_HYDROXIDE, lyeMol)) : Optional.empty();
    assertThat(balance().neutralisation().saltKg().value())
        .isCloseTo(1e-3 * (74.55 * potassiumMol + 58.44 * sodiumMol), within(2e-6));
  }

  /** Of 0.1 mol of lye 0.02 met free fatty acid; half the layer went in, and 0.01 mol of acid. */
  @Test
  void soapIsBetweenWhatFreeAcidMadeAndAllOfTheLye() {
    acidValue = 0.02 * KOH / 0.88543;
    catalyst = dose(Reagent.SODIUM_HYDROXIDE, 0.1);
    share = 0.5;
    acid = Optional.of(dose(Reagent.HYDROCHLORIC_ACID, 0.01));
    Neutralisation left = balance().neutralisation();
    // Few: 0.01 of soap and 0.03 of lye after the acid; many: 0.05 of soap, 0.01 of it split.
    assertRange(left.soapMol(), 0.01, 0.04);
    assertRange(left.fattyAcidMol(), 0, 0.01);
    assertRange(left.freeLyeMol(), 0, 0.03);
    assertThat(left.netAcidMol().value()).isCloseTo(-0.04, within(1e-9));
  }

  private static void assertRange(Estimate estimate, double from, double to) {
    assertThat(estimate.value()).isCloseTo((from + to) / 2, within(1e-6));
    assertThat(estimate.sd()).isCloseTo((to - from) / Math.sqrt(12), within(1e-6));
  }

  /** Lye in excess of all acid stays lye; the fatty acid set free before was taken off. */
  @Test
  void lyeBeyondTheAcidStaysOrMakesSoap() {
    catalyst = dose(Reagent.SODIUM_HYDROXIDE, 0.1);
    acid = Optional.of(dose(Reagent.HYDROCHLORIC_ACID, 0.13));
    lye = Optional.of(dose(Reagent.SODIUM_HYDROXIDE, 0.05));
    fattyLayerTakenOff = true;
    assertRange(balance().neutralisation().freeLyeMol(), 0.02, 0.02);
    assertRange(balance().neutralisation().fattyAcidMol(), 0, 0.1);
    fattyLayerTakenOff = false;
    // Few: no fatty acid to make soap of; many: 0.1 mol, 0.02 of it made soap again.
    assertRange(balance().neutralisation().freeLyeMol(), 0, 0.02);
    assertRange(balance().neutralisation().soapMol(), 0, 0.02);
    assertRange(balance().neutralisation().fattyAcidMol(), 0, 0.08);
  }

  /** 12.5 mmol of acid too much: within twice 6.3 mmol, not within twice 6.2. */
  @ParameterizedTest
  @CsvSource({"6.3, true", "6.2, false"})
  void theSumsCannotTellWithinTwiceTheirUncertainty(double mmol, boolean near) {
    catalyst = dose(Reagent.SODIUM_HYDROXIDE, 0.0875);
    acid = Optional.of(new Dose(Reagent.HYDROCHLORIC_ACID, new Estimate(0.1, mmol / 1000)));
    assertThat(balance().neutralisation().isNearBalance()).isEqualTo(near);
  }

  /** 0.1 mol of acid may have split up to 0.1 mol of soap: 14.12 g of fatty acid on average. */
  @Test
  void littleFattyAcidStaysWhereItsLayerWasTakenOff() {
    catalyst = dose(Reagent.SODIUM_HYDROXIDE, 0.1);
    acid = Optional.of(dose(Reagent.HYDROCHLORIC_ACID, 0.1));
    assertThat(balance().fattyAcidKg().value()).isCloseTo(0.05 * 0.28247, within(1e-5));
    fattyLayerTakenOff = true;
    // At most 2 % of the jar's kilogram, and no more than was formed.
    assertRange(balance().fattyAcidKg(), 0, 0.05 * 0.28247);
    jar = Estimate.exact(0.2);
    assertRange(balance().fattyAcidKg(), 0, 0.004);
  }

  /** 67.29 g of the alcohol is taken up at least; of the rest four fifths went into the jar. */
  @Test
  void alcoholLeftCountsWhatWentInAndOut() {
    share = 0.8;
    add(LaterAddition.Agent.METHANOL, 50, 20);
    add(LaterAddition.Agent.WATER, 70, 0);
    alcoholTakenOff = Estimate.exact(0.030);
    double taken = 0.7 * 3 * 0.032042;
    assertThat(balance().alcoholLeft().mostKg())
        .isCloseTo((0.3 - taken) * 0.8 + 0.050 - 0.020 - 0.030, within(1e-6));
    alcoholKg = Estimate.exact(0.050);
    alcoholTakenOff = Estimate.exact(0);
    assertThat(balance().alcoholLeft().mostKg()).isCloseTo(0.030, within(1e-9));
    alcoholTakenOff = Estimate.exact(0.040);
    assertThat(balance().alcoholLeft().mostKg()).isZero();
  }

  /**
   * No lye, salt or soap: of the 80 g in the jar 64.47 g or more are glycerol; the alcohol has room
   * beside the 10 % point of what lies between those two.
   */
  @Test
  void alcoholHasTheRoomThatTheLeastGlycerolLeaves() {
    jar = Estimate.exact(0.080);
    double least = 0.7 * 0.092094;
    double middle = (least + 0.080) / 2;
    double sd = (0.080 - least) / Math.sqrt(12);
    assertThat(balance().alcoholLeft().mostKg()).isCloseTo(0.080 - (middle - Z * sd), within(1e-6));
    // A jar known within 2 g may hold 2.56 g more.
    jar = new Estimate(0.080, 0.002);
    double most = 0.080 + Z * 0.002;
    assertThat(balance().alcoholLeft().mostKg())
        .isCloseTo(0.080 - ((least + most) / 2 - Z * (most - least) / Math.sqrt(12)), within(1e-6));
  }

  /** An oil known within 2 %: the least is 70 % of the 10 % point, the most 98 % of the 90 %. */
  @Test
  void anUncertainOilWidensTheGlycerol() {
    saponificationSd = 0.02 * TRIOLEIN_SV;
    jar = Estimate.exact(0.2);
    double least = 0.7 * 0.092094 * (1 - Z * 0.02);
    double most = 0.98 * 0.092094 * (1 + Z * 0.02);
    assertThat(balance().alcoholLeft().mostKg())
        .isCloseTo(0.2 - ((least + most) / 2 - Z * (most - least) / Math.sqrt(12)), within(1e-6));
  }

  /** 5.844 g of salt take their room, known within 1 g. */
  @Test
  void saltTakesRoomToo() {
    catalyst = dose(Reagent.SODIUM_HYDROXIDE, 0.1);
    acid = Optional.of(dose(Reagent.HYDROCHLORIC_ACID, 0.1));
    acidValue = 0.1 * KOH / 0.88543;
    fattyLayerTakenOff = true;
    saltTakenOut = new Estimate(0, 0.001);
    jar = Estimate.exact(0.2);
    double least = 0.7 * 0.092094;
    double most = 0.98 * 0.092094;
    assertThat(balance().alcoholLeft().mostKg())
        .isCloseTo(
            0.2
                - ((least + most) / 2 - Z * (most - least) / Math.sqrt(12))
                - (0.005844 - Z * 0.001),
            within(2e-6));
  }

  /**
   * 0.05 mol of acid met 0.1 mol of lye: 7.61 g of soap, 7.06 g of fatty acid, 2.92 g of salt on
   * average, and 64.47 g of glycerol or more. A light jar takes the fatty acid down first, then the
   * soap; the salt, known best, stays.
   */
  @ParameterizedTest
  @CsvSource({"120, 7.06, 7.61", "80, 2.19, 7.61", "75, 0, 7.30"})
  void aLightJarLowersTheLeastKnownFirst(double jarG, double fattyG, double soapG) {
    catalyst = dose(Reagent.SODIUM_HYDROXIDE, 0.1);
    acid = Optional.of(dose(Reagent.HYDROCHLORIC_ACID, 0.05));
    jar = Estimate.exact(jarG / 1000);
    RecoveryBalance balance = balance();
    assertThat(1000 * balance.fattyAcidKg().value()).isCloseTo(fattyG, within(0.01));
    assertThat(1000 * balance.soapKg().value()).isCloseTo(soapG, within(0.01));
    assertThat(1000 * balance.saltKg().value()).isCloseTo(2.92, within(0.01));
  }

  @Test
  void aJarTooLightForItsGlycerolIsToldHowMuchItMustHold() {
    jar = Estimate.exact(0.050);
    assertThatThrownBy(this::balance)
        .hasMessageStartingWith(
            "what the jar holds: 50 g given, allowed 64.5 g or more, since the batch must have"
                + " given at least 64.5 g glycerol beside 0 g salt, soap and fatty acid;");
  }

  /**
   * 84 % of 92.094 g in 150 g of crude layer; a layer of 64.5 g is all glycerol, 64.4 g refused.
   */
  @Test
  void theCrudeLayerHoldsTheGlycerolOfAllTheOil() {
    share = 0.8;
    crude = Optional.of(Estimate.exact(0.150));
    assertThat(balance().glycerolOfCrude().getAsDouble())
        .isCloseTo(0.84 * 92.094 / 150, within(1e-4));
    crude = Optional.of(Estimate.exact(0.0645));
    assertThat(balance().glycerolOfCrude().getAsDouble()).isEqualTo(1);
    crude = Optional.of(Estimate.exact(0.0644));
    assertThatThrownBy(this::balance)
        .hasMessageStartingWith("crude layer: 64.4 g given, allowed 64.5 g or more");
  }

  /** 885.43 g of oil, 300 g of methanol and 2 mol, 80.0 g, of lye. */
  @Test
  void theCrudeLayerWeighsNoMoreThanWhatWentIn() {
    catalyst = dose(Reagent.SODIUM_HYDROXIDE, 2);
    crude = Optional.of(Estimate.exact(1.26));
    assertThat(log().crudeLayerKg()).isPresent();
    crude = Optional.of(Estimate.exact(1.27));
    assertThatThrownBy(this::log)
        .hasMessageStartingWith("crude layer: 1270 g given, allowed more than 0 to 1270 g; oil");
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "-0.1, -10", "1.2, 120"})
  void theShareWorkedUpIsAShare(double given, String percent) {
    share = given;
    assertThatThrownBy(this::log)
        .hasMessage(
            "share of the crude layer worked up: "
                + percent
                + " % given, allowed more than 0 to 100 %; write how much of it went into this"
                + " jar");
  }

  @Test
  void aBatchHasAlcohol() {
    alcohol = Alcohol.ETHANOL;
    alcoholKg = Estimate.exact(0);
    assertThatThrownBy(this::log)
        .hasMessage("ethanol: 0 g given, allowed more than 0 g; write what went into the batch");
  }

  /** A drying salt that is all taken out again draws no water; common salt draws none. */
  @Test
  void onlyADryingSaltLeftBehindIsWarnedOf() {
    add(LaterAddition.Agent.COMMON_SALT, 20, 0);
    add(LaterAddition.Agent.MAGNESIUM_SULFATE, 20, 20);
    assertThat(balance().hygroscopicSalt()).isFalse();
    add(LaterAddition.Agent.SODIUM_SULFATE, 0.5, 0);
    assertThat(balance().hygroscopicSalt()).isTrue();
  }
}
