package starchfilm.forecast;

import starchfilm.casting.Casting;
import starchfilm.casting.trial.Trial;
import starchfilm.film.LearntFilm;

/** The knowledge before a trial is forecast: the textbook, or what earlier trials taught. */
public interface TrialKnowledge {
  /**
   * Returns the knowledge of how its plates dry, with the trial's own weighings taken in. Every
   * figure that is shown of a trial rests on this, whichever command or page shows it.
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
   * Returns the knowledge of its film.
   *
   * @param trial the trial
   * @return what strips of other trials taught
   */
  LearntFilm film(Trial trial);

  /**
   * Forecasts a changed casting that would be poured beside a trial, without what the trial's own
   * notes leave uncertain: room and starch may be others.
   *
   * @param trial the trial it is changed from
   * @param changed the changed casting
   */
  CastingForecaster changed(Trial trial, Casting changed);
}
