package starchfilm.casting.trial;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A plate that is done: its film is off it, or it was given up.
 *
 * @param atS when, since the pour (s), if noted
 * @param givenUp why it was given up, in the maker's words; empty where the film came off
 */
public record PlateEnd(OptionalDouble atS, Optional<String> givenUp) {}
