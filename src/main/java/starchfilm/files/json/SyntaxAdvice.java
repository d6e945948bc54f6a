package starchfilm.files.json;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import starchfilm.files.json.Located.Place;

/** Says in plain words what is wrong with a text that is no JSON, from the text itself. */
final class SyntaxAdvice {
  private static final String JSON = "JSON as RFC 8259 has it";
  private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{Nd}_]+");
  private static final int LONGEST_WORD = 30;
  private static final int LOOK_BACK = 100;
  private static final List<Slip> SLIPS =
      PackedText.rows(SyntaxAdvice.class, "slips.words", 3).stream()
          .map(row -> new Slip(row.get(0), row.get(1), Pattern.compile(row.get(2))))
          .toList();

  /**
   * A slip that writers of JSON make.
   *
   * @param given what it is, see the table
   * @param mend what to do
   * @param there what ends where the text is no JSON any more
   */
  private record Slip(String given, String mend, Pattern there) {}

  /**
   * A limit of what is read.
   *
   * @param word what the parser calls it
   */
  private record ParserLimit(String word, String given, String most) {}

  private static final List<ParserLimit> LIMITS =
      List.of(
          new ParserLimit("nesting", "fields nested too deep", LocatedReader.MAX_DEPTH + " levels"),
          new ParserLimit(
              "number", "a number that is too long", LocatedReader.MAX_NUMBER_LENGTH + " digits"),
          new ParserLimit(
              "name",
              "a field name that is too long",
              LocatedReader.MAX_NAME_LENGTH + " characters"),
          new ParserLimit(
              "", "a text that is too long", LocatedReader.MAX_TEXT_LENGTH + " characters"));

  private SyntaxAdvice() {}

  static UnreadableFileException tooMuch(StreamConstraintsException e) {
    String reason = e.getOriginalMessage().toLowerCase(Locale.ROOT);
    ParserLimit limit =
        LIMITS.stream().filter(one -> reason.contains(one.word())).findFirst().orElseThrow();
    return at(e.getLocation(), limit.given(), "at most " + limit.most(), "shorten it");
  }

  static UnreadableFileException notJson(JsonProcessingException e, String text) {
    if (e instanceof JsonEOFException) {
      return at(
          e.getLocation(),
          "an end of the file in the middle of a value",
          JSON,
          "close every {, [ and \"; or fetch the file again if it was cut off");
    }
    int offset = offset(e, text);
    String before = text.substring(0, offset);
    String wrong = offset < text.length() ? text.substring(offset, offset + 1) : " ";
    String there = before.substring(Math.max(0, offset - LOOK_BACK)) + wrong;
    Slip slip =
        SLIPS.stream().filter(s -> s.there().matcher(there).find()).findFirst().orElseThrow();
    String given = slip.given().replace("{0}", wrong).replace("{word}", word(text, offset));
    return new UnreadableFileException(Place.after(before), given, JSON, slip.mend());
  }

  private static String word(String text, int offset) {
    return WORD.matcher(text)
        .results()
        .filter(word -> word.end() > offset)
        .findFirst()
        .map(word -> word.group().substring(0, Math.min(word.group().length(), LONGEST_WORD)))
        .orElse("");
  }

  private static int offset(JsonProcessingException e, String text) {
    JsonLocation at = e.getLocation();
    long offset = at == null ? 0 : at.getCharOffset();
    return (int) Math.max(0, Math.min(offset, text.length()));
  }

  private static UnreadableFileException at(
      JsonLocation location, String given, String allowed, String mend) {
    Place place =
        location == null
            ? Place.of("")
            : new Place("", location.getLineNr(), location.getColumnNr());
    return new UnreadableFileException(place, given, allowed, mend);
  }
}
