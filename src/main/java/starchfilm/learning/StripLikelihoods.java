package starchfilm.learning;

import static starchfilm.numerics.figures.ReaderUnit.MEGAPASCAL;
import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import starchfilm.casting.trial.EachPlate.MeasuredFilm;
import starchfilm.casting.trial.PullTest;
import starchfilm.casting.trial.Trial;
import starchfilm.film.FilmForecast;
import starchfilm.film.FilmForecaster;
import starchfilm.film.FilmProperty;
import starchfilm.learning.StripLikelihood.SteadyMean;
import starchfilm.learning.summary.DoubtedReading;
import starchfilm.learning.summary.LeftOut;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.numerics.figures.ReaderUnit;

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
    try {
      forecast = new FilmForecaster().forecast(trial.casting());
    } catch (IllegalArgumentException e) {
      leftOut.add(new LeftOut(file, "its strips: " + e.getMessage()));
      return;
    }
    List<PullTest> unnamed = new ArrayList<>(trial.seen().pulls());
    for (MeasuredFilm film : trial.seen().eachPlate().films().values()) {
      film.pulls().forEach(unnamed::remove);
      add(trial, film.pulls(), forecast, file);
    }
    add(trial, unnamed, forecast, file);
  }

  /** Takes in the strips of one film; those of plates that nobody named count as of one. */
  private void add(Trial trial, List<PullTest> strips, FilmForecast forecast, String file) {
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
    Map<StarchKind, Double> starch = trial.casting().composition().starchShares();
    teach(file, starch, forecast, FilmProperty.TENSILE_STRENGTH, MEGAPASCAL, strengths);
    teach(file, starch, forecast, FilmProperty.ELONGATION, PERCENT, elongations);
  }

  private record StripFigure(int strip, double value) {}

  private void teach(
      String file,
      Map<StarchKind, Double> starch,
      FilmForecast forecast,
      FilmProperty property,
      ReaderUnit unit,
      List<StripFigure> figures) {
    if (figures.isEmpty()) {
      return;
    }
    double middle = property.of(forecast).middle();
    double[] logs = figures.stream().mapToDouble(f -> Math.log(f.value() / middle)).toArray();
    SteadyMean steady = SteadyMean.of(logs, stripLogSd(property));
    likelihoods.add(new StripLikelihood(file, starch, property, figures.size(), steady.mean()));
    for (int i = 0; i < figures.size(); i++) {
      double weight = steady.weights().get(i);
      if (weight < PlateFit.DOUBTED_BELOW) {
        doubted.add(
            new DoubtedReading(
                file,
                property.tradeName() + " of strip " + figures.get(i).strip(),
                unit.figure(figures.get(i).value()),
                unit.figure(middle * Math.exp(steady.mean().value())),
                weight));
      }
    }
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
