package starchfilm.report.chart;

import static starchfilm.numerics.units.Units.DAY_S;
import static starchfilm.numerics.units.Units.HOUR_S;

import starchfilm.numerics.evidence.Band;

/**
 * Time since the pour along a drawing.
 *
 * @param scale in hours or days
 * @param unitS that unit (s)
 */
public record TimeScale(Scale scale, double unitS) {
  private static final double HOURS_UP_TO_S = 2.5 * DAY_S;

  /** From where on equal ratios get equal lengths: the last moment over the first. */
  private static final double RATIOS_FROM = 8;

  /**
   * A scale that begins at the pour, or at a later moment with equal lengths for equal ratios.
   *
   * @param startS where it begins (s); 0 for the pour
   * @param endS where it ends (s)
   * @param firstPlace where it begins in the drawing
   * @param lastPlace where it ends there
   * @return the scale, in hours where it is short
   */
  public static TimeScale of(double startS, double endS, double firstPlace, double lastPlace) {
    double unitS = endS <= HOURS_UP_TO_S ? HOUR_S : DAY_S;
    return new TimeScale(
        new Scale(startS / unitS, endS / unitS, firstPlace, lastPlace, startS > 0), unitS);
  }

  /**
   * Returns whether moments lie so far apart that equal ratios need equal lengths.
   *
   * @param first the first of them, above 0
   * @param last the last
   * @return true from eight times on
   */
  public static boolean isWide(double first, double last) {
    return first > 0 && last > RATIOS_FROM * first;
  }

  /**
   * The place of a moment.
   *
   * @param afterPourS the moment (s)
   * @return its place
   */
  public String place(double afterPourS) {
    return scale.place(afterPourS / unitS);
  }

  /**
   * A forecast moment to draw.
   *
   * @param kind class of its range and mark
   * @param afterPourS the moment (s)
   * @return in the unit of this scale
   */
  public Lane.Marked marked(String kind, Band afterPourS) {
    return new Lane.Marked(kind, afterPourS.times(1 / unitS));
  }

  /** The end of the scale (s). */
  public double endS() {
    return scale.to() * unitS;
  }

  /** The unit in words. */
  public String unit() {
    return unitS == HOUR_S ? "hours" : "days";
  }

  /**
   * The axis.
   *
   * @param atMost how many ticks there is room for
   * @return round hours or days
   */
  public Axis axis(int atMost) {
    return Axis.of(
        unit() + " since the pour" + (scale.logarithmic() ? ", on a logarithmic scale" : ""),
        scale,
        atMost);
  }
}
