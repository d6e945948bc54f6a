package starchfilm.advice;

import static starchfilm.numerics.figures.ReaderUnit.CELSIUS;
import static starchfilm.numerics.figures.ReaderUnit.METRE_PER_SECOND;
import static starchfilm.numerics.figures.ReaderUnit.MILLIMETRE;
import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

import java.util.stream.Collectors;
import starchfilm.casting.Casting;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.Plate;
import starchfilm.casting.PlateMaterial;
import starchfilm.casting.Spot;
import starchfilm.drying.Milestone;
import starchfilm.material.air.AirState;
import starchfilm.numerics.figures.Spans;

/** The figures of a plate that are no numbers, as its maker would say them. */
final class FigureWords {
  /** A starch with a smaller share is not named. */
  private static final double TRACE = 0.02;

  private FigureWords() {}

  static String starches(Casting setup) {
    return setup.composition().starchShares().entrySet().stream()
        .filter(share -> share.getValue() > TRACE)
        .map(
            share ->
                (share.getValue() > 1 - TRACE ? "" : PERCENT.brief(share.getValue()) + " ")
                    + share.getKey().tradeName())
        .collect(Collectors.joining(" and "));
  }

  static String plate(Plate plate) {
    return plate.material().words()
        + ", "
        + plate.size()
        + (plate.rimHeightM() > 0 ? ", rim " + MILLIMETRE.brief(plate.rimHeightM()) : "");
  }

  /** What the film lies on; of an unlisted material it is unknown how film sticks to it. */
  static String material(PlateMaterial material) {
    return material == PlateMaterial.OTHER
        ? "an unlisted material (taken to be like glass)"
        : material.tradeName();
  }

  static String manner(double grip) {
    return grip == 0 ? "hardly" : grip < 0.5 ? "a little" : grip < 0.7 ? "sometimes" : "hard";
  }

  static String air(AirState air) {
    return "%s and %s %% (%s)"
        .formatted(
            CELSIUS.brief(air.temperatureK()),
            Math.round(100 * air.relativeHumidity()),
            air.speedMPerS() <= DryingPlace.STILL_AIR_M_PER_S
                ? "still"
                : "draught of " + METRE_PER_SECOND.brief(air.speedMPerS()));
  }

  static String use(Casting setup) {
    return "%s and %s after %s"
        .formatted(
            CELSIUS.brief(setup.use().temperatureK()),
            PERCENT.brief(setup.use().relativeHumidity()),
            Spans.of(setup.use().ageS()));
  }

  static String firmBy(FaultContext scene, double timeS) {
    return Chance.words(
        Chance.by(scene.forecast().at(Spot.THICK_SPOT).at(Milestone.PEELABLE), timeS));
  }

  static String lateness(FaultContext scene, Milestone milestone, String what) {
    double seen = AdviceFigure.TIME_SEEN.of(scene);
    return "the %s was %s in %s likely cases %s, %s after the pour"
        .formatted(
            scene.spot() == Spot.THIN_EDGE ? "thin edge" : "thick spot",
            what,
            Chance.words(Chance.by(scene.forecast().at(scene.spot()).at(milestone), seen)),
            scene.fault().seenAtS().isPresent() ? "at that time" : "when last weighed",
            Spans.of(seen));
  }
}
