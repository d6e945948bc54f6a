package starchfilm.numerics.units;

/** Constants of nature. */
public final class Nature {
  /**
   * Molar gas constant (J/(mol K)), exact since 2019. Source: BIPM, The International System of
   * Units, 9th edition, 2019 (product of its Avogadro and Boltzmann constants).
   */
  public static final double GAS_CONSTANT_J_PER_MOL_K = 8.31446261815324;

  /**
   * Standard acceleration of free fall (m/s2). Source: 3rd General Conference on Weights and
   * Measures, 1901.
   */
  public static final double GRAVITY_M_PER_S2 = 9.80665;

  private Nature() {}
}
