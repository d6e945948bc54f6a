package starchfilm.casting;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import starchfilm.material.air.AirState;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.units.Units;

/** Plates to test with, in the units people speak in. */
public final class Plates {
  /** 3 mm of an 8 % rice paste with 30 g glycerol per 100 g, 20 C, 50 %, a still room. */
  public static final DryingCase USUAL = plate(3, paste(0.08, 0.3), room(20, 50, 0.1), 60);

  private Plates() {}

  public static Composition paste(double dryStarch, double glycerolPerDryStarch) {
    return paste(StarchKind.RICE, dryStarch, glycerolPerDryStarch);
  }

  public static Composition paste(StarchKind kind, double dryStarch, double glycerolPerDryStarch) {
    double glycerol = dryStarch * glycerolPerDryStarch;
    return new Composition(Map.of(kind, 1.0), dryStarch, glycerol, 0, 0, 1 - dryStarch - glycerol);
  }

  public static Room room(double celsius, double humidityPct, double speedMPerS) {
    return new ConstantRoom(
        new AirState(celsius + Units.ZERO_CELSIUS_K, humidityPct / 100, speedMPerS));
  }

  public static DryingCase plate(double wetMm, Composition paste, Room room, double pasteC) {
    return plate(wetMm, paste, room, pasteC, OptionalDouble.empty(), List.of());
  }

  public static DryingCase plate(
      double wetMm,
      Composition paste,
      Room room,
      double pasteC,
      OptionalDouble benchC,
      List<FaceChange> faces) {
    return new DryingCase(
        paste,
        0,
        0,
        new Plate(PlateMaterial.GLASS, 0.2, 0.2, 0.004, 0),
        new Pour(Estimate.exact(wetMm / 1000), 0.25, pasteC + Units.ZERO_CELSIUS_K),
        room,
        benchC.isPresent()
            ? OptionalDouble.of(benchC.getAsDouble() + Units.ZERO_CELSIUS_K)
            : OptionalDouble.empty(),
        faces);
  }
}
