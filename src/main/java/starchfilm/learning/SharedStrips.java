package starchfilm.learning;

import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.linear.ArrayRealVector;
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
  private final List<StarchKind> kinds;
  private final Normal known;

  /** Scatter of the logarithm between films of one hand and starch. */
  static double filmLogSd(FilmProperty property) {
    return Math.sqrt(FILM_SHARE) * new FilmForecaster().logScatter(property);
  }

  private SharedStrips(double logScatter, List<StripLikelihood> likelihoods) {
    this.logScatter = logScatter;
    this.kinds =
        likelihoods.stream()
            .flatMap(likelihood -> likelihood.starchShares().keySet().stream())
            .distinct()
            .sorted()
            .toList();
    RealMatrix precision = MatrixUtils.createRealIdentityMatrix(1 + kinds.size());
    RealVector pull = new ArrayRealVector(1 + kinds.size());
    double filmVariance = FILM_SHARE * logScatter * logScatter;
    for (StripLikelihood likelihood : likelihoods) {
      RealVector parts = parts(likelihood.starchShares());
      double weight = 1 / (filmVariance + Math.pow(likelihood.logFactor().sd(), 2));
      precision = precision.add(parts.outerProduct(parts).scalarMultiply(weight));
      pull = pull.add(parts.mapMultiply(weight * likelihood.logFactor().value()));
    }
    known = Normal.of(precision, pull);
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

  /** What some films' strips teach of each property that was pulled. */
  static Map<FilmProperty, SharedStrips> byProperty(Collection<StripLikelihood> likelihoods) {
    Map<FilmProperty, SharedStrips> shared = new EnumMap<>(FilmProperty.class);
    for (StripLikelihood likelihood : likelihoods) {
      shared.computeIfAbsent(likelihood.property(), property -> after(property, likelihoods));
    }
    return shared;
  }

  /** The starch kinds of those films. */
  List<StarchKind> kinds() {
    return kinds;
  }

  /** The parts of a film in units of their prior standard deviations; unseen kinds apart. */
  private RealVector parts(Map<StarchKind, Double> starchShares) {
    RealVector parts = new ArrayRealVector(1 + kinds.size());
    parts.setEntry(0, Math.sqrt(COMMON_SHARE) * logScatter);
    for (int i = 0; i < kinds.size(); i++) {
      double share = starchShares.getOrDefault(kinds.get(i), 0.0);
      parts.setEntry(1 + i, share * Math.sqrt(KIND_SHARE) * logScatter);
    }
    return parts;
  }

  /** Mean and uncertainty of the shared part for films of some starch. */
  Estimate shared(Map<StarchKind, Double> starchShares) {
    RealVector parts = parts(starchShares);
    double unseen =
        starchShares.entrySet().stream()
            .filter(share -> !kinds.contains(share.getKey()))
            .mapToDouble(share -> KIND_SHARE * Math.pow(share.getValue() * logScatter, 2))
            .sum();
    double variance = parts.dotProduct(known.covariance().operate(parts)) + unseen;
    return new Estimate(parts.dotProduct(known.mean()), Math.sqrt(variance));
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
