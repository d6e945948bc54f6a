package starchfilm.report.words;

import java.util.ArrayList;
import java.util.List;
import starchfilm.files.json.PackedText;

/** The words a reader meets, each explained once, in {@code glossary.txt}. */
public final class Glossary {
  private static final List<Entry> ENTRIES = read("glossary.txt");

  /**
   * A word and what it means.
   *
   * @param group the heading it stands under
   * @param term the word, lower case
   * @param meaning one sentence
   */
  public record Entry(String group, String term, String meaning) {}

  private Glossary() {}

  /**
   * Every word.
   *
   * @return in the order to read them, group by group
   */
  public static List<Entry> entries() {
    return ENTRIES;
  }

  /**
   * A word and what it means.
   *
   * @param term a word of the glossary
   * @return its entry
   */
  public static Entry entry(String term) {
    return ENTRIES.stream()
        .filter(entry -> entry.term().equals(term))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("not in the glossary: " + term));
  }

  /**
   * The meaning of a word, to follow a colon.
   *
   * @param term a word of the glossary
   * @return the sentence with a small first letter and without its full stop
   */
  public static String clause(String term) {
    String sentence = entry(term).meaning();
    return PlainWords.afterColon(sentence.substring(0, sentence.length() - 1));
  }

  /**
   * Reads a table of words: headings after {@code ##}, and below them a word and its meaning.
   *
   * @param file the table's name
   */
  static List<Entry> read(String file) {
    List<Entry> entries = new ArrayList<>();
    String group = "";
    for (String line : PackedText.of(Glossary.class, file).lines().toList()) {
      int bar = line.indexOf(" | ");
      if (line.startsWith("## ")) {
        group = line.substring(3);
      } else if (bar > 0 && !line.startsWith("#")) {
        entries.add(new Entry(group, line.substring(0, bar), line.substring(bar + 3)));
      }
    }
    return List.copyOf(entries);
  }
}
