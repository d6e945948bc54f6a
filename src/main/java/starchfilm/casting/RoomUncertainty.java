package starchfilm.casting;

/**
 * What the notes leave uncertain about the air of a room, as standard uncertainties; it joins what
 * every forecast allows for.
 *
 * @param temperatureSdK of the air temperature (K)
 * @param humiditySd of the relative humidity (ratio)
 * @param speedRelativeSd of the air speed (ratio)
 */
public record RoomUncertainty(double temperatureSdK, double humiditySd, double speedRelativeSd) {
  /** A room that is noted in full. */
  public static final RoomUncertainty NONE = new RoomUncertainty(0, 0, 0);
}
