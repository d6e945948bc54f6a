package starchfilm.request;

import static starchfilm.request.TrialQuestion.ACIDITY;
import static starchfilm.request.TrialQuestion.GLYCEROL;
import static starchfilm.request.TrialQuestion.PLATE;
import static starchfilm.request.TrialQuestion.PURITY;
import static starchfilm.request.TrialQuestion.SALT;
import static starchfilm.request.TrialQuestion.STARCH;
import static starchfilm.request.TrialQuestion.UNEVEN;
import static starchfilm.request.TrialQuestion.VINEGAR;
import static starchfilm.request.TrialQuestion.WATER;
import static starchfilm.request.TrialQuestion.WET;

import java.util.Map;
import starchfilm.casting.trial.NotRecorded;

/** What neither a file nor the words beside it say of a trial, by the names of the door. */
final class Unwritten {
  /** By which field of a request a field of a file is written. */
  private static final Map<String, Field> WRITTEN =
      Map.ofEntries(
          Map.entry("recipe.starch.moisture_pct", STARCH),
          Map.entry("recipe.starch.mass_g", STARCH),
          Map.entry("recipe.glycerol", GLYCEROL),
          Map.entry("recipe.glycerol.mass_g", GLYCEROL),
          Map.entry("recipe.glycerol.purity_pct", PURITY),
          Map.entry("recipe.glycerol.salt_pct", SALT),
          Map.entry("recipe.vinegar.mass_g", VINEGAR),
          Map.entry("recipe.vinegar.acidity_pct", ACIDITY),
          Map.entry("recipe.water", WATER),
          Map.entry("pour.wet_thickness_mm", WET),
          Map.entry("pour.unevenness_pct", UNEVEN),
          Map.entry("pour.plate.length_mm", PLATE),
          Map.entry("pour.plate.material", PLATE),
          Map.entry("room.air_C", WrittenPlace.AIR),
          Map.entry("room.rh_pct", WrittenPlace.HUMIDITY),
          Map.entry("room.air_speed_m_per_s", WrittenPlace.SPEED));

  private Unwritten() {}

  /** What a trial without a file does not say, by what could have been written of it. */
  static NotRecorded asTyped(EntryReader in, NotRecorded gap) {
    Field field = WRITTEN.get(gap.field().replaceAll("\\[\\d+]", ""));
    return new NotRecorded(
        gap.field(),
        gap.what() + (field == null ? "" : by(in, field)),
        gap.assumed().replaceFirst(", or what poured_g .*", ""),
        gap.cost());
  }

  /** How it is written; empty where the page has no input for it. */
  private static String by(EntryReader in, Field field) {
    String quoted = in.quoted(field);
    return quoted.isEmpty() ? "" : " (" + quoted + ")";
  }

  /** Whether what a file does not record was written of plate and room. */
  static boolean isWritten(EntryReader in, String field) {
    return switch (field) {
      case "room.air_C" -> in.has(WrittenPlace.ROOM) || in.has(WrittenPlace.AIR);
      case "room.rh_pct" -> in.has(WrittenPlace.ROOM) || in.has(WrittenPlace.HUMIDITY);
      case "room.air_speed_m_per_s" -> in.has(WrittenPlace.ROOM) || in.has(WrittenPlace.SPEED);
      default -> field.startsWith("pour.plate.") && !field.endsWith(".tare_g") && in.has(PLATE);
    };
  }
}
