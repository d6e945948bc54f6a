package starchfilm.learning;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import starchfilm.film.FilmProperty;
import starchfilm.trial.Trial;

/**
 * What has changed among the trials of a workshop since it was learnt, as far as it shows: files
 * that are gone or have another name, and trials with more or fewer readings. A reading that was
 * corrected does not show; its own trial is forecast without its old lesson all the same.
 */
final class Outdated {
  private final Path folder;
  private final Map<String, Integer> weighings = new HashMap<>();
  private final Map<String, Integer> strips = new HashMap<>();

  Outdated(Path folder, List<PlateLesson> plates, List<StripLesson> films) {
    this.folder = folder;
    plates.forEach(lesson -> weighings.put(lesson.file(), lesson.weighings()));
    films.stream()
        .filter(lesson -> lesson.property() == FilmProperty.TENSILE_STRENGTH)
        .forEach(lesson -> strips.put(lesson.file(), lesson.strips()));
  }

  Optional<String> sentence(Learnt learnt, List<Trial> trials) {
    TreeSet<String> gone = new TreeSet<>(weighings.keySet());
    gone.addAll(strips.keySet());
    gone.removeIf(name -> Files.exists(folder.resolve(name)));
    TreeSet<String> changed = new TreeSet<>();
    for (Trial trial : trials) {
      String name = TrialName.from(folder, trial);
      boolean same =
          weighings.getOrDefault(name, 0) == trial.weighings().size()
              && strips.getOrDefault(name, 0) == trial.pulls().size();
      if (!same && learnt.leftOut().stream().noneMatch(left -> left.file().equals(name))) {
        changed.add(name);
      }
    }
    if (gone.isEmpty() && changed.isEmpty()) {
      return Optional.empty();
    }
    StringBuilder text = new StringBuilder(Workshop.file(folder).toString().replace('\\', '/'));
    if (!gone.isEmpty()) {
      text.append(": gone or renamed since it was learnt: ").append(shown(gone));
    }
    if (!changed.isEmpty()) {
      text.append(gone.isEmpty() ? ": " : "; ");
      text.append("noted in since it was learnt: ").append(shown(changed));
    }
    return Optional.of(text.append("; run the command learn again to take that in").toString());
  }

  private static String shown(SortedSet<String> names) {
    return names.size() <= 3
        ? String.join(", ", names)
        : names.first() + " and " + (names.size() - 1) + " more";
  }
}
