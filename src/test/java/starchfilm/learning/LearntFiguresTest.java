package starchfilm.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.ConstantRoom;
import starchfilm.casting.Spot;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.Weighing;
import starchfilm.drying.Milestone;
import starchfilm.drying.PlateSimulation;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.film.FilmForecaster;
import starchfilm.film.FilmProperty;
import starchfilm.learning.summary.DoubtedReading;
import starchfilm.learning.summary.FilmLearnt;
import starchfilm.learning.summary.KindLearnt;
import starchfilm.learning.summary.Learnt;
import starchfilm.learning.summary.ParameterLearnt;
import starchfilm.learning.summary.RoomLearnt;
import starchfilm.material.air.AirState;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.numerics.evidence.Estimate;

/** What is shown of what was learnt. */
class LearntFiguresTest {
  private static final ParameterSample SLOW_AIR =
      ParameterSample.NONE.with(UncertainParameter.AIR_SIDE, Math.log(0.6));

  private final SyntheticPlates plates = new SyntheticPlates(8);

  private Trial slow() {
    Trial dried = SyntheticPlates.dried(plates.any("Shed "), SLOW_AIR, 0.2, 0.4, 0.6, 0.8);
    return SyntheticPlates.with(
        dried,
        dried.file(),
        dried.seen().weighings(),
        List.of(MadeUpNotebook.strip(4e6, 0.3), MadeUpNotebook.strip(4.4e6, 0.33)));
  }

  /** Air that takes off 0.6 of the textbook's vapour makes a film peelable so much later. */
  @Test
  void aSlowRoomIsShownAsSlowAsItIs() {
    List<Trial> trials = List.of(slow(), slow());
    Learnt learnt = Workshop.taughtBy(Path.of(""), trials).learnt();
    RoomLearnt room = learnt.rooms().get(0);
    assertThat(learnt.rooms()).hasSize(1);
    assertThat(room.name()).isEqualTo("Shed");
    assertThat(room.plates()).isEqualTo(2);
    assertThat(room.weighings()).isEqualTo(8);
    PlateSimulation last = new PlateSimulation(trials.get(1).casting());
    double slower =
        Math.log(
            last.milestoneS(Milestone.PEELABLE, Spot.NOMINAL, SLOW_AIR)
                / last.milestoneS(Milestone.PEELABLE, Spot.NOMINAL, ParameterSample.NONE));
    Estimate pace = room.logDryingTime().orElseThrow();
    assertThat(pace.value()).isCloseTo(slower, within(0.25 * slower));
    assertThat(pace.sd()).isBetween(0.01, 0.15);
    assertThat(room.factors())
        .extracting(ParameterLearnt::factor)
        .containsExactly(
            UncertainParameter.AIR_SIDE,
            UncertainParameter.BENCH,
            UncertainParameter.HUMIDITY,
            UncertainParameter.AIR_TEMPERATURE);
    assertThat(room.factors().get(0).isTold()).isTrue();
    assertThat(learnt.kinds().stream().mapToInt(KindLearnt::plates).sum()).isEqualTo(2);
    assertThat(learnt.kinds().get(0).factors())
        .extracting(ParameterLearnt::factor)
        .containsExactly(UncertainParameter.DIFFUSIVITY, UncertainParameter.ISOTHERM);
    assertThat(learnt.pours())
        .extracting(ParameterLearnt::factor)
        .containsExactly(UncertainParameter.THICKNESS, UncertainParameter.SOLIDS);
    assertThat(
            learnt.films().stream()
                .filter(film -> film.property() == FilmProperty.ELONGATION)
                .mapToInt(FilmLearnt::strips)
                .sum())
        .isEqualTo(4);
    assertThat(learnt.doubted()).isEmpty();
    assertThat(learnt.leftOut()).isEmpty();
  }

  /** By hand: exp(0.182) is 1.2, exp(-0.223) is 0.8; 0.067 of 1.2 is 8 %. */
  @ParameterizedTest
  @CsvSource({
    "0.182, 0.067, 20 % slower than a textbook room (±8 %)",
    "-0.223, 0.1, 20 % faster than a textbook room (±8 %)",
    "0.001, 0.0001, as fast as a textbook room (±1 %)"
  })
  void theRoomInOneSentence(double logRatio, double sd, String said) {
    assertThat(room(Optional.of(new Estimate(logRatio, sd))).sentence())
        .isEqualTo("your room \"Shed\" dries " + said);
  }

  @Test
  void aRoomTooDampHasNoPace() {
    assertThat(room(Optional.empty()).sentence())
        .isEqualTo("your room \"Shed\" is too damp for a film to dry in, so its pace is not known");
    assertThat(room(Optional.empty()).isCalled(" shed")).isTrue();
    assertThat(room(Optional.empty()).isCalled("sheds")).isFalse();
    for (int[] counts : new int[][] {{0, 1}, {1, 0}}) {
      assertThatThrownBy(
              () -> new RoomLearnt("Shed", counts[0], counts[1], Optional.empty(), List.of()))
          .hasMessage("a room is learnt from at least one weighing");
    }
  }

  private static RoomLearnt room(Optional<Estimate> pace) {
    return new RoomLearnt("Shed", 1, 1, pace, List.of());
  }

  /** Nine tenths of the textbook's spread is hardly less; three of them are hardly believed. */
  @ParameterizedTest
  @CsvSource({
    "0.1, 0.91, false, false",
    "0.1, 0.89, true, false",
    "2.99, 0.5, true, false",
    "-3.01, 0.5, true, true",
    "3.01, 0.95, false, false",
    "0.1, 0.9, false, false",
    "3, 0.5, true, false"
  })
  void whatIsToldAndWhatIsHardlyBelieved(
      double deviation, double sd, boolean told, boolean hardly) {
    ParameterLearnt learnt = new ParameterLearnt(UncertainParameter.BENCH, deviation, sd, 1);
    assertThat(learnt.isTold()).isEqualTo(told);
    assertThat(learnt.isHardlyBelieved()).isEqualTo(hardly);
    // It is the textbook's spread that counts, not the unit.
    ParameterLearnt twice = new ParameterLearnt(UncertainParameter.BENCH, 2 * deviation, 2 * sd, 2);
    assertThat(twice.isTold()).isEqualTo(told);
    assertThat(twice.isHardlyBelieved()).isEqualTo(hardly);
  }

  @Test
  void aDoubtedReadingIsToldWithWhatWouldFit() {
    assertThat(
            new DoubtedReading("shed/4.json", "weighing at +24h", "131 g", "117 g", 0.031)
                .sentence())
        .isEqualTo(
            "shed/4.json, weighing at +24h: 131 g noted, 117 g would fit the others; counted at"
                + " 3 %");
    for (double[] sds : new double[][] {{-1, 1}, {1, -1}}) {
      assertThatThrownBy(() -> new ParameterLearnt(UncertainParameter.BENCH, 0, sds[0], sds[1]))
          .hasMessage("a standard deviation is 0 or more");
    }
    assertThat(new ParameterLearnt(UncertainParameter.BENCH, 0, 0, 0).isTold()).isFalse();
  }

  /** A logging scale: of 61 readings every second, with the last and what was confirmed. */
  @ParameterizedTest
  @CsvSource({"60, 1, 60", "61, 2, 32", "120, 2, 62", "121, 3, 42"})
  void manyReadingsAreThinned(int noted, int every, int used) {
    Trial plate = plates.any("shed");
    double[] timesS = IntStream.range(0, noted).mapToDouble(i -> 3600.0 + 300 * i).toArray();
    double[] masses = new double[noted];
    new PlateSimulation(plate.casting(), timesS).filmMassesKg(ParameterSample.NONE, masses);
    List<Weighing> weighings =
        IntStream.range(0, noted)
            .mapToObj(i -> new Weighing(timesS[i], masses[i], 1e-3, i == 1, true))
            .toList();
    UsableWeighings usable = UsableWeighings.of(SyntheticPlates.weighed(plate, weighings));
    assertThat(usable.every()).isEqualTo(every);
    assertThat(usable.odd()).isEmpty();
    assertThat(usable.used()).hasSize(used).contains(weighings.get(1), weighings.get(noted - 1));
  }

  /** The pace's uncertainty is that of the room's factors, drawn and run through the model. */
  @Test
  void thePacesUncertaintyIsThatOfDrawnRooms() {
    List<Trial> trials = List.of(slow(), slow());
    RoomLearnt room = Workshop.taughtBy(Path.of(""), trials).learnt().rooms().get(0);
    SharedParameters shared = Learner.taughtBy(trials, Path.of(""), () -> {}).shared();
    Normal factors = shared.seenThrough(shared.space().ofRoom("shed"));
    PlateSimulation last = new PlateSimulation(trials.get(1).casting());
    Random random = new Random(5);
    DescriptiveStatistics logs = new DescriptiveStatistics();
    for (int draw = 0; draw < 400; draw++) {
      RealVector z = new ArrayRealVector(VarianceShares.COUNT);
      for (int i = 0; i < VarianceShares.COUNT; i++) {
        z.setEntry(i, random.nextGaussian());
      }
      double[] drawn = factors.mean().add(factors.lower().operate(z)).toArray();
      logs.addValue(
          Math.log(last.milestoneS(Milestone.PEELABLE, Spot.NOMINAL, PlateReadings.full(drawn))));
    }
    // The standard deviation of 400 draws is known within 4 %.
    double sd = room.logDryingTime().orElseThrow().sd();
    assertThat(sd).isCloseTo(logs.getStandardDeviation(), within(0.15 * sd));
  }

  /** In air of 97 % nothing ever becomes peelable, in a textbook room as little as here. */
  @Test
  void inADampRoomThereIsNoPace() {
    ConstantRoom damp = new ConstantRoom(new AirState(293.15, 0.97, 0.1));
    Trial plate = plates.trial("cellar", damp, StarchKind.POTATO, 0.2, 0.06);
    List<Weighing> weighings =
        List.of(new Weighing(36_000, 0.195, 5e-4), new Weighing(72_000, 0.19, 5e-4));
    Learnt learnt =
        Workshop.taughtBy(Path.of(""), List.of(SyntheticPlates.weighed(plate, weighings))).learnt();
    assertThat(learnt.rooms())
        .singleElement()
        .extracting(RoomLearnt::logDryingTime)
        .isEqualTo(Optional.empty());
  }

  /** Strips alone tell of films, and an odd weighing is named with what it is held against. */
  @Test
  void whatIsNotWeighedIsNotShownAndWhatIsOddIsNamed() {
    Trial slow = slow();
    Trial pulled = SyntheticPlates.with(slow, slow.file(), List.of(), slow.seen().pulls());
    Learnt strips = Workshop.taughtBy(Path.of(""), List.of(pulled)).learnt();
    assertThat(strips.pours()).isEmpty();
    assertThat(strips.rooms()).isEmpty();
    Map<StarchKind, Double> pure = pulled.casting().composition().starchShares();
    StripLikelihoods lessons = new StripLikelihoods();
    lessons.add(pulled, "a.json");
    FilmLearnt strength = strips.films().get(0);
    assertThat(strength.logFactor())
        .isEqualTo(SharedStrips.after(strength.property(), lessons.likelihoods()).shared(pure));
    assertThat(strength.logSdBefore())
        .isCloseTo(
            Math.sqrt(0.8) * new FilmForecaster().logScatter(strength.property()), within(1e-9));

    List<Weighing> odd = new ArrayList<>(slow.seen().weighings());
    Weighing last = odd.get(3);
    odd.add(new Weighing(last.timeS() + 3600, 1e-3, 1e-4));
    assertThat(
            Workshop.taughtBy(Path.of(""), List.of(SyntheticPlates.weighed(slow, odd)))
                .learnt()
                .doubted())
        .singleElement()
        .satisfies(doubted -> assertThat(doubted.fitting()).startsWith("at least "));
  }
}
