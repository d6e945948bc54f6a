package starchfilm.files.json;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.util.Locale;
import java.util.regex.Pattern;

/** Says in plain words what is wrong with a text that is no JSON, from the text itself. */
final class SyntaxAdvice {
  private static final Pattern DECIMAL_COMMA = Pattern.compile("\\d,\\s*$");
  private static final String JSON = "JSON as RFC 8259 has it";

  private SyntaxAdvice() {}

  static UnreadableFileException tooMuch(StreamConstraintsException e) {
    String reason = e.getOriginalMessage().toLowerCase(Locale.ROOT);
    String given;
    String allowed;
    if (reason.contains("nesting depth")) {
      given = "fields nested too deep";
      allowed = "at most " + LocatedReader.MAX_DEPTH + " levels";
    } else if (reason.contains("number")) {
      given = "a number that is too long";
      allowed = "at most " + LocatedReader.MAX_NUMBER_LENGTH + " digits";
    } else if (reason.contains("name")) {
      given = "a field name that is too long";
      allowed = "at most " + LocatedReader.MAX_NAME_LENGTH + " characters";
    } else {
      given = "a text that is too long";
      allowed = "at most " + LocatedReader.MAX_TEXT_LENGTH + " characters";
    }
    return at(e.getLocation(), 0, given, allowed, "shorten it");
  }

  static UnreadableFileException notJson(JsonProcessingException e, String text) {
    if (e instanceof JsonEOFException) {
      return at(
          e.getLocation(),
          0,
          "an end of the file in the middle of a value",
          JSON,
          "close every {, [ and \"; or fetch the file again if it was cut off");
    }
    int offset = offset(e, text);
    String before = text.substring(0, offset);
    String trimmed = before.stripTrailing();
    char wrong = offset < text.length() ? text.charAt(offset) : ' ';
    char last = trimmed.isEmpty() ? ' ' : trimmed.charAt(trimmed.length() - 1);
    int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
    int column = offset - before.lastIndexOf('\n');
    String[] advice = advice(wrong, last, before, text);
    return new UnreadableFileException(line, column, advice[0], JSON, advice[1]);
  }

  /** Given and mend, by the character that does not fit and the last one before it. */
  private static String[] advice(char wrong, char last, String before, String text) {
    if (Character.isDigit(wrong) && DECIMAL_COMMA.matcher(before).find()) {
      return pair("a decimal comma", "write the number with a point, such as 1.5");
    }
    if ((wrong == '}' || wrong == ']') && last == ',') {
      return pair("a comma before " + wrong, "delete the comma");
    }
    if (wrong == '"' && last != ',' && last != '{' && last != '[' && last != ':') {
      return pair("a field without a comma before it", "put a comma after the field before");
    }
    if (wrong == '\'' || "\u201C\u201D\u201E\u2018\u2019\u00AB\u00BB".indexOf(wrong) >= 0) {
      return pair("the quotation mark " + wrong, "write straight double quotes: \"");
    }
    if (wrong == '#' || wrong == '/') {
      return pair("a comment", "put it into the field remarks");
    }
    if (wrong == '\n' || wrong == '\r' || wrong == '\t') {
      return pair("a line break or tab inside a text", "close the text before it, or write \\n");
    }
    if (Character.isLetter(wrong) || wrong == '_') {
      return pair("the word " + word(before, text) + " without quotes", "put it in double quotes");
    }
    if (wrong == '+' || wrong == '.') {
      return pair("a number that begins with " + wrong, "begin the number with a digit");
    }
    return pair(
        wrong == ' ' ? "something that is no value" : "the character " + wrong,
        "look at this place and just before it for a missing quote, comma or bracket");
  }

  private static String[] pair(String given, String mend) {
    return new String[] {given, mend};
  }

  private static String word(String before, String text) {
    int start = before.length();
    while (start > 0 && Character.isLetterOrDigit(text.charAt(start - 1))) {
      start--;
    }
    int end = start;
    while (end < text.length()
        && end - start < 30
        && (Character.isLetterOrDigit(text.charAt(end)) || text.charAt(end) == '_')) {
      end++;
    }
    return text.substring(start, end);
  }

  private static int offset(JsonProcessingException e, String text) {
    JsonLocation at = e.getLocation();
    long offset = at == null ? 0 : at.getCharOffset();
    return (int) Math.max(0, Math.min(offset, text.length()));
  }

  private static UnreadableFileException at(
      JsonLocation location, int shift, String given, String allowed, String mend) {
    int line = location == null ? 0 : location.getLineNr();
    int column = location == null ? 0 : location.getColumnNr() + shift;
    return new UnreadableFileException(line, column, given, allowed, mend);
  }
}
