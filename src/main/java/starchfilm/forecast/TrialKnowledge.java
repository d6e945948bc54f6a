package starchfilm.forecast;

import starchfilm.casting.Casting;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.film.FilmForecaster;
import starchfilm.film.LearntFilm;

/** What is known before a trial is forecast: the textbook, or what earlier trials taught. */
public interface TrialKnowledge {
  /**
   * What is known of how its plates dry, with the trial's own weighings taken in. Every figure that
   * is shown of a trial rests on this, whichever command or page shows it.
   *
   * @param trial the trial
   * @return the factors
   * @throws IllegalArgumentException where a figure of the trial lies outside what the drying model
   *     takes; the message is a sentence for the reader
   */
  PlateParameters drying(Trial trial);

  /**
   * The same as it was known when the trial was poured, without its own weighings: what they are
   * held against.
   *
   * @param trial the trial
   * @return the factors
   * @throws IllegalArgumentException as {@link #drying}
   */
  PlateParameters atThePour(Trial trial);

  /**
   * What is known of its film.
   *
   * @param trial the trial
   * @return what strips of other trials taught
   */
  LearntFilm film(Trial trial);

  /**
   * What is known of the drying factors where a changed casting would be poured beside a trial,
   * without what its own notes leave uncertain: its room and its starch may be others.
   *
   * @param trial the trial it is changed from
   * @param changed the changed casting
   */
  ParameterDistribution drying(Trial trial, Casting changed);

  /** What is known of the film of a changed casting, as {@link #drying(Trial, Casting)}. */
  LearntFilm film(Trial trial, Casting changed);

  /** Forecasts a changed casting of a trial, with so many likely cases. */
  default CastingForecaster changed(Trial trial, Casting changed, int draws) {
    return new CastingForecaster(
        new PlateParameters(drying(trial, changed), false),
        new FilmForecaster(film(trial, changed)),
        draws);
  }

  /**
   * The same factors for every trial.
   *
   * @param factors such as {@link ParameterDistribution#textbook()}
   * @return that knowledge; nothing was learnt about film
   */
  static TrialKnowledge of(ParameterDistribution factors) {
    return new TrialKnowledge() {
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
      public ParameterDistribution drying(Trial trial, Casting changed) {
        return factors;
      }

      @Override
      public LearntFilm film(Trial trial, Casting changed) {
        return LearntFilm.NOTHING;
      }
    };
  }
}
