package starchfilm.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.planning.TrendPower.MeasuredResponse;

/** Series of pots that differ in one thing. */
class SeriesTest {
  private static final PlateScatter SCATTER =
      new PlateScatter(ParameterDistribution.textbook(), 0.4, 0.5);

  private static final Planner PLANNER = new Planner(ParameterDistribution.textbook());

  private static Series series(Varied what, int each, Double... values) {
    PlanRequest request = Requests.garden().with(Requests.kitchen(0.002, 1e-4, 1));
    return PLANNER
        .series(request, new SeriesRequest(what, List.of(values), List.of(), each, 1), SCATTER)
        .series()
        .orElseThrow();
  }

  @ParameterizedTest
  @EnumSource(Varied.class)
  void changesOneThingAndNothingElse(Varied what) {
    Double[] values =
        switch (what) {
          case GLYCEROL -> new Double[] {15.0, 25.0, 35.0};
          case THICKNESS -> new Double[] {1.5, 2.0, 3.0};
          case STARCH -> new Double[] {2.5, 3.0, 4.0};
          case VINEGAR -> new Double[] {0.0, 4.0, 8.0};
          case COOK -> new Double[] {5.0, 10.0, 20.0};
        };
    Series series = series(what, 2, values);

    for (Series.Group group : series.groups()) {
      assertThat(group.weighed()).isCloseTo(group.asked(), within(0.05 * group.asked() + 0.1));
    }
    for (Varied other : Varied.values()) {
      if (other != what && other != Varied.VINEGAR) {
        double[] same =
            series.groups().stream()
                .mapToDouble(
                    g -> other.of(g.recipe().potfuls().get(0).recipe(), g.recipe().casting()))
                .toArray();
        assertThat(same[0]).as(other.words()).isCloseTo(same[2], within(0.02 * same[2]));
      }
    }
  }

  @Test
  void drawsTheSameOrderFromTheSameSeed() {
    assertThat(Series.drawn(6, 7))
        .isEqualTo(Series.drawn(6, 7))
        .containsExactlyInAnyOrder(0, 1, 2, 3, 4, 5);
    assertThat(Stream.of(1L, 2L, 3L, 4L).map(seed -> Series.drawn(6, seed)).distinct().count())
        .isGreaterThan(2);
  }

  @Test
  void showsWhatMovesAndNotWhatStays() {
    Series thickness = series(Varied.THICKNESS, 3, 1.5, 2.5, 3.5);

    assertThat(chance(thickness, MeasuredResponse.DRY_THROUGH)).isGreaterThan(0.7);
    assertThat(chance(thickness, MeasuredResponse.STRENGTH)).isLessThan(0.2);
  }

  @Test
  void showsMoreWithMorePlates() {
    Series few = series(Varied.GLYCEROL, 1, 25.0, 30.0, 35.0);
    Series many = series(Varied.GLYCEROL, 3, 25.0, 30.0, 35.0);

    assertThat(chance(few, MeasuredResponse.STRETCH))
        .isLessThan(chance(many, MeasuredResponse.STRETCH));
  }

  @Test
  void tellsWhereTheBalanceBlursTheGroups() {
    PlanRequest coarse = Requests.garden().with(Requests.kitchen(0.002, 0.005, 1));
    SeriesRequest near =
        new SeriesRequest(Varied.GLYCEROL, List.of(20.0, 22.0, 24.0), List.of(), 1, 1);

    assertThat(PLANNER.series(coarse, near, SCATTER).series().orElseThrow().isBlurred()).isTrue();
    assertThat(series(Varied.GLYCEROL, 2, 15.0, 25.0).isBlurred()).isFalse();
  }

  @Test
  void refusesASeriesThatTakesMoreGlycerolThanThereIs() {
    PlanRequest little =
        Requests.garden().with(Requests.potatoAnd(0.01)).with(Requests.kitchen(0.002, 1e-4, 1));
    SeriesRequest much =
        new SeriesRequest(Varied.GLYCEROL, List.of(20.0, 30.0, 60.0), List.of(), 2, 1);

    assertThatThrownBy(() -> PLANNER.series(little, much, SCATTER))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("of glycerol for all groups given, allowed the 10 g in the jar");
  }

  private static double chance(Series series, MeasuredResponse what) {
    return series.shows().stream()
        .filter(power -> power.what() == what)
        .findFirst()
        .orElseThrow()
        .chance();
  }
}
