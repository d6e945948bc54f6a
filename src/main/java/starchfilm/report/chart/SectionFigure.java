package starchfilm.report.chart;

import java.util.List;

/**
 * A layer of paste cut open.
 *
 * @param description the same in words
 * @param label when it is
 * @param cells parts of it, each with one moisture
 * @param outline its surface
 */
public record SectionFigure(String description, String label, List<Cell> cells, String outline) {
  /**
   * A part with one moisture.
   *
   * @param path where it is
   * @param opacity how deep its colour is, 0 to 1
   */
  public record Cell(String path, String opacity) {}
}
