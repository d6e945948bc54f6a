package starchfilm.web;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A trial file of a plate that has been drying for 26 hours at {@link RunningSite#NOON}. */
final class DryingTrial {
  static final String FILE = "drying.json";

  private static final String TEXT =
      """
      {
        "name": "%s",
        "poured_at": "2026-04-19T10:00",
        "recipe": {
          "starch": [{"kind": "potato", "mass_g": 12.0, "moisture_pct": 17}],
          "glycerol": {"mass_g": 4.2, "purity_pct": 99},
          "water": {"mass_g": 230}
        },
        "cook": {"minutes": 10, "top_C": 90, "water_lost_g": 14},
        "pour": {
          "plate": {"material": "glass", "length_mm": 300, "width_mm": 200, "thickness_mm": 4, "tare_g": 598},
          "poured_g": 150
        },
        "room": {"name": "kitchen", "air_C": 20, "rh_pct": 50}
      }
      """;

  private DryingTrial() {}

  static Path in(Path folder) throws IOException {
    return in(folder, "On the shelf");
  }

  static Path in(Path folder, String nameInJson) throws IOException {
    return Files.writeString(folder.resolve(FILE), textNamed(nameInJson));
  }

  /** The text of the file. */
  static String textNamed(String nameInJson) {
    return TEXT.formatted(nameInJson);
  }
}
