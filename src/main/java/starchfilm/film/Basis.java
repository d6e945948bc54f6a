package starchfilm.film;

import java.util.List;
import java.util.stream.Stream;
import starchfilm.numerics.evidence.Extrapolation;
import starchfilm.numerics.evidence.Source;

/** A rule or an influence: what it is called, where it holds, and what it rests on. */
abstract class Basis {
  private final String name;
  private final List<RuleLimit> limits;
  private final List<Source> sources;

  /**
   * What a rule rests on.
   *
   * @param name in the trade's words, for the list of extrapolations
   * @param limits every range it holds for; outside, its figure is an extrapolation
   */
  Basis(String name, List<RuleLimit> limits, List<Source> sources) {
    this.name = name;
    this.limits = limits;
    this.sources = sources;
  }

  final List<RuleLimit> limits() {
    return limits;
  }

  final List<Source> sources() {
    return sources;
  }

  /** One entry per range that does not hold a film. */
  final Stream<Extrapolation> outside(FilmState film) {
    return limits.stream()
        .filter(limit -> !limit.holds(film))
        .map(limit -> new Extrapolation(name, limit.range(), limit.reading().applyAsDouble(film)));
  }
}
