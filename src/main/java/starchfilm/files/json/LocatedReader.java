package starchfilm.files.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import starchfilm.files.json.Located.Place;
import starchfilm.files.json.Located.WordValue.Word;

/** Reads JSON text into a tree that knows its lines and columns. Safe to share between threads. */
public final class LocatedReader {
  /** How deep objects and lists may be nested. */
  public static final int MAX_DEPTH = 32;

  /** How many characters a number may have. */
  public static final int MAX_NUMBER_LENGTH = 40;

  /** How many characters a text may have. */
  public static final int MAX_TEXT_LENGTH = 100_000;

  /** How many characters the name of a field may have. */
  public static final int MAX_NAME_LENGTH = 200;

  /** Reads what we call JSON, within its limits; immutable once built. */
  static final JsonFactory FACTORY =
      JsonFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(MAX_DEPTH)
                  .maxNumberLength(MAX_NUMBER_LENGTH)
                  .maxStringLength(MAX_TEXT_LENGTH)
                  .maxNameLength(MAX_NAME_LENGTH)
                  .build())
          // Read on, so that NaN is refused with the name of its field.
          .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
          .build();

  /**
   * Reads one JSON value.
   *
   * @param text the text, without byte order mark
   * @return the value
   * @throws UnreadableFileException where the text is not JSON, is empty, or goes on after the
   *     value
   */
  public Located read(String text) throws UnreadableFileException {
    try (JsonParser parser = FACTORY.createParser(text)) {
      if (parser.nextToken() == null) {
        throw new UnreadableFileException(
            "an empty file", "one JSON object", "write the trial into it or delete it");
      }
      Located value = value(parser, "");
      if (parser.nextToken() != null) {
        JsonLocation after = parser.currentTokenLocation();
        throw new UnreadableFileException(
            after.getLineNr(),
            after.getColumnNr(),
            "more text after the end of the JSON value",
            "one JSON object per file",
            "move the rest into a file of its own");
      }
      return value;
    } catch (StreamConstraintsException e) {
      throw SyntaxAdvice.tooMuch(e);
    } catch (JsonProcessingException e) {
      throw SyntaxAdvice.notJson(e, text);
    } catch (IOException e) {
      throw new UncheckedIOException("reading from memory failed", e);
    }
  }

  /**
   * Reads one JSON object.
   *
   * @param text the text, without byte order mark
   * @param mend what to do where it is something else
   * @return the object
   * @throws UnreadableFileException where it is something else
   */
  public Located.ObjectValue object(String text, String mend) throws UnreadableFileException {
    Located root = read(text);
    if (root instanceof Located.ObjectValue object) {
      return object;
    }
    throw new UnreadableFileException(
        root.place().line(), root.place().column(), root.quoted(), "one JSON object in { }", mend);
  }

  private static Located value(JsonParser parser, String path) throws IOException {
    JsonLocation at = parser.currentTokenLocation();
    JsonToken token = parser.currentToken();
    return switch (token) {
      case START_OBJECT -> object(parser, at, path);
      case START_ARRAY -> list(parser, at, path);
      case VALUE_STRING -> {
        // The parser reads texts lazily; asking for it moves the parser to the end of the text.
        String text = parser.getText();
        yield new Located.TextValue(to(parser.currentLocation().getCharOffset(), at, path), text);
      }
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(parser, at, path);
      case VALUE_TRUE -> new Located.WordValue(word(parser, at, path), Word.TRUE);
      case VALUE_FALSE -> new Located.WordValue(word(parser, at, path), Word.FALSE);
      case VALUE_NULL -> new Located.WordValue(word(parser, at, path), Word.NULL);
      default -> throw new IllegalStateException("unexpected " + token + " at " + path);
    };
  }

  private static Located number(JsonParser parser, JsonLocation at, String path)
      throws IOException {
    String literal = parser.getText();
    double value =
        switch (literal) {
          case "NaN" -> Double.NaN;
          case "Infinity", "+Infinity", "INF", "+INF" -> Double.POSITIVE_INFINITY;
          case "-Infinity", "-INF" -> Double.NEGATIVE_INFINITY;
          default -> Double.parseDouble(literal);
        };
    return new Located.NumberValue(word(parser, at, path), literal, value);
  }

  private static Located object(JsonParser parser, JsonLocation at, String path)
      throws IOException {
    Map<String, Located.Member> members = new LinkedHashMap<>();
    List<Place> repeated = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = parser.currentName();
      Place key = to(0, parser.currentTokenLocation(), path.isEmpty() ? name : path + "." + name);
      parser.nextToken();
      Located value = value(parser, key.path());
      if (members.putIfAbsent(name, new Located.Member(key, value)) != null) {
        repeated.add(key);
      }
    }
    return new Located.ObjectValue(closed(parser, at, path), members, repeated);
  }

  private static Located list(JsonParser parser, JsonLocation at, String path) throws IOException {
    List<Located> entries = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      entries.add(value(parser, path + "[" + (entries.size() + 1) + "]"));
    }
    return new Located.ListValue(closed(parser, at, path), entries);
  }

  private static Place word(JsonParser parser, JsonLocation at, String path) throws IOException {
    return to(at.getCharOffset() + parser.getTextLength(), at, path);
  }

  private static Place closed(JsonParser parser, JsonLocation at, String path) {
    return to(parser.currentTokenLocation().getCharOffset() + 1, at, path);
  }

  private static Place to(long end, JsonLocation at, String path) {
    return new Place(path, at.getLineNr(), at.getColumnNr(), (int) at.getCharOffset(), (int) end);
  }
}
