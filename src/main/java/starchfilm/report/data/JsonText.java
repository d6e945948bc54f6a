package starchfilm.report.data;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import starchfilm.numerics.evidence.Band;

/** A tree as the text of a file; the same line ends on every system. */
public final class JsonText {
  private static final double SCALE = 1e4;

  private JsonText() {}

  /**
   * The text.
   *
   * @param root the tree
   * @return indented by two, with a line feed at the end
   */
  public static String of(JsonNode root) {
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter pretty =
        new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines);
    try {
      return new ObjectMapper().writer(pretty).writeValueAsString(root) + "\n";
    } catch (JsonProcessingException impossible) {
      throw new UncheckedIOException("a tree in memory cannot fail", impossible);
    }
  }

  /**
   * A figure to four decimals.
   *
   * @param value the figure
   * @return the figure, rounded
   */
  public static double rounded(double value) {
    return Math.round(value * SCALE) / SCALE;
  }

  /**
   * Puts a figure to four decimals.
   *
   * @param node where it goes
   * @param key its key
   * @param value the figure; null is written where it is endless
   */
  public static void put(ObjectNode node, String key, double value) {
    if (Double.isInfinite(value)) {
      node.putNull(key);
    } else {
      node.put(key, rounded(value));
    }
  }

  /**
   * Puts the ends and the middle of a band.
   *
   * @param node where they go
   * @param unit what follows {@code low}, {@code middle} and {@code high} in their keys
   * @param band the band, in that unit
   */
  public static void put(ObjectNode node, String unit, Band band) {
    put(node, "low" + unit, band.low());
    put(node, "middle" + unit, band.middle());
    put(node, "high" + unit, band.high());
  }
}
