package starchfilm.learning;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.ConstantRoom;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.Plate;
import starchfilm.casting.PlateMaterial;
import starchfilm.casting.Pour;
import starchfilm.casting.Room;
import starchfilm.casting.RoomUncertainty;
import starchfilm.casting.Spot;
import starchfilm.casting.trial.EachPlate;
import starchfilm.casting.trial.Observations;
import starchfilm.casting.trial.PullTest;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.Wanted;
import starchfilm.casting.trial.Weighing;
import starchfilm.drying.DryingForecaster;
import starchfilm.drying.Milestone;
import starchfilm.drying.PlateSimulation;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.material.air.AirState;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Cook;
import starchfilm.material.recipe.GlycerolPortion;
import starchfilm.material.recipe.GlycerolStock;
import starchfilm.material.recipe.Paste;
import starchfilm.material.recipe.Recipe;
import starchfilm.material.recipe.StarchPortion;
import starchfilm.material.recipe.VinegarPortion;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;

/** Plates that were never cast: trials made up from a seed, dried by the model itself. */
final class SyntheticPlates {
  private static final double SCALE_STEP_KG = 0.5e-3;
  static final double SCALE_SD_KG = SCALE_STEP_KG / Math.sqrt(12);
  private static final StarchKind[] KINDS = {
    StarchKind.POTATO, StarchKind.TAPIOCA, StarchKind.CORN
  };

  private static final int FORECAST_DRAWS = 200;

  private final Random random;
  private int made;

  SyntheticPlates(long seed) {
    random = new Random(seed);
  }

  double gaussian() {
    return random.nextGaussian();
  }

  /** A trial of 150 g or more in a constant room, weighed pour, nothing dried yet. */
  Trial any(String... rooms) {
    String roomName = rooms[random.nextInt(rooms.length)];
    Room room =
        new ConstantRoom(
            new AirState(
                288.15 + 10 * random.nextDouble(), 0.35 + 0.25 * random.nextDouble(), 0.1));
    return trial(
        roomName,
        room,
        KINDS[random.nextInt(KINDS.length)],
        0.150 + 0.150 * random.nextDouble(),
        0.05 + 0.04 * random.nextDouble());
  }

  Trial trial(String roomName, Room room, StarchKind kind, double pouredKg, double starchShare) {
    Plate plate = new Plate(PlateMaterial.GLASS, 0.3, 0.2, 0.004, 0);
    Estimate gram = new Estimate(0, SCALE_SD_KG);
    Recipe recipe =
        new Recipe(
            List.of(
                new StarchPortion(
                    kind, new Estimate(starchShare, SCALE_SD_KG), Estimate.exact(0.14))),
            new GlycerolPortion(
                new Estimate(0.3 * starchShare, SCALE_SD_KG),
                new GlycerolStock(Estimate.exact(0.99), Estimate.exact(0))),
            new VinegarPortion(Estimate.exact(0), Estimate.exact(0.05)),
            new Estimate(1 - 1.3 * starchShare, SCALE_SD_KG),
            Estimate.exact(0),
            new Cook(Estimate.exact(600), Estimate.exact(363.15), gram.plus(Estimate.exact(0.05))));
    double density = Paste.cooked(recipe).composition().pasteDensityKgPerM3();
    Estimate poured = new Estimate(pouredKg, SCALE_SD_KG);
    made++;
    return new Trial(
        Path.of("plate-" + made + ".json"),
        "plate " + made,
        true,
        Optional.empty(),
        Wanted.NOTHING,
        Optional.empty(),
        recipe,
        Casting.of(
            recipe,
            plate,
            new Pour(
                poured.times(1 / (density * plate.areaM2())), 0.25, 333.15, Optional.of(poured), 1),
            List.of(),
            new DryingPlace(roomName, room, RoomUncertainty.NONE, OptionalDouble.empty()),
            Castings.use(0.5, 20, 0)),
        Castings.observed(List.of(), List.of(), List.of(), OptionalInt.empty()),
        List.of());
  }

  /** The same trial with its weighings. */
  static Trial weighed(Trial trial, List<Weighing> weighings) {
    return with(trial, trial.file(), weighings, trial.seen().pulls());
  }

  /** The same trial in a file of its own, with weighings and strips. */
  static Trial with(Trial trial, Path file, List<Weighing> weighings, List<PullTest> pulls) {
    return with(trial, file, weighings, pulls, EachPlate.NOTHING);
  }

  /** The same with what is noted of single plates. */
  static Trial with(
      Trial trial, Path file, List<Weighing> weighings, List<PullTest> pulls, EachPlate plates) {
    return new Trial(
        file,
        trial.name(),
        trial.invented(),
        Optional.empty(),
        Wanted.NOTHING,
        trial.pouredAt(),
        trial.recipe(),
        trial.casting(),
        new Observations(
            weighings,
            trial.seen().faults(),
            pulls,
            trial.seen().dryThicknessesM(),
            trial.seen().rating(),
            trial.seen().remarks(),
            trial.seen().photos(),
            Map.of(),
            plates),
        trial.notRecorded());
  }

  /** The same trial, poured on a day. */
  static Trial poured(Trial trial, LocalDateTime at) {
    return new Trial(
        trial.file(),
        trial.name(),
        trial.invented(),
        trial.from(),
        trial.wanted(),
        Optional.of(at),
        trial.recipe(),
        trial.casting(),
        trial.seen(),
        trial.notRecorded());
  }

  /** When the thick spot of a plate is dry through in a case (s). */
  static double dryThroughS(Trial trial, ParameterSample truth) {
    return dryThroughS(trial, truth, Spot.THICK_SPOT);
  }

  /** The same of any spot. */
  static double dryThroughS(Trial trial, ParameterSample truth, Spot spot) {
    return new PlateSimulation(trial.casting()).milestoneS(Milestone.DRY_THROUGH, spot, truth);
  }

  /** Dries a plate in a case and weighs it at shares of its drying time, to half a gram. */
  static Trial dried(Trial trial, ParameterSample truth, double... sharesOfDryTime) {
    double dryS = dryThroughS(trial, truth);
    double[] timesS = Arrays.stream(sharesOfDryTime).map(share -> share * dryS).toArray();
    double[] masses = new double[timesS.length];
    new PlateSimulation(trial.casting(), timesS).filmMassesKg(truth, masses);
    List<Weighing> weighings = new ArrayList<>();
    for (int i = 0; i < timesS.length; i++) {
      double shown = Math.rint(masses[i] / SCALE_STEP_KG) * SCALE_STEP_KG;
      weighings.add(new Weighing(timesS[i], shown, SCALE_SD_KG));
    }
    return weighed(trial, weighings);
  }

  /**
   * Forecast of a plate's dry-through in the thick spot (s) after what others taught and its own
   * weighings.
   */
  static Band forecast(Trial trial, SharedParameters shared) {
    return forecast(trial, shared, Spot.THICK_SPOT);
  }

  /** The same of any spot. */
  static Band forecast(Trial trial, SharedParameters shared, Spot spot) {
    PlateModel plate = new PlateModel(trial, trial.seen().weighings());
    Normal known = plate.before(shared);
    if (!trial.seen().weighings().isEmpty()) {
      known = PlateFit.of(plate.readings(), known).posterior(known);
    }
    return DryingForecaster.ofOnePlate(plate.model(known), FORECAST_DRAWS)
        .forecast(trial.casting(), spot)
        .at(Milestone.DRY_THROUGH)
        .timeS();
  }
}
