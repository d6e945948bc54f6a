package starchfilm.casting;

import starchfilm.numerics.evidence.Estimate;

/**
 * How the paste was poured.
 *
 * @param wetThicknessM thickness of the fresh paste, averaged over the plate (m)
 * @param unevenness how far the thin edge is below and the thick spot above that average, as a
 *     fraction of it (0 to 0.9); 0.25 where nobody measured (assumed, no source)
 * @param pasteTemperatureK temperature of the paste when poured (K)
 */
public record Pour(Estimate wetThicknessM, double unevenness, double pasteTemperatureK) {
  /** Unevenness where nobody measured; assumed, no source. */
  public static final double DEFAULT_UNEVENNESS = 0.25;
}
