package starchfilm.files.saving;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.TextEdit;
import starchfilm.files.notebook.Volumes;

/**
 * Something that goes into the pot, as a trial file has it.
 *
 * @param what what it is, such as {@code potato starch}
 * @param field where its mass stands
 * @param massG its mass as the file has it (g); empty where it has none
 */
public record PotEntry(String what, String field, String massG) {
  /**
   * The lines of what goes into the pot.
   *
   * @param text the text of a trial file
   * @return its starches, then glycerol, vinegar, water and salt as far as the file has them
   * @throws NotWrittenException where the text is no JSON object
   */
  public static List<PotEntry> of(String text) throws NotWrittenException {
    Located recipe = TrialFileText.fields(text).get("recipe").orElseGet(Located::object);
    List<PotEntry> lines = new ArrayList<>();
    List<Located> starches = recipe.entries("starch");
    for (int i = 0; i < starches.size(); i++) {
      String kind = starches.get(i).get("kind").map(Located::shown).orElse("unknown");
      lines.add(line(kind + " starch", "recipe.starch." + i + ".mass_g", starches.get(i)));
    }
    for (String name : List.of("glycerol", "vinegar", "water")) {
      recipe
          .get(name)
          .filter(ObjectValue.class::isInstance)
          .ifPresent(of -> lines.add(line(name, "recipe." + name + ".mass_g", of)));
    }
    if (recipe.get("salt_g").isPresent()) {
      lines.add(line("salt", "recipe.salt_g", recipe));
    }
    return lines;
  }

  private static PotEntry line(String what, String field, Located around) {
    return new PotEntry(what, field, around.shown(TextEdit.last(field)));
  }

  /**
   * The note of what was really weighed out of it.
   *
   * @param grams its mass (g)
   * @return the note
   */
  public Note weighedOut(BigDecimal grams) {
    String volume = Volumes.field(field);
    return new Note.Edit(
        "weighed out: " + grams + " g " + what,
        text ->
            TextEdit.set(
                volume.equals(field) ? text : TextEdit.remove(text, volume),
                field,
                Located.number(grams)));
  }
}
