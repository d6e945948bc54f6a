package starchfilm.planning;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

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

  public Series {
    groups = List.copyOf(groups);
    order = List.copyOf(order);
    shows = List.copyOf(shows);
  }

  /** Glycerol out of the jar, over all groups (kg). */
  public double glycerolKg() {
    return groups.stream().mapToDouble(group -> group.recipe().glycerolKg()).sum();
  }

  /** Whether two groups are nearer to each other on this balance than half of what was asked. */
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
}
