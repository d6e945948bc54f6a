package starchfilm.forecast;

import starchfilm.casting.trial.Trial;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.film.LearntFilm;

/** What is known before a trial is forecast: the textbook, or what earlier trials taught. */
public interface TrialKnowledge {
  /**
   * What is known of how its plates dry.
   *
   * @param trial the trial
   * @return the factors
   * @throws IllegalArgumentException where a figure of the trial lies outside what the drying model
   *     takes; the message is a sentence for the reader
   */
  PlateParameters drying(Trial trial);

  /**
   * What is known of its film.
   *
   * @param trial the trial
   * @return what strips of other trials taught
   */
  LearntFilm film(Trial trial);

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
        return new PlateParameters(factors, false, 0);
      }

      @Override
      public LearntFilm film(Trial trial) {
        return LearntFilm.NOTHING;
      }
    };
  }

  /**
   * What is known of one trial.
   *
   * @param drying the factors of its plates
   * @param film what strips taught
   * @return that knowledge, whatever trial is asked for
   */
  static TrialKnowledge of(PlateParameters drying, LearntFilm film) {
    return new TrialKnowledge() {
      @Override
      public PlateParameters drying(Trial trial) {
        return drying;
      }

      @Override
      public LearntFilm film(Trial trial) {
        return film;
      }
    };
  }
}
