package starchfilm.forecast;

import starchfilm.casting.Casting;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.film.FilmForecaster;
import starchfilm.film.LearntFilm;

/** The same factors for every trial; nothing was learnt about film. */
public record SameForAll(ParameterDistribution factors) implements TrialKnowledge {
  public static final TrialKnowledge TEXTBOOK = new SameForAll(ParameterDistribution.textbook());

  @Override
  public PlateParameters drying(Trial trial) {
    return atThePour(trial);
  }

  @Override
  public PlateParameters atThePour(Trial trial) {
    return new PlateParameters(factors, false);
  }

  @Override
  public LearntFilm film(Trial trial) {
    return LearntFilm.NOTHING;
  }

  @Override
  public CastingForecaster changed(Trial trial, Casting changed) {
    return new CastingForecaster(atThePour(trial), new FilmForecaster());
  }
}
