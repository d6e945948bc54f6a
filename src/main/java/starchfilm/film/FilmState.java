package starchfilm.film;

import static starchfilm.numerics.units.Units.PERCENT_PER_UNIT;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import starchfilm.material.recipe.Composition;
import starchfilm.material.sorption.FilmIsotherm;
import starchfilm.numerics.evidence.ValidRange;

/**
 * A dry film at rest with the air it is used in: what the rules look at.
 *
 * @param glycerolFraction glycerol in starch and glycerol (mass fraction, 0 to 1)
 * @param amyloseFraction amylose in the dry starch (mass fraction, 0 to 1)
 * @param saltFractionOfDry salt in the dry solids (mass fraction, 0 to 1)
 * @param inertFractionOfDry inert solids in the dry solids (mass fraction, 0 to 1)
 * @param waterKgPerKgDry moisture content (kg water per kg dry solids, 0 or more)
 * @param relativeHumidity of the air (ratio, 0 to below 1)
 * @param temperatureK of the air (K)
 */
record FilmState(
    double glycerolFraction,
    double amyloseFraction,
    double saltFractionOfDry,
    double inertFractionOfDry,
    double waterKgPerKgDry,
    double relativeHumidity,
    double temperatureK) {
  /**
   * The film that a paste leaves, at rest with the air.
   *
   * @param composition the paste
   * @param relativeHumidity of the air (ratio, 0 to below 1)
   * @param temperatureK of the air (K)
   * @return the film with its equilibrium moisture
   */
  static FilmState atRest(Composition composition, double relativeHumidity, double temperatureK) {
    double moisture = FilmIsotherm.of(composition).moisture(relativeHumidity, temperatureK);
    return of(composition, moisture, relativeHumidity, temperatureK);
  }

  /**
   * The film that a paste leaves, at a moisture given.
   *
   * @param composition the paste
   * @param waterKgPerKgDry moisture content (kg per kg dry solids)
   * @param relativeHumidity of the air (ratio, 0 to below 1)
   * @param temperatureK temperature (K)
   * @return the film
   */
  static FilmState of(
      Composition composition,
      double waterKgPerKgDry,
      double relativeHumidity,
      double temperatureK) {
    return new FilmState(
        composition.glycerolFractionOfStarchAndGlycerol(),
        composition.amyloseFractionOfStarch(),
        composition.saltFractionOfDry(),
        composition.inertFractionOfDry(),
        waterKgPerKgDry,
        relativeHumidity,
        temperatureK);
  }

  /**
   * The state that stiffness, strength and stretch follow: how far the film lies above its glass
   * transition.
   *
   * @return x = T - Tg of the fresh film (K); below 0 it is a glass
   */
  double aboveGlassK() {
    return temperatureK - CouchmanKaraszTransition.kelvin(this);
  }

  /**
   * Plasticiser level.
   *
   * @return kg glycerol per kg dry starch; positive infinity without starch
   */
  double glycerolPerDryStarch() {
    return glycerolFraction / (1 - glycerolFraction);
  }

  /** A limit on the plasticiser level, in g glycerol per 100 g dry starch. */
  static RuleLimit plasticiser(double min, double max) {
    return new RuleLimit(
        new ValidRange("plasticiser", min, max, "g glycerol per 100 g dry starch"),
        film -> PERCENT_PER_UNIT * film.glycerolPerDryStarch());
  }

  /** A limit on the relative humidity of the air, in %. */
  static RuleLimit humidity(double min, double max) {
    return new RuleLimit(
        new ValidRange("relative humidity", min, max, "%"),
        film -> PERCENT_PER_UNIT * film.relativeHumidity());
  }

  /** A limit on the temperature of use, in degrees Celsius. */
  static RuleLimit celsius(double min, double max) {
    return new RuleLimit(
        new ValidRange("temperature", min, max, "°C"),
        film -> film.temperatureK() - ZERO_CELSIUS_K);
  }
}
