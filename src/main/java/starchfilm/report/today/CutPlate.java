package starchfilm.report.today;

import static starchfilm.numerics.figures.ReaderUnit.MILLIMETRE;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import starchfilm.drying.PlateSection;
import starchfilm.drying.PlateSection.LayerColumn;
import starchfilm.drying.PlateSimulation;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.forecast.PlateParameters;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.figures.Figures;
import starchfilm.report.chart.Scale;
import starchfilm.report.chart.SectionFigure;
import starchfilm.report.words.PourCalendar;
import starchfilm.today.Standing;

/** Draws a plate cut open, in the middle case. */
record CutPlate(TrialForecast forecast) {
  private static final double LEFT = 2;
  private static final double WIDTH = 296;
  private static final double PLATE_TOP = 62;
  private static final double HIGHEST = 6;

  /** Moments of the row along time, over the time to dry-through. */
  private static final double[] SHARES = {0, 0.25, 0.5, 0.75, 1};

  private static final double DEEPEST = 0.9;
  private static final double PALEST = 0.06;

  private PourCalendar calendar() {
    return PourCalendar.of(forecast.trial());
  }

  /** The plate at a moment (s since the pour). */
  SectionFigure at(double timeS) {
    List<PlateSection> sections = sections(0, timeS);
    return figure(sections.get(1), tallest(sections), calendar().moment(timeS));
  }

  /** The plate from the pour to dry-through; where it never dries, to the end of its curve. */
  List<SectionFigure> alongTime(Standing standing) {
    double endS = Math.min(standing.readyS().middle(), forecast.drying().curveEndS());
    List<PlateSection> sections =
        sections(Arrays.stream(SHARES).map(share -> share * endS).toArray());
    double tallest = tallest(sections);
    return sections.stream()
        .map(section -> figure(section, tallest, calendar().moment(section.timeS())))
        .toList();
  }

  private List<PlateSection> sections(double... timesS) {
    PlateParameters known = forecast.weighed().known();
    ParameterSample middle =
        (known.wholly()
                ? known.factors()
                : new PlateSimulation(forecast.casting()).doubted(known.factors()))
            .mean();
    return PlateSection.of(forecast.casting(), middle, timesS);
  }

  private static double tallest(List<PlateSection> sections) {
    return sections.get(0).columns().stream().mapToDouble(LayerColumn::heightM).max().orElseThrow();
  }

  private SectionFigure figure(PlateSection section, double tallestM, String label) {
    Scale upright = Scale.linear(0, tallestM, PLATE_TOP, HIGHEST);
    int columns = section.columns().size();
    double width = WIDTH / 2 / (columns - 1);
    double[][] heights = new double[columns][PlateSection.LAYERS + 1];
    List<String> surface = new ArrayList<>();
    for (int i = 0; i < columns; i++) {
      for (int layer = 0; layer < PlateSection.LAYERS; layer++) {
        heights[i][layer + 1] =
            heights[i][layer] + section.columns().get(i).layers().get(layer).heightM();
      }
      surface.add(point(LEFT + i * width, upright, heights[i][PlateSection.LAYERS]));
    }
    for (int i = columns - 1; i >= 0; i--) {
      surface.add(point(LEFT + WIDTH - i * width, upright, heights[i][PlateSection.LAYERS]));
    }
    List<SectionFigure.Cell> cells = new ArrayList<>();
    for (int i = 0; i + 1 < columns; i++) {
      for (int layer = 0; layer < PlateSection.LAYERS; layer++) {
        double moisture =
            (section.columns().get(i).layers().get(layer).moisture()
                    + section.columns().get(i + 1).layers().get(layer).moisture())
                / 2;
        String left = "";
        String right = "";
        for (int[] corner : new int[][] {{0, 0}, {1, 0}, {1, 1}, {0, 1}}) {
          double height = heights[i + corner[0]][layer + corner[1]];
          double along = (i + corner[0]) * width;
          left += (left.isEmpty() ? "M" : "L") + point(LEFT + along, upright, height);
          right += (right.isEmpty() ? "M" : "L") + point(LEFT + WIDTH - along, upright, height);
        }
        cells.add(new SectionFigure.Cell(left + "z" + right + "z", Figures.two(depth(moisture))));
      }
    }
    return new SectionFigure(words(section, label), label, cells, "M" + String.join("L", surface));
  }

  private static String point(double x, Scale upright, double heightM) {
    return Figures.tenths(x) + " " + upright.place(heightM);
  }

  /** Water's share of the mass, over that of the fresh paste: what is wet is deep. */
  private double depth(double moisture) {
    double start = forecast.drying().startMoisture();
    double share = moisture / (1 + moisture) * (1 + start) / start;
    return PALEST + (DEEPEST - PALEST) * Math.max(0, Math.min(1, share));
  }

  private static String words(PlateSection section, String label) {
    LayerColumn edge = section.columns().get(0);
    LayerColumn middle = section.columns().get(section.columns().size() - 1);
    return "The plate in cross-section, %s: at the thin edge %s with %s, in the middle %s with %s."
        .formatted(
            label,
            MILLIMETRE.figure(edge.heightM()),
            water(edge),
            MILLIMETRE.figure(middle.heightM()),
            water(middle));
  }

  private static String water(LayerColumn column) {
    double mean =
        column.layers().stream().mapToDouble(PlateSection.Layer::moisture).average().orElse(0);
    return Figures.whole(100 * mean / (1 + mean)) + " % water";
  }
}
