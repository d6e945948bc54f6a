package starchfilm.learning;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import starchfilm.film.FilmForecaster;
import starchfilm.film.FilmProperty;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.numerics.evidence.Estimate;

/**
 * One property's factor after some strips: a part common to all films of this hand, a part of each
 * starch kind, and a part of each film alone.
 *
 * <p>The parts share the variance of the rule's scatter between laboratories, 0.6, 0.2 and 0.2 of
 * it (judged, no source). Everything is normal on the logarithm, so the result is exact: the
 * conjugate update of a hierarchical normal model (Gelman et al. 2013, Bayesian Data Analysis, 3rd
 * ed., section 5.4, recalled). Immutable.
 */
final class SharedStrips {
  private static final double COMMON_SHARE = 0.6;
  private static final double KIND_SHARE = 0.2;
  private static final double FILM_SHARE = 0.2;

  private final double logScatter;
  private final Map<StarchKind, Integer> places = new TreeMap<>();
  private final RealVector mean;
  private final RealMatrix covariance;

  /** Scatter of the logarithm between films of one hand and starch. */
  static double filmLogSd(FilmProperty property) {
    return Math.sqrt(FILM_SHARE) * new FilmForecaster().logScatter(property);
  }

  private SharedStrips(double logScatter, List<StripLikelihood> likelihoods) {
    this.logScatter = logScatter;
    for (StripLikelihood likelihood : likelihoods) {
      likelihood.starchShares().keySet().forEach(kind -> places.put(kind, 0));
    }
    int next = 1;
    for (Map.Entry<StarchKind, Integer> place : places.entrySet()) {
      place.setValue(next++);
    }
    RealMatrix precision = MatrixUtils.createRealIdentityMatrix(next);
    RealVector pull = new ArrayRealVector(next);
    double filmVariance = FILM_SHARE * logScatter * logScatter;
    for (StripLikelihood likelihood : likelihoods) {
      RealVector parts = parts(likelihood.starchShares());
      double weight = 1 / (filmVariance + Math.pow(likelihood.logFactor().sd(), 2));
      precision = precision.add(parts.outerProduct(parts).scalarMultiply(weight));
      pull = pull.add(parts.mapMultiply(weight * likelihood.logFactor().value()));
    }
    covariance = new CholeskyDecomposition(Normal.symmetric(precision)).getSolver().getInverse();
    mean = covariance.operate(pull);
  }

  /**
   * What some films' strips teach.
   *
   * @param likelihoods of any property; those of others are passed over
   */
  static SharedStrips after(FilmProperty property, Collection<StripLikelihood> likelihoods) {
    return new SharedStrips(
        new FilmForecaster().logScatter(property),
        likelihoods.stream().filter(likelihood -> likelihood.property() == property).toList());
  }

  /** The parts of a film in units of their prior standard deviations; unseen kinds apart. */
  private RealVector parts(Map<StarchKind, Double> starchShares) {
    RealVector parts = new ArrayRealVector(places.size() + 1);
    parts.setEntry(0, Math.sqrt(COMMON_SHARE) * logScatter);
    starchShares.forEach(
        (kind, share) -> {
          Integer place = places.get(kind);
          if (place != null) {
            parts.setEntry(place, share * Math.sqrt(KIND_SHARE) * logScatter);
          }
        });
    return parts;
  }

  /** Mean and uncertainty of the shared part for films of some starch. */
  Estimate shared(Map<StarchKind, Double> starchShares) {
    RealVector parts = parts(starchShares);
    double unseen = 0;
    for (Map.Entry<StarchKind, Double> share : starchShares.entrySet()) {
      if (!places.containsKey(share.getKey())) {
        unseen += KIND_SHARE * Math.pow(share.getValue() * logScatter, 2);
      }
    }
    double variance = parts.dotProduct(covariance.operate(parts)) + unseen;
    return new Estimate(parts.dotProduct(mean), Math.sqrt(variance));
  }

  /** Mean and uncertainty for a next film of some starch, its own part included. */
  Estimate nextFilm(Map<StarchKind, Double> starchShares) {
    return shared(starchShares).plus(new Estimate(0, Math.sqrt(FILM_SHARE) * logScatter));
  }

  /** Standard deviation of the shared part before any strip. */
  double sharedSdBefore(Map<StarchKind, Double> starchShares) {
    double kinds = starchShares.values().stream().mapToDouble(share -> share * share).sum();
    return logScatter * Math.sqrt(COMMON_SHARE + KIND_SHARE * kinds);
  }
}
