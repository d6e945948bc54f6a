package starchfilm.drying;

import java.util.ArrayList;
import java.util.List;
import starchfilm.casting.Casting;
import starchfilm.casting.Spot;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.material.recipe.Composition;

/**
 * A plate cut open at one moment: how thick it lies and how moist it is, from the thin edge to the
 * thick middle and from the plate up. Each column dries by itself, as the spots do; water that
 * creeps sideways is left out, for a plate is a hundred times as wide as it is thick.
 *
 * @param timeS the moment (s since the pour)
 * @param columns from the thin edge to the middle
 */
public record PlateSection(double timeS, List<LayerColumn> columns) {
  /** Columns from the thin edge to the thick middle, both included. */
  public static final int COLUMNS = 6;

  /** Layers of equal solids in a column. */
  public static final int LAYERS = 7;

  public PlateSection {
    columns = List.copyOf(columns);
  }

  /**
   * One column.
   *
   * @param layers from the plate up
   */
  public record LayerColumn(List<Layer> layers) {
    public LayerColumn {
      layers = List.copyOf(layers);
    }

    /** How high it stands (m). */
    public double heightM() {
      return layers.stream().mapToDouble(Layer::heightM).sum();
    }
  }

  /**
   * A layer of a column.
   *
   * @param heightM its thickness (m)
   * @param moisture water in it (kg per kg dry solids)
   */
  public record Layer(double heightM, double moisture) {}

  /**
   * Cuts a plate open.
   *
   * @param casting the plate
   * @param deviations the likely case
   * @param timesS when (s since the pour), in order
   * @return one section a moment
   */
  public static List<PlateSection> of(
      Casting casting, ParameterSample deviations, double... timesS) {
    PreparedCase prepared = PreparedCase.of(casting);
    SpotSolver solver = new SpotSolver(prepared, new double[0]);
    double unevenness =
        casting.pour().unevenness() * deviations.multiplier(UncertainParameter.UNEVENNESS);
    double thin = Spot.THIN_EDGE.thicknessRatio(unevenness);
    double thick = Spot.THICK_SPOT.thicknessRatio(unevenness);
    List<List<LayerColumn>> byColumn = new ArrayList<>();
    for (int i = 0; i < COLUMNS; i++) {
      double share = (1 - Math.cos(Math.PI * i / (COLUMNS - 1))) / 2;
      double ratio = thin + share * (thick - thin);
      double thickness = deviations.of(UncertainParameter.THICKNESS) + Math.log(ratio);
      byColumn.add(
          solver.columns(deviations.with(UncertainParameter.THICKNESS, thickness), timesS, LAYERS));
    }
    List<PlateSection> sections = new ArrayList<>();
    for (int time = 0; time < timesS.length; time++) {
      int at = time;
      sections.add(
          new PlateSection(timesS[time], byColumn.stream().map(column -> column.get(at)).toList()));
    }
    return sections;
  }

  /** A column out of the moistures on a grid's nodes. */
  static LayerColumn column(
      Composition composition,
      double solidsKgPerM2,
      double[] positions,
      double[] moisture,
      int of) {
    List<Layer> layers = new ArrayList<>();
    for (int layer = 0; layer < of; layer++) {
      double mean = read(positions, moisture, (layer + 0.5) / of);
      layers.add(
          new Layer(solidsKgPerM2 / of * composition.volumeM3PerKgDry(Math.max(0, mean)), mean));
    }
    return new LayerColumn(layers);
  }

  private static double read(double[] positions, double[] values, double at) {
    int above = 1;
    while (above < positions.length - 1 && positions[above] < at) {
      above++;
    }
    double share = (at - positions[above - 1]) / (positions[above] - positions[above - 1]);
    return values[above - 1] + share * (values[above] - values[above - 1]);
  }
}
