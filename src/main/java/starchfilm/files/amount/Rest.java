package starchfilm.files.amount;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The rest of a typed text while its parts are taken out, one after another. */
public final class Rest {
  private static final List<Wording> NUMBERS = Wording.of("number", "^(?:%s)(?=\\s)");

  private String text;

  /**
   * A text of which nothing is taken yet.
   *
   * @param text the text
   */
  public Rest(String text) {
    this.text = text.strip();
  }

  /**
   * Takes the first such part out.
   *
   * @param part how it is written
   * @return the part; empty where there is none
   */
  public Optional<Matcher> take(Pattern part) {
    Matcher matcher = part.matcher(text);
    if (!matcher.find()) {
      return Optional.empty();
    }
    text = (text.substring(0, matcher.start()) + " " + text.substring(matcher.end())).strip();
    return Optional.of(matcher);
  }

  /**
   * Takes all such parts out.
   *
   * @param part how they are written
   * @return whether there was one
   */
  public boolean takeAll(Pattern part) {
    String before = text;
    text = part.matcher(text).replaceAll(" ").strip();
    return !text.equals(before);
  }

  /**
   * Takes the first words of a table out that the text holds.
   *
   * @param table the words
   * @return what they mean; empty where it holds none of them
   */
  public Optional<String> meaning(List<Wording> table) {
    return table.stream()
        .filter(wording -> take(wording.words()).isPresent())
        .findFirst()
        .map(Wording::meaning);
  }

  /**
   * A text whose number is in digits.
   *
   * @param text a text in small letters that may begin with a number in words, such as two
   * @return the same with its digits
   */
  public static String inDigits(String text) {
    String digits = text;
    for (Wording number : NUMBERS) {
      digits = number.words().matcher(digits).replaceFirst(number.meaning());
    }
    return digits;
  }

  /** The rest, without blanks around it. */
  public String text() {
    return text;
  }
}
