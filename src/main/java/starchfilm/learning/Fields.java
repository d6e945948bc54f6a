package starchfilm.learning;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.Place;
import starchfilm.files.json.UnreadableFileException;
import starchfilm.numerics.evidence.Estimate;

/** Takes the fields of a workshop file apart; whatever is not as learn writes it is refused. */
final class Fields {
  static final String MEND = "run the command learn again on this folder";

  /** More than any figure of a lesson, and few enough that their products stay finite. */
  private static final double MOST = 1e15;

  /** The exponential of no logarithm within it, times any figure of a film, is infinite. */
  private static final double MOST_LOGARITHM = 600;

  private Fields() {}

  static boolean has(Located value, String key) {
    return value instanceof Located.ObjectValue object && object.members().containsKey(key);
  }

  static Located member(Located value, String key) throws UnreadableFileException {
    if (value instanceof Located.ObjectValue object) {
      Located.Member member = object.members().get(key);
      if (member != null) {
        return member.value();
      }
    }
    throw wrong(value, "an object with " + key);
  }

  static List<Located> list(Located value, int count) throws UnreadableFileException {
    if (value instanceof Located.ListValue list && (count < 0 || list.entries().size() == count)) {
      return list.entries();
    }
    throw wrong(value, count < 0 ? "a list" : "a list of " + count);
  }

  static double number(Located value) throws UnreadableFileException {
    if (value instanceof Located.NumberValue number && Math.abs(number.value()) <= MOST) {
      return number.value();
    }
    throw wrong(value, "a number from -1e15 to 1e15");
  }

  static double sd(Located value) throws UnreadableFileException {
    double sd = number(value);
    if (sd >= 0) {
      return sd;
    }
    throw wrong(value, "0 or more");
  }

  static int count(Located value) throws UnreadableFileException {
    double number = number(value);
    if (number >= 1 && number <= 1e6 && number == Math.rint(number)) {
      return (int) number;
    }
    throw wrong(value, "a whole number of 1 or more");
  }

  static boolean flag(Located value) throws UnreadableFileException {
    if (value instanceof Located.WordValue word && word.word() != Located.WordValue.Word.NULL) {
      return word.word() == Located.WordValue.Word.TRUE;
    }
    throw wrong(value, "true or false");
  }

  static String text(Located value) throws UnreadableFileException {
    if (value instanceof Located.TextValue text) {
      return text.text();
    }
    throw wrong(value, "a text");
  }

  static UnreadableFileException wrong(Located value, String allowed) {
    Place place = value.place();
    String field = place.path().isEmpty() ? "" : place.path() + ": ";
    return new UnreadableFileException(
        place.line(), place.column(), field + value.quoted(), allowed, MEND);
  }

  /** The estimate that stands as {@code key} and {@code key_sd}. */
  static Estimate estimate(Located entry, String key) throws UnreadableFileException {
    Located value = member(entry, key);
    if (!(Math.abs(number(value)) <= MOST_LOGARITHM)) {
      throw wrong(value, "a logarithm from -600 to 600");
    }
    return new Estimate(number(value), sd(member(entry, key + "_sd")));
  }

  /** The constant that is spelled as a text. */
  static <E> E constant(Located value, E[] all, Function<E, String> spelled)
      throws UnreadableFileException {
    String word = text(value);
    Optional<E> found =
        Arrays.stream(all).filter(one -> spelled.apply(one).equals(word)).findFirst();
    if (found.isEmpty()) {
      throw wrong(value, "a word that learn writes here");
    }
    return found.get();
  }
}
