package starchfilm.request;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.NearMiss;

/** Finds what a name means among those the program knows, and offers the nearest spelling. */
final class KnownName {
  private KnownName() {}

  /**
   * The one that carries a name.
   *
   * @param typed as typed; case, blanks and hyphens do not count
   * @param known all there are
   * @param names the names of one, the first being the one shown
   */
  static <E> E find(String typed, List<E> known, Function<E, List<String>> names) {
    for (E one : known) {
      if (names.apply(one).stream().anyMatch(name -> plain(name).equals(plain(typed)))) {
        return one;
      }
    }
    List<String> shown = known.stream().map(one -> names.apply(one).get(0)).toList();
    throw new MistypedException(
        typed,
        String.join(", ", shown),
        NearMiss.of(typed, shown)
            .map(word -> "did you mean " + word + "?")
            .orElse("write one of these"));
  }

  private static String plain(String name) {
    return name.toLowerCase(Locale.ROOT)
        .replaceAll("[\\s_-]", "")
        .replaceFirst("(?<=.)(acid|oil|starch)$", "");
  }
}
