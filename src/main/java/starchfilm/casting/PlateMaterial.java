package starchfilm.casting;

/**
 * What the plate is made of.
 *
 * <p>Source of density and specific heat: Incropera et al., Fundamentals of Heat and Mass Transfer,
 * tables A.1 to A.3 (recalled), rounded.
 */
public enum PlateMaterial {
  /** Window glass. */
  GLASS("glass", 2500, 750),
  /** Polypropylene. */
  POLYPROPYLENE("polypropylene", 905, 1900),
  /** Acrylic (PMMA). */
  ACRYLIC("acrylic", 1185, 1450),
  /** PTFE. */
  PTFE("ptfe", 2200, 1050),
  /** Silicone rubber sheet. */
  SILICONE("silicone", 1150, 1300),
  /** Melamine-faced board; only its top few millimetres follow the film. */
  LAMINATE("laminate", 1400, 1500),
  /** Stainless steel. */
  STEEL("steel", 7900, 480),
  /** Enamelled steel: a face of glass. */
  ENAMEL("enamel", 7800, 480),
  /** Aluminium, foil included. */
  ALUMINIUM("aluminium", 2700, 900),
  /** Polyester sheet (PET). */
  POLYESTER("polyester", 1390, 1170),
  /** Baking paper, coated with silicone. */
  BAKING_PAPER("baking paper", 900, 1340),
  /** Bare wood; what water it takes up is not modelled. */
  WOOD("wood", 550, 1600),
  /** Any other: dries as glass does; how film sticks to it is unknown. */
  OTHER("other", 2500, 750);

  private final String tradeName;
  private final double densityKgPerM3;
  private final double specificHeatJPerKgK;

  PlateMaterial(String tradeName, double densityKgPerM3, double specificHeatJPerKgK) {
    this.tradeName = tradeName;
    this.densityKgPerM3 = densityKgPerM3;
    this.specificHeatJPerKgK = specificHeatJPerKgK;
  }

  /**
   * The name as trial files spell it.
   *
   * @return lower case
   */
  public String tradeName() {
    return tradeName;
  }

  /** The material in a list of what was used, such as "glass" or "another material". */
  public String words() {
    return this == OTHER ? "another material" : tradeName;
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
    return switch (this) {
      case GLASS, OTHER -> 4e-3;
      case STEEL, ENAMEL, ALUMINIUM -> 1e-3;
      case POLYESTER, BAKING_PAPER -> 0.2e-3;
      case WOOD -> 15e-3;
      case POLYPROPYLENE, ACRYLIC, PTFE, SILICONE, LAMINATE -> 2e-3;
    };
  }

  /**
   * How hard film clings to it; judged.
   *
   * @return 0 hardly to 1 hard
   */
  public double grip() {
    return switch (this) {
      case PTFE, SILICONE, POLYPROPYLENE, BAKING_PAPER -> 0;
      case ACRYLIC, LAMINATE, POLYESTER -> 0.3;
      case GLASS, ENAMEL, OTHER -> 0.6;
      case STEEL, ALUMINIUM -> 0.8;
      case WOOD -> 1;
    };
  }
}
