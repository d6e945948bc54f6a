package starchfilm.cli;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Finds what a typed name means among the names the program knows. */
final class KnownNames {
  private KnownNames() {}

  /**
   * The constant that carries a name.
   *
   * @param option the option's name, for the sentence
   * @param typed as typed; case, spaces and hyphens do not count
   * @param known all there are
   * @param names the names of one, the first being the one shown
   * @param <E> what is looked for
   * @return the one that carries the name
   */
  static <E> E find(String option, String typed, List<E> known, Function<E, List<String>> names) {
    String plain = plain(typed);
    for (E one : known) {
      if (names.apply(one).stream().anyMatch(name -> plain(name).equals(plain))) {
        return one;
      }
    }
    throw CommandFailure.wrongInput(
        option
            + ": \""
            + typed
            + "\" given, allowed one of "
            + known.stream().map(one -> names.apply(one).get(0)).collect(Collectors.joining(", "))
            + "; write one of these");
  }

  private static String plain(String name) {
    return name.toLowerCase(Locale.ROOT)
        .replaceAll("[\\s_-]", "")
        .replaceFirst("(?<=.)(acid|oil)$", "");
  }
}
