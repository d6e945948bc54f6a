package starchfilm.film;

import java.util.function.Function;
import starchfilm.numerics.evidence.Band;

/** The figures of a film forecast, of the dry film and of the paste it comes from. */
public enum FilmProperty {
  /** pH of the paste. */
  PASTE_PH("paste pH", film -> Band.exact(film.acid().pastePh())),
  /** Water the film holds in the air of use (kg per kg dry solids). */
  EQUILIBRIUM_MOISTURE("equilibrium moisture content", FilmForecast::equilibriumMoisture),
  /** Thickness of the film at that moisture (m). */
  DRY_THICKNESS("dry thickness", FilmForecast::dryThicknessM),
  /** Glass transition of the starch-rich phase (K). */
  GLASS_TRANSITION("glass transition", FilmForecast::glassTransitionK),
  /** Tensile strength (Pa). */
  TENSILE_STRENGTH("tensile strength", FilmForecast::tensileStrengthPa),
  /** Elongation at break (ratio). */
  ELONGATION("elongation at break", FilmForecast::elongationAtBreak),
  /** Young's modulus (Pa). */
  YOUNGS_MODULUS("Young's modulus", FilmForecast::youngsModulusPa),
  /** Water-vapour permeability (kg/(m s Pa)). */
  VAPOUR_PERMEABILITY("water-vapour permeability", FilmForecast::vapourPermeability);

  private final String tradeName;
  private final Function<FilmForecast, Band> figure;

  FilmProperty(String tradeName, Function<FilmForecast, Band> figure) {
    this.tradeName = tradeName;
    this.figure = figure;
  }

  /**
   * The property in the trade's words.
   *
   * @return lower case, such as "tensile strength"
   */
  public String tradeName() {
    return tradeName;
  }

  /** Its figure in a forecast, in its unit; whether that may be stated, the forecast says. */
  public Band of(FilmForecast film) {
    return figure.apply(film);
  }
}
