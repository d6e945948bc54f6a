package starchfilm.material.ingredient;

/**
 * Molar masses (kg/mol), added up from the atoms.
 *
 * <p>Source: IUPAC abridged standard atomic weights 2021, Prohaska et al. 2022, Pure Appl. Chem.
 * 94:573 (recalled).
 */
public final class MolarMass {
  private static final double H = 1.008e-3;
  private static final double C = 12.011e-3;
  private static final double O = 15.999e-3;

  /** Sodium (kg/mol). */
  public static final double SODIUM = 22.990e-3;

  /** Potassium (kg/mol). */
  public static final double POTASSIUM = 39.098e-3;

  /** Sulfur (kg/mol). */
  public static final double SULFUR = 32.06e-3;

  /** Phosphorus (kg/mol). */
  public static final double PHOSPHORUS = 30.974e-3;

  /** Chlorine (kg/mol). */
  public static final double CHLORINE = 35.45e-3;

  /** Hydrogen (kg/mol of atoms). */
  public static final double HYDROGEN = H;

  /** Water, H2O (kg/mol). */
  public static final double WATER = 2 * H + O;

  /** Glycerol, C3H8O3 (kg/mol). */
  public static final double GLYCEROL = 3 * C + 8 * H + 3 * O;

  /** Acetic acid, C2H4O2 (kg/mol). */
  public static final double ACETIC_ACID = 2 * C + 4 * H + 2 * O;

  /** Methanol, CH4O (kg/mol). */
  public static final double METHANOL = C + 4 * H + O;

  /** Ethanol, C2H6O (kg/mol). */
  public static final double ETHANOL = 2 * C + 6 * H + O;

  /** Sodium hydroxide, NaOH (kg/mol). */
  public static final double SODIUM_HYDROXIDE = SODIUM + O + H;

  /** Potassium hydroxide, KOH (kg/mol). */
  public static final double POTASSIUM_HYDROXIDE = POTASSIUM + O + H;

  /** Sodium bicarbonate, baking soda, NaHCO3 (kg/mol). */
  public static final double SODIUM_BICARBONATE = SODIUM + H + C + 3 * O;

  /** Hydrogen chloride, HCl (kg/mol). */
  public static final double HYDROGEN_CHLORIDE = H + CHLORINE;

  /** Sulfuric acid, H2SO4 (kg/mol). */
  public static final double SULFURIC_ACID = 2 * H + SULFUR + 4 * O;

  /** Phosphoric acid, H3PO4 (kg/mol). */
  public static final double PHOSPHORIC_ACID = 3 * H + PHOSPHORUS + 4 * O;

  /** Citric acid without crystal water, C6H8O7 (kg/mol). */
  public static final double CITRIC_ACID = 6 * C + 8 * H + 7 * O;

  /** Oleic acid, C18H34O2 (kg/mol). */
  public static final double OLEIC_ACID = 18 * C + 34 * H + 2 * O;

  /** Triolein, C57H104O6, the fat of three oleic acids (kg/mol). */
  public static final double TRIOLEIN = 57 * C + 104 * H + 6 * O;

  private MolarMass() {}
}
