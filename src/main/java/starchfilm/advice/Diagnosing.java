package starchfilm.advice;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Holds every cause the table knows for a fault against the model.
 *
 * <p>Support of a cause that can be rerun is {@code min(1, u) (u - u')/u min(1, 1/2 + e)}: u the
 * trouble of the measure as it is, u' with the cause put right, e the excess of the cause's own
 * figure, so that a figure well within the harmless is no cause whatever the rerun says. Support of
 * any other cause is its excess, from 0 to 1. (The rule is judged, no source.)
 */
record Diagnosing(RuleBook book) {
  private static final double LIKELY = 1;

  /** A cause whose own figure is just harmless counts for half, one well within for nothing. */
  private static final double HALF = 0.5;

  Diagnosis of(FaultContext scene) {
    Map<Cause, Suspicion> found = new EnumMap<>(Cause.class);
    Set<String> notNoted = new LinkedHashSet<>();
    Set<String> measures = new HashSet<>();
    for (Rule rule : book.rulesFor(scene.fault().kind(), scene.fault().where())) {
      if (rule.heldAgainst().needsTime() && scene.seenAtS().isEmpty()) {
        notNoted.add("when it was seen");
        continue;
      }
      if (rule.heldAgainst().isOfModel()) {
        measures.add(rule.heldAgainst().name());
      }
      CauseReading reading = rule.read(scene);
      if (reading.told()) {
        found.merge(rule.cause(), suspicion(rule, reading, scene), Diagnosing::stronger);
      } else {
        notNoted.add(reading.words());
      }
    }
    List<Suspicion> named =
        found.values().stream()
            .filter(suspicion -> suspicion.support() >= Suspicion.NAMED_FROM)
            .sorted(Comparator.comparingDouble(Suspicion::support).reversed())
            .toList();
    return new Diagnosis(scene.fault(), model(scene, measures), named, List.copyOf(notNoted));
  }

  private static Suspicion stronger(Suspicion one, Suspicion other) {
    return other.support() > one.support() ? other : one;
  }

  private static Suspicion suspicion(Rule rule, CauseReading reading, FaultContext scene) {
    if (!rule.isRerun()) {
      return new Suspicion(rule, between0And1(reading.excess()), reading.words());
    }
    Measure measure = rule.heldAgainst();
    Optional<PutRight> right = rule.cause().putRight(scene);
    double trouble = measure.trouble(scene);
    if (right.isEmpty() || trouble == 0) {
      return new Suspicion(rule, 0, reading.words());
    }
    FaultContext mended = scene.with(scene.outlook().of(right.get().setup()));
    double explained = between0And1((trouble - measure.trouble(mended)) / trouble);
    return new Suspicion(
        rule,
        Math.min(1, trouble) * explained * between0And1(HALF + reading.excess()),
        reading.words() + "; " + right.get().words() + ", " + measure.moved(scene, mended));
  }

  private static double between0And1(double value) {
    return Math.min(1, Math.max(0, value));
  }

  /** What the model says of the worst of the measures. */
  private String model(FaultContext scene, Set<String> measures) {
    Optional<Measure> worst =
        book.measures().stream()
            .filter(measure -> measures.contains(measure.name()))
            .max(Comparator.comparingDouble(measure -> measure.trouble(scene)));
    if (worst.isEmpty()) {
      return "The model does not compute this; the causes rest on common practice.";
    }
    double trouble = worst.get().trouble(scene);
    String verdict =
        trouble >= LIKELY
            ? "The model expects this: "
            : trouble > 0
                ? "The model says that this is possible: "
                : "The model does not expect this: ";
    return verdict + worst.get().words(scene) + ".";
  }
}
