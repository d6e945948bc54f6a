package starchfilm.report;

import static starchfilm.numerics.units.Nature.GRAVITY_M_PER_S2;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import starchfilm.film.FilmForecast;
import starchfilm.film.FilmProperty;
import starchfilm.film.Withheld;
import starchfilm.forecast.TrialForecast;
import starchfilm.report.chart.Strip;
import starchfilm.report.words.Figures;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.ReaderUnit;
import starchfilm.report.words.Spans;

/** What the dry film will be like. */
record FilmTable(
    String where,
    String feel,
    String sentence,
    String inUse,
    List<Row> rows,
    String vinegar,
    List<String> warnings) {
  /** Width of the strip that strength is told for (m); the width many test strips have. */
  private static final double STRIP_WIDTH_M = 0.015;

  private static final int TICKS = 6;

  /** A figure of the film. */
  record Row(String name, String figure, String range, Strip strip) {}

  /** The film of a trial. */
  static FilmTable of(TrialForecast trial) {
    FilmForecast film = trial.film();
    List<Row> rows = new ArrayList<>();
    for (FilmFigure property : FilmFigure.values()) {
      rows.add(
          new Row(
              property.label(),
              property.middle(film, " " + property.unit().symbol()),
              property.range(film),
              property.strip(trial, TICKS)));
    }
    return new FilmTable(
        "in use at "
            + ReaderUnit.CELSIUS.two(trial.trial().casting().use().temperatureK())
            + " °C and "
            + Figures.whole(100 * trial.trial().casting().use().relativeHumidity())
            + " % RH, "
            + Spans.of(trial.trial().casting().use().ageS())
            + " after it has dried",
        PlainWords.word(film.feel()),
        ("The film "
                + PlainWords.inTheHand(film.feel())
                + ". "
                + PlainWords.sentence(film.feelChances()))
            .strip(),
        inUse(film),
        rows,
        vinegar(trial),
        film.cautions().stream().map(PlainWords::sentence).toList());
  }

  private static String inUse(FilmForecast film) {
    Optional<Withheld> withheld = film.withheld(FilmProperty.TENSILE_STRENGTH);
    if (withheld.isPresent()) {
      return "Strength, stretch and stiffness are not stated: "
          + PlainWords.reason(withheld.get())
          + ".";
    }
    double areaM2 = STRIP_WIDTH_M * film.dryThicknessM().middle();
    double low = film.tensileStrengthPa().low() * areaM2 / GRAVITY_M_PER_S2;
    double high = film.tensileStrengthPa().high() * areaM2 / GRAVITY_M_PER_S2;
    return "A strip 15 mm wide should hold "
        + Figures.range(Figures.two(low), Figures.two(high))
        + " kg, and 10 cm of it stretch by "
        + Figures.range(
            Figures.two(10 * film.elongationAtBreak().low()),
            Figures.two(10 * film.elongationAtBreak().high()))
        + " cm before it tears.";
  }

  private static String vinegar(TrialForecast trial) {
    if (trial.trial().recipe().vinegar().massKg().value() == 0) {
      return "Without vinegar the chains of the starch stay whole.";
    }
    return "The vinegar brings the paste to pH "
        + Figures.two(trial.film().acid().pastePh())
        + "; the hot acid shortens the starch chains, which leaves "
        + ReaderUnit.PERCENT.band(trial.film().acid().strengthFactor())
        + " of the strength.";
  }
}
