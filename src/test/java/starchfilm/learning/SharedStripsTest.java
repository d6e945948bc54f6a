package starchfilm.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import starchfilm.film.FilmForecaster;
import starchfilm.film.FilmProperty;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.numerics.evidence.Estimate;

/** What pulled strips share and what one film teaches another, by hand. */
class SharedStripsTest {
  private static final Map<StarchKind, Double> CORN = Map.of(StarchKind.CORN, 1.0);

  /** Three strips that agree: their mean, within a quarter over the root of three. */
  @Test
  void stripsThatAgreeHaveTheirMean() {
    StripLikelihood.SteadyMean steady =
        StripLikelihood.SteadyMean.of(new double[] {0.2, 0.2, 0.2}, 0.25);
    assertThat(steady.mean().value()).isCloseTo(0.2, within(1e-12));
    assertThat(steady.mean().sd()).isCloseTo(0.25 / Math.sqrt(3), within(1e-12));
    assertThat(steady.weights()).containsExactly(1.25, 1.25, 1.25);
    assertThat(StripLikelihood.SteadyMean.of(new double[] {0.1, 0.3}, 0.25).mean().value())
        .isCloseTo(0.2, within(1e-9));
  }

  /**
   * Student's t of 4 degrees: a strip r standard deviations off counts {@code 5/(4 + r^2)}, here
   * 5/104 of one 10 off, and the mean solves its own weights.
   */
  @Test
  void aWildStripHardlyPullsTheMean() {
    double[] strips = {0, 0.02, -0.02, 2.5};
    StripLikelihood.SteadyMean steady = StripLikelihood.SteadyMean.of(strips, 0.25);
    double sum = 0;
    double weighted = 0;
    double counted = 0;
    for (int i = 0; i < strips.length; i++) {
      double r = (strips[i] - steady.mean().value()) / 0.25;
      double weight = 5 / (4 + r * r);
      assertThat(steady.weights().get(i)).isCloseTo(weight, within(1e-6));
      sum += weight;
      weighted += weight * strips[i];
      counted += Math.min(1, weight);
    }
    assertThat(steady.mean().value()).isCloseTo(weighted / sum, within(1e-8)).isLessThan(0.05);
    assertThat(steady.mean().sd()).isCloseTo(0.25 / Math.sqrt(counted), within(1e-6));
    assertThat(steady.weights().get(3)).isLessThan(PlateFit.DOUBTED_BELOW);
  }

  /** The parts of a scatter of strength: 0.6 common, 0.2 of the kind, 0.2 of the film. */
  @Test
  void filmsOfOneHandShareMostOfTheScatter() {
    double scatter = new FilmForecaster().logScatter(FilmProperty.TENSILE_STRENGTH);
    assertThat(scatter).isCloseTo(Math.log(1.3 * 1.9), within(1e-9));
    SharedStrips none = SharedStrips.after(FilmProperty.TENSILE_STRENGTH, List.of());
    Map<StarchKind, Double> half = Map.of(StarchKind.CORN, 0.5, StarchKind.POTATO, 0.5);
    assertThat(none.sharedSdBefore(CORN)).isCloseTo(scatter * Math.sqrt(0.8), within(1e-9));
    assertThat(none.sharedSdBefore(half)).isCloseTo(scatter * Math.sqrt(0.7), within(1e-9));
    assertThat(none.shared(half).sd()).isCloseTo(scatter * Math.sqrt(0.7), within(1e-9));
    assertThat(none.nextFilm(CORN).sd()).isCloseTo(scatter, within(1e-9));
    assertThat(OwnScatter.logSd(FilmProperty.TENSILE_STRENGTH, 4))
        .isCloseTo(Math.hypot(scatter * Math.sqrt(0.2), 0.25 / 2), within(1e-9));
    assertThat(StripLikelihoods.stripLogSd(FilmProperty.ELONGATION)).isEqualTo(0.4);

    // One film of corn, known within s: corn learns 0.8 v/(v + s^2), potato the common 0.6 of it.
    double v = scatter * scatter;
    StripLikelihood corn =
        new StripLikelihood(
            "a.json", CORN, FilmProperty.TENSILE_STRENGTH, 3, new Estimate(0.5, 0.2));
    StripLikelihood other =
        new StripLikelihood("a.json", CORN, FilmProperty.ELONGATION, 3, new Estimate(-2, 0.2));
    SharedStrips learnt = SharedStrips.after(FilmProperty.TENSILE_STRENGTH, List.of(corn, other));
    assertThat(learnt.shared(CORN).value()).isCloseTo(0.5 * 0.8 * v / (v + 0.04), within(1e-9));
    assertThat(learnt.shared(CORN).sd())
        .isCloseTo(Math.sqrt(0.8 * v - 0.64 * v * v / (v + 0.04)), within(1e-9));
    Map<StarchKind, Double> potato = Map.of(StarchKind.POTATO, 1.0);
    assertThat(learnt.shared(potato).value()).isCloseTo(0.5 * 0.6 * v / (v + 0.04), within(1e-9));
    assertThat(learnt.shared(potato).sd())
        .isCloseTo(Math.sqrt(0.8 * v - 0.36 * v * v / (v + 0.04)), within(1e-9));
    assertThatThrownBy(
            () ->
                new StripLikelihood("a.json", CORN, FilmProperty.ELONGATION, 0, Estimate.exact(0)))
        .hasMessage("a strip likelihood needs a strip");
  }
}
