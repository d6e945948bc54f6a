package starchfilm.report;

import static starchfilm.numerics.units.Nature.GRAVITY_M_PER_S2;
import static starchfilm.numerics.units.ReaderUnit.CELSIUS;
import static starchfilm.numerics.units.ReaderUnit.PERCENT;

import java.util.List;
import java.util.Optional;
import starchfilm.casting.Use;
import starchfilm.film.FilmForecast;
import starchfilm.film.FilmProperty;
import starchfilm.film.Withheld;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.units.Figures;
import starchfilm.numerics.units.Spans;
import starchfilm.report.words.PlainWords;

/** What the dry film of a trial will be like. */
record FilmTable(TrialForecast trial) {
  /** Width of the strip that strength is stated for (m); the width many test strips have. */
  private static final double STRIP_WIDTH_M = 0.015;

  /** The film of a trial. */
  public static FilmTable of(TrialForecast trial) {
    return new FilmTable(trial);
  }

  /** Where it is used. */
  public String where() {
    Use use = trial.casting().use();
    return "in use at %s and %s RH, %s after it has dried"
        .formatted(
            CELSIUS.figure(use.temperatureK()),
            PERCENT.whole(use.relativeHumidity()) + " %",
            Spans.of(use.ageS()));
  }

  /** How it feels in the hand. */
  public String sentence() {
    return "The film %s. %s"
        .formatted(
            PlainWords.word(trial.film().feel(), "in the hand"),
            PlainWords.sentence(trial.film().feelChances()))
        .strip();
  }

  /** Its figures, in the order they are shown. */
  public List<FilmFigure> figures() {
    return List.of(FilmFigure.values());
  }

  /** What a strip of it holds. */
  public String inUse() {
    FilmForecast film = trial.film();
    Optional<Withheld> withheld = film.withheld(FilmProperty.TENSILE_STRENGTH);
    if (withheld.isPresent()) {
      return "Strength, stretch and stiffness are not stated: %s."
          .formatted(PlainWords.word(withheld.get()));
    }
    double kgPerPa = STRIP_WIDTH_M * film.dryThicknessM().middle() / GRAVITY_M_PER_S2;
    return "A strip 15 mm wide should hold %s kg, and 10 cm of it stretch by %s cm before it tears."
        .formatted(
            Figures.range(film.tensileStrengthPa().times(kgPerPa)),
            Figures.range(film.elongationAtBreak().times(10)));
  }

  /** What the vinegar does to it. */
  public String vinegar() {
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
