package starchfilm.casting;

/**
 * A flat plate to pour on.
 *
 * @param material what it is made of
 * @param lengthM longer side (m)
 * @param widthM shorter side (m); for a round plate, both sides are the side of the square of the
 *     same area
 * @param thicknessM thickness of the plate itself (m)
 * @param rimHeightM height of the rim above the poured paste (m, 0 for none)
 */
public record Plate(
    PlateMaterial material, double lengthM, double widthM, double thicknessM, double rimHeightM) {
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
    return new Plate(material, side, side, thicknessM, rimHeightM);
  }

  /** The same of another material. */
  public Plate of(PlateMaterial other) {
    return new Plate(other, lengthM, widthM, thicknessM, rimHeightM);
  }

  /**
   * The same with what its rim leaves above a pour.
   *
   * @param rimM height of the rim above the plate's floor (m); 0 for none
   * @param wetThicknessM wet thickness of the pour (m)
   */
  public Plate filledTo(double wetThicknessM, double rimM) {
    return new Plate(material, lengthM, widthM, thicknessM, Math.max(0, rimM - wetThicknessM));
  }
}
