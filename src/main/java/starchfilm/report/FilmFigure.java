package starchfilm.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import starchfilm.film.FilmForecast;
import starchfilm.film.FilmProperty;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Band;
import starchfilm.report.chart.Scale;
import starchfilm.report.chart.Strip;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.ReaderUnit;

/** The figures of a dry film, in the order they are shown. */
enum FilmFigure {
  /** Thickness. */
  THICKNESS(
      FilmProperty.DRY_THICKNESS,
      "thickness",
      ReaderUnit.MICROMETRE,
      true,
      FilmForecast::dryThicknessM),
  /** Tensile strength. */
  STRENGTH(
      FilmProperty.TENSILE_STRENGTH,
      "tensile strength",
      ReaderUnit.MEGAPASCAL,
      true,
      FilmForecast::tensileStrengthPa),
  /** Elongation at break. */
  ELONGATION(
      FilmProperty.ELONGATION,
      "elongation at break",
      ReaderUnit.PERCENT,
      true,
      FilmForecast::elongationAtBreak),
  /** Young's modulus. */
  STIFFNESS(
      FilmProperty.YOUNGS_MODULUS,
      "stiffness (modulus)",
      ReaderUnit.MEGAPASCAL,
      true,
      FilmForecast::youngsModulusPa),
  /** Equilibrium moisture, per dry solids. */
  MOISTURE(
      FilmProperty.EQUILIBRIUM_MOISTURE,
      "moisture it keeps",
      ReaderUnit.PERCENT,
      false,
      FilmForecast::equilibriumMoisture),
  /** Glass transition. */
  GLASS_TRANSITION(
      FilmProperty.GLASS_TRANSITION,
      "glass transition",
      ReaderUnit.CELSIUS,
      false,
      FilmForecast::glassTransitionK),
  /** Water-vapour permeability. */
  PERMEABILITY(
      FilmProperty.VAPOUR_PERMEABILITY,
      "water-vapour permeability, against dry air",
      ReaderUnit.PERMEABILITY,
      true,
      FilmForecast::vapourPermeability);

  private final FilmProperty property;
  private final String label;
  private final ReaderUnit unit;
  private final boolean logarithmic;
  private final Function<FilmForecast, Band> figure;

  FilmFigure(
      FilmProperty property,
      String label,
      ReaderUnit unit,
      boolean logarithmic,
      Function<FilmForecast, Band> figure) {
    this.property = property;
    this.label = label;
    this.unit = unit;
    this.logarithmic = logarithmic;
    this.figure = figure;
  }

  /**
   * Its name in the trade's words.
   *
   * @return lower case
   */
  public String label() {
    return label;
  }

  /**
   * Its unit on the page.
   *
   * @return the unit
   */
  ReaderUnit unit() {
    return unit;
  }

  /**
   * Its figure in a forecast.
   *
   * @param forecast the forecast
   * @return the band in SI
   */
  Band of(FilmForecast forecast) {
    return figure.apply(forecast);
  }

  /**
   * Why it is not stated.
   *
   * @param forecast the forecast
   * @return a clause; empty where it is stated
   */
  Optional<String> withheld(FilmForecast forecast) {
    return forecast.withheld(property).map(PlainWords::reason);
  }

  private boolean stated(FilmForecast forecast) {
    return withheld(forecast).isEmpty();
  }

  /**
   * Its middle.
   *
   * @param forecast the forecast
   * @param symbol what follows the number, such as {@code " MPa"}
   * @return such as {@code 12 MPa}, or {@code not stated}
   */
  String middle(FilmForecast forecast, String symbol) {
    return stated(forecast) ? unit.two(of(forecast).middle()) + symbol : "not stated";
  }

  /**
   * Its range, without its unit.
   *
   * @param forecast the forecast
   * @return the range, or why the figure is not stated
   */
  String range(FilmForecast forecast) {
    return withheld(forecast).orElseGet(() -> unit.range(of(forecast)));
  }

  /**
   * Its range with its unit.
   *
   * @param forecast the forecast
   * @return the range, or a clause that begins "not stated:"
   */
  String band(FilmForecast forecast) {
    return PlainWords.unlessWithheld(forecast, property, unit.band(of(forecast)));
  }

  /**
   * The scale that holds this figure of every trial, so that strips can be compared.
   *
   * @param trials the trials on the page
   * @return a scale in the reader's unit
   */
  Scale scale(List<TrialForecast> trials) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (TrialForecast trial : trials) {
      if (stated(trial.film())) {
        low = Math.min(low, unit.of(of(trial.film()).low()));
        high = Math.max(high, unit.of(of(trial.film()).high()));
      }
      for (Measured measured : Measured.of(trial)) {
        if (measured.property() == this) {
          low = Math.min(low, unit.of(measured.mean()));
          high = Math.max(high, unit.of(measured.mean()));
        }
      }
    }
    if (low > high) {
      return Scale.linear(0, 1, Strip.FIRST_PLACE, Strip.LAST_PLACE);
    }
    if (logarithmic && low > 0) {
      return Scale.logarithmic(
          low / 1.1, Math.max(high, low) * 1.1, Strip.FIRST_PLACE, Strip.LAST_PLACE);
    }
    double margin = Math.max(0.05 * (high - low), 0.5);
    return Scale.linear(low - margin, high + margin, Strip.FIRST_PLACE, Strip.LAST_PLACE);
  }

  /**
   * The figure as a strip.
   *
   * @param trial the trial
   * @param scale the scale from {@link #scale}
   * @param ticks how many labelled lines there is room for; 0 for none
   * @return range and median, and the mean of what was measured
   */
  Strip strip(TrialForecast trial, Scale scale, int ticks) {
    Band band = of(trial.film());
    List<Strip.Dot> dots = new ArrayList<>();
    List<Strip.Range> ranges = new ArrayList<>();
    if (stated(trial.film())) {
      dots.add(new Strip.Dot("film", scale.place(unit.of(band.middle())) + "%"));
      ranges.add(Strip.range("film", scale, unit.of(band.low()), unit.of(band.high())));
    }
    StringBuilder words = new StringBuilder(band(trial.film()));
    for (Measured measured : Measured.of(trial)) {
      if (measured.property() == this) {
        dots.add(new Strip.Dot("measured", scale.place(unit.of(measured.mean())) + "%"));
        words.append("; measured ").append(measured.values());
      }
    }
    return new Strip(
        label, words.toString(), ticks == 0 ? List.of() : Strip.grid(scale, ticks), ranges, dots);
  }
}
