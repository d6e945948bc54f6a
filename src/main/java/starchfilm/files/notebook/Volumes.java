package starchfilm.files.notebook;

import java.util.Optional;
import java.util.function.Consumer;
import starchfilm.material.recipe.Composition;
import starchfilm.numerics.evidence.Estimate;

/** Reads an ingredient that was weighed, or measured in a jug. */
public final class Volumes {
  /** Density of water out of the tap (kg/m3). */
  static final double WATER = Composition.WATER_KG_PER_M3;

  /** Relative standard uncertainty of a kitchen jug or spoon; judged, no source. */
  private static final double JUG_RELATIVE_SD = 0.03;

  private Volumes() {}

  /**
   * The field of an ingredient's volume, which stands in place of its mass.
   *
   * @param massField the path of the field of its mass; any other field is its own
   */
  public static String field(String massField) {
    return massField.replace("mass_g", "volume_ml");
  }

  /** A volume measured in a kitchen jug or spoon, with the doubt of that. */
  public static Estimate jug(Estimate measured) {
    double sd = Math.hypot(measured.sd(), JUG_RELATIVE_SD * measured.value());
    return new Estimate(measured.value(), sd);
  }

  /**
   * The mass, weighed or from the volume; empty where neither is known.
   *
   * @return kg
   */
  static Optional<Estimate> massKg(ObjectReader section, double densityKgPerM3) {
    return massKg(section, Estimate.exact(densityKgPerM3), byVolumeKg -> {});
  }

  /** The same, or what is assumed where neither is known, which is stated in these words. */
  static Estimate massKg(
      ObjectReader section, double densityKgPerM3, Estimate assumed, String words) {
    return massKg(section, densityKgPerM3)
        .orElseGet(() -> section.assumed("mass_g", assumed, words));
  }

  /** A mass where the density (kg/m3) is so uncertain that its reader says so of a volume. */
  static Optional<Estimate> massKg(
      ObjectReader section, Estimate densityKgPerM3, Consumer<Estimate> byVolumeKg) {
    Optional<Estimate> spooned = section.volumeIn("mass_g", "volume_ml");
    Optional<Estimate> massKg = spooned.isPresent() ? Optional.empty() : section.amount("mass_g");
    Optional<Estimate> volumeM3 = spooned.or(() -> section.amount("volume_ml"));
    if (massKg.isPresent()) {
      if (volumeM3.isPresent()) {
        section.notice("volume_ml", "not used, because mass_g is given and more reliable");
      }
      return massKg;
    }
    Optional<Estimate> measuredKg =
        volumeM3.map(volume -> volume.times(densityKgPerM3)).map(Volumes::jug);
    measuredKg.ifPresent(byVolumeKg);
    return measuredKg;
  }
}
