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

import starchfilm.casting.trial.NotRecorded;

/** What neither a file nor the words beside it say of a trial, by the names of the door. */
final class Unwritten {
  private Unwritten() {}

  /** What a trial without a file does not say, by what could have been written of it. */
  static NotRecorded asTyped(EntryReader in, NotRecorded gap) {
    String key = gap.field().replaceAll("\\[\\d+]", "");
    String name =
        switch (key) {
          case "recipe.starch.moisture_pct" -> "moisture of the powder" + by(in, STARCH);
          case "recipe.starch.mass_g" -> "starch" + by(in, STARCH);
          case "recipe.glycerol", "recipe.glycerol.mass_g" -> "glycerol" + by(in, GLYCEROL);
          case "recipe.glycerol.purity_pct" -> "purity of the glycerol" + by(in, PURITY);
          case "recipe.glycerol.salt_pct" -> "salt in the jar" + by(in, SALT);
          case "recipe.vinegar.mass_g" -> "vinegar" + by(in, VINEGAR);
          case "recipe.vinegar.acidity_pct" -> "its acid" + by(in, ACIDITY);
          case "recipe.water", "recipe.water.mass_g" -> "water" + by(in, WATER);
          case "cook.minutes" -> "minutes of the cook";
          case "cook.top_C" -> "temperature of the cook";
          case "cook.water_lost_g" -> "water lost in the pot";
          case "pour.wet_thickness_mm" -> "wet thickness" + by(in, WET);
          case "pour.unevenness_pct" -> "unevenness" + by(in, UNEVEN);
          case "pour.paste_C" -> "temperature of the paste when poured";
          case "pour.plate.length_mm" -> "size of the plate" + by(in, PLATE);
          case "pour.plate.material" -> "material of the plate" + by(in, PLATE);
          case "pour.plate.thickness_mm" -> "thickness of the plate itself";
          case "pour.plate.tare_g" -> "weight of the empty plate";
          case "room.air_C" -> "air" + by(in, WrittenPlace.AIR);
          case "room.rh_pct" -> "humidity" + by(in, WrittenPlace.HUMIDITY);
          case "room.air_speed_m_per_s" -> "speed of the air" + by(in, WrittenPlace.SPEED);
          case "use.rh_pct" -> "humidity where the film is used";
          default -> gap.field();
        };
    return new NotRecorded(
        name, gap.assumed().replaceFirst(", or what poured_g .*", ""), gap.cost());
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
