package starchfilm.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import starchfilm.files.amount.NearMiss;

/** Finds what a typed name means, and offers the nearest spelling where it is none. */
final class NearName {
  private NearName() {}

  /**
   * The one that carries a name.
   *
   * @param option the option's name, for the sentence
   * @param typed as typed; case, spaces and hyphens do not count
   * @param known all there are
   * @param name the name of one
   * @param <E> what is looked for
   * @return the one that carries the name
   */
  static <E> E find(String option, String typed, List<E> known, Function<E, String> name) {
    List<String> names = known.stream().map(name).toList();
    Optional<String> near = NearMiss.of(typed, names);
    for (E one : known) {
      if (plain(typed).equals(plain(name.apply(one)))) {
        return one;
      }
    }
    throw CommandFailure.wrongInput(
        option
            + ": \""
            + typed
            + "\" given, allowed "
            + String.join(", ", names)
            + "; "
            + near.map(word -> "did you mean " + word + "?").orElse("write one of these"));
  }

  private static String plain(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]", "").replaceFirst("starch$", "");
  }
}
