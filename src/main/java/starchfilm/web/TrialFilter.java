package starchfilm.web;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;
import starchfilm.web.http.Fields;

/**
 * Which trials of a list are shown, and in what order; all of it stands in the page's address.
 *
 * @param query the address's fields
 */
record TrialFilter(Fields query) {
  /** What trials can be put in order of, first what is drying, then what comes next. */
  static final List<String> ORDERS = List.of("state", "pour", "name", "rating");

  /** What rows can be distinguished by, by the name of the field. */
  private static final List<Choice> CHOICES =
      List.of(
          new Choice("state", "State", TrialRow::stage),
          new Choice("room", "Room", TrialRow::room),
          new Choice("starch", "Starch", TrialRow::starch),
          new Choice(
              "rating", "Rating", row -> row.rating() == 0 ? "none" : row.rating() + " of 5"));

  private record Choice(String field, String label, Function<TrialRow, String> of) {}

  /**
   * A choice on the page.
   *
   * @param field the field's name
   * @param label what it is of
   * @param chosen what is chosen; empty for any
   * @param words what there is to choose
   */
  record Select(String field, String label, String chosen, List<String> words) {}

  /** The rows that are shown, in their order. */
  List<TrialRow> of(List<TrialRow> rows) {
    String wanted = query.text("q").toLowerCase(Locale.ROOT);
    Stream<TrialRow> found =
        rows.stream()
            .filter(
                row ->
                    (row.name() + " " + row.starch() + " " + row.room() + " " + row.file())
                        .toLowerCase(Locale.ROOT)
                        .contains(wanted));
    for (Choice choice : CHOICES) {
      String chosen = query.text(choice.field());
      found = found.filter(row -> chosen.isEmpty() || choice.of().apply(row).equals(chosen));
    }
    return found.sorted(order(query.text("order"))).toList();
  }

  /** What can be chosen; a choice of one is none. */
  List<Select> selects(List<TrialRow> rows) {
    return CHOICES.stream()
        .map(
            choice ->
                new Select(
                    choice.field(),
                    choice.label(),
                    query.text(choice.field()),
                    rows.stream().map(choice.of()).distinct().sorted().toList()))
        .filter(select -> select.words().size() > 1 || !select.chosen().isEmpty())
        .toList();
  }

  private static Comparator<TrialRow> order(String by) {
    Comparator<TrialRow> latest = Comparator.comparing(TrialRow::pouredAt).reversed();
    return switch (by) {
      case "pour" -> latest;
      case "name" -> Comparator.comparing(row -> row.name().toLowerCase(Locale.ROOT));
      case "rating" -> Comparator.comparing(TrialRow::rating).reversed().thenComparing(latest);
      default -> Comparator.comparing(TrialRow::reached).thenComparing(latest);
    };
  }
}
