package starchfilm.casting.trial;

import java.util.OptionalDouble;

/**
 * One strip of film pulled until it broke.
 *
 * <p>{@code stress = F/(w t), strain = (L - L0)/L0}
 *
 * <p>F: load at break (N); w: width (m); t: thickness (m), both before the pull; L0: length between
 * the clips or marks (m); L: the same at break.
 *
 * <p>Valid for: film up to 1 mm, strips of even width without nicks; a strip that breaks in the
 * clip does not count. Take five strips or more.
 *
 * <p>Source: ASTM D882 (film under 1.0 mm; width 5 to 25.4 mm and five specimens recalled) and ISO
 * 527-3:2018 (strips 10 to 25 mm wide, marks 50 mm apart).
 *
 * @param loadN load at break (N)
 * @param widthM width of the strip (m)
 * @param thicknessM thickness of the strip (m)
 * @param stretchAtBreak strain at break (ratio), if measured
 */
public record PullTest(
    double loadN, double widthM, double thicknessM, OptionalDouble stretchAtBreak) {

  /** Stress at break on the section before the pull (Pa). */
  public double strengthPa() {
    return loadN / (widthM * thicknessM);
  }
}
