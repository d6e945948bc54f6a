package starchfilm.drying;

/** What is uncertain in a drying forecast, one name a factor. */
public enum Factor {
  /** Transfer between surface and air; log-normal. */
  AIR_SIDE,
  /** Diffusivity of water in the film; log-normal. */
  DIFFUSIVITY,
  /** Moisture the film holds at a given activity; log-normal. */
  ISOTHERM,
  /** Heat passed by the bench; log-normal. */
  BENCH,
  /** Relative humidity of the room; normal. */
  HUMIDITY,
  /** Air temperature; normal. */
  AIR_TEMPERATURE,
  /** Wet thickness; normal. */
  THICKNESS,
  /** Dry solids of the paste; normal. */
  SOLIDS
}
