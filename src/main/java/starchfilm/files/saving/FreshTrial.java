package starchfilm.files.saving;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;

/** A trial to be poured, made from another: the same recipe, pour and room, and no history. */
public final class FreshTrial {
  /** What belongs to one pour and not to the next. */
  private static final List<String> HISTORY =
      List.of(
          "invented",
          "poured_at",
          "weighings",
          "moved",
          "dry_thickness_um",
          "pulls",
          "faults",
          "rating",
          "remarks",
          "photos");

  // The digits are kept as typed: the last one says how fine the scale was.
  private static final ObjectMapper JSON =
      JsonMapper.builder()
          .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
          .build();

  private FreshTrial() {}

  /**
   * Makes a trial from another one's text.
   *
   * @param text the text of a trial file
   * @param name what the new trial is called; empty to keep the name
   * @return the text of the new file
   * @throws NotWrittenException where the text is no JSON object
   */
  public static String from(String text, String name) throws NotWrittenException {
    ObjectNode trial = withoutHistory(text);
    if (!name.isEmpty()) {
      trial.put("name", name);
    }
    return text(trial);
  }

  static String text(ObjectNode trial) {
    DefaultPrettyPrinter lines = new DefaultPrettyPrinter();
    lines.indentObjectsWith(new DefaultIndenter("  ", "\n"));
    try {
      return JSON.writer(lines).writeValueAsString(trial) + "\n";
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException("a tree made in memory could not be written", e);
    }
  }

  static ObjectNode withoutHistory(String text) throws NotWrittenException {
    try {
      if (JSON.readTree(text) instanceof ObjectNode trial) {
        trial.remove(HISTORY);
        // The room's log tells of another week; its name and the rest stay.
        if (trial.get("room") instanceof ObjectNode room) {
          room.remove("log_csv");
        }
        return trial;
      }
    } catch (JsonProcessingException e) {
      // Falls through: what is no JSON cannot be poured again either.
    }
    throw NotWrittenException.because(
        Path.of("trial"), "a file that is no JSON object", "mend the file first");
  }
}
