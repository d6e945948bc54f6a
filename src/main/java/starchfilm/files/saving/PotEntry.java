package starchfilm.files.saving;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import starchfilm.files.json.TextEdit;

/**
 * Something that goes into the pot, as a trial file has it.
 *
 * @param what what it is, such as {@code potato starch}
 * @param field where its mass stands
 * @param massG its mass as the file has it (g); empty where it has none
 */
public record PotEntry(String what, String field, String massG) {
  /**
   * What goes into the pot.
   *
   * @param text the text of a trial file
   * @return its starches, then glycerol, vinegar, water and salt as far as the file has them
   * @throws NotWrittenException where the text is no JSON object
   */
  public static List<PotEntry> of(String text) throws NotWrittenException {
    JsonNode recipe = TrialTree.of(text).path("recipe");
    List<PotEntry> lines = new ArrayList<>();
    List<JsonNode> starches = TrialTree.entries(recipe.path("starch"));
    for (int i = 0; i < starches.size(); i++) {
      String kind = starches.get(i).path("kind").asText("unknown");
      lines.add(line(kind + " starch", "recipe.starch." + i + ".mass_g", starches.get(i)));
    }
    for (String name : List.of("glycerol", "vinegar", "water")) {
      if (recipe.path(name).isObject()) {
        lines.add(line(name, "recipe." + name + ".mass_g", recipe.path(name)));
      }
    }
    if (recipe.has("salt_g")) {
      lines.add(line("salt", "recipe.salt_g", recipe));
    }
    return lines;
  }

  private static PotEntry line(String what, String field, JsonNode around) {
    String key = field.substring(field.lastIndexOf('.') + 1);
    return new PotEntry(what, field, around.path(key).asText(""));
  }

  /**
   * What was really weighed out of it.
   *
   * @param grams its mass (g)
   * @return the note
   */
  public Note weighedOut(BigDecimal grams) {
    String volume = field.replace("mass_g", "volume_ml");
    return new Note.Edit(
        "weighed out: " + grams + " g " + what,
        text ->
            TextEdit.set(
                volume.equals(field) ? text : TextEdit.remove(text, volume),
                field,
                DecimalNode.valueOf(grams)));
  }
}
