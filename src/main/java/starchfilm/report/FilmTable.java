package starchfilm.report;

import static starchfilm.numerics.units.Nature.GRAVITY_M_PER_S2;
import static starchfilm.report.words.ReaderUnit.CELSIUS;
import static starchfilm.report.words.ReaderUnit.PERCENT;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import starchfilm.casting.Use;
import starchfilm.film.FilmForecast;
import starchfilm.film.FilmProperty;
import starchfilm.film.Withheld;
import starchfilm.forecast.TrialForecast;
import starchfilm.report.chart.Strip;
import starchfilm.report.words.Figures;
import starchfilm.report.words.PlainWords;
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
  /** Width of the strip that strength is stated for (m); the width many test strips have. */
  private static final double STRIP_WIDTH_M = 0.015;

  private static final int TICKS = 6;

  /** A figure of the film. */
  record Row(String name, String figure, String range, Strip strip) {}

  /** The film of a trial. */
  public static FilmTable of(TrialForecast trial) {
    FilmForecast film = trial.film();
    Use use = trial.casting().use();
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
        "in use at %s and %s %% RH, %s after it has dried"
            .formatted(
                CELSIUS.figure(use.temperatureK()),
                Figures.whole(100 * use.relativeHumidity()),
                Spans.of(use.ageS())),
        PlainWords.word(film.feel()),
        "The film %s. %s"
            .formatted(
                PlainWords.word(film.feel(), "in the hand"),
                PlainWords.sentence(film.feelChances()))
            .strip(),
        inUse(film),
        rows,
        vinegar(trial),
        film.cautions().stream().map(PlainWords::word).toList());
  }

  private static String inUse(FilmForecast film) {
    Optional<Withheld> withheld = film.withheld(FilmProperty.TENSILE_STRENGTH);
    if (withheld.isPresent()) {
      return "Strength, stretch and stiffness are not stated: %s."
          .formatted(PlainWords.word(withheld.get()));
    }
    double areaM2 = STRIP_WIDTH_M * film.dryThicknessM().middle();
    double low = film.tensileStrengthPa().low() * areaM2 / GRAVITY_M_PER_S2;
    double high = film.tensileStrengthPa().high() * areaM2 / GRAVITY_M_PER_S2;
    return "A strip 15 mm wide should hold %s kg, and 10 cm of it stretch by %s cm before it tears."
        .formatted(
            Figures.range(Figures.two(low), Figures.two(high)),
            Figures.range(
                Figures.two(10 * film.elongationAtBreak().low()),
                Figures.two(10 * film.elongationAtBreak().high())));
  }

  private static String vinegar(TrialForecast trial) {
    if (trial.trial().recipe().vinegar().massKg().value() == 0) {
      return "Without vinegar the chains of the starch stay whole.";
    }
    return ("The vinegar brings the paste to pH %s; the hot acid shortens the starch chains, which"
            + " leaves %s of the strength.")
        .formatted(
            Figures.two(trial.film().acid().pastePh()),
            PERCENT.band(trial.film().acid().strengthFactor()));
  }
}
