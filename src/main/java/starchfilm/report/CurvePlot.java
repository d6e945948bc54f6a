package starchfilm.report;

import static starchfilm.numerics.figures.ReaderUnit.GRAM;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import starchfilm.casting.trial.Weighing;
import starchfilm.drying.CurvePoint;
import starchfilm.forecast.CurveReading;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Band;
import starchfilm.report.chart.RoundTicks;
import starchfilm.report.chart.RoundTicks.RoundTick;
import starchfilm.report.chart.Scale;
import starchfilm.report.chart.TimeScale;

/** A drying curve drawn with characters that every terminal has. */
final class CurvePlot {
  private static final int MOST_COLUMNS = 64;
  private static final int MARGIN = 12;
  private static final int ROWS = 15;
  private static final int ROWS_PER_LABEL = 7;

  private final TrialForecast trial;
  private final CurveReading reading;
  private final double start;
  private final double endS;
  private final int columns;
  private final char[][] cells;

  private CurvePlot(TrialForecast trial, int width) {
    this.trial = trial;
    this.columns = Math.min(MOST_COLUMNS, width - MARGIN);
    this.cells = new char[ROWS][columns];
    this.reading = new CurveReading(trial);
    this.start = trial.drying().startMoisture();
    this.endS = trial.drying().curveEndS();
  }

  /** Draws a trial's curve in a terminal of this many characters. */
  static List<String> of(TrialForecast trial, int width) {
    return new CurvePlot(trial, width).lines();
  }

  private List<String> lines() {
    for (char[] row : cells) {
      Arrays.fill(row, ' ');
    }
    for (int column = 0; column < columns; column++) {
      draw(column);
    }
    for (Weighing weighing : trial.seen().weighings()) {
      if (!weighing.tared()) {
        continue;
      }
      int column = (int) Math.round(weighing.timeS() / endS * (columns - 1));
      if (column < columns) {
        cells[row(reading.moisture(weighing.filmMassKg()))][column] = '+';
      }
    }
    List<String> lines = new ArrayList<>();
    lines.add("grams on the plate, without it");
    for (int row = 0; row < ROWS; row++) {
      lines.add(label(row) + "|" + new String(cells[row]).stripTrailing());
    }
    lines.add(" ".repeat(6) + "+" + "-".repeat(columns));
    lines.addAll(axis());
    lines.add(
        " ".repeat(7)
            + "* average, : 8 of 10 cases, < thin edge, > thick spot"
            + (trial.seen().weighings().isEmpty() ? "" : ", + weighed"));
    return lines;
  }

  private void draw(int column) {
    double timeS = endS * column / (columns - 1);
    Band band = reading.moistureAt(timeS);
    for (int row = row(band.high()); row <= row(band.low()); row++) {
      cells[row][column] = ':';
    }
    cells[row(reading.at(timeS, CurvePoint::thinEdge))][column] = '<';
    cells[row(reading.at(timeS, CurvePoint::thickSpot))][column] = '>';
    cells[row(band.middle())][column] = '*';
  }

  private int row(double waterKgPerKgDry) {
    return (int) Math.round(Scale.linear(0, start, ROWS - 1, 0).at(waterKgPerKgDry));
  }

  private String label(int row) {
    if (row % ROWS_PER_LABEL != 0) {
      return " ".repeat(6);
    }
    return "%5s ".formatted(GRAM.two(reading.massKg(start * (ROWS - 1 - row) / (ROWS - 1))));
  }

  private List<String> axis() {
    TimeScale time = TimeScale.of(0, endS, 0, columns - 1);
    char[] line = new char[columns + 16];
    Arrays.fill(line, ' ');
    for (RoundTick tick : RoundTicks.linear(0, time.scale().to(), columns / 7)) {
      int column = 7 + (int) Math.round(time.scale().at(tick.value()));
      tick.label().getChars(0, tick.label().length(), line, column);
    }
    return List.of(
        new String(line).stripTrailing(), " ".repeat(7) + time.unit() + " since the pour");
  }
}
