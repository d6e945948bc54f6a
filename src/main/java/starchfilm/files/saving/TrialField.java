package starchfilm.files.saving;

import java.util.ArrayList;
import java.util.List;

/**
 * A field of a trial file that a form shows.
 *
 * @param path its path, as faults name it
 * @param kind what it may hold
 * @param unit its unit; empty for words and counts
 */
public record TrialField(String path, FieldKind kind, String unit) {
  /** Starches a form shows; a file may hold more, which stay as they are. */
  public static final int STARCHES = 3;

  /** Every field a form shows, in the order of a file. */
  public static final List<TrialField> ALL = all();

  private static List<TrialField> all() {
    List<TrialField> all = new ArrayList<>();
    all.add(words("name"));
    all.add(words("poured_at"));
    for (int i = 0; i < STARCHES; i++) {
      all.add(words("recipe.starch." + i + ".kind"));
      all.add(amount("recipe.starch." + i + ".mass_g", "g"));
      all.add(amount("recipe.starch." + i + ".moisture_pct", "%"));
    }
    for (String liquid : List.of("glycerol", "vinegar", "water")) {
      all.add(amount("recipe." + liquid + ".mass_g", "g"));
      all.add(amount("recipe." + liquid + ".volume_ml", "ml"));
    }
    all.add(amount("recipe.glycerol.purity_pct", "%"));
    all.add(amount("recipe.glycerol.salt_pct", "%"));
    all.add(words("recipe.glycerol.origin"));
    all.add(amount("recipe.vinegar.acidity_pct", "%"));
    all.add(amount("cook.minutes", "minutes"));
    all.add(amount("cook.top_C", "C"));
    all.add(amount("cook.water_lost_g", "g"));
    all.add(words("pour.plate.material"));
    all.add(number("pour.plate.length_mm", "mm"));
    all.add(number("pour.plate.width_mm", "mm"));
    all.add(number("pour.plate.thickness_mm", "mm"));
    all.add(number("pour.plate.rim_mm", "mm"));
    all.add(amount("pour.plate.tare_g", "g"));
    all.add(number("pour.plates", ""));
    all.add(amount("pour.poured_g", "g"));
    all.add(amount("pour.wet_thickness_mm", "mm"));
    all.add(number("pour.unevenness_pct", "%"));
    all.add(number("pour.paste_C", "C"));
    all.add(words("room.name"));
    all.add(amount("room.air_C", "C"));
    all.add(amount("room.rh_pct", "%"));
    all.add(amount("room.air_speed_m_per_s", "m/s"));
    all.add(number("use.rh_pct", "%"));
    all.add(number("use.air_C", "C"));
    all.add(number("use.after_days", "days"));
    return List.copyOf(all);
  }

  private static TrialField words(String path) {
    return new TrialField(path, FieldKind.WORDS, "");
  }

  private static TrialField number(String path, String unit) {
    return new TrialField(path, FieldKind.NUMBER, unit);
  }

  private static TrialField amount(String path, String unit) {
    return new TrialField(path, FieldKind.AMOUNT, unit);
  }
}
