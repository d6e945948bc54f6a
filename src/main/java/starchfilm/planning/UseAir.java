package starchfilm.planning;

import static starchfilm.numerics.figures.ReaderUnit.CELSIUS;
import static starchfilm.numerics.figures.ReaderUnit.DAY;
import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

import starchfilm.casting.Use;

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
    DAY.requireNoneOrMore("time before use", use.ageS(), "write 7d");
  }
}
