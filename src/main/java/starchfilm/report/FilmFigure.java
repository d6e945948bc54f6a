package starchfilm.report;

import static starchfilm.film.FilmProperty.DRY_THICKNESS;
import static starchfilm.film.FilmProperty.EQUILIBRIUM_MOISTURE;
import static starchfilm.film.FilmProperty.TENSILE_STRENGTH;
import static starchfilm.film.FilmProperty.VAPOUR_PERMEABILITY;
import static starchfilm.film.FilmProperty.YOUNGS_MODULUS;
import static starchfilm.numerics.figures.ReaderUnit.CELSIUS;
import static starchfilm.numerics.figures.ReaderUnit.MEGAPASCAL;
import static starchfilm.numerics.figures.ReaderUnit.MICROMETRE;
import static starchfilm.numerics.figures.ReaderUnit.PERCENT;
import static starchfilm.numerics.units.Nature.GRAVITY_M_PER_S2;
import static starchfilm.report.chart.Strip.linear;
import static starchfilm.report.chart.Strip.logarithmic;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import starchfilm.film.FilmForecast;
import starchfilm.film.FilmProperty;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.figures.Figures;
import starchfilm.numerics.figures.ReaderUnit;
import starchfilm.report.chart.Axis;
import starchfilm.report.chart.Lane;
import starchfilm.report.chart.Scale;
import starchfilm.report.chart.Strip;
import starchfilm.report.words.PlainWords;

/**
 * The figures of a dry film, in the order they are shown, each on one scale for good, so that what
 * is seen on one page can be held against another.
 */
public enum FilmFigure {
  /** Thickness. */
  THICKNESS(DRY_THICKNESS, "dry_thickness_um", "thickness", MICROMETRE, logarithmic(5, 1_000)),
  /** Tensile strength. */
  STRENGTH(TENSILE_STRENGTH, "strength_MPa", "tensile strength", MEGAPASCAL, logarithmic(0.1, 200)),
  /** Elongation at break. */
  ELONGATION(
      FilmProperty.ELONGATION,
      "stretch_pct",
      "elongation at break",
      PERCENT,
      logarithmic(0.5, 500)),
  /** Young's modulus. */
  STIFFNESS(
      YOUNGS_MODULUS, "stiffness_MPa", "stiffness (modulus)", MEGAPASCAL, logarithmic(1, 10_000)),
  /** Equilibrium moisture, per dry solids. */
  MOISTURE(
      EQUILIBRIUM_MOISTURE, "moisture_kg_per_kg_dry", "moisture in use", PERCENT, linear(0, 60)),
  /** Glass transition. */
  GLASS_TRANSITION(
      FilmProperty.GLASS_TRANSITION,
      "glass_transition_C",
      "glass transition",
      CELSIUS,
      linear(-100, 150)),
  /** Water-vapour permeability. */
  PERMEABILITY(
      VAPOUR_PERMEABILITY,
      "permeability_g_mm_per_m2_d_kPa",
      "water-vapour permeability towards dry air",
      ReaderUnit.PERMEABILITY,
      logarithmic(1, 1_000));

  /** The figures a maker can measure, which also stand first. */
  public static final List<FilmFigure> MEASURED = List.of(THICKNESS, STRENGTH, ELONGATION);

  /** Width of the strip that strength is stated for (m); the width many test strips have. */
  private static final double STRIP_WIDTH_M = 0.015;

  private final FilmProperty property;
  private final String key;
  private final String label;
  private final ReaderUnit unit;
  private final Scale scale;

  FilmFigure(FilmProperty property, String key, String label, ReaderUnit unit, Scale scale) {
    this.property = property;
    this.key = key;
    this.label = label;
    this.unit = unit;
    this.scale = scale;
  }

  /** Its key in data files, which carries the unit. */
  public String key() {
    return key;
  }

  /** Its name in the trade's words. */
  public String label() {
    return label;
  }

  /** Its unit on the page. */
  ReaderUnit unit() {
    return unit;
  }

  /**
   * Its figure in a forecast.
   *
   * @param forecast of the film
   * @return the band (SI), whether it is to be stated or not
   */
  public Band of(FilmForecast forecast) {
    return property.of(forecast);
  }

  /**
   * The reason why it is not stated.
   *
   * @param forecast of the film
   * @return a clause; empty where it is stated
   */
  public Optional<String> withheld(FilmForecast forecast) {
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
  public String middle(FilmForecast forecast, String symbol) {
    return stated(forecast) ? unit.two(of(forecast).middle()) + symbol : "not stated";
  }

  /** Its middle with its unit, or that it is not stated. */
  public String shown(FilmForecast forecast) {
    return middle(forecast, " " + unit.symbol());
  }

  /**
   * Its range, without its unit.
   *
   * @return the range, or why the figure is not stated
   */
  public String range(FilmForecast forecast) {
    return withheld(forecast).orElseGet(() -> unit.range(of(forecast)));
  }

  /**
   * The figure with its range and unit.
   *
   * @return such as {@code 6.1 MPa (2.6–14)}, or a clause that begins {@code not stated:}
   */
  public String band(FilmForecast forecast) {
    return withheld(forecast)
        .map(why -> "not stated: " + why)
        .orElseGet(() -> unit.band(of(forecast)));
  }

  /**
   * The figure as a strip.
   *
   * @param ticks how many labelled lines there is room for; 0 for none
   * @return range and median, and the mean of what was measured
   */
  public Strip strip(TrialForecast trial, int ticks) {
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
        Lane.of("", "", "", 0, scale, marked),
        ticks == 0 ? List.of() : landmarks());
  }

  /**
   * The load and the stretch of a strip of film.
   *
   * @param film the forecast
   * @return a sentence, or why it is not stated
   */
  public static String inUse(FilmForecast film) {
    if (!STRENGTH.stated(film)) {
      return "Strength, stretch and stiffness are not stated: %s."
          .formatted(STRENGTH.withheld(film).orElseThrow());
    }
    double kgPerPa = STRIP_WIDTH_M * film.dryThicknessM().middle() / GRAVITY_M_PER_S2;
    return "A strip 15 mm wide should hold %s kg, and 10 cm of it stretch by %s cm before it tears."
        .formatted(
            Figures.range(film.tensileStrengthPa().times(kgPerPa)),
            Figures.range(film.elongationAtBreak().times(10)));
  }

  /** Things one knows, on the same scale. */
  private List<Strip.Landmark> landmarks() {
    return HouseholdFilm.of(property).stream()
        .map(known -> new Strip.Landmark(scale.place(unit.of(known.value())), known.thing()))
        .toList();
  }
}
