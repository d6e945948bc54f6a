package starchfilm.drying;

import java.util.ArrayList;
import java.util.List;
import starchfilm.material.air.PlateTransfer;
import starchfilm.material.wetfilm.WaterDiffusivity;
import starchfilm.numerics.evidence.Source;

/** What every drying forecast rests on, besides the film's own isotherm and its risks. */
public final class DryingSources {
  private DryingSources() {}

  /**
   * The sources of air side and diffusion.
   *
   * @return in the order in which a forecast meets them
   */
  public static List<Source> all() {
    List<Source> sources = new ArrayList<>(PlateTransfer.sources());
    sources.addAll(WaterDiffusivity.SOURCES);
    return List.copyOf(sources);
  }
}
