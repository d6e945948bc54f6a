package starchfilm.change;

import static starchfilm.numerics.units.Units.MINUTE_S;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.util.stream.DoubleStream;
import starchfilm.casting.Casting;
import starchfilm.casting.DryingPlace;
import starchfilm.film.FilmCaution;
import starchfilm.film.FilmForecaster;
import starchfilm.film.PasteBody;
import starchfilm.film.PlasticiserWindow;
import starchfilm.material.recipe.Composition;

/** The figures worth trying of each setting, mildest first, within {@link Limits}. */
final class Ladders {
  private static final double TENTHS_MM_PER_M = 1e4;

  /** By less than this paste is not poured hotter, nor cooked hotter or cooler (judged). */
  private static final double PASTE_STEP_K = 4;

  private static final double COOK_STEP_K = 1;

  /** Share of the upper end of what people cast at, and of the critical concentration (judged). */
  private static final double WELL_WITHIN_CAST_RANGE = 0.8;

  private static final double CLEAR_OF_SETTLING = 1.2;

  private Ladders() {}

  static DoubleStream thinner(Casting casting, double from) {
    return pours(from, 0.85, 0.7, 0.55, 0.4)
        .filter(to -> to >= Limits.THINNEST_WET_M)
        .filter(to -> to * dryPerWet(casting, from) >= FilmCaution.USUALLY_THINNEST_M);
  }

  static DoubleStream thicker(Casting casting, double from) {
    return pours(from, 1.25, 1.6, 2)
        .filter(to -> to <= Limits.THICKEST_WET_M)
        .filter(to -> to * dryPerWet(casting, from) <= FilmCaution.USUALLY_THICKEST_M);
  }

  /**
   * To a tenth of a millimetre, never below two fifths or above double: one film tells little of
   * another so different. Only the limit ahead counts, so that a pour beyond the other end is led
   * back by steps.
   */
  private static DoubleStream pours(double from, double... factors) {
    return DoubleStream.of(factors)
        .map(factor -> Math.rint(from * factor * TENTHS_MM_PER_M) / TENTHS_MM_PER_M)
        .filter(to -> Math.abs(to - from) * TENTHS_MM_PER_M > 0.5);
  }

  private static double dryPerWet(Casting casting, double from) {
    return new FilmForecaster().forecast(casting).dryThicknessM().middle() / from;
  }

  static DoubleStream level(Casting casting, double from) {
    return DoubleStream.of(from / 2, Limits.LEVEL)
        .filter(to -> to >= Limits.LEVEL && to < from)
        .distinct();
  }

  static DoubleStream hotterPaste(Casting casting, double from) {
    return DoubleStream.of(65, 75, 80)
        .map(celsius -> celsius + ZERO_CELSIUS_K)
        .filter(to -> to > from + PASTE_STEP_K)
        .filter(to -> to < casting.cook().topTemperatureK().value());
  }

  static DoubleStream moreGlycerol(Casting casting, double from) {
    return plasticisers(casting, 0.20, 0.25, 0.30, 0.35, 0.40)
        .filter(to -> to - from > Limits.SAME_GLYCEROL);
  }

  static DoubleStream lessGlycerol(Casting casting, double from) {
    return plasticisers(casting, 0.40, 0.35, 0.30, 0.25, 0.20)
        .filter(to -> from - to > Limits.SAME_GLYCEROL);
  }

  /** Between brittle and tacky in the air the film is used in. */
  private static DoubleStream plasticisers(Casting casting, double... levels) {
    double humidity = casting.use().relativeHumidity();
    double least = PlasticiserWindow.cracksBelow(humidity);
    double most = PlasticiserWindow.tackyAbove(humidity) - Limits.SAME_GLYCEROL;
    return DoubleStream.of(levels).filter(to -> to >= least && to <= most);
  }

  static DoubleStream moreWater(Casting casting, double from) {
    PasteBody body = PasteBody.of(casting.composition());
    return DoubleStream.of(body.castUpTo(), WELL_WITHIN_CAST_RANGE * body.castUpTo())
        .filter(to -> to < from && to > CLEAR_OF_SETTLING * body.settlesBelow());
  }

  static DoubleStream lessWater(Casting casting, double from) {
    PasteBody body = PasteBody.of(casting.composition());
    return DoubleStream.of(CLEAR_OF_SETTLING * body.settlesBelow())
        .filter(to -> to > from && to < body.levelsUpTo());
  }

  static DoubleStream lessVinegar(Casting casting, double from) {
    return from > 0 ? DoubleStream.of(from / 2, 0) : DoubleStream.empty();
  }

  static DoubleStream calmer(Casting casting, double from) {
    return DoubleStream.of(Limits.BREEZE_M_PER_S, DryingPlace.STILL_AIR_M_PER_S)
        .filter(to -> to < from);
  }

  static DoubleStream fan(Casting casting, double from) {
    return DoubleStream.of(Limits.BREEZE_M_PER_S, DryingPlace.FAN_M_PER_S).filter(to -> to > from);
  }

  static DoubleStream damper(Casting casting, double from) {
    return two(from, Limits.HUMIDITY_STEP).filter(to -> to <= Limits.DAMPEST);
  }

  static DoubleStream drier(Casting casting, double from) {
    return two(from, -Limits.HUMIDITY_STEP).filter(to -> to >= Limits.DRIEST);
  }

  static DoubleStream warmer(Casting casting, double from) {
    return two(from, Limits.WARMTH_STEP_K).filter(to -> to <= Limits.WARMEST_K);
  }

  private static DoubleStream two(double from, double step) {
    return DoubleStream.of(from + step, from + 2 * step);
  }

  /** To the guide of the starch that needs most. */
  static DoubleStream hotterCook(Casting casting, double from) {
    return inOpenPan(casting, leastTopK(casting.composition()))
        .filter(found -> found >= from + COOK_STEP_K);
  }

  static DoubleStream coolerCook(Casting casting, double from) {
    Composition paste = casting.composition();
    double mostK = paste.most(kind -> kind.cookGuide().topCelsius().max()) + ZERO_CELSIUS_K;
    return inOpenPan(casting, (leastTopK(paste) + mostK) / 2)
        .filter(found -> found <= from - COOK_STEP_K);
  }

  private static double leastTopK(Composition paste) {
    return paste.most(kind -> kind.cookGuide().topCelsius().min()) + ZERO_CELSIUS_K;
  }

  /** A starch that an open pan cannot cook is not advised to be cooked in one. */
  private static DoubleStream inOpenPan(Casting casting, double to) {
    return casting.composition().kinds().stream().allMatch(kind -> kind.cookGuide().openPanWorks())
        ? DoubleStream.of(to)
        : DoubleStream.empty();
  }

  static DoubleStream longerCook(Casting casting, double from) {
    return holdS(casting).filter(to -> to > from);
  }

  static DoubleStream shorterCook(Casting casting, double from) {
    return holdS(casting).filter(to -> to < from);
  }

  private static DoubleStream holdS(Casting casting) {
    return DoubleStream.of(
        MINUTE_S * casting.composition().most(kind -> kind.cookGuide().holdMinutes().min()));
  }
}
