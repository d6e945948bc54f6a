package starchfilm.film;

/** What a film forecast tells of the dry film, and of the paste it comes from. */
public enum FilmProperty {
  /** Dry starch in the paste (kg per kg paste); it decides how the paste levels. */
  STARCH_IN_PASTE("starch in the paste"),
  /** pH of the paste. */
  PASTE_PH("paste pH"),
  /** Water the film holds in the air of use (kg per kg dry solids). */
  EQUILIBRIUM_MOISTURE("equilibrium moisture content"),
  /** Thickness of the film at that moisture (m). */
  DRY_THICKNESS("dry thickness"),
  /** Glass transition of the starch-rich phase (K). */
  GLASS_TRANSITION("glass transition"),
  /** Tensile strength (Pa). */
  TENSILE_STRENGTH("tensile strength"),
  /** Elongation at break (ratio). */
  ELONGATION("elongation at break"),
  /** Young's modulus (Pa). */
  YOUNGS_MODULUS("Young's modulus"),
  /** Water-vapour permeability (kg/(m s Pa)). */
  VAPOUR_PERMEABILITY("water-vapour permeability");

  private final String tradeName;

  FilmProperty(String tradeName) {
    this.tradeName = tradeName;
  }

  /**
   * The property in the trade's words.
   *
   * @return lower case, such as "tensile strength"
   */
  public String tradeName() {
    return tradeName;
  }
}
