package starchfilm.learning;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import starchfilm.casting.trial.Trial;
import starchfilm.files.findings.PlainLine;
import starchfilm.film.FilmProperty;
import starchfilm.learning.summary.Learnt;

/**
 * The changes among the trials of a workshop since it was learnt: files that are gone or have
 * another name, trials with more or fewer readings, and trials of which another fact was edited.
 */
final class Outdated {
  private final Path folder;
  private final Map<String, Integer> weighings = new HashMap<>();
  private final Map<String, Integer> strips = new HashMap<>();
  private final Map<String, TrialFacts> facts = new HashMap<>();

  Outdated(
      Path folder,
      List<PlateLikelihood> plates,
      List<StripLikelihood> films,
      List<TrialFacts> facts) {
    this.folder = folder;
    plates.forEach(plate -> weighings.merge(plate.file(), plate.weighings(), Integer::sum));
    films.stream()
        .filter(film -> film.property() == FilmProperty.TENSILE_STRENGTH)
        .forEach(film -> strips.merge(film.file(), film.strips(), Integer::sum));
    facts.forEach(trial -> this.facts.put(trial.file(), trial));
  }

  Optional<String> sentence(Learnt learnt, List<Trial> trials) {
    TreeSet<String> gone = new TreeSet<>(weighings.keySet());
    gone.addAll(strips.keySet());
    gone.removeIf(name -> Files.exists(folder.resolve(name)));
    TreeSet<String> noted = new TreeSet<>();
    TreeSet<String> edited = new TreeSet<>();
    for (Trial trial : trials) {
      String name = TrialName.from(folder, trial);
      boolean leftOut = learnt.leftOut().stream().anyMatch(left -> left.file().equals(name));
      if (!leftOut && !hasAsManyReadings(trial, name)) {
        noted.add(name);
      } else if (isEdited(trial, name)) {
        edited.add(name);
      }
    }
    List<String> parts = new ArrayList<>();
    part("gone or renamed", gone).ifPresent(parts::add);
    part("noted in", noted).ifPresent(parts::add);
    part("edited", edited).ifPresent(parts::add);
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "%s: %s; run the command learn again to include that"
                .formatted(PlainLine.of(Workshop.file(folder)), String.join("; ", parts)));
  }

  private boolean hasAsManyReadings(Trial trial, String name) {
    int noted = trial.weighedPlates().stream().mapToInt(p -> p.seen().weighings().size()).sum();
    return weighings.getOrDefault(name, 0) == noted
        && strips.getOrDefault(name, 0) == trial.seen().pulls().size();
  }

  private boolean isEdited(Trial trial, String name) {
    TrialFacts then = facts.get(name);
    return then != null && !TrialFacts.of(folder, trial).equals(Optional.of(then));
  }

  private static Optional<String> part(String what, SortedSet<String> names) {
    return names.isEmpty()
        ? Optional.empty()
        : Optional.of(what + " since it was learnt: " + shown(names));
  }

  private static String shown(SortedSet<String> names) {
    return names.size() <= 3
        ? String.join(", ", names)
        : names.first() + " and " + (names.size() - 1) + " more";
  }
}
