package starchfilm.files.saving;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import starchfilm.files.json.Located.ObjectValue;

/** A trial to be poured, made from another: the same recipe, pour and room, and no history. */
public final class FreshTrial {
  /** What belongs to one pour and not to the next. */
  private static final List<String> HISTORY =
      List.of(
          "invented",
          "poured_at",
          "weighings",
          "plates",
          "moved",
          "dry_thickness_um",
          "pulls",
          "faults",
          "rating",
          "remarks",
          "photos",
          "photo_notes",
          "from");

  /** The room's log tells of another week; its name and the rest stay. */
  private static final String ROOM_LOG = "room.log_csv";

  private FreshTrial() {}

  /**
   * Makes a trial from another one's text.
   *
   * @param text the text of a trial file
   * @param name what the new trial is called; empty to keep the name
   * @return the text of the new file
   * @throws NotWrittenException where the text is no JSON object
   */
  public static String from(String text, String name) throws NotWrittenException {
    ObjectNode trial = withoutHistory(text);
    if (!name.isEmpty()) {
      trial.put("name", name);
    }
    return TrialTree.text(trial);
  }

  /**
   * The fields of a trial to be poured again.
   *
   * @param trial the fields of another
   * @return the same without its history
   */
  public static ObjectValue of(ObjectValue trial) {
    return trial.without(HISTORY.toArray(String[]::new)).without(ROOM_LOG);
  }

  /**
   * The tree of a trial to be poured again.
   *
   * @param text the text of another
   * @return the same without its history
   * @throws NotWrittenException where the text is no JSON object
   */
  public static ObjectNode withoutHistory(String text) throws NotWrittenException {
    ObjectNode trial = TrialTree.of(text);
    trial.remove(HISTORY);
    if (trial.get("room") instanceof ObjectNode room) {
      room.remove(ROOM_LOG.substring(ROOM_LOG.indexOf('.') + 1));
    }
    return trial;
  }
}
