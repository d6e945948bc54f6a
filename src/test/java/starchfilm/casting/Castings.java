package starchfilm.casting;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import starchfilm.casting.trial.EachPlate;
import starchfilm.casting.trial.Observations;
import starchfilm.casting.trial.ObservedFault;
import starchfilm.casting.trial.PullTest;
import starchfilm.casting.trial.Weighing;
import starchfilm.material.air.AirState;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Cook;
import starchfilm.material.recipe.Paste;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.units.Units;

/** Castings to test with, in the units people speak in. */
public final class Castings {
  /** A quarter of an hour at 95 C, without steam. */
  public static final Cook COOKED = cook(15, 95);

  /** 23 C. */
  public static final double ROOM_K = 296.15;

  /** A week on, in the standard air of 50 % and 23 C. */
  public static final Use USED = use(0.5, 23, 7);

  public static final Plate GLASS = new Plate(PlateMaterial.GLASS, 0.2, 0.2, 0.004, 0);

  /** 3 mm of an 8 % rice paste with 30 g glycerol per 100 g, 20 C, 50 %, a still room. */
  public static final Casting USUAL = plate(3, paste(0.08, 0.3), room(20, 50, 0.1), 60);

  private Castings() {}

  public static Composition paste(double dryStarch, double glycerolPerDryStarch) {
    return paste(StarchKind.RICE, dryStarch, glycerolPerDryStarch);
  }

  public static Composition paste(StarchKind kind, double dryStarch, double glycerolPerDryStarch) {
    return paste(kind, dryStarch, glycerolPerDryStarch, 0, 0);
  }

  public static Composition paste(
      StarchKind kind,
      double dryStarch,
      double glycerolPerDryStarch,
      double saltPerDryStarch,
      double acid) {
    double glycerol = dryStarch * glycerolPerDryStarch;
    double salt = dryStarch * saltPerDryStarch;
    return new Composition(
        Map.of(kind, 1.0),
        dryStarch,
        glycerol,
        salt,
        acid,
        1 - dryStarch - glycerol - salt - acid,
        0);
  }

  public static Cook cook(double minutes, double celsius) {
    return new Cook(
        Estimate.exact(60 * minutes),
        Estimate.exact(celsius + Units.ZERO_CELSIUS_K),
        Estimate.exact(0));
  }

  public static Use use(double relativeHumidity, double celsius, double days) {
    return new Use(relativeHumidity, celsius + Units.ZERO_CELSIUS_K, days * Units.DAY_S);
  }

  public static Room room(double celsius, double humidityPct, double speedMPerS) {
    return new ConstantRoom(
        new AirState(celsius + Units.ZERO_CELSIUS_K, humidityPct / 100, speedMPerS));
  }

  public static Casting plate(double wetMm, Composition paste, Room room, double pasteC) {
    return plate(wetMm, paste, room, pasteC, OptionalDouble.empty(), List.of());
  }

  public static Casting plate(
      double wetMm,
      Composition paste,
      Room room,
      double pasteC,
      OptionalDouble benchC,
      List<FaceChange> faces) {
    return new Casting(
        Paste.exactly(paste),
        COOKED,
        GLASS,
        new Pour(Estimate.exact(wetMm / 1000), 0.25, pasteC + Units.ZERO_CELSIUS_K),
        faces,
        new DryingPlace(
            room,
            benchC.isPresent()
                ? OptionalDouble.of(benchC.getAsDouble() + Units.ZERO_CELSIUS_K)
                : OptionalDouble.empty()),
        USED);
  }

  /** A fresh film, 2 mm wet, well cooked, in air of 50 % and 23 C. */
  public static Casting film(Composition paste) {
    return filmIn(0.5, paste);
  }

  /** The same in air of another humidity (ratio). */
  public static Casting filmIn(double relativeHumidity, Composition paste) {
    return USUAL.with(paste).pouredTo(2e-3).with(new Use(relativeHumidity, ROOM_K, 0));
  }

  /** What was seen of a casting. */
  public static Observations observed(
      List<Weighing> weighings,
      List<ObservedFault> faults,
      List<PullTest> pulls,
      OptionalInt rating) {
    return new Observations(
        weighings,
        faults,
        pulls,
        List.of(),
        rating,
        List.of(),
        List.of(),
        Map.of(),
        EachPlate.NOTHING);
  }
}
