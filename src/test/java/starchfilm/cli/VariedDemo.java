package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Trial files made out of one of the demo's, whose plates dry faster or slower than it did. */
final class VariedDemo {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Path BLEND = Path.of("formulations", "garden", "4-blend.json");

  private VariedDemo() {}

  /** The demo's trial in a room of some name, without anything that came of it. */
  static ObjectNode unweighed(String room) throws IOException {
    ObjectNode trial = (ObjectNode) JSON.readTree(Files.readString(BLEND));
    trial.remove(List.of("weighings", "pulls", "dry_thickness_um", "rating", "remarks"));
    ((ObjectNode) trial.path("room")).put("name", room);
    return trial;
  }

  /** The same with its weighings, every one of them so many times as late. */
  static ObjectNode weighed(String room, double asLate) throws IOException {
    ObjectNode trial = unweighed(room);
    JsonNode demo = JSON.readTree(Files.readString(BLEND));
    for (JsonNode weighing : demo.path("weighings")) {
      double hours = Double.parseDouble(weighing.path("at").asText().replaceAll("[+h]", ""));
      trial
          .withArray("weighings")
          .addObject()
          .put("at", String.format(Locale.ROOT, "+%.2fh", asLate * hours))
          .set("mass_g", weighing.path("mass_g"));
    }
    return trial;
  }

  /** Strips that broke at so many newtons each, 10 mm wide and 0.11 mm thick. */
  static ObjectNode pulled(ObjectNode trial, double... loadsN) {
    for (double load : loadsN) {
      trial
          .withArray("pulls")
          .addObject()
          .put("load_N", load)
          .put("width_mm", 10)
          .put("thickness_um", 110)
          .put("stretch_pct", 25);
    }
    return trial;
  }

  static Path write(Path file, ObjectNode trial) throws IOException {
    Files.createDirectories(file.getParent());
    return Files.writeString(file, trial.toPrettyString());
  }

  /** A folder whose room the blend dries slower or faster in; two plates of it. */
  static void twoPlates(Path folder, String room, double asLate) throws IOException {
    for (int i = 1; i <= 2; i++) {
      write(folder.resolve("taught-" + i + ".json"), weighed(room, asLate * (0.94 + 0.04 * i)));
    }
  }

  /** A milestone of a forecast as data: low_h, middle_h or high_h. */
  static double hours(String forecast, String milestone, String end) throws IOException {
    return JSON.readTree(forecast)
        .at("/spots/thick_spot/" + milestone + "/" + end + "_h")
        .asDouble(Double.NaN);
  }

  /** A folder below with two plates of a room that taught, and a plate that was not weighed. */
  static void learnt(Path folder, String below, String room, double asLate) throws IOException {
    Path home = folder.resolve(below);
    twoPlates(home, room, asLate);
    write(home.resolve("next.json"), unweighed(room));
    assertThat(Outcome.of(folder, "learn", home.toString()).exit()).isZero();
  }

  /** When a trial is dry through in the middle, as the command dry answers (h). */
  static double dryThroughH(Path folder, String file) throws IOException {
    return hours(Outcome.of(folder, "dry", file, "--json", "-").out(), "dry_through", "middle");
  }
}
