package starchfilm.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.Setting;
import starchfilm.casting.Spot;
import starchfilm.drying.Milestone;
import starchfilm.film.FilmForecast;

/** What counts as trouble, and from where on. */
class MeasureTest {
  /** The limits that stand in the table of measures; crack and mould as in their risk levels. */
  @ParameterizedTest
  @CsvSource({
    "crack energy, 0.2, 1",
    "not dry, 0.68, 1",
    "not peelable, 0.68, 1",
    "mould hours, 24, 48",
    "snapping, 0.5, 1",
    "tack, 0.85, 1",
    "tearing, 0.2, 1",
    "edge ahead, 0.2, 0.5",
  })
  void troubleGrowsFromHarmlessToLikelyWithTheLogarithm(
      String name, double harmless, double likely) {
    Measure measure = measure(name);
    assertThat(measure.trouble(harmless)).isCloseTo(0, within(1e-12));
    assertThat(measure.trouble(harmless / 3)).isZero();
    assertThat(measure.trouble(Math.sqrt(harmless * likely))).isCloseTo(0.5, within(1e-12));
    assertThat(measure.trouble(likely)).isCloseTo(1, within(1e-12));
  }

  /** The sentence beside it says that film snaps below 10 %. */
  @Test
  void filmThatStretchesByATenthJustSnaps() {
    FaultContext scene = SeenFaults.on(Castings.USUAL);
    double stretch = scene.outlook().stretchAtRest(0.5, scene.setup().use().temperatureK());
    assertThat(figure("snapping", scene) * stretch).isCloseTo(0.10, within(1e-12));
    assertThat(measure("snapping").words(scene)).endsWith("snaps below 10 %");
    FaultContext drier = SeenFaults.on(SeenFaults.usual(Setting.GLYCEROL, 0.2));
    assertThat(measure("snapping").moved(scene, drier))
        .isEqualTo(
            "the film stretches by %s instead of %s",
            AdviceFigure.STRETCH.words(drier), AdviceFigure.STRETCH.words(scene));
  }

  /** One newton on a strip of one centimetre at the thin edge. */
  @Test
  void filmTearsWhereAStripOfItsEdgeBearsLessThanANewton() {
    FaultContext scene = SeenFaults.on(Castings.USUAL);
    FilmForecast film = scene.outlook().film();
    double edgeM = film.dryThicknessM().middle() * (1 - scene.setup().pour().unevenness());
    double bornN = film.tensileStrengthPa().middle() * 0.01 * edgeM;
    assertThat(figure("tearing", scene)).isCloseTo(1 / bornN, within(1e-9));
    assertThat(measure("tearing").moved(scene, scene))
        .matches("a strip 1 cm wide from the thin edge holds ([0-9.]+ N) instead of \\1");
  }

  /** In air of 50 % film is tacky above 42.5 g glycerol to 100 g dry starch (PlasticiserWindow). */
  @Test
  void filmAtTheTackyLimitHasTrouble() {
    assertThat(figure("tack", SeenFaults.on(SeenFaults.usual(Setting.GLYCEROL, 0.425))))
        .isCloseTo(1, within(1e-9));
    assertThat(measure("tack").words(SeenFaults.on(SeenFaults.usual(Setting.GLYCEROL, 0.425))))
        .matches("in 50 % humidity film is tacky above .* per 100 g dry starch, and this has .* g");
    assertThat(figure("tack", SeenFaults.on(SeenFaults.usual(Setting.GLYCEROL, 0)))).isPositive();
  }

  @Test
  void latenessIsTheTimeItTakesOverTheTimeItWasGiven() {
    FaultContext scene = SeenFaults.on(Castings.USUAL);
    double dry = scene.outlook().timeS(Spot.THICK_SPOT, Milestone.DRY_THROUGH);
    double firm = scene.outlook().timeS(Spot.THICK_SPOT, Milestone.PEELABLE);
    assertThat(figure("not dry", scene.lookedAtS(dry / 2))).isCloseTo(2, within(1e-9));
    assertThat(figure("not peelable", scene.lookedAtS(firm / 2))).isCloseTo(2, within(1e-9));
    assertThat(measure("not dry").needsTime()).isTrue();
    assertThat(measure("tack").needsTime()).isFalse();
  }

  @Test
  void edgeIsAheadForTheShareOfTheDryingInWhichItWaits() {
    FaultContext scene = SeenFaults.on(Castings.USUAL);
    double edge = scene.outlook().timeS(Spot.THIN_EDGE, Milestone.DRY_THROUGH);
    double middle = scene.outlook().timeS(Spot.THICK_SPOT, Milestone.DRY_THROUGH);
    assertThat(figure("edge ahead", scene)).isCloseTo((middle - edge) / middle, within(1e-12));
    Casting level = SeenFaults.usual(Setting.UNEVENNESS, 0);
    assertThat(measure("edge ahead").trouble(SeenFaults.on(level))).isZero();
  }

  static Measure measure(String name) {
    return RuleBook.packed().measures().stream()
        .filter(each -> each.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static double figure(String name, FaultContext scene) {
    return measure(name).figure().of(scene);
  }
}
