package starchfilm.files.amount;

import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Finds the word somebody meant when they wrote one the program does not know. */
public final class NearMiss {
  private static final Pattern UNIT =
      Pattern.compile(
          "_(kg|g|mg|oz|lb|m|cm|mm|um|in|l|ml|cl|pct|percent|c|f|k|n|min|minutes|h|hours|days"
              + "|m_per_s)$");

  /** Everyday words for what a trial file calls otherwise. */
  private static final Map<String, String> EVERYDAY = Synonyms.packed("everyday.words");

  private NearMiss() {}

  /**
   * The known word that was probably meant.
   *
   * @param written the word that is not known
   * @param known the words that are
   * @return the likeliest, if any is likely
   */
  public static Optional<String> of(String written, Collection<String> known) {
    String stem = stem(written);
    String everyday = EVERYDAY.get(stem);
    if (everyday != null && known.contains(everyday)) {
      return Optional.of(everyday);
    }
    // One slip in a short word, two in a longer one.
    int most = stem.length() < 6 ? 1 : 2;
    String best = null;
    int bestDistance = most + 1;
    for (String word : known) {
      String other = stem(word);
      // A word cannot be nearer than the lengths are; one of thousands of letters is not compared.
      int distance =
          Math.abs(stem.length() - other.length()) > most ? most + 1 : distance(stem, other);
      if (distance < bestDistance) {
        bestDistance = distance;
        best = word;
      }
    }
    return Optional.ofNullable(best);
  }

  /** The word without its unit, case and word breaks. */
  private static String stem(String word) {
    String plain = word.toLowerCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
    String withoutUnit = UNIT.matcher(plain).replaceFirst("");
    return withoutUnit.replace("_", "").replaceFirst("starch$", "");
  }

  /** Slips between two words: letters added, dropped, changed, or two neighbours swapped. */
  private static int distance(String a, String b) {
    int[][] slips = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        if (i == 0 || j == 0) {
          slips[i][j] = i + j;
          continue;
        }
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int least = Math.min(slips[i - 1][j] + 1, slips[i][j - 1] + 1);
        least = Math.min(least, slips[i - 1][j - 1] + change);
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          least = Math.min(least, slips[i - 2][j - 2] + 1);
        }
        slips[i][j] = least;
      }
    }
    return slips[a.length()][b.length()];
  }
}
