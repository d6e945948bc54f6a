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
import java.util.Optional;
import starchfilm.files.json.Located.Place;

/** Reads JSON text into a tree that knows its lines and columns. */
public final class LocatedReader {
  /** The greatest depth of nested objects and lists. */
  public static final int MAX_DEPTH = 32;

  /** The most characters of a number. */
  public static final int MAX_NUMBER_LENGTH = 40;

  /** The most characters of a text. */
  public static final int MAX_TEXT_LENGTH = 100_000;

  /** The most characters of the name of a field. */
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

  private LocatedReader() {}

  /**
   * Reads one JSON value.
   *
   * @param text the text, without byte order mark
   * @return the value
   * @throws UnreadableFileException where the text is not JSON, is empty, or goes on after the
   *     value
   */
  public static Located read(String text) throws UnreadableFileException {
    try (JsonParser parser = FACTORY.createParser(text)) {
      if (parser.nextToken() == null) {
        throw new UnreadableFileException(
            "an empty file", "one JSON object", "write the trial into it or delete it");
      }
      Located value = value(parser, "");
      if (parser.nextToken() != null) {
        JsonLocation after = parser.currentTokenLocation();
        throw new UnreadableFileException(
            new Place("", after.getLineNr(), after.getColumnNr()),
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
  public static Located.ObjectValue object(String text, String mend)
      throws UnreadableFileException {
    Located root = read(text);
    if (root instanceof Located.ObjectValue object) {
      return object;
    }
    throw new UnreadableFileException(root.place(), root.quoted(), "one JSON object in { }", mend);
  }

  private static Located value(JsonParser parser, String path) throws IOException {
    JsonLocation at = parser.currentTokenLocation();
    return switch (parser.currentToken()) {
      case START_OBJECT -> object(parser, at, path);
      case START_ARRAY -> list(parser, at, path);
      case VALUE_STRING -> new Located.TextValue(read(parser, at, path), parser.getText());
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> {
        String literal = parser.getText();
        double value = Double.parseDouble(literal.replace("INF", "Infinity"));
        yield new Located.NumberValue(read(parser, at, path), literal, value);
      }
      case VALUE_TRUE -> new Located.WordValue(read(parser, at, path), Optional.of(true));
      case VALUE_FALSE -> new Located.WordValue(read(parser, at, path), Optional.of(false));
      case VALUE_NULL -> new Located.WordValue(read(parser, at, path), Optional.empty());
      default -> throw new IllegalStateException("unexpected " + parser.currentToken());
    };
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
    return new Located.ObjectValue(read(parser, at, path), members, repeated);
  }

  private static Located list(JsonParser parser, JsonLocation at, String path) throws IOException {
    List<Located> entries = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      entries.add(value(parser, path + "[" + (entries.size() + 1) + "]"));
    }
    return new Located.ListValue(read(parser, at, path), entries);
  }

  /** Where a value stands that the parser has come to; it reads texts lazily, and must read on. */
  private static Place read(JsonParser parser, JsonLocation at, String path) throws IOException {
    parser.finishToken();
    return to(parser.currentLocation().getCharOffset(), at, path);
  }

  private static Place to(long end, JsonLocation at, String path) {
    return new Place(path, at.getLineNr(), at.getColumnNr(), (int) at.getCharOffset(), (int) end);
  }
}
