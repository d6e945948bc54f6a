package starchfilm.planning;

import static starchfilm.numerics.figures.ReaderUnit.CELSIUS;
import static starchfilm.numerics.figures.ReaderUnit.PERCENT;
import static starchfilm.numerics.units.Units.DAY_S;

import starchfilm.casting.Use;
import starchfilm.numerics.evidence.Refusal;
import starchfilm.numerics.figures.Figures;

/** Where a film that is planned can be used at all. */
final class UseAir {

  private UseAir() {}

  /** Refuses air that no film is planned for. */
  static void require(Use use) {
    PERCENT.require(
        "relative humidity where the film is used",
        use.relativeHumidity(),
        0,
        95,
        "starch film in damper air turns to gel");
    CELSIUS.require(
        "temperature where the film is used",
        use.temperatureK(),
        Use.COLDEST_C,
        Use.WARMEST_C,
        "write the temperature of the room");
    Refusal.unless(
        use.ageS() >= 0 && Double.isFinite(use.ageS()),
        "time before use",
        Figures.of(use.ageS() / DAY_S, 3) + " days",
        "0 days or more; write 7d");
  }
}
