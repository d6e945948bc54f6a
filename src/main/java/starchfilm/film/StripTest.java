package starchfilm.film;

/**
 * One strip of film pulled until it breaks.
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
 * @param loadN load at break (N, 0 or more)
 * @param widthM width (m, above 0)
 * @param thicknessM thickness (m, above 0)
 * @param lengthM length between the clips or marks before the pull (m, above 0)
 * @param stretchM how much longer that length is at break (m, 0 or more)
 */
public record StripTest(
    double loadN, double widthM, double thicknessM, double lengthM, double stretchM) {
  /** Checks every figure. */
  public StripTest {
    require(loadN >= 0 && Double.isFinite(loadN), "load at break", loadN, "0 N or more");
    require(widthM > 0, "strip width", widthM, "above 0 m");
    require(thicknessM > 0, "film thickness", thicknessM, "above 0 m");
    require(lengthM > 0, "length between the marks", lengthM, "above 0 m");
    require(stretchM >= 0 && Double.isFinite(stretchM), "stretch", stretchM, "0 m or more");
  }

  /**
   * Stress at break on the section before the pull.
   *
   * @return Pa
   */
  public double strengthPa() {
    return loadN / (widthM * thicknessM);
  }

  /**
   * Strain at break.
   *
   * @return stretch over length (ratio)
   */
  public double elongation() {
    return stretchM / lengthM;
  }

  private static void require(boolean holds, String quantity, double given, String allowed) {
    if (!holds) {
      throw new IllegalArgumentException(
          "strip test, " + quantity + ": " + given + " given, allowed " + allowed);
    }
  }
}
