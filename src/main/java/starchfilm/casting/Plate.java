package starchfilm.casting;

import static starchfilm.numerics.figures.ReaderUnit.CENTIMETRE;

import starchfilm.numerics.figures.Figures;

/**
 * A flat plate to pour on.
 *
 * @param material what it is made of
 * @param lengthM longer side (m)
 * @param widthM shorter side (m); a round or oval plate is counted as the square or rectangle of
 *     the same area, and so is one of which no more than the area is known
 * @param thicknessM thickness of the plate itself (m)
 * @param rimHeightM height of the rim above the poured paste (m, 0 for none)
 * @param outline its shape, by which it is called
 */
public record Plate(
    PlateMaterial material,
    double lengthM,
    double widthM,
    double thicknessM,
    double rimHeightM,
    Outline outline) {
  /** Side of the square in a circle's area, of its diameter. */
  private static final double SQUARE_OF_CIRCLE = Math.sqrt(Math.PI) / 2;

  /** The shape of a plate. */
  public enum Outline {
    /** Four sides. */
    RECTANGLE,
    /** Round or oval. */
    ELLIPSE,
    /** Any other, of which the area is known. */
    FREE
  }

  /** A rectangular plate. */
  public Plate(
      PlateMaterial material, double lengthM, double widthM, double thicknessM, double rimHeightM) {
    this(material, lengthM, widthM, thicknessM, rimHeightM, Outline.RECTANGLE);
  }

  /** A plate of this outline without a rim, the longer side first; of a free one by its area. */
  public static Plate across(
      PlateMaterial material, double oneM, double otherM, double thicknessM, Outline outline) {
    double part = outline == Outline.ELLIPSE ? SQUARE_OF_CIRCLE : 1;
    return new Plate(
        material,
        part * Math.max(oneM, otherM),
        part * Math.min(oneM, otherM),
        thicknessM,
        0,
        outline);
  }

  /** The longer side, or what an ellipse measures that way (m). */
  public double longestM() {
    return outline == Outline.ELLIPSE ? lengthM / SQUARE_OF_CIRCLE : lengthM;
  }

  /** The same across. */
  public double shortestM() {
    return outline == Outline.ELLIPSE ? widthM / SQUARE_OF_CIRCLE : widthM;
  }

  /** Whether it is round. */
  public boolean isRound() {
    return outline == Outline.ELLIPSE && lengthM == widthM;
  }

  /**
   * Its size in words.
   *
   * @return such as {@code 30 × 20 cm}, {@code 24 cm round} or {@code 450 cm²}
   */
  public String size() {
    if (outline == Outline.FREE) {
      return Figures.whole(1e4 * areaM2()) + " cm²";
    }
    String across = CENTIMETRE.noted(shortestM());
    return isRound()
        ? across + " round"
        : Figures.noted(CENTIMETRE.of(longestM()))
            + " × "
            + across
            + (outline == Outline.ELLIPSE ? " oval" : "");
  }

  /**
   * Area that is poured on.
   *
   * @return m2
   */
  public double areaM2() {
    return lengthM * widthM;
  }

  /**
   * Heat the plate stores per area and kelvin.
   *
   * @return J/(m2 K)
   */
  public double heatCapacityJPerM2K() {
    return material.heatCapacityJPerM3K() * thicknessM;
  }

  /** A square plate of another area (m2). */
  public Plate ofArea(double areaM2) {
    double side = Math.sqrt(areaM2);
    return new Plate(material, side, side, thicknessM, rimHeightM, Outline.FREE);
  }

  /** A plate of the same size of another material. */
  public Plate of(PlateMaterial other) {
    return new Plate(other, lengthM, widthM, thicknessM, rimHeightM, outline);
  }

  /**
   * The same with what its rim leaves above a pour.
   *
   * @param rimM height of the rim above the plate's floor (m); 0 for none
   * @param wetThicknessM wet thickness of the pour (m)
   */
  public Plate filledTo(double wetThicknessM, double rimM) {
    double aboveM = Math.max(0, rimM - wetThicknessM);
    return new Plate(material, lengthM, widthM, thicknessM, aboveM, outline);
  }
}
