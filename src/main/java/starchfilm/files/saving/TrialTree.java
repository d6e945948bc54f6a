package starchfilm.files.saving;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import starchfilm.files.json.Located;

/**
 * A trial file as a tree of JSON, to be taken apart. The digits stay as written: the last one says
 * how fine the scale was.
 */
public final class TrialTree {
  private static final ObjectMapper JSON =
      JsonMapper.builder()
          .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
          .build();

  private TrialTree() {}

  /**
   * Reads one.
   *
   * @param text the text of a trial file
   * @return its tree
   * @throws NotWrittenException where the text is no JSON object
   */
  public static ObjectNode of(String text) throws NotWrittenException {
    try {
      if (JSON.readTree(text) instanceof ObjectNode trial) {
        return trial;
      }
    } catch (JsonProcessingException e) {
      // Falls through: the whole text has to be fixed first.
    }
    throw NotWrittenException.because(
        Path.of("the file"), "a file that is no JSON object", "fix its text first");
  }

  /** Reads the text of a file that was read as a trial before. */
  static ObjectNode sound(String text) {
    try {
      return of(text);
    } catch (NotWrittenException impossible) {
      throw new IllegalStateException("notes go only into files without a fault", impossible);
    }
  }

  /** The entries of a list; a value that stands alone is one. */
  static List<JsonNode> entries(JsonNode list) {
    List<JsonNode> entries = new ArrayList<>();
    if (list.isArray()) {
      list.forEach(entries::add);
    } else if (!list.isMissingNode()) {
      entries.add(list);
    }
    return entries;
  }

  /**
   * The tree of fields that were read.
   *
   * @param trial the fields; sound numbers alone
   * @return the same as a tree, digits and all
   */
  public static ObjectNode of(Located.ObjectValue trial) {
    ObjectNode tree = JSON.createObjectNode();
    trial.members().forEach((name, member) -> tree.set(name, node(member.value())));
    return tree;
  }

  static JsonNode node(Located value) {
    if (value instanceof Located.ObjectValue object) {
      return of(object);
    }
    if (value instanceof Located.ListValue list) {
      ArrayNode entries = JSON.createArrayNode();
      list.entries().forEach(entry -> entries.add(node(entry)));
      return entries;
    }
    if (value instanceof Located.NumberValue number) {
      return DecimalNode.valueOf(new BigDecimal(number.literal()));
    }
    if (value instanceof Located.WordValue word) {
      return switch (word.word()) {
        case TRUE -> BooleanNode.TRUE;
        case FALSE -> BooleanNode.FALSE;
        case NULL -> NullNode.instance;
      };
    }
    return TextNode.valueOf(((Located.TextValue) value).text());
  }

  /**
   * Writes one.
   *
   * @param trial its tree
   * @return the text of a trial file, in lines
   */
  public static String text(ObjectNode trial) {
    DefaultPrettyPrinter lines = new DefaultPrettyPrinter();
    lines.indentObjectsWith(new DefaultIndenter("  ", "\n"));
    try {
      return JSON.writer(lines).writeValueAsString(trial) + "\n";
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException("a tree made in memory could not be written", e);
    }
  }
}
