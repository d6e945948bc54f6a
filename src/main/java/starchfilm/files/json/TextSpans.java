package starchfilm.files.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * From where to where the values of a JSON text reach, in characters.
 *
 * @param kind object, list or anything else
 * @param start first character
 * @param end character after the last
 * @param members of an object: its fields; of a list: its entries by their place, from 0
 * @param lastEnd of an object or list: where its last entry ends; else {@code start}
 * @param lastStart of an object or list: where its last entry begins; else {@code start}
 */
record TextSpans(
    Kind kind, int start, int end, Map<String, TextSpans> members, int lastStart, int lastEnd) {
  /** What a value is. */
  enum Kind {
    /** An object. */
    OBJECT,
    /** A list. */
    LIST,
    /** A text, number or word. */
    PLAIN
  }

  boolean isEmpty() {
    return lastEnd == start;
  }

  /** Spans of a text that is JSON; whoever calls this has read it before. */
  static TextSpans of(String text) {
    try (JsonParser parser = LocatedReader.FACTORY.createParser(text)) {
      parser.nextToken();
      return span(parser);
    } catch (IOException e) {
      throw new UncheckedIOException("text that was read as JSON before is none", e);
    }
  }

  private static TextSpans span(JsonParser parser) throws IOException {
    int start = start(parser);
    JsonToken token = parser.currentToken();
    if (!token.isStructStart()) {
      // The parser reads texts lazily; asking for it moves the parser to the end of the text.
      int length = parser.getTextLength();
      int end =
          token == JsonToken.VALUE_STRING
              ? (int) parser.currentLocation().getCharOffset()
              : start + length;
      return new TextSpans(Kind.PLAIN, start, end, Map.of(), start, start);
    }
    boolean isObject = token == JsonToken.START_OBJECT;
    Map<String, TextSpans> members = new LinkedHashMap<>();
    int lastStart = start;
    int lastEnd = start;
    while (!parser.nextToken().isStructEnd()) {
      lastStart = start(parser);
      String name = parser.currentName();
      if (isObject) {
        parser.nextToken();
      }
      TextSpans value = span(parser);
      lastEnd = value.end;
      members.put(isObject ? name : String.valueOf(members.size()), value);
    }
    int end = start(parser) + 1;
    return new TextSpans(
        isObject ? Kind.OBJECT : Kind.LIST, start, end, members, lastStart, lastEnd);
  }

  private static int start(JsonParser parser) {
    return (int) parser.currentTokenLocation().getCharOffset();
  }
}
