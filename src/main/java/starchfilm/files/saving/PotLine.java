package starchfilm.files.saving;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * Something that goes into the pot, as a trial file has it.
 *
 * @param what what it is, such as {@code potato starch}
 * @param field where its mass stands, from the outside in
 * @param massG its mass as the file has it (g); empty where it has none
 */
public record PotLine(String what, List<String> field, String massG) {
  /** Copies the list. */
  public PotLine {
    field = List.copyOf(field);
  }

  /**
   * What goes into the pot.
   *
   * @param text the text of a trial file
   * @return its starches, then glycerol, vinegar, water and salt as far as the file has them
   * @throws NotWrittenException where the text is no JSON object
   */
  public static List<PotLine> of(String text) throws NotWrittenException {
    JsonNode recipe = TrialTree.of(text).path("recipe");
    List<PotLine> lines = new ArrayList<>();
    JsonNode starch = recipe.path("starch");
    for (int i = 0; i < (starch.isArray() ? starch.size() : starch.size() > 0 ? 1 : 0); i++) {
      JsonNode one = starch.isArray() ? starch.get(i) : starch;
      List<String> path = new ArrayList<>(List.of("recipe", "starch"));
      if (starch.isArray()) {
        path.add(String.valueOf(i));
      }
      path.add("mass_g");
      lines.add(
          new PotLine(
              one.path("kind").asText("unknown") + " starch", path, one.path("mass_g").asText("")));
    }
    for (String name : List.of("glycerol", "vinegar", "water")) {
      if (recipe.path(name).isObject()) {
        lines.add(
            new PotLine(
                name,
                List.of("recipe", name, "mass_g"),
                recipe.path(name).path("mass_g").asText("")));
      }
    }
    if (recipe.has("salt_g")) {
      lines.add(new PotLine("salt", List.of("recipe", "salt_g"), recipe.path("salt_g").asText("")));
    }
    return lines;
  }

  /**
   * What was really weighed out of it.
   *
   * @param grams its mass (g)
   * @return the note
   */
  public Note.WeighedOut weighedOut(BigDecimal grams) {
    return new Note.WeighedOut(this, grams);
  }
}
