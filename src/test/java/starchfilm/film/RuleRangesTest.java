package starchfilm.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.Use;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Cook;
import starchfilm.numerics.evidence.Extrapolation;
import starchfilm.numerics.evidence.Source;
import starchfilm.numerics.evidence.ValidRange;

/** The ranges and sources that a forecast names, as each rule's own page states them. */
class RuleRangesTest {
  private final FilmForecaster forecaster = new FilmForecaster();

  /** The valid ranges in the class comments of the rules. */
  @ParameterizedTest
  @CsvSource({
    "GLASS_TRANSITION, plasticiser, 0, 55",
    "GLASS_TRANSITION, relative humidity, 20, 75",
    "TENSILE_STRENGTH, plasticiser, 0, 60",
    "TENSILE_STRENGTH, distance above the glass transition, -145, 55",
    "TENSILE_STRENGTH, temperature, 20, 27",
    "ELONGATION, plasticiser, 0, 60",
    "ELONGATION, distance above the glass transition, -145, 55",
    "ELONGATION, temperature, 20, 27",
    "YOUNGS_MODULUS, plasticiser, 0, 60",
    "YOUNGS_MODULUS, distance above the glass transition, -25, 55",
    "YOUNGS_MODULUS, temperature, 20, 27",
    "VAPOUR_PERMEABILITY, plasticiser, 0, 50",
    "VAPOUR_PERMEABILITY, relative humidity, 50, 75"
  })
  void eachRuleStatesItsRange(FilmProperty property, String quantity, double min, double max) {
    List<RuleLimit> limits = FilmRules.published().of(property).limits();
    ValidRange range =
        limits.stream()
            .map(RuleLimit::range)
            .filter(each -> each.quantity().equals(quantity))
            .findFirst()
            .orElseThrow();
    assertThat(range.min()).isEqualTo(min);
    assertThat(range.max()).isEqualTo(max);
  }

  static Stream<FilmRule> rules() {
    return FilmRules.published().all().stream();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void everyRuleFlagsAFilmOutsideAllItsRangesAndNamesItsSources(FilmRule rule) {
    FilmForecast forecast = forecaster.forecast(outside());
    assertThat(forecast.extrapolations())
        .filteredOn(each -> each.rule().equals(rule.property().tradeName()))
        .extracting(each -> each.range().quantity())
        .containsAll(rule.limits().stream().map(limit -> limit.range().quantity()).toList());
    assertThat(rule.sources()).isNotEmpty();
    assertThat(forecast.sources()).containsAll(rule.sources());
  }

  /** 70 g glycerol, 90 % relative humidity, 35 °C. */
  private static Casting outside() {
    return Castings.film(Castings.paste(StarchKind.CORN, 0.04, 0.7)).with(new Use(0.9, 308.15, 0));
  }

  @Test
  void theMoistureFlagsItsOwnRangesAndNamesItsSources() {
    FilmForecast dry =
        forecaster.forecast(Castings.filmIn(0.05, Castings.paste(StarchKind.CORN, 0.04, 0.3)));
    assertThat(dry.extrapolations())
        .extracting(Extrapolation::rule)
        .contains("equilibrium moisture content");
    assertThat(dry.sources())
        .extracting(Source::citation)
        .anyMatch(citation -> citation.contains("Enrione"))
        .anyMatch(citation -> citation.startsWith("band of 15 %"));
  }

  /** An influence that does nothing is neither flagged nor named. */
  @Test
  void acidSaltAndAgeAreNamedAndFlaggedOnlyWhereTheyAct() {
    Composition plain = Castings.paste(StarchKind.POTATO, 0.04, 0.45);
    Composition acidAndSalt = Castings.paste(StarchKind.POTATO, 0.04, 0.45, 0.2, 0.05);
    Cook boiling = Castings.cook(30, 140);
    double month = 30 * 86_400.0;

    FilmForecast quiet = forecaster.forecast(film(plain, boiling, 0.3, 0));
    FilmForecast acted = forecaster.forecast(film(acidAndSalt, boiling, 0.95, month));

    List<String> influences = List.of("chain cuts by the acid", "effect of salt", "ageing");
    assertThat(quiet.extrapolations())
        .extracting(Extrapolation::rule)
        .doesNotContainAnyElementsOf(influences);
    assertThat(acted.extrapolations()).extracting(Extrapolation::rule).containsAll(influences);
    assertThat(quiet.sources()).doesNotContain(Salt.SOURCE);
    assertThat(acted.sources()).contains(Salt.SOURCE);
    assertThat(cites(quiet, "acid hydrolysis")).isFalse();
    assertThat(cites(acted, "acid hydrolysis")).isTrue();
    assertThat(cites(quiet, "ageing of potato")).isFalse();
    assertThat(cites(acted, "ageing of potato")).isTrue();
  }

  /** Sour and hot beyond the range of the rate: pH 2.4, 60 to 130 °C. Salt up to 10 % of solids. */
  @Test
  void influencesFlagTheirOwnQuantities() {
    FilmForecast acted =
        forecaster.forecast(
            film(
                Castings.paste(StarchKind.POTATO, 0.04, 0.45, 0.2, 0.09),
                Castings.cook(30, 140),
                0.95,
                30 * 86_400.0));
    assertThat(given(acted, "top temperature of the cook")).isCloseTo(140, within(1e-9));
    assertThat(given(acted, "paste pH"))
        .isCloseTo(acted.acid().pastePh(), within(1e-12))
        .isLessThan(2.4);
    // 20 g salt beside 100 g starch and 45 g glycerol.
    assertThat(given(acted, "salt")).isCloseTo(100 * 0.2 / 1.65, within(1e-9));
  }

  /** Rounding on the very end of a range is no extrapolation; a millionth beyond is. */
  @ParameterizedTest
  @CsvSource({
    "20, true",
    "19.9999999999, true",
    "19.999, false",
    "60, true",
    "60.0000000001, true",
    "60.001, false"
  })
  void aRangeHoldsItsEnds(double value, boolean holds) {
    RuleLimit limit = new RuleLimit(new ValidRange("share", 20, 60, "%"), film -> value);
    FilmState film = new FilmState(0.2, 0.25, 0, 0, 0.1, 0.5, Castings.ROOM_K);
    assertThat(limit.holds(film)).isEqualTo(holds);
  }

  private static double given(FilmForecast forecast, String quantity) {
    return forecast.extrapolations().stream()
        .filter(each -> each.range().quantity().equals(quantity))
        .mapToDouble(Extrapolation::given)
        .findFirst()
        .orElseThrow();
  }

  private static boolean cites(FilmForecast forecast, String words) {
    return forecast.sources().stream().anyMatch(source -> source.citation().contains(words));
  }

  private static Casting film(Composition paste, Cook cook, double humidity, double ageS) {
    return Castings.film(paste).with(cook).with(new Use(humidity, Castings.ROOM_K, ageS));
  }
}
