package starchfilm.report.chart;

import java.util.ArrayList;
import java.util.List;
import starchfilm.numerics.evidence.Band;

/**
 * Ranges and marks along one line.
 *
 * @param label what stands before the line; may be empty
 * @param key what the key of the curves calls it; empty where there is no such key
 * @param look the curve the line belongs to, by its class; empty where the label says it
 * @param y its height in the drawing
 * @param ranges ranges along it
 * @param dots marks on it
 */
public record Lane(
    String label, String key, String look, int y, List<Range> ranges, List<Dot> dots) {
  /**
   * A range.
   *
   * @param kind class of the line, such as {@code peelable}
   * @param from place of its low end
   * @param to place of its high end
   * @param open true where the high end lies beyond the drawing
   */
  public record Range(String kind, String from, String to, boolean open) {
    /**
     * The range of a band.
     *
     * @param kind class of the line
     * @param scale the scale of the line
     * @param band its ends, in the unit of the scale; the high one may be infinite
     * @return the range, open where it leaves the scale
     */
    public static Range of(String kind, Scale scale, Band band) {
      return new Range(
          kind, scale.place(band.low()), scale.place(band.high()), band.high() > scale.to());
    }
  }

  /**
   * A mark.
   *
   * @param kind class of the mark, of which the first word decides the shape
   * @param at its place
   */
  public record Dot(String kind, String at) {
    /** Its outline around the place. */
    public String shape() {
      return kind.startsWith("peelable")
          ? "M0 -6.5L6.5 0L0 6.5L-6.5 0Z"
          : kind.startsWith("dry") || kind.startsWith("measured")
              ? "M-5.5 0a5.5 5.5 0 1 0 11 0a5.5 5.5 0 1 0 -11 0Z"
              : "M-1.5 -7H1.5V7H-1.5Z";
    }
  }

  /**
   * A band to draw.
   *
   * @param kind class of its range and mark
   * @param band in the unit of the scale
   */
  public record Marked(String kind, Band band) {}

  /**
   * A line with a range and a mark a band. What lies past the drawing is left out, but for a mark
   * at its beginning where all of a band lies before it.
   *
   * @param label what stands before it
   * @param key what the key calls it
   * @param look the curve it belongs to; may be empty
   * @param y its height
   * @param scale its scale
   * @param marked the bands; one without width is a mark alone
   * @return the line
   */
  public static Lane of(
      String label, String key, String look, int y, Scale scale, List<Marked> marked) {
    List<Range> ranges = new ArrayList<>();
    List<Dot> dots = new ArrayList<>();
    for (Marked each : marked) {
      Band band = each.band();
      String kind = (each.kind() + " " + look).strip();
      if (band.high() < scale.from()) {
        dots.add(new Dot(kind, scale.place(scale.from())));
      } else if (band.low() <= scale.to()) {
        if (band.high() > band.low()) {
          ranges.add(Range.of(kind, scale, band));
        }
        if (band.middle() >= scale.from() && band.middle() <= scale.to()) {
          dots.add(new Dot(kind, scale.place(band.middle())));
        }
      }
    }
    return new Lane(label, key, look, y, ranges, dots);
  }
}
