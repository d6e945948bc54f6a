package starchfilm.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import starchfilm.casting.trial.EachPlate.MeasuredFilm;
import starchfilm.casting.trial.PullTest;
import starchfilm.casting.trial.Trial;
import starchfilm.film.FilmForecast;
import starchfilm.film.FilmForecaster;
import starchfilm.film.FilmProperty;
import starchfilm.learning.summary.DoubtedReading;
import starchfilm.learning.summary.LeftOut;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.numerics.evidence.Band;

/**
 * Turns the pulled strips of trials into likelihoods of tensile strength and elongation at break. A
 * strip pulled until it breaks does not tell the modulus.
 */
final class StripLikelihoods {
  /**
   * Scatter of the logarithm between strips of one film: strength and elongation of hand-cut strips
   * vary by a quarter and by two fifths. Judged, no source.
   */
  private static final double STRENGTH_SCATTER = 0.25;

  private static final double ELONGATION_SCATTER = 0.4;

  /** Scatter of the logarithm between strips of one film. */
  static double stripLogSd(FilmProperty property) {
    return property == FilmProperty.ELONGATION ? ELONGATION_SCATTER : STRENGTH_SCATTER;
  }

  private final List<StripLikelihood> likelihoods = new ArrayList<>();
  private final List<DoubtedReading> doubted = new ArrayList<>();
  private final List<LeftOut> leftOut = new ArrayList<>();

  /** Takes in one trial's strips. */
  void add(Trial trial, String file) {
    if (trial.seen().pulls().isEmpty()) {
      return;
    }
    FilmForecast forecast;
    Map<StarchKind, Double> starch;
    try {
      forecast = new FilmForecaster().forecast(trial.casting());
      starch = trial.casting().composition().starchShares();
    } catch (IllegalArgumentException e) {
      leftOut.add(new LeftOut(file, "its strips: " + e.getMessage()));
      return;
    }
    List<PullTest> unnamed = new ArrayList<>(trial.seen().pulls());
    for (MeasuredFilm film : trial.seen().eachPlate().films().values()) {
      film.pulls().forEach(unnamed::remove);
      add(trial, film.pulls(), forecast, file, starch);
    }
    add(trial, unnamed, forecast, file, starch);
  }

  /** Takes in the strips of one film; those of plates that nobody named count as of one. */
  private void add(
      Trial trial,
      List<PullTest> strips,
      FilmForecast forecast,
      String file,
      Map<StarchKind, Double> starch) {
    List<StripFigure> strengths = new ArrayList<>();
    List<StripFigure> elongations = new ArrayList<>();
    for (PullTest pull : strips) {
      int number = trial.seen().pulls().indexOf(pull) + 1;
      strengths.add(new StripFigure(number, pull.strengthPa()));
      // A strip that broke without any stretch to see has no logarithm, and tells too little.
      if (pull.stretchAtBreak().orElse(0) > 0) {
        elongations.add(new StripFigure(number, pull.stretchAtBreak().getAsDouble()));
      }
    }
    teach(
        new PulledFilm(file, starch, FilmProperty.TENSILE_STRENGTH, STRENGTH_SCATTER, 1e-6, "MPa"),
        forecast.tensileStrengthPa(),
        strengths);
    teach(
        new PulledFilm(file, starch, FilmProperty.ELONGATION, ELONGATION_SCATTER, 100, "%"),
        forecast.elongationAtBreak(),
        elongations);
  }

  private record StripFigure(int strip, double value) {}

  private record PulledFilm(
      String file,
      Map<StarchKind, Double> starch,
      FilmProperty property,
      double scatter,
      double shownFactor,
      String unit) {}

  private void teach(PulledFilm film, Band forecast, List<StripFigure> figures) {
    if (figures.isEmpty()) {
      return;
    }
    double[] logs =
        figures.stream().mapToDouble(f -> Math.log(f.value() / forecast.middle())).toArray();
    StripLikelihood.SteadyMean steady = StripLikelihood.SteadyMean.of(logs, film.scatter());
    likelihoods.add(
        new StripLikelihood(
            film.file(), film.starch(), film.property(), figures.size(), steady.mean()));
    for (int i = 0; i < figures.size(); i++) {
      double weight = steady.weights().get(i);
      if (weight < PlateFit.DOUBTED_BELOW) {
        doubted.add(
            new DoubtedReading(
                film.file(),
                film.property().tradeName() + " of strip " + figures.get(i).strip(),
                shown(film, figures.get(i).value()),
                shown(film, forecast.middle() * Math.exp(steady.mean().value())),
                weight));
      }
    }
  }

  private static String shown(PulledFilm film, double value) {
    return String.format(Locale.ROOT, "%.2g %s", value * film.shownFactor(), film.unit());
  }

  List<StripLikelihood> likelihoods() {
    return List.copyOf(likelihoods);
  }

  List<DoubtedReading> doubted() {
    return List.copyOf(doubted);
  }

  List<LeftOut> leftOut() {
    return List.copyOf(leftOut);
  }
}
