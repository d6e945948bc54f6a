package starchfilm.learning.summary;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import starchfilm.numerics.evidence.Estimate;

/**
 * Figures learnt of one room.
 *
 * @param name as its maker calls it
 * @param plates plates weighed in it
 * @param weighings their weighings
 * @param logDryingTime natural logarithm of how long the room's latest plate takes there to be
 *     peelable over how long it would in a textbook room, with its standard uncertainty; empty
 *     where it never is
 * @param factors the air-side factors, what all rooms have in common counted in
 */
public record RoomLearnt(
    String name,
    int plates,
    int weighings,
    Optional<Estimate> logDryingTime,
    List<ParameterLearnt> factors) {
  /** Copies the list. */
  public RoomLearnt {
    if (plates < 1 || weighings < 1) {
      throw new IllegalArgumentException("a room is learnt from at least one weighing");
    }
    factors = List.copyOf(factors);
  }

  /**
   * Tells whether a trial's room is this one.
   *
   * @param roomName the room's name in the trial
   * @return true where the names are the same, however they are capitalised
   */
  public boolean isCalled(String roomName) {
    return key(name).equals(key(roomName));
  }

  /**
   * Returns the key that a room is known by.
   *
   * @param roomName the room's name, however it is capitalised
   * @return the same for every name of that room
   */
  public static String key(String roomName) {
    return roomName.strip().toLowerCase(Locale.ROOT);
  }

  /**
   * The room in one sentence.
   *
   * @return such as {@code your room "shed" dries 20 % slower than a textbook room (±8 %)}
   */
  public String sentence() {
    if (logDryingTime.isEmpty()) {
      return "your room \"%s\" is too damp for a film to dry in, so its pace is not known"
          .formatted(name);
    }
    double ratio = Math.exp(logDryingTime.get().value());
    long percent = Math.round(100 * Math.abs(ratio - 1));
    long spread = Math.max(1, Math.round(100 * ratio * logDryingTime.get().sd()));
    String pace =
        percent == 0
            ? "as fast as a textbook room"
            : percent + " % " + (ratio > 1 ? "slower" : "faster") + " than a textbook room";
    return "your room \"" + name + "\" dries " + pace + " (\u00B1" + spread + " %)";
  }
}
