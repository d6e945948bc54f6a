package starchfilm.files.amount;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Finds what a name means among those the program knows: the names of trade and kitchen in English,
 * German, French and Spanish, whatever their case, accents, blanks and hyphens.
 */
public final class KnownName {
  private static final Map<String, String> MEANINGS = Synonyms.packed("names.words");

  /** What is asked for so often that it deserves a sentence of its own. */
  private static final Map<String, String> NOT_HERE = Synonyms.packed("not-modelled.words");

  private KnownName() {}

  /**
   * The one that carries a name.
   *
   * @param <E> what is named
   * @param typed as typed
   * @param known all there are
   * @param names the names of one, the first being the one shown
   * @return the one meant
   * @throws MistypedException where none is, with the nearest name
   */
  public static <E> E find(String typed, List<E> known, Function<E, List<String>> names) {
    for (E one : known) {
      if (names.apply(one).stream().anyMatch(name -> isNamed(typed, name))) {
        return one;
      }
    }
    List<String> shown = known.stream().map(one -> names.apply(one).get(0)).toList();
    throw new MistypedException(
        typed, String.join(", ", shown), whatThen(typed, shown).orElse("write one of these"));
  }

  /**
   * The advice for a name that means nothing here.
   *
   * @param typed as typed
   * @param shown the names there are
   * @return a sentence, where there is more to say than to write one of these
   */
  public static Optional<String> whatThen(String typed, Collection<String> shown) {
    String here = NOT_HERE.get(plain(typed));
    if (here != null && shown.stream().noneMatch(name -> isNamed(typed, name))) {
      return Optional.of(here);
    }
    Collection<String> all = new ArrayList<>(shown);
    MEANINGS.forEach(
        (other, meaning) -> {
          if (shown.contains(meaning)) {
            all.add(other);
          }
        });
    return NearMiss.of(typed, all)
        .map(word -> shown.contains(word) ? word : MEANINGS.getOrDefault(word, word))
        .map(word -> "did you mean " + word + "?");
  }

  /**
   * The one of a few words that another name means.
   *
   * @param typed as typed
   * @param words the words
   * @return one of them; empty where none is meant
   */
  public static Optional<String> among(String typed, Collection<String> words) {
    return words.stream().filter(word -> isNamed(typed, word)).findFirst();
  }

  private static boolean isNamed(String typed, String name) {
    String plain = plain(typed);
    return plain.equals(plain(name)) || name.equals(MEANINGS.get(plain));
  }

  private static String plain(String name) {
    return Wording.plain(name.toLowerCase(Locale.ROOT).replaceFirst("\u00f6l$", "oil"))
        .replaceAll("[\\s_'\u2019-]", "")
        .replaceFirst(
            "^(?:huile|aceite|amidon|almidon|fecule|fecula|acide|acido)(?:de|d)?(?=.)", "")
        .replaceFirst("(?<=.)(?:acid|oil|starch|starke|saure)$", "");
  }
}
