package starchfilm.planning;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import starchfilm.numerics.figures.Figures;

/**
 * A series of pours that differ in one thing, ready to be weighed out.
 *
 * @param request what was asked of every group
 * @param series the one thing and its values
 * @param groups in the order of the values
 * @param order in which order the pots are cooked and poured: places of groups, from 0
 * @param shows whether the difference will show against the scatter of plates, for each thing that
 *     can be measured
 */
public record Series(
    PlanRequest request,
    SeriesRequest series,
    List<Group> groups,
    List<Integer> order,
    List<TrendPower> shows) {
  /**
   * A group: one pot, poured on its plates.
   *
   * @param name what it is called
   * @param asked the value asked for, in the unit of what is varied
   * @param weighed the value once rounded to the balance
   * @param recipe what is weighed out
   */
  public record Group(String name, double asked, double weighed, PlannedRecipe recipe) {}

  private static final double SLACK = 1 + 1e-9;

  /** Glycerol out of the jar, over all groups (kg). */
  public double glycerolKg() {
    return groups.stream().mapToDouble(group -> group.recipe().glycerolKg()).sum();
  }

  /**
   * Tells whether two groups are nearer to each other on this balance than half of what was asked.
   */
  public boolean isBlurred() {
    for (int i = 0; i < groups.size(); i++) {
      for (int j = 0; j < i; j++) {
        double asked = groups.get(i).asked() - groups.get(j).asked();
        double weighed = groups.get(i).weighed() - groups.get(j).weighed();
        if (weighed / asked < 0.5) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * The order of the pots: {@link Collections#shuffle(List, Random)} by {@link Random}, both
   * specified by the platform, so that a seed draws the same order everywhere.
   */
  static List<Integer> drawn(int groups, long seed) {
    List<Integer> order = new ArrayList<>(IntStream.range(0, groups).boxed().toList());
    Collections.shuffle(order, new Random(seed));
    return order;
  }

  /** Refuses a series that the cupboard does not fill. */
  void requireSupplied() {
    Supplies supplies = request.supplies();
    boolean wantsGlycerol =
        series.what() == Varied.GLYCEROL && series.values().stream().anyMatch(value -> value > 0);
    SeriesRequest.require(
        !wantsGlycerol || supplies.glycerolKg() > 0,
        "no glycerol",
        "a jar that holds some",
        "write what the jar holds");
    SeriesRequest.require(
        series.what() != Varied.VINEGAR || supplies.vinegarAcidityFraction() > 0,
        "no vinegar",
        "a vinegar with its acid",
        "write its acid, such as 5%");
    double glycerol = glycerolKg();
    SeriesRequest.require(
        glycerol <= supplies.glycerolKg() * SLACK,
        Figures.grams(glycerol) + " g of glycerol for all groups",
        "the " + Figures.grams(supplies.glycerolKg()) + " g in the jar",
        "use fewer plates per group, fewer groups, smaller plates or lower levels");
    for (StarchAtHand starch : supplies.starches()) {
      double needed =
          groups.stream()
              .mapToDouble(group -> group.recipe().starchKg().getOrDefault(starch.kind(), 0.0))
              .sum();
      double atHand = starch.massKg().orElse(Double.POSITIVE_INFINITY);
      SeriesRequest.require(
          needed <= atHand * SLACK,
          Figures.grams(needed) + " g of " + starch.kind() + " starch for all groups",
          "the " + Figures.grams(atHand) + " g at hand",
          "use fewer plates per group, fewer groups or smaller plates");
    }
  }
}
