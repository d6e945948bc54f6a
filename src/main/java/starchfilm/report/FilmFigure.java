package starchfilm.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import starchfilm.film.FilmForecast;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Band;
import starchfilm.report.chart.Scale;
import starchfilm.report.chart.Strip;
import starchfilm.report.words.ReaderUnit;

/** The figures of a dry film, in the order they are shown. */
enum FilmFigure {
  /** Thickness. */
  THICKNESS("thickness", ReaderUnit.MICROMETRE, true, FilmForecast::dryThicknessM),
  /** Tensile strength. */
  STRENGTH("tensile strength", ReaderUnit.MEGAPASCAL, true, FilmForecast::tensileStrengthPa),
  /** Elongation at break. */
  ELONGATION("elongation at break", ReaderUnit.PERCENT, true, FilmForecast::elongationAtBreak),
  /** Young's modulus. */
  STIFFNESS("stiffness (modulus)", ReaderUnit.MEGAPASCAL, true, FilmForecast::youngsModulusPa),
  /** Equilibrium moisture, per dry solids. */
  MOISTURE("moisture it keeps", ReaderUnit.PERCENT, false, FilmForecast::equilibriumMoisture),
  /** Glass transition. */
  GLASS_TRANSITION("glass transition", ReaderUnit.CELSIUS, false, FilmForecast::glassTransitionK),
  /** Water-vapour permeability. */
  PERMEABILITY(
      "water-vapour permeability", ReaderUnit.PERMEABILITY, true, FilmForecast::vapourPermeability);

  private final String label;
  private final ReaderUnit unit;
  private final boolean logarithmic;
  private final Function<FilmForecast, Band> figure;

  FilmFigure(
      String label, ReaderUnit unit, boolean logarithmic, Function<FilmForecast, Band> figure) {
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
   * The scale that holds this figure of every trial, so that strips can be compared.
   *
   * @param trials the trials on the page
   * @return a scale in the reader's unit
   */
  Scale scale(List<TrialForecast> trials) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (TrialForecast trial : trials) {
      low = Math.min(low, unit.of(of(trial.film()).low()));
      high = Math.max(high, unit.of(of(trial.film()).high()));
      for (Measured measured : Measured.of(trial)) {
        if (measured.property() == this) {
          low = Math.min(low, unit.of(measured.mean()));
          high = Math.max(high, unit.of(measured.mean()));
        }
      }
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
    dots.add(new Strip.Dot("film", scale.place(unit.of(band.middle())) + "%"));
    StringBuilder words = new StringBuilder(unit.band(band));
    for (Measured measured : Measured.of(trial)) {
      if (measured.property() == this) {
        dots.add(new Strip.Dot("measured", scale.place(unit.of(measured.mean())) + "%"));
        words.append("; measured ").append(measured.values());
      }
    }
    return new Strip(
        label,
        words.toString(),
        ticks == 0 ? List.of() : Strip.grid(scale, ticks),
        List.of(Strip.range("film", scale, unit.of(band.low()), unit.of(band.high()))),
        dots);
  }
}
