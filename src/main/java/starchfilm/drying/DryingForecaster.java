package starchfilm.drying;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import starchfilm.casting.Casting;
import starchfilm.casting.Spot;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.Quantiles;
import starchfilm.material.recipe.Composition;
import starchfilm.material.wetfilm.WaterDiffusivity;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Extrapolation;
import starchfilm.numerics.evidence.ValidRange;
import starchfilm.numerics.units.Units;

/**
 * Forecasts how a plate dries: solves its three spots in many likely cases and gives the 10, 50 and
 * 90 % points.
 *
 * <p>The cases come from a {@link ParameterDistribution}; the same model, count and plate give the
 * same forecast on every machine and with any number of threads. Immutable; safe to share.
 */
public final class DryingForecaster {
  /** Nothing is followed longer than this: 60 days. */
  public static final double HORIZON_S = 60 * 86_400.0;

  /**
   * Likely cases of a forecast, the same wherever one is made; {@link LikelyCases} takes half as
   * many where little is open, three times as many where a film may stay soft. Against 4096 evenly
   * spread cases of 44 random plates and 20 in logged rooms, the ends are off by 2.3 and 3.5 % and
   * the middle by 2.3 % (root mean square of the worst milestone of each spot).
   */
  public static final int DRAWS = 16;

  /**
   * Frost that a wet film is forecast with (K s): an hour at 1 K below freezing makes some 5 % of a
   * pour of 3 mm ice at 15 W/(m2 K); judged, no source.
   */
  private static final double MOST_FROST_KS = 3600;

  private static final ValidRange UNFROZEN =
      new ValidRange("temperature of the wet film", 0, 100, "\u00B0C");

  /** How much of the curve is drawn where nothing dries: 20 days. */
  private static final double DAMP_CURVE_S = 20 * 86_400.0;

  private static final Band NEVER =
      new Band(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
  private static final int CURVE_POINTS = 72;
  private static final int DRAWS_PER_TASK = 8;
  private static final double CURVE_BEYOND_DRY = 1.1;

  private final ParameterDistribution factors;
  private final int draws;
  private final boolean ofThisPlate;

  /**
   * A forecaster of any plate: what a plate's paste, pour and room leave uncertain is added.
   *
   * @param factors what is known of the factors
   * @param draws how many likely cases to solve; fewer than {@link #DRAWS} make no good band
   */
  public DryingForecaster(ParameterDistribution factors, int draws) {
    this(factors, draws, false);
  }

  private DryingForecaster(ParameterDistribution factors, int draws, boolean ofThisPlate) {
    if (draws < 1) {
      throw new IllegalArgumentException("a forecast needs at least 1 draw, not " + draws);
    }
    this.factors = factors;
    this.draws = draws;
    this.ofThisPlate = ofThisPlate;
  }

  /**
   * A forecaster of one plate whose own uncertainty the factors hold already, as after its
   * weighings; nothing is added.
   *
   * @param factors what is known of that plate, see {@link PlateSimulation#doubted}
   * @param draws how many likely cases to solve
   * @return the forecaster
   */
  public static DryingForecaster ofOnePlate(ParameterDistribution factors, int draws) {
    return new DryingForecaster(factors, draws, true);
  }

  /**
   * Forecasts one plate.
   *
   * @param drying the plate
   * @return when it is dry, with bands
   */
  public DryingForecast forecast(Casting drying) {
    PreparedCase prepared = PreparedCase.of(drying);
    SpotSolution middle = middle(prepared, factors);
    ParameterDistribution model = forCase(prepared, middle);
    LikelyCases likely = new LikelyCases(prepared, model, draws);
    ParameterSample[] cases = likely.cases();

    SpotSolution[] edge = solve(prepared, Spot.THIN_EDGE, cases);
    SpotSolution[] thick = solve(prepared, Spot.THICK_SPOT, cases);
    double[] curveTimesS = curveTimes(thick, likely);
    SpotSolution[] nominal = solve(prepared, Spot.NOMINAL, cases, curveTimesS);

    SpotForecast thickSpot = spotForecast(drying, Spot.THICK_SPOT, thick, likely, middle);
    return new DryingForecast(
        Map.of(
            Spot.THIN_EDGE,
            spotForecast(drying, Spot.THIN_EDGE, edge, likely, middle),
            Spot.NOMINAL,
            spotForecast(drying, Spot.NOMINAL, nominal, likely, middle),
            Spot.THICK_SPOT,
            thickSpot),
        curve(
            curveTimesS,
            nominal,
            solveOne(prepared, Spot.THIN_EDGE, model.mean(), curveTimesS),
            solveOne(prepared, Spot.THICK_SPOT, model.mean(), curveTimesS)),
        middle.startMoisture,
        middle.restingMoisture,
        middle.restingActivity,
        DryingVerdict.ofBest(edge, nominal, thick),
        SpreadDrivers.of(model, likely.slopes()),
        extrapolations(prepared, middle),
        drying.room().knownUntilS() < thickSpot.at(Milestone.DRY_THROUGH).timeS().high());
  }

  /**
   * Forecasts one spot of a plate and nothing else; the figures are those of {@link
   * #forecast(Casting)}.
   *
   * @param drying the plate
   * @param spot which spot of it
   * @return when it is dry, with bands
   */
  public SpotForecast forecast(Casting drying, Spot spot) {
    PreparedCase prepared = PreparedCase.of(drying);
    SpotSolution middle = middle(prepared, factors);
    LikelyCases likely = new LikelyCases(prepared, forCase(prepared, middle), draws);
    return spotForecast(drying, spot, solve(prepared, spot, likely.cases()), likely, middle);
  }

  /**
   * When the milestones come in the middle case alone, every factor at its most likely value: one
   * solve, for holding plates against each other.
   *
   * @param drying the plate
   * @param spot which spot of it
   * @return time since the pour (s) of each; positive infinity where it does not come
   */
  public ToDoubleFunction<Milestone> middleCaseS(Casting drying, Spot spot) {
    return solveOne(PreparedCase.of(drying), spot, factors.mean())::at;
  }

  /**
   * When one spot is peelable and dry through in every likely case, and nothing else: what a search
   * asks again and again. A plate that differs only in its pour is compared case by case, so the
   * times rise smoothly with its thickness.
   *
   * @param drying the plate
   * @param spot which of its spots
   * @return a sample of the time since the pour (s); positive infinity where it is not ready within
   *     {@link #HORIZON_S}
   */
  public double[] readyS(Casting drying, Spot spot) {
    PreparedCase prepared = PreparedCase.of(drying);
    ParameterDistribution model = forCase(prepared, middle(prepared, factors));
    LikelyCases likely = new LikelyCases(prepared, model, draws);
    return LikelyCases.sample(
        Arrays.stream(solve(prepared, spot, likely.cases()))
            .mapToDouble(SpotSolution::readyS)
            .toArray(),
        likely.along(spot, SpotSolution::readyS));
  }

  /** The factors with what this paste, pour and room add to their uncertainty. */
  private ParameterDistribution forCase(PreparedCase prepared, SpotSolution middle) {
    return ofThisPlate ? factors : CastingUncertainty.addedTo(factors, prepared, middle);
  }

  static SpotSolution[] solve(
      PreparedCase prepared, Spot spot, ParameterSample[] cases, double... curveTimesS) {
    SpotSolution[] traces = new SpotSolution[cases.length];
    int tasks = (cases.length + DRAWS_PER_TASK - 1) / DRAWS_PER_TASK;
    IntStream.range(0, tasks)
        .parallel()
        .forEach(
            task -> {
              SpotSolver solver = new SpotSolver(prepared, curveTimesS);
              int end = Math.min(cases.length, (task + 1) * DRAWS_PER_TASK);
              for (int i = task * DRAWS_PER_TASK; i < end; i++) {
                traces[i] = new SpotSolution();
                solver.solve(spot, cases[i], HORIZON_S, traces[i]);
              }
            });
    return traces;
  }

  /**
   * The average thickness in the middle case.
   *
   * @throws IllegalArgumentException where the wet film would freeze; a sentence for the reader
   */
  static SpotSolution middle(PreparedCase prepared, ParameterDistribution factors) {
    SpotSolution middle = solveOne(prepared, Spot.NOMINAL, factors.mean());
    if (middle.frostKs > MOST_FROST_KS) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "drying in this cold, dry air would cool the wet film to %.1f \u00b0C"
                  + " and freeze it, and the forecast does not cover ice: dry it in warmer"
                  + " or damper air",
              middle.coolestWetK - Units.ZERO_CELSIUS_K));
    }
    return middle;
  }

  static SpotSolution solveOne(
      PreparedCase prepared, Spot spot, ParameterSample deviations, double... curveTimesS) {
    SpotSolution trace = new SpotSolution();
    new SpotSolver(prepared, curveTimesS).solve(spot, deviations, HORIZON_S, trace);
    return trace;
  }

  /** Times of the curve: from the pour until a little after the thick spot is nearly surely dry. */
  private static double[] curveTimes(SpotSolution[] thick, LikelyCases likely) {
    double[] thickDryS =
        LikelyCases.sample(
            times(thick, Milestone.DRY_THROUGH),
            likely.along(Spot.THICK_SPOT, one -> one.at(Milestone.DRY_THROUGH)));
    double end = Quantiles.of(thickDryS, 0.9);
    if (Double.isInfinite(end)) {
      end = Quantiles.of(thickDryS, 0.5);
    }
    end =
        DryingVerdict.of(thick) == DryingVerdict.TOO_DAMP
            ? DAMP_CURVE_S
            : Math.min(HORIZON_S, end * CURVE_BEYOND_DRY);
    double[] times = new double[CURVE_POINTS + 1];
    for (int i = 0; i <= CURVE_POINTS; i++) {
      times[i] = end * i / CURVE_POINTS;
    }
    return times;
  }

  private static List<CurvePoint> curve(
      double[] timesS, SpotSolution[] nominal, SpotSolution edge, SpotSolution thick) {
    List<CurvePoint> points = new ArrayList<>(timesS.length);
    double[] column = new double[nominal.length];
    for (int i = 0; i < timesS.length; i++) {
      for (int draw = 0; draw < nominal.length; draw++) {
        column[draw] = nominal[draw].curve[i];
      }
      points.add(new CurvePoint(timesS[i], Quantiles.band(column), edge.curve[i], thick.curve[i]));
    }
    return points;
  }

  private static SpotForecast spotForecast(
      Casting drying, Spot spot, SpotSolution[] traces, LikelyCases likely, SpotSolution middle) {
    Composition composition = drying.composition();
    double wetM =
        drying.pour().wetThicknessM().value() * spot.thicknessRatio(drying.pour().unevenness());
    double dryM =
        wetM
            * composition.volumeM3PerKgDry(middle.restingMoisture)
            / composition.volumeM3PerKgDry(composition.waterKgPerKgDry());
    Map<Milestone, MilestoneForecast> milestones = new EnumMap<>(Milestone.class);
    DryingVerdict verdict = DryingVerdict.of(traces);
    Band band = new Band(0, 0, 0);
    for (Milestone milestone : Milestone.values()) {
      ToDoubleFunction<SpotSolution> timeS = one -> one.at(milestone);
      double[] told =
          Arrays.stream(traces)
              .mapToDouble(
                  one ->
                      verdict.tells(milestone, one.outcome())
                          ? timeS.applyAsDouble(one)
                          : Double.NaN)
              .toArray();
      double[] sample = LikelyCases.sample(told, likely.along(spot, timeS));
      if (sample.length > 0) {
        // No case reaches a milestone before the one ahead of it, so no point of the range does.
        Band own = Quantiles.band(sample);
        band =
            new Band(
                Math.max(band.low(), own.low()),
                Math.max(band.middle(), own.middle()),
                Math.max(band.high(), own.high()));
      }
      milestones.put(
          milestone,
          new MilestoneForecast(
              sample.length == 0 ? NEVER : band, Quantiles.finiteShare(times(traces, milestone))));
    }
    return new SpotForecast(spot, wetM, dryM, milestones);
  }

  static double[] times(SpotSolution[] traces, Milestone milestone) {
    return Arrays.stream(traces).mapToDouble(trace -> trace.at(milestone)).toArray();
  }

  private static List<Extrapolation> extrapolations(PreparedCase prepared, SpotSolution middle) {
    double airK = prepared.drying().room().at(0).temperatureK();
    double airC = airK - Units.ZERO_CELSIUS_K;
    List<Extrapolation> found =
        new ArrayList<>(
            prepared.material().isotherm().extrapolations(middle.restingActivity, airK));
    double speed = prepared.drying().room().at(0).speedMPerS();
    if (speed < PlateExchange.STILLEST_M_PER_S) {
      found.add(new Extrapolation("exchange with still air", PlateExchange.SPEED, speed));
    }
    if (!WaterDiffusivity.TEMPERATURE.contains(airC)) {
      found.add(new Extrapolation("diffusivity of water", WaterDiffusivity.TEMPERATURE, airC));
    }
    double coolestC = middle.coolestWetK - Units.ZERO_CELSIUS_K;
    if (coolestC < UNFROZEN.min()) {
      found.add(new Extrapolation("drying without ice", UNFROZEN, coolestC));
    }
    return found;
  }
}
