package starchfilm.advice;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.ConstantRoom;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.FaceChange;
import starchfilm.casting.Plate;
import starchfilm.casting.PlateMaterial;
import starchfilm.casting.Pour;
import starchfilm.casting.Room;
import starchfilm.casting.RoomUncertainty;
import starchfilm.casting.SwingingRoom;
import starchfilm.casting.trial.NotRecorded;
import starchfilm.casting.trial.ObservedFault;
import starchfilm.casting.trial.ObservedFault.FaultKind;
import starchfilm.casting.trial.ObservedFault.FaultPlace;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.Wanted;
import starchfilm.material.air.AirState;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Cook;
import starchfilm.material.recipe.GlycerolPortion;
import starchfilm.material.recipe.GlycerolStock;
import starchfilm.material.recipe.Recipe;
import starchfilm.material.recipe.StarchPortion;
import starchfilm.material.recipe.VinegarPortion;
import starchfilm.numerics.evidence.Estimate;

/** Trials as different as people may note them, drawn from a seed. */
final class MadeUpTrials {
  private static final double ZERO_CELSIUS_K = 273.15;
  private static final double HOUR_S = 3_600;

  private final Random random;

  private MadeUpTrials(long seed) {
    this.random = new Random(seed);
  }

  static List<Trial> drawn(long seed, int count) {
    MadeUpTrials made = new MadeUpTrials(seed);
    List<Trial> trials = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      trials.add(made.trial(i));
    }
    return trials;
  }

  /** A sound, well-noted trial with faults of choice and fields left out of choice. */
  static Trial with(List<ObservedFault> faults, List<NotRecorded> notRecorded) {
    return new MadeUpTrials(1).trial(0, 0.3, 2.5e-3, faults, notRecorded);
  }

  private Trial trial(int number) {
    List<ObservedFault> faults = new ArrayList<>();
    int count = 1 + random.nextInt(3);
    for (int i = 0; i < count; i++) {
      faults.add(
          new ObservedFault(
              any(FaultKind.values()),
              any(FaultPlace.values()),
              random.nextInt(4) == 0
                  ? OptionalDouble.empty()
                  : OptionalDouble.of(HOUR_S * between(5, 400)),
              Optional.empty()));
    }
    return trial(number, between(0, 0.9), between(0.8e-3, 9e-3), faults, List.of());
  }

  private Trial trial(
      int number,
      double glycerolPerStarch,
      double wetThicknessM,
      List<ObservedFault> faults,
      List<NotRecorded> notRecorded) {
    double starchKg = 0.02;
    StarchKind kind = any(StarchKind.values());
    double dryKg = starchKg * (1 - kind.powderMoisture().value());
    double jarKg = dryKg * glycerolPerStarch / 0.9;
    Recipe recipe =
        new Recipe(
            List.of(new StarchPortion(kind, Estimate.exact(starchKg), kind.powderMoisture())),
            new GlycerolPortion(
                Estimate.exact(jarKg),
                new GlycerolStock(Estimate.exact(0.9), Estimate.exact(between(0, 0.08)))),
            new VinegarPortion(Estimate.exact(between(0, 0.03)), Estimate.exact(0.05)),
            Estimate.exact(between(0.15, 0.6)),
            Estimate.exact(0),
            new Cook(
                Estimate.exact(60 * between(2, 40)),
                Estimate.exact(ZERO_CELSIUS_K + between(60, 100)),
                Estimate.exact(between(0, 0.03))));
    Plate plate = new Plate(any(PlateMaterial.values()), 0.3, 0.2, 0.003, 0);
    Pour pour =
        new Pour(
            new Estimate(wetThicknessM, 0.02 * wetThicknessM),
            between(0, 0.5),
            ZERO_CELSIUS_K + between(25, 80));
    Room room = room();
    List<FaceChange> faces =
        random.nextInt(4) == 0
            ? List.of(new FaceChange(HOUR_S * between(5, 60), FaceChange.OpenFaces.BOTH))
            : List.of();
    return new Trial(
        Path.of("made-up-" + number + ".json"),
        "Made up " + number,
        true,
        Optional.empty(),
        Wanted.NOTHING,
        Optional.of(LocalDateTime.of(2026, 1, 1, 12, 0).plusDays(number)),
        recipe,
        Casting.of(
            recipe,
            plate,
            pour,
            faces,
            new DryingPlace(
                "room " + number % 3, room, RoomUncertainty.NONE, OptionalDouble.empty()),
            Castings.use(between(0.25, 0.8), 20, 7)),
        Castings.observed(List.of(), faults, List.of(), OptionalInt.of(1 + random.nextInt(5))),
        notRecorded);
  }

  private Room room() {
    AirState air =
        new AirState(ZERO_CELSIUS_K + between(6, 32), between(0.2, 0.85), between(0.05, 1.5));
    return random.nextInt(4) == 0 ? new SwingingRoom(air, 3, 0.1, 0) : new ConstantRoom(air);
  }

  private double between(double from, double to) {
    return from + (to - from) * random.nextDouble();
  }

  private <E> E any(E[] values) {
    return values[random.nextInt(values.length)];
  }
}
