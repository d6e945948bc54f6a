package starchfilm.change;

import java.util.List;
import java.util.Map;
import starchfilm.casting.Casting;
import starchfilm.casting.PlateMaterial;
import starchfilm.material.ingredient.StarchKind;

/** The castings worth trying where something else than a figure is changed. */
final class Other {
  /** Film clings to a plate from here on, see {@link PlateMaterial#grip()}. */
  private static final double CLINGS_FROM = 0.3;

  /** Less of a starch than this does not cloud a film (share). */
  private static final double TRACE = 0.02;

  private Other() {}

  static List<Casting> clearerStarch(Casting casting) {
    Map<StarchKind, Double> now = casting.composition().starchShares();
    double clear =
        now.getOrDefault(StarchKind.TAPIOCA, 0.0) + now.getOrDefault(StarchKind.POTATO, 0.0);
    return clear >= 1 - TRACE
        ? List.of()
        : List.of(
            casting.with(casting.composition().withStarches(Map.of(StarchKind.TAPIOCA, 1.0))));
  }

  static List<Casting> onThePlate(Casting casting) {
    return casting.faces().isEmpty() ? List.of() : List.of(casting.with(List.of()));
  }

  static List<Casting> slipperyPlate(Casting casting) {
    return onto(casting, PlateMaterial.POLYPROPYLENE);
  }

  static List<Casting> clingingPlate(Casting casting) {
    return onto(casting, PlateMaterial.GLASS);
  }

  private static List<Casting> onto(Casting casting, PlateMaterial to) {
    return clings(casting.plate().material()) == clings(to)
        ? List.of()
        : List.of(casting.with(casting.plate().of(to)));
  }

  private static boolean clings(PlateMaterial material) {
    return material.grip() >= CLINGS_FROM;
  }
}
