package starchfilm.report;

import static starchfilm.report.words.ReaderUnit.CELSIUS;
import static starchfilm.report.words.ReaderUnit.MEGAPASCAL;
import static starchfilm.report.words.ReaderUnit.MICROMETRE;
import static starchfilm.report.words.ReaderUnit.PERCENT;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import starchfilm.film.FilmForecast;
import starchfilm.film.FilmProperty;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Band;
import starchfilm.report.chart.Axis;
import starchfilm.report.chart.Lane;
import starchfilm.report.chart.Scale;
import starchfilm.report.chart.Strip;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.ReaderUnit;

/**
 * The figures of a dry film, in the order they are shown, each on one scale for good, so that what
 * is seen on one page can be held against another.
 */
enum FilmFigure {
  /** Thickness. */
  THICKNESS(
      FilmProperty.DRY_THICKNESS,
      "thickness",
      MICROMETRE,
      Scale.logarithmic(5, 1_000, Strip.FIRST_PLACE, Strip.LAST_PLACE)),
  /** Tensile strength. */
  STRENGTH(
      FilmProperty.TENSILE_STRENGTH,
      "tensile strength",
      MEGAPASCAL,
      Scale.logarithmic(0.1, 200, Strip.FIRST_PLACE, Strip.LAST_PLACE)),
  /** Elongation at break. */
  ELONGATION(
      FilmProperty.ELONGATION,
      "elongation at break",
      PERCENT,
      Scale.logarithmic(0.5, 500, Strip.FIRST_PLACE, Strip.LAST_PLACE)),
  /** Young's modulus. */
  STIFFNESS(
      FilmProperty.YOUNGS_MODULUS,
      "stiffness (modulus)",
      MEGAPASCAL,
      Scale.logarithmic(1, 10_000, Strip.FIRST_PLACE, Strip.LAST_PLACE)),
  /** Equilibrium moisture, per dry solids. */
  MOISTURE(
      FilmProperty.EQUILIBRIUM_MOISTURE,
      "moisture in use",
      PERCENT,
      Scale.linear(0, 60, Strip.FIRST_PLACE, Strip.LAST_PLACE)),
  /** Glass transition. */
  GLASS_TRANSITION(
      FilmProperty.GLASS_TRANSITION,
      "glass transition",
      CELSIUS,
      Scale.linear(-100, 150, Strip.FIRST_PLACE, Strip.LAST_PLACE)),
  /** Water-vapour permeability. */
  PERMEABILITY(
      FilmProperty.VAPOUR_PERMEABILITY,
      "water-vapour permeability towards dry air",
      ReaderUnit.PERMEABILITY,
      Scale.logarithmic(1, 1_000, Strip.FIRST_PLACE, Strip.LAST_PLACE));

  private final FilmProperty property;
  private final String label;
  private final ReaderUnit unit;
  private final Scale scale;

  FilmFigure(FilmProperty property, String label, ReaderUnit unit, Scale scale) {
    this.property = property;
    this.label = label;
    this.unit = unit;
    this.scale = scale;
  }

  /** Its name in the trade's words. */
  public String label() {
    return label;
  }

  /** Its unit on the page. */
  ReaderUnit unit() {
    return unit;
  }

  /** Its figure in a forecast. */
  Band of(FilmForecast forecast) {
    return property.of(forecast);
  }

  /**
   * Why it is not stated.
   *
   * @return a clause; empty where it is stated
   */
  Optional<String> withheld(FilmForecast forecast) {
    return forecast.withheld(property).map(PlainWords::word);
  }

  private boolean stated(FilmForecast forecast) {
    return withheld(forecast).isEmpty();
  }

  /**
   * Its middle.
   *
   * @param symbol what follows the number, such as {@code " MPa"}
   * @return such as {@code 12 MPa}, or {@code not stated}
   */
  String middle(FilmForecast forecast, String symbol) {
    return stated(forecast) ? unit.two(of(forecast).middle()) + symbol : "not stated";
  }

  /**
   * Its range, without its unit.
   *
   * @return the range, or why the figure is not stated
   */
  String range(FilmForecast forecast) {
    return withheld(forecast).orElseGet(() -> unit.range(of(forecast)));
  }

  /**
   * Its range with its unit.
   *
   * @return the range, or a clause that begins "not stated:"
   */
  String band(FilmForecast forecast) {
    return PlainWords.unlessWithheld(forecast, property, unit.band(of(forecast)));
  }

  /**
   * The figure as a strip.
   *
   * @param ticks how many labelled lines there is room for; 0 for none
   * @return range and median, and the mean of what was measured
   */
  Strip strip(TrialForecast trial, int ticks) {
    List<Lane.Marked> marked = new ArrayList<>();
    if (stated(trial.film())) {
      marked.add(new Lane.Marked("film", unit.of(of(trial.film()))));
    }
    StringBuilder words = new StringBuilder(band(trial.film()));
    for (Measured measured : Measured.of(trial)) {
      if (measured.property() == this) {
        marked.add(new Lane.Marked("measured", unit.of(Band.exact(measured.mean()))));
        words.append("; measured ").append(measured.values());
      }
    }
    return new Strip(
        label,
        words.toString(),
        ticks == 0 ? List.of() : Axis.of(label, scale, ticks).ticks(),
        Lane.of("", "", 0, scale, marked),
        ticks == 0 ? List.of() : landmarks());
  }

  /** Things one knows, on the same scale. */
  private List<Strip.Landmark> landmarks() {
    return HouseholdFilm.of(property).stream()
        .map(known -> new Strip.Landmark(scale.place(unit.of(known.value())), known.thing()))
        .toList();
  }
}
