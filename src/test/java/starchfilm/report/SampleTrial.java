package starchfilm.report;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.Plate;
import starchfilm.casting.PlateMaterial;
import starchfilm.casting.Pour;
import starchfilm.casting.RoomUncertainty;
import starchfilm.casting.Spot;
import starchfilm.casting.trial.EachPlate;
import starchfilm.casting.trial.NotRecorded;
import starchfilm.casting.trial.Observations;
import starchfilm.casting.trial.ObservedFault;
import starchfilm.casting.trial.ObservedFault.FaultKind;
import starchfilm.casting.trial.ObservedFault.FaultPlace;
import starchfilm.casting.trial.PullTest;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.Wanted;
import starchfilm.casting.trial.Weighing;
import starchfilm.change.Change;
import starchfilm.change.ChangeStep;
import starchfilm.change.NoEffectReason;
import starchfilm.change.PropertyEffect;
import starchfilm.change.Remedies;
import starchfilm.change.Rerun;
import starchfilm.change.Sensitivity;
import starchfilm.change.TrialAnalysis;
import starchfilm.drying.CurvePoint;
import starchfilm.drying.DryingForecast;
import starchfilm.drying.DryingVerdict;
import starchfilm.drying.Milestone;
import starchfilm.drying.MilestoneForecast;
import starchfilm.drying.SpotForecast;
import starchfilm.drying.SpreadDriver;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.film.AcidEffect;
import starchfilm.film.Feel;
import starchfilm.film.FeelChances;
import starchfilm.film.FilmCaution;
import starchfilm.film.FilmForecast;
import starchfilm.film.FilmProperty;
import starchfilm.film.Withheld;
import starchfilm.film.risk.CrackRisk;
import starchfilm.film.risk.CurlRisk;
import starchfilm.film.risk.MouldRisk;
import starchfilm.film.risk.PlateRisks;
import starchfilm.film.risk.RiskLevel;
import starchfilm.forecast.PlateParameters;
import starchfilm.forecast.TrialForecast;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Cook;
import starchfilm.material.recipe.GlycerolOrigin;
import starchfilm.material.recipe.GlycerolPortion;
import starchfilm.material.recipe.GlycerolStock;
import starchfilm.material.recipe.Ingredient;
import starchfilm.material.recipe.Recipe;
import starchfilm.material.recipe.StarchPortion;
import starchfilm.material.recipe.VinegarPortion;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.evidence.Extrapolation;
import starchfilm.numerics.evidence.Source;
import starchfilm.numerics.evidence.ValidRange;

/**
 * A trial with its forecast, made by hand: the pages show whatever the rooms below found, so the
 * figures here need only be of the right kind.
 */
final class SampleTrial {
  static final double DAY_S = 86_400;

  String name = "Potato, first pour";
  String remark = "Clear, but the middle took for ever.";
  StarchKind kind = StarchKind.POTATO;
  double starchG = 40;
  double glycerolG = 12;
  double vinegarG = 20;
  double wetMm = 3.0;
  double dryThroughDays = 6.4;
  DryingVerdict verdict = DryingVerdict.DRIES;
  Feel feel = Feel.FLEXIBLE;
  Optional<LocalDateTime> pouredAt = Optional.of(LocalDateTime.of(2026, 4, 13, 18, 30));
  boolean tried = true;
  Map<FilmProperty, Withheld> withheld = Map.of();
  List<Path> photos = List.of();

  static SampleTrial named(String name) {
    SampleTrial sample = new SampleTrial();
    sample.name = name;
    return sample;
  }

  TrialForecast forecast() {
    Trial trial = trial();
    return new TrialForecast(
        trial,
        film(),
        drying(),
        risks(1.4, 90),
        new TrialForecast.OwnWeighings(
            new PlateParameters(ParameterDistribution.textbook(), false), Optional.empty()));
  }

  TrialAnalysis analysis() {
    return new TrialAnalysis(
        forecast(),
        sensitivities(),
        new Remedies(
            Optional.of(new Rerun(step(Change.MORE_GLYCEROL, 1.5), risks(0.5, 90))),
            Optional.of(new Rerun(step(Change.POUR_THINNER, 0.75), risks(1.4, 55)))));
  }

  private ChangeStep step(Change change, double times) {
    Casting casting = trial().casting();
    double to = times * change.setting().of(casting);
    return new ChangeStep(change, casting, change.setting().set(casting, to));
  }

  private static PlateRisks risks(double energyOverToughness, double mouldHours) {
    return new PlateRisks(
        new CrackRisk(RiskLevel.LIKELY, energyOverToughness, 0.2e-3, 0.28e-3, false),
        new CurlRisk(RiskLevel.LIKELY, 1.6, OptionalDouble.of(2 * DAY_S), 0.04, 0.12, 0.02),
        new MouldRisk(RiskLevel.WATCH, mouldHours, 4 * DAY_S));
  }

  private List<Sensitivity> sensitivities() {
    return List.of(
        sensitivity(Ingredient.STARCH, 0.048, 1.1, 1.02),
        sensitivity(Ingredient.GLYCEROL, 0.014, 1.1, 1.01),
        sensitivity(Ingredient.VINEGAR, vinegarG > 0 ? 0.0013 : 0, 2, 1),
        sensitivity(Ingredient.WATER, 0.93, 1.1, 0.98));
  }

  private Sensitivity sensitivity(Ingredient ingredient, double from, double times, double drying) {
    List<PropertyEffect> effects =
        Arrays.stream(FilmProperty.values())
            .map(
                property ->
                    new PropertyEffect(
                        property,
                        200,
                        210,
                        ingredient == Ingredient.VINEGAR && property != FilmProperty.PASTE_PH
                            ? Optional.of(NoEffectReason.ACID_LEAVES)
                            : Optional.empty()))
            .toList();
    double to = from == 0 ? 0.005 : from * times;
    return new Sensitivity(
        ingredient, from, to, dryThroughDays * DAY_S, drying * dryThroughDays * DAY_S, effects);
  }

  private Trial trial() {
    Recipe recipe =
        new Recipe(
            List.of(
                new StarchPortion(
                    kind, grams(starchG, 0.3), new Estimate(kind.powderMoisture().value(), 0.01))),
            new GlycerolPortion(
                grams(glycerolG, 0.3),
                new GlycerolStock(
                    new Estimate(0.88, 0.03), new Estimate(0.03, 0.01), GlycerolOrigin.RECOVERED)),
            new VinegarPortion(grams(vinegarG, 0.5), Estimate.exact(0.05)),
            grams(700, 5),
            Estimate.exact(0),
            new Cook(new Estimate(900, 120), new Estimate(363.15, 2), grams(45, 20)));
    return new Trial(
        Path.of("garden", "trial-1.json"),
        name,
        true,
        Optional.empty(),
        Wanted.NOTHING,
        pouredAt,
        recipe,
        Casting.of(
            recipe,
            new Plate(PlateMaterial.GLASS, 0.3, 0.2, 0.004, 0),
            new Pour(
                new Estimate(wetMm / 1e3, 0.1e-3),
                Pour.DEFAULT_UNEVENNESS,
                333.15,
                Optional.empty(),
                2),
            List.of(),
            new DryingPlace(
                "kitchen",
                Castings.room(21, 50, 0.1),
                RoomUncertainty.NONE,
                OptionalDouble.empty()),
            Castings.use(0.5, 21, 14)),
        new Observations(
            tried ? weighings() : List.of(),
            tried
                ? List.of(
                    new ObservedFault(
                        FaultKind.STILL_WET,
                        FaultPlace.MIDDLE,
                        OptionalDouble.of(5 * DAY_S),
                        Optional.of(remark)))
                : List.of(),
            tried ? List.of(new PullTest(9.5, 0.015, 0.00011, OptionalDouble.of(0.4))) : List.of(),
            tried ? List.of(0.00011, 0.000125) : List.of(),
            tried ? OptionalInt.of(3) : OptionalInt.empty(),
            tried ? List.of(remark) : List.of(),
            photos,
            Map.of(),
            EachPlate.NOTHING),
        List.of(
            new NotRecorded(
                "cook.water_lost_g",
                "water lost in the pot",
                "6 % of the water, give or take half of that",
                "widens the dry thickness by about 4 %")));
  }

  private List<Weighing> weighings() {
    double wetKg = wetMm / 1e3 * 0.06 * 1020;
    return List.of(
        new Weighing(0.5 * DAY_S, 0.86 * wetKg, 0.0005),
        new Weighing(1.5 * DAY_S, 0.62 * wetKg, 0.0005),
        new Weighing(3 * DAY_S, 0.30 * wetKg, 0.0005));
  }

  private FilmForecast film() {
    return new FilmForecast(
        Band.logNormal(0.14, 1.15),
        Band.logNormal(40e-6 * wetMm, 1.1),
        Band.normal(290, 15),
        Band.logNormal(6.2e6, 1.9),
        Band.logNormal(0.45, 2),
        Band.logNormal(160e6, 3),
        Band.logNormal(2.6e-13, 2.7),
        new AcidEffect(2.9, Band.logNormal(1.3e-4, 3), new Band(0.85, 0.94, 0.98)),
        feel,
        new FeelChances(12, 20, 0, false),
        withheld,
        List.of(FilmCaution.SALT_NOTICEABLE),
        List.of(
            new Extrapolation(
                "elongation at break", new ValidRange("relative humidity", 43, 60, "%"), 72)),
        List.of(
            new Source("Lourdin 1997, Polymer 38:5401", Check.READ),
            new Source("assumed, no source", Check.JUDGED)));
  }

  private DryingForecast drying() {
    Map<Spot, SpotForecast> spots = new EnumMap<>(Spot.class);
    for (Spot spot : Spot.values()) {
      double ratio = spot.thicknessRatio(Pour.DEFAULT_UNEVENNESS);
      double dry = dryThroughDays / 1.25 * ratio * DAY_S;
      Map<Milestone, MilestoneForecast> milestones = new EnumMap<>(Milestone.class);
      milestones.put(Milestone.SKIN_DRY, milestone(0.78 * dry));
      milestones.put(Milestone.PEELABLE, milestone(0.86 * dry));
      milestones.put(Milestone.DRY_THROUGH, milestone(dry));
      spots.put(
          spot, new SpotForecast(spot, ratio * wetMm / 1e3, ratio * 40e-6 * wetMm, milestones));
    }
    return new DryingForecast(
        spots,
        curve(),
        14.5,
        0.16,
        0.5,
        verdict,
        List.of(
            new SpreadDriver(UncertainParameter.AIR_SIDE, 0.61),
            new SpreadDriver(UncertainParameter.HUMIDITY, 0.24),
            new SpreadDriver(UncertainParameter.THICKNESS, 0.1),
            new SpreadDriver(UncertainParameter.SOLIDS, 0.01)),
        List.of(),
        false);
  }

  private MilestoneForecast milestone(double seconds) {
    boolean comes = verdict == DryingVerdict.DRIES;
    double never = Double.POSITIVE_INFINITY;
    return new MilestoneForecast(
        comes ? Band.logNormal(seconds, 1.25) : new Band(never, never, never), comes ? 1 : 0);
  }

  private List<CurvePoint> curve() {
    List<CurvePoint> points = new ArrayList<>();
    double constantS = 0.8 * dryThroughDays / 1.25 * DAY_S;
    for (int i = 0; i <= 60; i++) {
      double time = 2.2 * constantS * i / 60;
      points.add(
          new CurvePoint(
              time,
              new Band(
                  moisture(time, 0.75 * constantS),
                  moisture(time, constantS),
                  moisture(time, 1.3 * constantS)),
              moisture(time, 0.75 * constantS),
              moisture(time, 1.25 * constantS)));
    }
    return points;
  }

  /** A straight fall that bends into the moisture the film keeps. */
  private static double moisture(double time, double constantS) {
    double line = 1 - time / constantS;
    double smooth = 0.5 * (line + Math.sqrt(line * line + 0.004));
    return 0.16 + (14.5 - 0.16) * Math.min(1, smooth);
  }

  private static Estimate grams(double grams, double sd) {
    return new Estimate(grams / 1e3, sd / 1e3);
  }
}
