package starchfilm.advice;

import starchfilm.casting.Casting;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.film.FilmForecaster;

/** What is known of drying and film where and with what a plate is cast. */
@FunctionalInterface
public interface Knowledge {
  /**
   * The factors for a set-up, without the doubt its own notes add.
   *
   * @param setup the set-up; its room and its starch may be ones that something was learnt of
   * @return the factors
   */
  ParameterDistribution of(Casting setup);

  /**
   * What forecasts the film of a set-up.
   *
   * @param setup the set-up
   * @return a forecaster that knows what strips of such film taught; without strips the published
   *     rules alone
   */
  default FilmForecaster film(Casting setup) {
    return new FilmForecaster();
  }

  /**
   * Before anything was learnt.
   *
   * @return the same factors for every set-up
   */
  static Knowledge textbook() {
    ParameterDistribution textbook = ParameterDistribution.textbook();
    return setup -> textbook;
  }
}
