package starchfilm.files.saving;

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
   * The fields of a trial to be poured again.
   *
   * @param trial the fields of another
   * @return the same without its history
   */
  public static ObjectValue of(ObjectValue trial) {
    return trial.without(HISTORY.toArray(String[]::new)).without(ROOM_LOG);
  }
}
