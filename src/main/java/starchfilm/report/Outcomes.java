package starchfilm.report;

import static starchfilm.numerics.figures.ReaderUnit.DAY;
import static starchfilm.numerics.figures.ReaderUnit.MILLIMETRE;
import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.figures.Figures;
import starchfilm.report.chart.Axis;
import starchfilm.report.chart.NumberPlaces;
import starchfilm.report.chart.Scale;
import starchfilm.report.chart.Scatter;
import starchfilm.report.chart.TimeScale;

/** Figures of points: what came of trials against what was changed. */
final class Outcomes {
  private static final int TICKS = 6;
  private static final int GOOD_FROM = 4;
  private static final int BAD_UP_TO = 2;

  private Outcomes() {}

  /** A trial's place: what was changed, and what came of it with its range. */
  private record OutcomePoint(int number, TrialForecast trial, double across, Band up) {}

  /**
   * The figures.
   *
   * @return thickness against days, glycerol against stretch; those with two places or more
   */
  static List<Scatter> of(List<TrialForecast> trials) {
    return Stream.of(
            figure(
                "Thickness and drying",
                "wet thickness, mm",
                "days until dry through",
                places(
                    trials,
                    trial -> MILLIMETRE.of(trial.casting().pour().wetThicknessM().value()),
                    trial -> Optional.of(DAY.of(trial.drying().dryThroughS())))),
            figure(
                "Glycerol and stretch",
                "glycerol, g per 100 g dry starch",
                "stretch at break, % (bare: measured; on a line: forecast)",
                places(
                    trials,
                    trial -> PERCENT.of(trial.composition().glycerolPerDryStarch()),
                    trial -> stretched(trial).map(PERCENT::of))))
        .flatMap(Optional::stream)
        .toList();
  }

  /** Stretch at break as measured, or else as forecast; empty where neither can be stated. */
  private static Optional<Band> stretched(TrialForecast trial) {
    OptionalDouble measured =
        Measured.of(trial).stream()
            .filter(one -> one.property() == FilmFigure.ELONGATION)
            .mapToDouble(Measured::mean)
            .findFirst();
    return measured.isPresent()
        ? Optional.of(Band.exact(measured.getAsDouble()))
        : Optional.of(trial.film())
            .filter(film -> FilmFigure.ELONGATION.withheld(film).isEmpty())
            .map(FilmFigure.ELONGATION::of);
  }

  private static List<OutcomePoint> places(
      List<TrialForecast> trials,
      Function<TrialForecast, Double> across,
      Function<TrialForecast, Optional<Band>> up) {
    List<OutcomePoint> places = new ArrayList<>();
    for (int i = 0; i < trials.size(); i++) {
      double x = across.apply(trials.get(i));
      Optional<Band> y = up.apply(trials.get(i)).filter(band -> Double.isFinite(band.middle()));
      if (Double.isFinite(x) && y.isPresent()) {
        places.add(new OutcomePoint(i + 1, trials.get(i), x, y.get()));
      }
    }
    return places;
  }

  private static Optional<Scatter> figure(
      String title, String across, String up, List<OutcomePoint> places) {
    if (places.size() < 2) {
      return Optional.empty();
    }
    Scale x =
        scale(
            places.stream().mapToDouble(OutcomePoint::across),
            Scatter.LEFT + 12,
            Scatter.RIGHT - 8);
    Scale y =
        scale(
            places.stream().flatMapToDouble(place -> place.up().points()).filter(Double::isFinite),
            Scatter.BOTTOM - 6,
            Scatter.TOP + 6);
    List<Scatter.Point> points = new ArrayList<>();
    List<double[]> marks = places.stream().map(place -> mark(place, x, y)).toList();
    NumberPlaces numbers = new NumberPlaces(marks);
    StringBuilder words = new StringBuilder();
    for (OutcomePoint place : places) {
      String said =
          "%s: %s against %s, %s; %s"
              .formatted(
                  place.trial().trial().name(),
                  Figures.two(place.across()),
                  Figures.two(place.up().middle()),
                  place.up().low() < place.up().high() ? "forecast" : "measured",
                  judged(place.trial()));
      words.append(said).append(". ");
      String number = Integer.toString(place.number());
      NumberPlaces.Offset offset = numbers.next(mark(place, x, y), number.length());
      points.add(
          new Scatter.Point(
              x.place(place.across()),
              y.place(place.up().middle()),
              y.place(place.up().low()),
              y.place(place.up().high()),
              number,
              offset.dx(),
              offset.dy(),
              offset.far(),
              kind(place.trial()),
              !place.trial().seen().faults().isEmpty(),
              said));
    }
    return Optional.of(
        new Scatter(
            title,
            across + ", against " + up + ". " + words.toString().strip(),
            Axis.of(across, x, TICKS),
            Axis.of(up, y, TICKS),
            points));
  }

  private static double[] mark(OutcomePoint place, Scale x, Scale y) {
    return new double[] {x.at(place.across()), y.at(place.up().middle())};
  }

  private static Scale scale(DoubleStream values, double first, double last) {
    double[] all = values.toArray();
    double low = DoubleStream.of(all).min().orElse(0);
    double high = DoubleStream.of(all).max().orElse(1);
    if (TimeScale.isWide(low, high)) {
      return Scale.logarithmic(low / 1.1, high * 1.1, first, last);
    }
    // Values that are told as the same figure stand side by side, not at the ends of the axis.
    double margin = Math.max(0.06 * (high - low), 0.2 * Math.max(high, 1e-9));
    return Scale.linear(Math.max(0, low - margin), high + margin, first, last);
  }

  private static String kind(TrialForecast trial) {
    OptionalInt rating = trial.seen().rating();
    return rating.isEmpty()
        ? "unrated"
        : rating.getAsInt() >= GOOD_FROM ? "good" : rating.getAsInt() <= BAD_UP_TO ? "bad" : "fair";
  }

  private static String judged(TrialForecast trial) {
    OptionalInt rating = trial.seen().rating();
    return (rating.isEmpty() ? "not rated" : "rated " + rating.getAsInt() + " of 5")
        + (trial.seen().faults().isEmpty() ? "" : ", with a fault");
  }
}
