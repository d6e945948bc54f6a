package starchfilm.planning;

import static starchfilm.numerics.units.Units.DAY_S;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import starchfilm.casting.Use;
import starchfilm.numerics.evidence.Refusal;
import starchfilm.numerics.units.Figures;

/** Where a film that is planned can be used at all. */
final class UseAir {
  private static final double DAMPEST = 0.95;
  private static final double COLDEST_K = 253.15;
  private static final double WARMEST_K = 353.15;

  private UseAir() {}

  /** Refuses air that no film is planned for. */
  static void require(Use use) {
    Refusal.unless(
        use.relativeHumidity() >= 0 && use.relativeHumidity() <= DAMPEST,
        "relative humidity where the film is used",
        Figures.percent(use.relativeHumidity()) + " %",
        "0 to 95 %; starch film in damper air turns to gel");
    Refusal.unless(
        use.temperatureK() >= COLDEST_K && use.temperatureK() <= WARMEST_K,
        "temperature where the film is used",
        Figures.of(use.temperatureK() - ZERO_CELSIUS_K, 3) + " °C",
        "-20 to 80 °C; write the temperature of the room");
    Refusal.unless(
        use.ageS() >= 0 && Double.isFinite(use.ageS()),
        "time before use",
        Figures.of(use.ageS() / DAY_S, 3) + " days",
        "0 days or more; write 7d");
  }
}
