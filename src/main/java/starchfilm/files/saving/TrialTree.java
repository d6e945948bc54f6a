package starchfilm.files.saving;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import com.fasterxml.jackson.databind.util.RawValue;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import starchfilm.files.json.Located;
import starchfilm.files.json.LocatedReader;
import starchfilm.files.json.UnreadableFileException;

/**
 * A trial file as a tree of JSON, to be taken apart. The digits stay as written: the last one says
 * how fine the scale was.
 */
public final class TrialTree {
  private static final ObjectMapper JSON =
      JsonMapper.builder().enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN).build();

  /** A number that a field of ours may hold; what else stands in a file passes as written. */
  private static final Pattern NUMBER = Pattern.compile("-?[0-9.]+(?:[eE][+-]?[0-9]{1,3})?");

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
      return read(text);
    } catch (UnreadableFileException e) {
      throw NotWrittenException.because(
          Path.of("the file"), "a file that is no JSON object", "fix its text first");
    }
  }

  /** The same in a change of the text, whose reader tells what is wrong. */
  static ObjectNode read(String text) throws UnreadableFileException {
    return of(LocatedReader.object(text, ""));
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
   * @param trial the fields
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
      return NUMBER.matcher(number.literal()).matches()
          ? DecimalNode.valueOf(new BigDecimal(number.literal()))
          : JSON.getNodeFactory().rawValueNode(new RawValue(number.literal()));
    }
    if (value instanceof Located.WordValue word) {
      return word.flag().<JsonNode>map(BooleanNode::valueOf).orElse(NullNode.instance);
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
