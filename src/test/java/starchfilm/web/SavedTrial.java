package starchfilm.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * What of {@link BusyReaders}' work stands in a trial file, read without the program.
 *
 * @param weighings the readings (g)
 * @param faults the remarks of the faults
 * @param photos the names of the photos
 * @param water the water of the recipe (g)
 */
record SavedTrial(List<String> weighings, List<String> faults, List<String> photos, String water) {
  private static final ObjectMapper JSON = new ObjectMapper();

  /** Reads a file, which must be whole. */
  static SavedTrial in(Path file) throws IOException {
    JsonNode trial = JSON.readTree(file.toFile());
    List<String> photos = new ArrayList<>();
    trial.path("photos").forEach(photo -> photos.add(photo.asText()));
    return new SavedTrial(
        texts(trial.path("weighings"), "mass_g"),
        texts(trial.path("faults"), "remark"),
        photos,
        trial.path("recipe").path("water").path("mass_g").asText());
  }

  private static List<String> texts(JsonNode entries, String field) {
    List<String> texts = new ArrayList<>();
    entries.forEach(entry -> texts.add(entry.path(field).asText()));
    return texts;
  }
}
