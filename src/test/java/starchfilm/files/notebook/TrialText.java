package starchfilm.files.notebook;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Texts of trial files for tests: a sound one, with single fields changed. */
public final class TrialText {
  public static final String SOUND =
      """
      {
        "name": "A",
        "poured_at": "2026-04-02T10:00",
        "recipe": {
          "starch": [{"kind": "potato", "mass_g": 20.0, "moisture_pct": 17.5}],
          "glycerol": {"mass_g": 6.0, "purity_pct": 85, "salt_pct": 3},
          "vinegar": {"mass_g": 10, "acidity_pct": 5},
          "water": {"mass_g": 360}
        },
        "cook": {"minutes": 10, "top_C": 90, "water_lost_g": 25},
        "pour": {
          "plate": {
            "material": "glass", "length_mm": 300, "width_mm": 200,
            "thickness_mm": 4, "rim_mm": 0, "tare_g": 600
          },
          "plates": 2,
          "poured_g": 150,
          "unevenness_pct": 15,
          "paste_C": 60
        },
        "room": {"name": "kitchen", "air_C": 21, "rh_pct": 50, "air_speed_m_per_s": 0.1},
        "use": {"rh_pct": 50, "air_C": 20, "after_days": 7},
        "weighings": [{"at": "+6h", "mass_g": 730}]
      }
      """;

  private static final ObjectMapper JSON = new ObjectMapper();

  private TrialText() {}

  /** The sound text with one field set, or taken out where {@code json} is empty. */
  public static String with(String path, String json) {
    return changed(SOUND, path, json);
  }

  /** A text with one field taken out. */
  public static String without(String text, String path) {
    return changed(text, path, "");
  }

  private static String changed(String text, String path, String json) {
    try {
      ObjectNode root = (ObjectNode) JSON.readTree(text);
      JsonNode at = root;
      String[] names = path.split("\\.");
      for (int i = 0; i < names.length - 1; i++) {
        JsonNode next =
            names[i].matches("\\d+") ? at.get(Integer.parseInt(names[i])) : at.get(names[i]);
        if (next == null) {
          next = ((ObjectNode) at).putObject(names[i]);
        }
        at = next;
      }
      String last = names[names.length - 1];
      if (at instanceof ArrayNode list) {
        list.set(Integer.parseInt(last), JSON.readTree(json));
      } else if (json.isEmpty()) {
        ((ObjectNode) at).remove(last);
      } else {
        ((ObjectNode) at).set(last, JSON.readTree(json));
      }
      return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root);
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static Notebook read(Path folder, String text) {
    return read(folder, text.getBytes(StandardCharsets.UTF_8));
  }

  public static Notebook read(Path folder, byte[] bytes) {
    try {
      Path file = folder.resolve("a.json");
      Files.write(file, bytes);
      return NotebookReader.read(List.of(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The sentences of all faults, the folder's name taken off. */
  public static List<String> sentences(Path folder, Notebook notebook) {
    return notebook.faults().stream()
        .map(fault -> fault.sentence().replace(folder.toString().replace('\\', '/') + "/", ""))
        .toList();
  }

  /** The sentences of all faults of one text. */
  public static List<String> faults(Path folder, String text) {
    return sentences(folder, read(folder, text));
  }
}
