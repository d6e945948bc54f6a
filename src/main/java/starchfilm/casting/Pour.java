package starchfilm.casting;

import java.util.List;
import java.util.Optional;
import starchfilm.numerics.evidence.Estimate;

/**
 * How the paste was poured.
 *
 * <p>An unevenness that nobody measured is taken as log-normal: its middle is {@link
 * #DEFAULT_UNEVENNESS} and {@link #UNMEASURED_SD_OF_LOG} the spread of its logarithm, so that 8 of
 * 10 plates lie between 13 and 48 % (judged, no source).
 *
 * @param wetThicknessM thickness of the fresh paste, averaged over the plate (m)
 * @param unevenness how far the thin edge is below and the thick spot above that average, as a
 *     fraction of it (0 to 0.9); 0.25 where nobody measured (assumed, no source)
 * @param unevennessSdOfLog standard deviation of the unevenness's logarithm; 0 where it was
 *     measured
 * @param pasteTemperatureK temperature of the paste when poured (K)
 * @param weighedKg paste on one plate (kg), if it was weighed
 * @param plates plates poured from the pot; at least 1
 * @param areasM2 the area of each plate in their order (m2), all poured equally thick; empty where
 *     all are alike
 */
public record Pour(
    Estimate wetThicknessM,
    double unevenness,
    double unevennessSdOfLog,
    double pasteTemperatureK,
    Optional<Estimate> weighedKg,
    int plates,
    List<Double> areasM2) {
  /** Unevenness where nobody measured; assumed, no source. */
  public static final double DEFAULT_UNEVENNESS = 0.25;

  /** Spread of the logarithm of an unevenness that nobody measured; judged, no source. */
  public static final double UNMEASURED_SD_OF_LOG = 0.51;

  public Pour {
    areasM2 = List.copyOf(areasM2);
  }

  /** Plates whose unevenness is known, all alike. */
  public Pour(
      Estimate wetThicknessM,
      double unevenness,
      double pasteTemperatureK,
      Optional<Estimate> weighedKg,
      int plates) {
    this(wetThicknessM, unevenness, 0, pasteTemperatureK, weighedKg, plates, List.of());
  }

  /** A single plate, its paste not weighed and its unevenness known. */
  public Pour(Estimate wetThicknessM, double unevenness, double pasteTemperatureK) {
    this(wetThicknessM, unevenness, pasteTemperatureK, Optional.empty(), 1);
  }

  /** The same pour to another wet thickness (m), known as well as before. */
  public Pour to(double otherM) {
    double factor = otherM / wetThicknessM.value();
    return new Pour(
        wetThicknessM.times(factor),
        unevenness,
        unevennessSdOfLog,
        pasteTemperatureK,
        weighedKg.map(kg -> kg.times(factor)),
        plates,
        areasM2);
  }

  /** The same pour with another unevenness (ratio), known as well as before. */
  public Pour withUnevenness(double other) {
    return new Pour(
        wetThicknessM, other, unevennessSdOfLog, pasteTemperatureK, weighedKg, plates, areasM2);
  }

  /** The same pour with the paste at another temperature (K). */
  public Pour withPasteTemperature(double otherK) {
    return new Pour(
        wetThicknessM, unevenness, unevennessSdOfLog, otherK, weighedKg, plates, areasM2);
  }

  /** The same pour with another mass of paste on a plate. */
  Pour weighing(Optional<Estimate> otherKg) {
    return new Pour(
        wetThicknessM, unevenness, unevennessSdOfLog, pasteTemperatureK, otherKg, plates, areasM2);
  }
}
