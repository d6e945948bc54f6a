package starchfilm;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import morfologik.speller.Speller;
import morfologik.stemming.Dictionary;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.TextNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Spelling of what people read: guides, pages, sentences of the program, and its comments.
 *
 * <p>British English by a kept dictionary; terms of the trade, names of authors and words of our
 * own stand in {@code spelling.txt}.
 */
class SpellingTest {
  private static final Path OWN_WORDS = Path.of("src/test/resources/starchfilm/spelling.txt");

  /** A word of a sentence: no name of the code, no key, no unit with a figure. */
  private static final Pattern WORD =
      Pattern.compile(
          "(?<![\\p{L}\\p{N}_@#$./\\\\{-])\\p{L}[\\p{Ll}]{2,}(?:['\u2019][a-z]+)?(?![\\p{L}\\p{N}_(/=]|\\.\\p{L})");

  private static final Pattern CODE_IN_TEXT =
      Pattern.compile("(?ms)^```.*?^```|^ {4,}[^\n]*|`[^`\n]*`|\\]\\([^)]*\\)|https?:\\S+|<[^>]*>");
  private static final Pattern COMMENT = Pattern.compile("(?s)/\\*.*?\\*/|(?m)^\\s*//[^\n]*");
  private static final Pattern CODE_IN_COMMENT =
      Pattern.compile("(?s)\\{@\\w+[^}]*}|<pre>.*?</pre>|<[^>]*>|@param \\S+|@throws \\S+|&\\w+;");
  private static final Pattern LITERAL = Pattern.compile("\"((?:\\\\.|[^\"\\\\\n])*)\"");
  private static final Pattern PAGE_LITERAL =
      Pattern.compile("'([^'\n]* [^'\n]*)'|\\|([^|\n]*)\\|");

  private final Speller speller = new Speller(british());
  private final Set<String> own = ownWords();

  @ParameterizedTest
  @ValueSource(strings = {"README.md", "DEVELOPERS.md", "src/docs"})
  void guidesAreSpelledRight(String place) throws IOException {
    assertThat(strange(place, ".md", text -> CODE_IN_TEXT.matcher(text).replaceAll(" "))).isEmpty();
  }

  @Test
  void listsOfSentencesAreSpelledRight() throws IOException {
    assertThat(strange("src/main/resources", ".txt", text -> text)).isEmpty();
  }

  @Test
  void pagesAreSpelledRight() throws IOException {
    assertThat(
            strange(
                "templates",
                ".html",
                text -> textOf(Jsoup.parse(text)) + " " + found(PAGE_LITERAL, text)))
        .isEmpty();
  }

  @Test
  void sentencesOfTheProgramAreSpelledRight() throws IOException {
    assertThat(
            strange(
                "src/main/java",
                ".java",
                text ->
                    LITERAL
                        .matcher(COMMENT.matcher(text).replaceAll(" "))
                        .results()
                        .map(literal -> literal.group(1))
                        .filter(literal -> literal.contains(" "))
                        .map(literal -> literal.replaceAll("\\\\[a-z]", " "))
                        .collect(Collectors.joining("\n"))))
        .isEmpty();
  }

  @Test
  void commentsAreSpelledRight() throws IOException {
    assertThat(
            strange(
                "src/main/java",
                ".java",
                text -> CODE_IN_COMMENT.matcher(found(COMMENT, text)).replaceAll(" ")))
        .isEmpty();
  }

  @Test
  void everyWordOfOurOwnIsUnknownToTheDictionary() {
    assertThat(own.stream().filter(word -> !speller.isMisspelled(word))).isEmpty();
  }

  private Set<String> strange(String place, String ending, UnaryOperator<String> read)
      throws IOException {
    Set<String> strange = new TreeSet<>();
    try (Stream<Path> files = Files.walk(Path.of(place))) {
      for (Path file : files.filter(one -> one.toString().endsWith(ending)).toList()) {
        for (String word :
            WORD.matcher(read.apply(Files.readString(file)))
                .results()
                .map(MatchResult::group)
                .collect(Collectors.toSet())) {
          if (isStrange(word)) {
            strange.add(word + " in " + file);
          }
        }
      }
    }
    return strange;
  }

  private boolean isStrange(String word) {
    String plain = word.replaceFirst("['\u2019]s$", "").replace('\u2019', '\'');
    return speller.isMisspelled(plain)
        && speller.isMisspelled(plain.toLowerCase(Locale.UK))
        && !own.contains(plain)
        && !own.contains(plain.toLowerCase(Locale.UK));
  }

  private static String textOf(Document page) {
    return page.getAllElements().stream()
        .flatMap(element -> element.textNodes().stream())
        .map(TextNode::text)
        .collect(Collectors.joining("\n"));
  }

  private static String found(Pattern pattern, String text) {
    return pattern
        .matcher(text)
        .results()
        .map(MatchResult::group)
        .collect(Collectors.joining("\n"));
  }

  private static Dictionary british() {
    try {
      return Dictionary.read(
          Speller.class.getResource("/org/languagetool/resource/en/hunspell/en_GB.dict"));
    } catch (IOException e) {
      throw new IllegalStateException("the dictionary is packed with its library", e);
    }
  }

  private static Set<String> ownWords() {
    try (Stream<String> lines = Files.lines(OWN_WORDS, UTF_8)) {
      return lines
          .filter(line -> !line.startsWith("#"))
          .flatMap(line -> Stream.of(line.split(" ", -1)))
          .filter(word -> !word.isEmpty())
          .collect(Collectors.toSet());
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
