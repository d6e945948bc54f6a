package starchfilm.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import starchfilm.casting.Spot;
import starchfilm.drying.DryingForecaster;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.material.ingredient.StarchKind;

class DryingSurfaceTest {
  private static final double THINNEST_M = 0.5e-3;
  private static final double THICKEST_M = 8e-3;
  private static final DryingForecaster TIMES =
      new DryingForecaster(ParameterDistribution.textbook(), 16);

  private static PlanRequest request;
  private static StarchBlend blend;
  private static DryingSurface surface;

  @BeforeAll
  static void build() {
    request = Requests.garden();
    blend = StarchBlend.of(java.util.Map.of(StarchKind.POTATO, 1.0), Double.POSITIVE_INFINITY);
    surface =
        DryingSurface.of(
            request, blend, TIMES, WishWindow.MOST_PLASTICISER, THINNEST_M, THICKEST_M);
  }

  @Test
  void liesOnTheRealForecastBetweenItsNodes() {
    Random random = new Random(5);
    for (int i = 0; i < 25; i++) {
      Design design =
          new Design(
              blend,
              blend.castFrom() + random.nextDouble() * (blend.levelsUpTo() - blend.castFrom()),
              0.6 * random.nextDouble(),
              0,
              THINNEST_M * Math.pow(THICKEST_M / THINNEST_M, random.nextDouble()),
              1);
      double[] real = TIMES.readyS(request.casting(design), Spot.THICK_SPOT);
      double logMean = Arrays.stream(real).map(Math::log).average().orElseThrow();
      // All of these are within 0.15 %; what is found is forecast again in full.
      assertThat(Math.log(surface.middleS(design))).isCloseTo(logMean, within(0.005));
    }
  }

  @Test
  void theChanceFallsWithThicknessAndRisesWithTime() {
    double before = 1;
    for (double wet = THINNEST_M; wet < THICKEST_M; wet *= 1.1) {
      double chance = surface.chance(design(wet), 4 * Requests.DAY_S);
      assertThat(chance).isLessThanOrEqualTo(before);
      assertThat(surface.chance(design(wet), 5 * Requests.DAY_S)).isGreaterThanOrEqualTo(chance);
      before = chance;
    }
    assertThat(before).isLessThan(0.01);
  }

  @Test
  void theThickestReadyIsReadyJustAsSurelyAsAsked() {
    double wet = surface.thickestReady(design(1e-3), 3 * Requests.DAY_S, 0.7);

    assertThat(surface.chance(design(wet), 3 * Requests.DAY_S)).isCloseTo(0.7, within(1e-4));
    assertThat(surface.readyS(design(wet), 0.7))
        .isCloseTo(3 * Requests.DAY_S, within(0.001 * 3 * Requests.DAY_S));
  }

  @Test
  void noPourIsReadyTooSoonAndEveryOneInTheEnd() {
    assertThat(surface.thickestReady(design(1e-3), 3600, 0.8)).isZero();
    assertThat(surface.thickestReady(design(1e-3), 300 * Requests.DAY_S, 0.8))
        .isEqualTo(surface.thickestM());
  }

  private static Design design(double wetM) {
    return new Design(blend, 0.035, 0.3, 0, wetM, 1);
  }
}
