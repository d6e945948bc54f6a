package starchfilm.planning;

import java.util.OptionalDouble;
import starchfilm.casting.Room;

/**
 * Where the plates dry.
 *
 * @param room the air, from the pour on
 * @param benchTemperatureK temperature of what the plates stand on (K), or empty for the air's
 */
public record DryingPlace(Room room, OptionalDouble benchTemperatureK) {}
