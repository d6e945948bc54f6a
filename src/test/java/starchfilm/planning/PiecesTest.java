package starchfilm.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.Plate;
import starchfilm.casting.Plate.Outline;
import starchfilm.casting.PlateMaterial;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.material.ingredient.StarchKind;

/** Plans backwards from the film needed. */
class PiecesTest {
  private static final Plate TRAY = new Plate(PlateMaterial.GLASS, 0.3, 0.2, 0.004, 0);

  /** Counted by hand on 280 by 180 mm, the edge cut off. */
  @ParameterizedTest
  @CsvSource({"60, 90, 9", "90, 60, 9", "280, 180, 1", "140, 90, 4", "100, 100, 2", "281, 10, 0"})
  void laysPiecesInTheBetterDirection(double length, double width, int each) {
    assertThat(new Pieces(1, length / 1e3, width / 1e3, false).from(TRAY)).isEqualTo(each);
  }

  /**
   * A circle of 240 mm leaves one of 220 mm, in which the largest square is of 155.6 mm. Three rows
   * of 50 mm hold 3, 4 and 3: half a row's ends lie at the root of 110^2 - 75^2 and of 110^2 -
   * 25^2.
   */
  @ParameterizedTest
  @CsvSource({
    "155, 155, 1",
    "156, 156, 0",
    "180, 180, 0",
    "50, 50, 10",
    "200, 90, 1",
    "90, 200, 1"
  })
  void aRoundPlateGivesOnlyWhatLiesInsideItsCircle(double length, double width, int each) {
    Plate round = Plate.across(PlateMaterial.STEEL, 0.24, 0.24, 0.001, Outline.ELLIPSE);
    assertThat(new Pieces(1, length / 1e3, width / 1e3, false).from(round)).isEqualTo(each);
    assertThat(Pieces.area(0.1).from(round)).isCloseTo(Math.PI * 0.11 * 0.11 / 0.1, within(1e-12));
  }

  @Test
  void takesAsManyPoursAsThePlatesNeed() {
    PiecesPlan plan = plan(new Pieces(40, 0.06, 0.09, false), 0.25, 2);

    assertThat(plan.plates()).isEqualTo(5);
    assertThat(plan.pours()).isEqualTo(3);
    assertThat(plan.recipe().plates()).isEqualTo(2);
    assertThat(plan.glycerolKg()).isCloseTo(2.5 * plan.glycerolEachKg(), within(1e-9));
    assertThat(plan.leftKg() + plan.glycerolKg()).isCloseTo(0.25, within(1e-9));
    assertThat(plan.morePours()).isEqualTo((int) (plan.leftKg() / plan.glycerolEachKg()));
  }

  @Test
  void saysWhatIsMissing() {
    PiecesPlan plan = plan(new Pieces(400, 0.06, 0.09, false), 0.01, 2);

    assertThat(plan.missingGlycerolKg()).isCloseTo(plan.glycerolKg() - 0.01, within(1e-9));
    assertThat(plan.leftKg()).isZero();
    assertThat(plan.missingKg(StarchKind.POTATO)).as("plenty is at hand").isZero();
  }

  @Test
  void anAreaTakesAsMuchFilmAsPlatesGive() {
    PiecesPlan plan = plan(Pieces.area(0.5), 0.25, 4);

    // 0.28 by 0.18 m a plate: 0.0504 m2, so 9.92 plates.
    assertThat(plan.plates()).isEqualTo(10);
    assertThat(plan.pours()).isEqualTo(3);
  }

  @Test
  void refusesAPieceThatFitsNoPlate() {
    assertThatThrownBy(() -> plan(new Pieces(1, 0.4, 0.1, false), 0.25, 2))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("allowed pieces that fit 10 mm inside the plate's edge");
  }

  private static PiecesPlan plan(Pieces pieces, double glycerolKg, int plates) {
    PlanRequest request =
        Requests.garden()
            .with(Requests.potatoAnd(glycerolKg))
            .with(Requests.kitchen(0.002, 0.001, plates));
    return new Planner(ParameterDistribution.textbook())
        .pieces(request, pieces)
        .pieces()
        .orElseThrow();
  }
}
