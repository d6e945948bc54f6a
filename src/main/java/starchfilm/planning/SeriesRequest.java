package starchfilm.planning;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import starchfilm.numerics.evidence.Refusal;
import starchfilm.numerics.figures.Figures;
import starchfilm.numerics.units.Plural;

/**
 * A series of pours that differ in one thing.
 *
 * @param what the one thing
 * @param values its value in each group, in its unit; 2 to 12, no two the same
 * @param names what each group is called, as many as values
 * @param platesEach plates poured from the pot of a group; at least 1
 * @param seed what the order of the pots is drawn by
 */
public record SeriesRequest(
    Varied what, List<Double> values, List<String> names, int platesEach, long seed) {
  private static final int MOST_GROUPS = 12;
  private static final int MOST_PLATES = 50;

  /** Checks number and range. */
  public SeriesRequest {
    values = List.copyOf(values);
    names = names.isEmpty() ? letters(values.size()) : List.copyOf(names);
    require(
        values.size() >= 2 && values.size() <= MOST_GROUPS,
        Plural.of(values.size(), "value"),
        "2 to " + MOST_GROUPS + " values",
        "write 15,20,25");
    require(
        values.stream().distinct().count() == values.size(),
        "the same value twice",
        "each value once",
        "use more plates per group instead");
    for (double value : values) {
      require(
          value >= what.least() && value <= what.most(),
          Figures.of(value, 3) + " " + what.unit(),
          Figures.of(what.least(), 3) + " to " + Figures.of(what.most(), 3) + " " + what.unit(),
          "write the " + what.words() + " in " + what.unit());
    }
    require(
        names.size() == values.size(),
        Plural.of(names.size(), "name") + " for " + values.size() + " groups",
        "one name per group",
        "write as many names as values, separated by commas");
    require(
        names.stream().noneMatch(String::isBlank)
            && names.stream().map(name -> name.toLowerCase(Locale.ROOT)).distinct().count()
                == names.size(),
        "a name twice, or none",
        "a name of its own for each group",
        "write names such as Red,Green,Blue");
    require(
        platesEach >= 1 && platesEach <= MOST_PLATES,
        platesEach + " plates per group",
        "1 to " + MOST_PLATES,
        "write how many plates each pot fills");
  }

  private static List<String> letters(int count) {
    return IntStream.range(0, count).mapToObj(i -> String.valueOf((char) ('A' + i))).toList();
  }

  static void require(boolean holds, String given, String allowed, String mend) {
    Refusal.unless(holds, "series", given, allowed + "; " + mend);
  }
}
