package starchfilm.request;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import starchfilm.files.amount.Synonyms;
import starchfilm.files.amount.Unit;
import starchfilm.files.amount.Wording;
import starchfilm.files.json.PackedText;

/**
 * What people call the columns of a table of trials in English, German, French and Spanish, with
 * the unit behind the word: {@code water (ml)}, {@code Luft °F}, {@code glycérine g}.
 */
final class ColumnWords {
  private static final Pattern UNIT =
      Pattern.compile("(.*?)[\\s,/(\\[]+(?:in\\s+)?([^\\s()\\[\\]]+)[)\\]]*");
  private static final Map<String, String> KEYS =
      Synonyms.of(PackedText.of(ColumnWords.class, "columns.words"));

  /**
   * What a head means.
   *
   * @param key the key of a trial file
   * @param unit what its bare numbers are counted in; empty for that of the key
   */
  record Meaning(String key, String unit) {}

  private ColumnWords() {}

  /** What a head in somebody's own words means; empty where it is not known. */
  static Optional<Meaning> of(String head) {
    Matcher unit = UNIT.matcher(head.strip());
    if (unit.matches() && Unit.known(unit.group(2)).isPresent()) {
      String measured = unit.group(2).replace("\u00B0", "");
      // What a word means may depend on the unit: salt (%) is in the jar, salt (g) is added.
      return Optional.ofNullable(KEYS.get(plain(unit.group(1) + measured)))
          .or(() -> Optional.ofNullable(KEYS.get(plain(unit.group(1)))))
          .map(key -> new Meaning(key.replace("starch.kind", "starch.mass_g"), measured));
    }
    return Optional.ofNullable(KEYS.get(plain(head))).map(key -> new Meaning(key, ""));
  }

  private static String plain(String words) {
    return Wording.plain(words).replaceAll("[\\s_'\u2019()\\[\\].:-]", "");
  }
}
