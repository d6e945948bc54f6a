package starchfilm.files.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import starchfilm.files.json.Located.NumberValue;
import starchfilm.files.json.Located.Place;

class TextEditTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Located ONE = new NumberValue(Place.of(""), BigDecimal.ONE);
  private static final Located SEVEN = new NumberValue(Place.of(""), BigDecimal.valueOf(7));

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "`{}` | `{\"w\": [1]}`",
        "`{\"a\": 1.50}` | `{\"a\": 1.50, \"w\": [1]}`",
        "`{\"w\": []}` | `{\"w\": [1]}`",
        "`{\"w\":[5,6]}` | `{\"w\":[5,6, 1]}`",
        "`{\"w\": {\"x\": 2}}` | `{\"w\": [{\"x\": 2}, 1]}`",
        "`{\"w\": \"]\"}` | `{\"w\": [\"]\", 1]}`",
        "`{\"w\": [ [] ], \"b\": 2}` | `{\"w\": [ [], 1 ], \"b\": 2}`",
      })
  void appendsOnOneLine(String before, String after) throws UnreadableFileException {
    assertThat(TextEdit.append(before, "w", ONE)).isEqualTo(after);
  }

  @Test
  void appendsInTheLayoutOfTheFile() throws UnreadableFileException {
    String before =
        """
        {
            "b": 1e3,
            "w": [
              {"at": "+1h"},
              {"at": "+2h"}
            ],
            "\u00FC": 2.0
        }
        """;
    assertThat(TextEdit.append(before, "w", Located.object().with("at", "+3h")))
        .isEqualTo(before.replace("\"+2h\"}", "\"+2h\"},\n      {\"at\": \"+3h\"}"));
    assertThat(TextEdit.append(before, "new", ONE))
        .isEqualTo(before.replace("2.0", "2.0,\n    \"new\": [\n      1\n    ]"));
  }

  @Test
  void keepsTheLineEndsOfTheFile() throws UnreadableFileException {
    assertThat(TextEdit.append("{\r\n  \"w\": [\r\n    5\r\n  ]\r\n}\r\n", "w", ONE))
        .isEqualTo("{\r\n  \"w\": [\r\n    5,\r\n    1\r\n  ]\r\n}\r\n");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "`{}` | `{\"a\": {\"b\": {\"c\": 7}}}`",
        "`{\"a\": {\"b\": {\"c\": 12.50, \"d\": 1}}}` | `{\"a\": {\"b\": {\"c\": 7, \"d\": 1}}}`",
        "`{\"a\": {\"b\": {\"c\": \"unknown\"}}}` | `{\"a\": {\"b\": {\"c\": 7}}}`",
        "`{\"a\": {\"b\": {\"c\": {\"from\": 1, \"to\": 2}}}}` | `{\"a\": {\"b\": {\"c\": 7}}}`",
        "`{\"a\": {\"x\": 0}}` | `{\"a\": {\"x\": 0, \"b\": {\"c\": 7}}}`",
      })
  void setsAFieldWhereverItIs(String before, String after) throws UnreadableFileException {
    assertThat(TextEdit.set(before, "a.b.c", SEVEN)).isEqualTo(after);
  }

  @Test
  void cannotSetAFieldOfANumber() {
    assertThatThrownBy(() -> TextEdit.set("{\"a\": 5}", "a.b", SEVEN))
        .isInstanceOf(UnreadableFileException.class)
        .hasMessage("a that is no object; fix the file first");
  }

  static java.util.stream.IntStream seeds() {
    return java.util.stream.IntStream.range(0, 300);
  }

  /** Whatever the text, the edit does what the same change of the tree does, order included. */
  @ParameterizedTest
  @MethodSource("seeds")
  void agreesWithTheSameChangeOfTheTree(int seed) throws Exception {
    Random random = new Random(seed);
    ObjectNode tree = object(random, 0);
    String text =
        random.nextBoolean()
            ? JSON.writerWithDefaultPrettyPrinter().writeValueAsString(tree)
            : JSON.writeValueAsString(tree);
    ObjectNode entry = JSON.createObjectNode().put("at", "+6h").put("q", "\"[{,");
    JsonNode old = tree.get("c");
    ArrayNode list = JSON.createArrayNode();
    if (old instanceof ArrayNode before) {
      list.addAll(before);
    } else if (old != null) {
      list.add(old);
    }
    list.add(entry);
    tree.set("c", list);
    String after = TextEdit.append(text, "c", LocatedReader.read(entry.toString()));
    assertThat(JSON.readTree(after).toString()).isEqualTo(tree.toString());
  }

  private static ObjectNode object(Random random, int depth) {
    ObjectNode object = JSON.createObjectNode();
    for (int i = random.nextInt(5); i > 0; i--) {
      object.set(String.valueOf((char) ('a' + random.nextInt(5))), value(random, depth + 1));
    }
    return object;
  }

  private static JsonNode value(Random random, int depth) {
    switch (random.nextInt(depth > 3 ? 3 : 5)) {
      case 0:
        return JSON.getNodeFactory().numberNode(random.nextInt(1000) / 8.0);
      case 1:
        return JSON.getNodeFactory().textNode("\u00E9\uD83D\uDE00\"]}\\\n" + random.nextInt(9));
      case 2:
        return JSON.getNodeFactory().booleanNode(random.nextBoolean());
      case 3:
        return object(random, depth);
      default:
        ArrayNode list = JSON.createArrayNode();
        for (int i = random.nextInt(4); i > 0; i--) {
          list.add(value(random, depth + 1));
        }
        return list;
    }
  }
}
