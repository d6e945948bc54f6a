package starchfilm.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.IntStream;
import starchfilm.drying.DryingSources;
import starchfilm.film.risk.PlateRisks;
import starchfilm.forecast.TrialForecast;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.numerics.evidence.Source;

/** The publications the page's figures rest on. */
final class PageSources {
  private PageSources() {}

  /**
   * The sources of all trials.
   *
   * @param comparison the trials on the page, and what is advised
   * @return each once, in the order they are first used
   */
  static List<Source> of(Comparison comparison) {
    Set<Source> used = new LinkedHashSet<>();
    for (TrialForecast trial : comparison.trials()) {
      used.addAll(of(trial));
    }
    IntStream.range(0, comparison.trials().size())
        .mapToObj(comparison.advised().after()::get)
        .filter(Objects::nonNull)
        .flatMap(advised -> advised.advice().diagnoses().stream())
        .flatMap(diagnosis -> diagnosis.suspicions().stream())
        .map(suspicion -> suspicion.rule().source())
        .forEach(used::add);
    return List.copyOf(used);
  }

  private static List<Source> of(TrialForecast trial) {
    List<Source> sources = new ArrayList<>(trial.film().sources());
    sources.add(StarchKind.SOURCE);
    sources.addAll(DryingSources.all());
    sources.addAll(PlateRisks.SOURCES);
    return sources;
  }
}
