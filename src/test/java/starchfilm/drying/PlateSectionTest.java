package starchfilm.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.drying.PlateSection.Layer;
import starchfilm.drying.PlateSection.LayerColumn;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.material.recipe.Composition;
import starchfilm.material.sorption.FilmIsotherm;

/** A plate cut open from its thin edge to its middle, 3 mm on average and a quarter uneven. */
class PlateSectionTest {
  private static final double DAY_S = 86_400;
  private static final Casting PLATE = Castings.USUAL;
  private static final Composition PASTE = PLATE.composition();
  private final List<PlateSection> sections =
      PlateSection.of(PLATE, ParameterSample.NONE, 1, DAY_S, 40 * DAY_S);

  @Test
  void pasteStandsAsItWasPoured() {
    PlateSection poured = sections.get(0);
    assertThat(poured.timeS()).isEqualTo(1);
    assertThat(poured.columns()).hasSize(PlateSection.COLUMNS);
    assertThat(height(poured, 0)).isCloseTo(0.75 * 3e-3, within(5e-6));
    assertThat(height(poured, PlateSection.COLUMNS - 1)).isCloseTo(1.25 * 3e-3, within(5e-6));
    assertThat(poured.columns().stream().map(LayerColumn::heightM).toList()).isSorted();
    assertThat(poured.columns())
        .allSatisfy(
            column ->
                assertThat(column.layers().get(0).moisture())
                    .isCloseTo(PASTE.waterKgPerKgDry(), within(1e-3 * PASTE.waterKgPerKgDry())));
  }

  /** Half-way between edge and middle, by a cosine, the plate has its average. */
  @Test
  void theProfileIsACosine() {
    double first = height(sections.get(0), 1) / 3e-3;
    double share = (1 - Math.cos(Math.PI / (PlateSection.COLUMNS - 1))) / 2;
    assertThat(first).isCloseTo(0.75 + 0.5 * share, within(2e-3));
  }

  @Test
  void everyLayerOfAColumnHoldsTheSameSolids() {
    for (PlateSection section : sections) {
      for (LayerColumn column : section.columns()) {
        assertThat(column.layers()).hasSize(PlateSection.LAYERS);
        double solids = solids(column.layers().get(0));
        assertThat(column.layers())
            .allSatisfy(
                layer -> assertThat(solids(layer)).isCloseTo(solids, within(1e-9 * solids)));
      }
    }
    double poured = solids(sections.get(0).columns().get(3).layers().get(2));
    assertThat(solids(sections.get(2).columns().get(3).layers().get(2)))
        .isCloseTo(poured, within(1e-9 * poured));
  }

  private static double solids(Layer layer) {
    return layer.heightM() / PASTE.volumeM3PerKgDry(layer.moisture());
  }

  @Test
  void driesFromAboveAndTheEdgeFirst() {
    PlateSection day = sections.get(1);
    LayerColumn edge = day.columns().get(0);
    LayerColumn middle = day.columns().get(PlateSection.COLUMNS - 1);
    for (int layer = 1; layer < PlateSection.LAYERS; layer++) {
      assertThat(middle.layers().get(layer).moisture())
          .isLessThan(middle.layers().get(layer - 1).moisture());
    }
    assertThat(edge.layers().get(0).moisture()).isLessThan(middle.layers().get(0).moisture());
  }

  @Test
  void restsAtWhatTheAirLeavesIt() {
    double kelvin = PLATE.room().at(0).temperatureK();
    double rest = FilmIsotherm.of(PASTE).moisture(0.5, kelvin);
    assertThat(sections.get(2).columns())
        .allSatisfy(
            column ->
                assertThat(column.layers())
                    .allSatisfy(
                        layer ->
                            assertThat(layer.moisture()).isCloseTo(rest, within(0.02 * rest))));
  }

  /** Nodes at 0, 0.5 and 1 with 1, 2 and 4: straight between, so 1.5 and 3 in the middle of two. */
  @Test
  void aLayerIsReadStraightBetweenTheNodesOfItsGrid() {
    LayerColumn column =
        PlateSection.column(PASTE, 0.3, new double[] {0, 0.5, 1}, new double[] {1, 2, 4}, 2);
    assertThat(column.layers().get(0).moisture()).isCloseTo(1.5, within(1e-12));
    assertThat(column.layers().get(1).moisture()).isCloseTo(3, within(1e-12));
    assertThat(column.layers().get(1).heightM())
        .isCloseTo(0.15 * PASTE.volumeM3PerKgDry(3), within(1e-15));
  }

  private static double height(PlateSection section, int column) {
    return section.columns().get(column).heightM();
  }
}
