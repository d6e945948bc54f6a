package starchfilm.drying;

import java.util.ArrayList;
import java.util.List;
import starchfilm.air.PlateTransfer;
import starchfilm.evidence.Source;

/** What every drying forecast rests on, besides the film's own isotherm. */
public final class DryingSources {
  private DryingSources() {}

  /**
   * The sources of air side, diffusion and risks.
   *
   * @return in the order in which a forecast meets them
   */
  public static List<Source> all() {
    List<Source> sources = new ArrayList<>(PlateTransfer.sources());
    sources.addAll(WaterDiffusivity.SOURCES);
    sources.add(CrackRisk.SOURCE);
    sources.add(MouldGrowth.SOURCE);
    return List.copyOf(sources);
  }
}
