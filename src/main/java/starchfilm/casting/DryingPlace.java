package starchfilm.casting;

import java.util.OptionalDouble;

/**
 * Where a plate dries.
 *
 * @param name what its maker calls the room, such as "shed"; learning is kept per room
 * @param room the air, from the pour on
 * @param uncertainty how uncertain the notes leave the air
 * @param benchTemperatureK temperature of what the plate stands on (K), or empty for the air's; a
 *     heated bench is warmer
 */
public record DryingPlace(
    String name, Room room, RoomUncertainty uncertainty, OptionalDouble benchTemperatureK) {
  /** What a room is called that nobody named. */
  public static final String UNNAMED = "room";

  /** Air speed of a still room (m/s); judged, 0.05 to 0.2. */
  public static final double STILL_AIR_M_PER_S = 0.1;

  /** Air speed near a fan (m/s): the middle of 0.5 to 2 in front of one; judged. */
  public static final double FAN_M_PER_S = 1;

  /**
   * A room that nobody named, whose air is known.
   *
   * @param room the air
   * @param benchTemperatureK temperature of what the plate stands on (K), or empty for the air's
   */
  public DryingPlace(Room room, OptionalDouble benchTemperatureK) {
    this(UNNAMED, room, RoomUncertainty.NONE, benchTemperatureK);
  }

  /** The room whose lessons hold there; empty where nobody named it, for all rooms alike. */
  public String learntRoom() {
    return name.equals(UNNAMED) ? "" : name;
  }

  /** The same place with other air. */
  public DryingPlace with(Room other) {
    return new DryingPlace(name, other, uncertainty, benchTemperatureK);
  }
}
