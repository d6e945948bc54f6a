package starchfilm.web;

import java.util.ArrayList;
import java.util.List;
import starchfilm.files.saving.TrialField;

/**
 * Fields that stand together on the form of a trial.
 *
 * @param title what they are about
 * @param entries the fields
 */
record FieldGroup(String title, List<Entry> entries) {
  /**
   * A field on the form.
   *
   * @param path its path
   * @param label its name on the page, with its unit
   * @param choice which words it offers: kinds, materials, origins, or none
   */
  record Entry(String path, String label, String choice) {}

  static List<FieldGroup> all() {
    List<Entry> starches = new ArrayList<>();
    for (int i = 0; i < TrialField.STARCHES; i++) {
      String row = "recipe.starch." + i;
      String ordinal = List.of("Starch", "Second starch", "Third starch").get(i);
      starches.add(new Entry(row + ".kind", ordinal, "kinds"));
      starches.add(entry(row + ".mass_g", ordinal + ": powder, g"));
      starches.add(entry(row + ".moisture_pct", ordinal + ": moisture, %"));
    }
    return List.of(
        new FieldGroup(
            "The trial",
            List.of(entry("name", "Name"), entry("poured_at", "Poured at (2026-04-02T10:30)"))),
        new FieldGroup("Starch", starches),
        new FieldGroup(
            "Into the pot",
            List.of(
                entry("recipe.glycerol.mass_g", "Glycerol out of the jar, g"),
                entry("recipe.glycerol.volume_ml", "or by volume, ml"),
                entry("recipe.glycerol.purity_pct", "glycerol in the jar, %"),
                entry("recipe.glycerol.salt_pct", "salt in the jar, %"),
                new Entry("recipe.glycerol.origin", "Glycerol comes from", "origins"),
                entry("recipe.vinegar.mass_g", "Vinegar, g"),
                entry("recipe.vinegar.volume_ml", "or by volume, ml (vinegar)"),
                entry("recipe.vinegar.acidity_pct", "its acid, %"),
                entry("recipe.water.mass_g", "Water, g"),
                entry("recipe.water.volume_ml", "or by volume, ml (water)"))),
        new FieldGroup(
            "The cook",
            List.of(
                entry("cook.minutes", "Minutes at the top temperature"),
                entry("cook.top_C", "Top temperature, °C"),
                entry("cook.water_lost_g", "Weight the pot lost, g"))),
        new FieldGroup(
            "Plate and pour",
            List.of(
                new Entry("pour.plate.material", "Plate of", "materials"),
                entry("pour.plate.length_mm", "Length, mm"),
                entry("pour.plate.width_mm", "Width, mm"),
                entry("pour.plate.thickness_mm", "Thickness of the plate, mm"),
                entry("pour.plate.rim_mm", "Rim above the paste, mm"),
                entry("pour.plate.tare_g", "The empty plate, g"),
                entry("pour.plates", "Plates poured"),
                entry("pour.poured_g", "Paste on one plate, g"),
                entry("pour.wet_thickness_mm", "or its wet thickness, mm"),
                entry("pour.unevenness_pct", "Thin edge below the average, %"),
                entry("pour.paste_C", "Paste when poured, °C"))),
        new FieldGroup(
            "The room",
            List.of(
                entry("room.name", "What you call it"),
                entry("room.air_C", "Air, °C"),
                entry("room.rh_pct", "Relative humidity, %"),
                entry("room.air_speed_m_per_s", "Air speed, m/s"))),
        new FieldGroup(
            "Where the film is used",
            List.of(
                entry("use.rh_pct", "Relative humidity there, %"),
                entry("use.air_C", "Air there, °C"),
                entry("use.after_days", "Days between drying and use"))));
  }

  private static Entry entry(String path, String label) {
    return new Entry(path, label, "");
  }
}
