package starchfilm.jar.assay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.distribution.EnumeratedRealDistribution;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;

/**
 * What a jar holds by all that is known of it together: likely cases of the reading, each turned
 * into glycerol and counted as far as the label or the record allows it.
 *
 * <p>Source: propagation of distributions by a Monte Carlo method, JCGM 101:2008, Supplement 1 to
 * the Guide to the expression of uncertainty in measurement, clauses 5.9 and 7; the counting is
 * Bayes' theorem with the reading's error as the sampling distribution. The slope of the rule from
 * glycerol to reading, which changes by a tenth over its range, is taken as constant.
 */
final class JarPosterior {
  /** Cases that make a range sure to a fiftieth of its width. */
  private static final int WANTED = 6000;

  private static final int MOST_TRIES = 400_000;

  private final List<Case> cases = new ArrayList<>();
  private int tries;
  private int mixtures;

  /** One likely case: the jar's mass (kg), its parts (kg per kg), and how much it counts. */
  private record Case(double jarKg, double glycerol, Dissolved beside, double weight) {
    double volatiles() {
      return 1 - glycerol - beside.stays();
    }
  }

  JarPosterior(Estimate massKg, JarPrior prior, Optional<JarReading> reading) {
    Draws draws = new Draws();
    Optional<Inversion> table = reading.map(JarReading::inversion);
    while (cases.size() < WANTED && tries < MOST_TRIES) {
      tries++;
      double jarKg = draws.normal(massKg);
      Dissolved beside = prior.beside().draw(jarKg, draws);
      double glycerol =
          reading.isPresent()
              ? reading.get().glycerol(table.orElseThrow(), beside, draws)
              : prior.glycerol().draw(jarKg, draws);
      if (Double.isNaN(glycerol) || !(jarKg > 0)) {
        continue;
      }
      mixtures++;
      double weight = reading.isPresent() ? prior.density().of(glycerol, jarKg, draws) : 1;
      if (weight > 0 && glycerol + beside.all() <= 1) {
        cases.add(new Case(jarKg, glycerol, beside, weight));
      }
    }
  }

  /** Share of the reading's likely cases that some mixture of glycerol and water could show. */
  double possible() {
    return (double) mixtures / tries;
  }

  /** Share of the likely cases that everything known allows. */
  double allowed() {
    return (double) cases.size() / tries;
  }

  JarContent content() {
    return new JarContent(
        band(Case::glycerol),
        band(one -> one.beside().stays()),
        band(Case::volatiles),
        band(one -> one.glycerol() * one.jarKg()));
  }

  /** The most alcohol in any of the cases (kg). */
  double mostAlcoholKg() {
    return cases.stream().mapToDouble(one -> one.beside().alcohol() * one.jarKg()).max().orElse(0);
  }

  private Band band(ToDoubleFunction<Case> what) {
    if (cases.isEmpty()) {
      return Band.exact(0);
    }
    List<Case> sorted = cases.stream().sorted(Comparator.comparingDouble(what)).toList();
    EnumeratedRealDistribution likely =
        new EnumeratedRealDistribution(
            null,
            sorted.stream().mapToDouble(what).toArray(),
            sorted.stream().mapToDouble(Case::weight).toArray());
    return new Band(
        likely.inverseCumulativeProbability(0.1),
        likely.inverseCumulativeProbability(0.5),
        likely.inverseCumulativeProbability(0.9));
  }
}
