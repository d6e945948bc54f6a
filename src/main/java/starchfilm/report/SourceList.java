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
import starchfilm.report.words.PlainWords;

/**
 * The publications the page's figures rest on, each once, numbered.
 *
 * @param entries in the order they are first used
 */
record SourceList(List<Entry> entries) {
  /**
   * A source.
   *
   * @param citation author, year, title
   * @param check how far it was checked, in words
   */
  record Entry(int number, String citation, String check) {}

  /**
   * The sources of all trials.
   *
   * @param comparison the trials on the page, and what is advised
   */
  static SourceList of(Comparison comparison) {
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
    List<Entry> entries = new ArrayList<>();
    for (Source source : used) {
      entries.add(
          new Entry(entries.size() + 1, source.citation(), PlainWords.word(source.check())));
    }
    return new SourceList(entries);
  }

  private static List<Source> of(TrialForecast trial) {
    List<Source> sources = new ArrayList<>(trial.film().sources());
    sources.add(StarchKind.SOURCE);
    sources.addAll(DryingSources.all());
    sources.addAll(PlateRisks.SOURCES);
    return sources;
  }
}
