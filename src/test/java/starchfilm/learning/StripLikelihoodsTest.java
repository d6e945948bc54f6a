package starchfilm.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import starchfilm.casting.Castings;
import starchfilm.casting.ConstantRoom;
import starchfilm.casting.trial.EachPlate;
import starchfilm.casting.trial.EachPlate.MeasuredFilm;
import starchfilm.casting.trial.PullTest;
import starchfilm.casting.trial.Trial;
import starchfilm.film.FilmForecast;
import starchfilm.film.FilmForecaster;
import starchfilm.film.FilmProperty;
import starchfilm.film.LearntFilm;
import starchfilm.material.air.AirState;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;

/** What pulled strips teach of the film rules. */
class StripLikelihoodsTest {
  private static final double A_TRIFLE = 1e-9;

  private int films;

  private static final Path HERE = Path.of("");
  private static final Map<StarchKind, Double> POTATO = Map.of(StarchKind.POTATO, 1.0);
  private static final Map<StarchKind, Double> CORN = Map.of(StarchKind.CORN, 1.0);

  private final SyntheticPlates plates = new SyntheticPlates(1);
  private int made;

  private Trial filmOf(StarchKind kind, PullTest... strips) {
    ConstantRoom room = new ConstantRoom(new AirState(293.15, 0.5, 0.1));
    return MadeUpNotebook.pulled(
        plates.trial("kitchen", room, kind, 0.2, 0.06),
        Path.of("film-" + ++made + ".json"),
        List.of(strips));
  }

  /** A film whose strips bore times the forecast; no two bear the same, or they would be copies. */
  private Trial film(StarchKind kind, double... times) {
    FilmForecast rule = new FilmForecaster().forecast(filmOf(kind).casting());
    double own = 1 + A_TRIFLE * ++films;
    return filmOf(
        kind,
        Arrays.stream(times)
            .mapToObj(
                t ->
                    MadeUpNotebook.strip(
                        own * t * rule.tensileStrengthPa().middle(),
                        t * rule.elongationAtBreak().middle()))
            .toArray(PullTest[]::new));
  }

  private static double learnt(FilmProperty property, Map<StarchKind, Double> of, Trial... films) {
    return Workshop.taughtBy(HERE, List.of(films)).film(of).logFactors().get(property).value();
  }

  private static double strength(Map<StarchKind, Double> of, Trial... films) {
    return learnt(FilmProperty.TENSILE_STRENGTH, of, films);
  }

  /**
   * Load over the section before the pull, as ASTM D882 and ISO 527-3 define tensile strength: 6.0
   * N on 15 mm by 0.1 mm are 4.0 MPa. By hand.
   */
  @Test
  void aLessonIsTheLogarithmOfMeasuredOverForecast() {
    PullTest strip = new PullTest(6.0, 15e-3, 0.1e-3, OptionalDouble.of(0.5));
    Trial trial = filmOf(StarchKind.POTATO, strip, strip, strip, strip);
    FilmForecast rule = new FilmForecaster().forecast(trial.casting());
    StripLikelihoods strips = new StripLikelihoods();

    strips.add(trial, "a.json");

    assertThat(strips.likelihoods()).hasSize(2);
    StripLikelihood strength = strips.likelihoods().get(0);
    assertThat(strength.property()).isEqualTo(FilmProperty.TENSILE_STRENGTH);
    assertThat(strength.strips()).isEqualTo(4);
    assertThat(strength.logFactor().value())
        .isCloseTo(Math.log(4.0e6 / rule.tensileStrengthPa().middle()), within(1e-9));
    StripLikelihood elongation = strips.likelihoods().get(1);
    assertThat(elongation.property()).isEqualTo(FilmProperty.ELONGATION);
    assertThat(elongation.logFactor().value())
        .isCloseTo(Math.log(0.5 / rule.elongationAtBreak().middle()), within(1e-9));
    // A quarter and two fifths from strip to strip, over the root of four.
    assertThat(strength.logFactor().sd()).isCloseTo(0.125, within(1e-9));
    assertThat(elongation.logFactor().sd()).isCloseTo(0.2, within(1e-9));
  }

  /** Strips of a named plate are of that plate's film, the others together of one more. */
  @Test
  void eachNamedPlatesStripsAreALessonOfTheirOwn() {
    PullTest weak = MadeUpNotebook.strip(3e6, 0.3);
    PullTest weaker = MadeUpNotebook.strip(2e6, 0.3);
    PullTest strong = MadeUpNotebook.strip(8e6, 0.3);
    Trial pulled = filmOf(StarchKind.POTATO, weak, strong, weaker);
    Trial named = ofPlateTwo(pulled, strong);
    assertThat(strengths(named))
        .containsExactly(
            strengths(filmOf(StarchKind.POTATO, strong)).get(0),
            strengths(filmOf(StarchKind.POTATO, weak, weaker)).get(0));
    assertThat(strengths(ofPlateTwo(pulled, weak, strong, weaker)))
        .isEqualTo(strengths(pulled))
        .hasSize(1);
  }

  /** The same trial, its second plate known to be the one that some strips are of. */
  private static Trial ofPlateTwo(Trial trial, PullTest... strips) {
    EachPlate plates =
        new EachPlate(
            1,
            new TreeMap<>(),
            new TreeMap<>(),
            new TreeMap<>(),
            new TreeMap<>(Map.of(2, new MeasuredFilm(List.of(), List.of(strips)))));
    return SyntheticPlates.with(trial, trial.file(), List.of(), trial.seen().pulls(), plates);
  }

  private static List<Double> strengths(Trial trial) {
    StripLikelihoods strips = new StripLikelihoods();
    strips.add(trial, "a.json");
    return strips.likelihoods().stream()
        .filter(lesson -> lesson.property() == FilmProperty.TENSILE_STRENGTH)
        .map(lesson -> lesson.logFactor().value())
        .toList();
  }

  /** Three strips of strength s and one of 20 s: it would fit the others at little above s. */
  @Test
  void aDoubtedStripIsNamedByItsNumberWithWhatWouldFit() {
    PullTest sound = MadeUpNotebook.strip(4e6, 0.3);
    StripLikelihoods strips = new StripLikelihoods();
    strips.add(
        filmOf(StarchKind.POTATO, MadeUpNotebook.strip(80e6, 0.3), sound, sound, sound), "a.json");
    assertThat(strips.doubted())
        .singleElement()
        .satisfies(
            doubted -> {
              assertThat(doubted.reading()).isEqualTo("tensile strength of strip 1");
              assertThat(doubted.noted()).isEqualTo("80 MPa");
              assertThat(doubted.fitting()).isIn("4 MPa", "4.0 MPa", "4.1 MPa");
              assertThat(doubted.countsFor()).isLessThan(0.05);
            });
  }

  /** Two standard deviations off, a strip counts 5/8 and is not doubted. */
  @Test
  void aStripSomewhatOffIsNotDoubted() {
    PullTest sound = MadeUpNotebook.strip(4e6, 0.3);
    StripLikelihoods strips = new StripLikelihoods();
    strips.add(
        filmOf(StarchKind.POTATO, sound, sound, sound, MadeUpNotebook.strip(6.6e6, 0.3)), "a.json");
    assertThat(strips.doubted()).isEmpty();
  }

  /** A trial without strips is none that strips could not be learnt from. */
  @Test
  void withoutStripsNothingIsLeftOut() {
    Trial baked = filmOf(StarchKind.POTATO);
    StripLikelihoods strips = new StripLikelihoods();
    strips.add(baked.cast(baked.casting().with(Castings.use(0.5, 500, 0)), List.of()), "a.json");
    assertThat(strips.leftOut()).isEmpty();
  }

  @Test
  void sharesOfAStripsStarchMakeAWhole() {
    assertThatThrownBy(
            () ->
                new StripLikelihood(
                    "a.json",
                    Map.of(StarchKind.CORN, 0.5),
                    FilmProperty.ELONGATION,
                    1,
                    Estimate.exact(0)))
        .hasMessage("shares add up to 1");
  }

  /** What no rule of a film takes teaches nothing, and is named with the reason. */
  @Test
  void stripsOfAFilmThatNoRuleTakesAreLeftOut() {
    Trial trial = filmOf(StarchKind.POTATO, MadeUpNotebook.strip(4e6, 0.3));
    Trial baked = trial.cast(trial.casting().with(Castings.use(0.5, 500, 0)), List.of());
    StripLikelihoods strips = new StripLikelihoods();
    strips.add(baked, "a.json");
    assertThat(strips.likelihoods()).isEmpty();
    assertThat(strips.leftOut())
        .singleElement()
        .satisfies(
            left -> {
              assertThat(left.file()).isEqualTo("a.json");
              assertThat(left.reason()).startsWith("its strips: ");
            });
  }

  @Test
  void aStripWithoutMarksTellsOnlyItsStrength() {
    Trial trial =
        filmOf(StarchKind.POTATO, new PullTest(6.0, 15e-3, 0.1e-3, OptionalDouble.empty()));

    LearntFilm learnt = Workshop.taughtBy(HERE, List.of(trial)).film(POTATO);

    assertThat(learnt.logFactors()).containsOnlyKeys(FilmProperty.TENSILE_STRENGTH);
  }

  @Test
  void oneStripMovesLessThanFiveAndNeitherAllTheWay() {
    double toldBy = Math.log(1.6);
    double one = strength(POTATO, film(StarchKind.POTATO, 1.6));
    double five = strength(POTATO, film(StarchKind.POTATO, 1.6, 1.6, 1.6, 1.6, 1.6));
    double fiveFilms =
        strength(
            POTATO,
            IntStream.range(0, 5)
                .mapToObj(i -> film(StarchKind.POTATO, 1.6))
                .toArray(Trial[]::new));

    assertThat(one).isPositive().isLessThan(five);
    assertThat(five).isLessThan(fiveFilms);
    assertThat(fiveFilms).isLessThan(toldBy);
  }

  @Test
  void moreFilmsLeaveLessUncertain() {
    double before = new FilmForecaster().logScatter(FilmProperty.TENSILE_STRENGTH);
    List<Trial> films = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      films.add(film(StarchKind.POTATO, 1.2, 1.3));
      double sd =
          Workshop.taughtBy(HERE, films)
              .film(POTATO)
              .logFactors()
              .get(FilmProperty.TENSILE_STRENGTH)
              .sd();
      assertThat(sd).isLessThan(before);
      before = sd;
    }
    // A next film's own part is left, however many were pulled.
    assertThat(before)
        .isGreaterThan(
            Math.sqrt(0.2) * new FilmForecaster().logScatter(FilmProperty.TENSILE_STRENGTH));
  }

  @Test
  void aKindLearnsMostFromItsOwnStrips() {
    Trial strong = film(StarchKind.POTATO, 2, 2, 2);

    double potato = strength(POTATO, strong);
    double corn = strength(CORN, strong);
    double half = strength(Map.of(StarchKind.POTATO, 0.5, StarchKind.CORN, 0.5), strong);
    double cornOfWeakCorn = strength(CORN, strong, film(StarchKind.CORN, 0.5, 0.5, 0.5));

    assertThat(corn).isPositive().isLessThan(half);
    assertThat(half).isLessThan(potato);
    assertThat(cornOfWeakCorn).isNegative();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.02, 0.1, 10, 100})
  void oneWildStripHardlyCountsAndIsNamed(double wild) {
    Trial sound = film(StarchKind.POTATO, 1.2, 1.25, 1.3, 1.35, 1.4);
    Trial misled = film(StarchKind.POTATO, 1.2, 1.25, 1.3, 1.35, 1.4, wild);

    assertThat(strength(POTATO, misled)).isCloseTo(strength(POTATO, sound), within(0.06));
    assertThat(Workshop.taughtBy(HERE, List.of(misled)).learnt().doubted())
        .anySatisfy(
            doubted ->
                assertThat(doubted.sentence())
                    .startsWith(misled.file() + ", tensile strength of strip 6: ")
                    .contains("would fit the others")
                    .doesNotContain("e+"));
    assertThat(Workshop.taughtBy(HERE, List.of(sound)).learnt().doubted()).isEmpty();
  }

  @Test
  void aTrialIsForecastWithoutItsOwnStrips() {
    Trial own = film(StarchKind.POTATO, 2, 2, 2);
    Trial other = film(StarchKind.POTATO, 0.7, 0.7);

    assertThat(Workshop.taughtBy(HERE, List.of(own)).film(own)).isEqualTo(LearntFilm.NOTHING);
    assertThat(Workshop.taughtBy(HERE, List.of(own, other)).film(own))
        .isEqualTo(Workshop.taughtBy(HERE, List.of(other)).film(own));
  }

  @Test
  void theForecastIsMultipliedAndNarrowedAndTheModulusStays() {
    Trial taught = film(StarchKind.POTATO, 1.8, 1.8, 1.8, 1.8);
    Trial next = filmOf(StarchKind.POTATO);
    LearntFilm learnt = Workshop.taughtBy(HERE, List.of(taught)).film(next);

    FilmForecast before = new FilmForecaster().forecast(next.casting());
    FilmForecast after = new FilmForecaster(learnt).forecast(next.casting());

    double factor = learnt.logFactors().get(FilmProperty.TENSILE_STRENGTH).value();
    assertThat(after.tensileStrengthPa().middle())
        .isCloseTo(
            before.tensileStrengthPa().middle() * Math.exp(factor),
            within(1e-6 * before.tensileStrengthPa().middle()));
    assertThat(logWidth(after.tensileStrengthPa()))
        .isLessThan(0.8 * logWidth(before.tensileStrengthPa()));
    assertThat(logWidth(after.elongationAtBreak()))
        .isLessThan(0.9 * logWidth(before.elongationAtBreak()));
    assertThat(after.youngsModulusPa()).isEqualTo(before.youngsModulusPa());
    assertThat(after.glassTransitionK()).isEqualTo(before.glassTransitionK());
  }

  private static double logWidth(Band band) {
    return Math.log(band.high() / band.low());
  }

  /** The steady mean is where Student's t with 4 degrees of freedom is most likely. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void theSteadyMeanIsTheMostLikelyMiddleOfStudentsT(long seed) {
    Random random = new Random(seed);
    double sd = 0.25;
    double[] figures =
        IntStream.range(0, 3 + random.nextInt(8))
            .mapToDouble(i -> 0.4 + sd * random.nextGaussian())
            .toArray();

    double steady = StripLikelihood.SteadyMean.of(figures, sd).mean().value();

    for (double aside : new double[] {-0.01, -0.001, 0.001, 0.01}) {
      assertThat(logLikelihood(figures, steady, sd))
          .isGreaterThan(logLikelihood(figures, steady + aside, sd));
    }
  }

  private static double logLikelihood(double[] figures, double middle, double sd) {
    TDistribution student = new TDistribution(null, 4);
    return Arrays.stream(figures).map(f -> student.logDensity((f - middle) / sd)).sum();
  }
}
