package starchfilm.casting;

import starchfilm.numerics.units.Named;

/**
 * What the plate is made of.
 *
 * <p>Source of density and specific heat: Incropera et al., Fundamentals of Heat and Mass Transfer,
 * tables A.1 to A.3 (recalled), rounded.
 */
public enum PlateMaterial implements Named {
  /** Window glass. */
  GLASS(2500, 750, 4e-3, 0.6),
  /** Polypropylene. */
  POLYPROPYLENE(905, 1900, 2e-3, 0),
  /** Acrylic (PMMA). */
  ACRYLIC(1185, 1450, 2e-3, 0.3),
  /** PTFE. */
  PTFE(2200, 1050, 2e-3, 0),
  /** Silicone rubber sheet. */
  SILICONE(1150, 1300, 2e-3, 0),
  /** Melamine-faced board; only its top few millimetres follow the film. */
  LAMINATE(1400, 1500, 2e-3, 0.3),
  /** Stainless steel. */
  STEEL(7900, 480, 1e-3, 0.8),
  /** Enamelled steel: a face of glass. */
  ENAMEL(7800, 480, 1e-3, 0.6),
  /** Aluminium, foil included. */
  ALUMINIUM(2700, 900, 1e-3, 0.8),
  /** Polyester sheet (PET). */
  POLYESTER(1390, 1170, 0.2e-3, 0.3),
  /** Baking paper, coated with silicone. */
  BAKING_PAPER(900, 1340, 0.2e-3, 0),
  /** Bare wood; what water it takes up is not modelled. */
  WOOD(550, 1600, 15e-3, 1),
  /** Any other: dries as glass does; how film sticks to it is unknown. */
  OTHER(2500, 750, 4e-3, 0.6);

  private final double densityKgPerM3;
  private final double specificHeatJPerKgK;
  private final double usualThicknessM;
  private final double grip;

  PlateMaterial(
      double densityKgPerM3, double specificHeatJPerKgK, double usualThicknessM, double grip) {
    this.densityKgPerM3 = densityKgPerM3;
    this.specificHeatJPerKgK = specificHeatJPerKgK;
    this.usualThicknessM = usualThicknessM;
    this.grip = grip;
  }

  /** The material in a list of what was used, such as "glass" or "another material". */
  public String words() {
    return this == OTHER ? "another material" : tradeName();
  }

  /**
   * Heat stored per volume and kelvin.
   *
   * @return J/(m3 K)
   */
  public double heatCapacityJPerM3K() {
    return densityKgPerM3 * specificHeatJPerKgK;
  }

  /**
   * How thick such a plate usually is; judged.
   *
   * @return m
   */
  public double usualThicknessM() {
    return usualThicknessM;
  }

  /**
   * How hard film clings to it; judged.
   *
   * @return 0 hardly to 1 hard
   */
  public double grip() {
    return grip;
  }
}
