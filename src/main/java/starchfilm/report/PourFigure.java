package starchfilm.report;

import static starchfilm.numerics.figures.ReaderUnit.GRAM;
import static starchfilm.numerics.figures.ReaderUnit.MICROMETRE;
import static starchfilm.numerics.figures.ReaderUnit.MILLIMETRE;

import java.util.List;
import java.util.function.ToDoubleFunction;
import starchfilm.casting.Spot;
import starchfilm.drying.DryingForecast;
import starchfilm.drying.DryingVerdict;
import starchfilm.drying.SpotForecast;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.figures.Figures;
import starchfilm.report.chart.Axis;
import starchfilm.report.chart.Scale;

/**
 * The plate seen from the side, wet and dry, upright to one scale for all trials of the page.
 *
 * @param ruler millimetres above the plate
 */
record PourFigure(
    String wet,
    String dry,
    String wetTop,
    String wetLabel,
    String dryLabel,
    List<Axis.Tick> ruler) {
  private static final double PLATE_TOP = 110;
  private static final double HIGHEST = 22;

  private static final int MARKS = 5;

  private static final double TENTHS_BELOW_G = 10;

  /**
   * Draws a trial's pour.
   *
   * @param tallest the thickest wet spot that is drawn to the same scale (m)
   */
  public static PourFigure of(TrialForecast trial, double tallest) {
    Scale upright = Scale.linear(0, tallest, PLATE_TOP, HIGHEST);
    double wetM = trial.drying().at(Spot.NOMINAL).wetThicknessM();
    double dryM = trial.drying().at(Spot.NOMINAL).dryThicknessM();
    String wetLabel = MILLIMETRE.figure(wetM) + " wet";
    String dryLabel =
        trial.drying().verdict() != DryingVerdict.TOO_DAMP
            ? "%s when dry in this room: %s times thinner than it was poured"
                .formatted(MICROMETRE.figure(dryM), Figures.two(wetM / dryM))
            : "never dry in this room";
    return new PourFigure(
        outline(upright, trial.drying(), SpotForecast::wetThicknessM),
        outline(upright, trial.drying(), SpotForecast::dryThicknessM),
        upright.place(trial.drying().at(Spot.THICK_SPOT).wetThicknessM()),
        wetLabel,
        dryLabel,
        Axis.of("mm", Scale.linear(0, 1e3 * tallest, PLATE_TOP, HIGHEST), MARKS).ticks());
  }

  /**
   * The thickest wet spot of several trials, which all their plates are drawn to.
   *
   * @param trials the trials; at least one
   */
  static double tallestM(List<TrialForecast> trials) {
    return trials.stream()
        .mapToDouble(trial -> trial.drying().at(Spot.THICK_SPOT).wetThicknessM())
        .max()
        .orElseThrow();
  }

  /** Thin at the rims, thick in the middle. */
  private static String outline(
      Scale upright, DryingForecast drying, ToDoubleFunction<SpotForecast> thicknessM) {
    return "M10 110 V%1$s C70 %1$s 70 %2$s 130 %2$s S190 %1$s 250 %1$s V110 Z"
        .formatted(
            upright.place(thicknessM.applyAsDouble(drying.at(Spot.THIN_EDGE))),
            upright.place(thicknessM.applyAsDouble(drying.at(Spot.THICK_SPOT))));
  }

  /** The sentence on how much to pour on each of so many plates. */
  public static String sentence(TrialForecast trial, int plates) {
    double filmKg = trial.drySolidsKgPerPlate() * (1 + trial.drying().equilibriumMoisture());
    return "Pour %s g of paste on %s; %s of film remain%s."
        .formatted(
            grams(trial.pouredKgPerPlate()),
            plates == 1 ? "the plate" : "each of the " + plates + " plates",
            GRAM.figure(filmKg),
            plates == 1 ? "" : " on each");
  }

  /** A mass as a kitchen scale shows it: two digits would be grams off. */
  private static String grams(double kg) {
    double grams = GRAM.of(kg);
    return grams < TENTHS_BELOW_G ? Figures.three(grams) : Figures.whole(grams);
  }
}
