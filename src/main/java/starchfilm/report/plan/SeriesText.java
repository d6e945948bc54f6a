package starchfilm.report.plan;

import static starchfilm.numerics.figures.ReaderUnit.GRAM;
import static starchfilm.numerics.figures.ReaderUnit.MEGAPASCAL;
import static starchfilm.numerics.figures.ReaderUnit.MILLIMETRE;
import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import starchfilm.casting.Casting;
import starchfilm.material.recipe.Recipe;
import starchfilm.numerics.figures.Figures;
import starchfilm.numerics.figures.Spans;
import starchfilm.numerics.units.Plural;
import starchfilm.planning.Series;
import starchfilm.planning.TrendPower;
import starchfilm.planning.Varied;
import starchfilm.report.TrialRows;
import starchfilm.report.data.AnswerTable;
import starchfilm.report.data.AnswerTable.AnswerRow;
import starchfilm.report.words.PlanWords;
import starchfilm.report.words.RecipeWords;
import starchfilm.request.PlanQuestion;

/** A series for a terminal: plain lines that need no colour. */
final class SeriesText {
  private static final String LINE = "%-14s %8s %8s %8s %8s %8s %8s %9s";

  private static final String SHOWS = "Will the difference show against the plates' own scatter?";

  private SeriesText() {}

  /**
   * The whole series, but for what was assumed and what to mind.
   *
   * @param series the series
   * @return lines; long sentences are not broken
   */
  static List<String> of(Series series) {
    List<String> lines = new ArrayList<>();
    lines.add(head(series));
    lines.add("");
    lines.add(
        LINE.formatted(
            "group", "rounded", "starch", "glycerol", "vinegar", "water", "a plate", "dry"));
    series.groups().forEach(group -> lines.add(row(group)));
    lines.add("");
    lines.addAll(order(series));
    lines.add("");
    lines.add(SHOWS);
    lines.addAll(shows(series));
    lines.add("");
    lines.add(
        "Cook each pot as its sheet says (--sheet PAGE); --save FOLDER writes one trial file per"
            + " group.");
    return lines;
  }

  /**
   * What a page says beside the sheets of the groups.
   *
   * @param series the series
   * @return sentences
   */
  static List<String> beside(Series series) {
    List<String> lines = new ArrayList<>(List.of(head(series)));
    lines.addAll(order(series));
    lines.add(SHOWS);
    shows(series).forEach(line -> lines.add(line.replaceFirst("^ *- ", "")));
    return lines;
  }

  /** A row a group. */
  static AnswerTable table(Series series) {
    AnswerTable table = new AnswerTable("series");
    for (int i = 0; i < series.groups().size(); i++) {
      Series.Group group = series.groups().get(i);
      AnswerRow row =
          table
              .row("group", group.name())
              .put("order", series.order().indexOf(i) + 1)
              .put("seed", String.valueOf(series.series().seed()))
              .put("varied", series.series().what().words())
              .put("varied_unit", series.series().what().unit())
              .put("asked", group.asked())
              .put("weighed", group.weighed());
      TrialRows.put(row, group.recipe());
    }
    return table.tell("whether_it_shows", shows(series));
  }

  private static List<String> order(Series series) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Order of the pots, drawn by lot (seed %s): %s."
            .formatted(
                series.series().seed(),
                series.order().stream()
                    .map(place -> series.groups().get(place).name())
                    .collect(Collectors.joining(", "))));
    lines.add(
        "In all %s out of the jar, %s left."
            .formatted(
                GRAM.noted(series.glycerolKg()),
                GRAM.noted(series.request().supplies().glycerolKg() - series.glycerolKg())));
    if (series.isBlurred()) {
      lines.add(
          "! The balance is too coarse for these pots: rounded, the groups are"
              + " closer together than you asked. Use a finer balance or more"
              + " plates per group.");
    }
    return lines;
  }

  private static String head(Series series) {
    Casting any = series.groups().get(0).recipe().casting();
    Varied what = series.series().what();
    List<String> same = new ArrayList<>();
    if (what != Varied.STARCH) {
      same.add(percent(any.composition().dryStarch()) + " % starch in the paste");
    }
    if (what != Varied.GLYCEROL) {
      same.add(RecipeWords.plasticiser(any.composition().glycerolPerDryStarch()));
    }
    if (what != Varied.THICKNESS) {
      same.add(MILLIMETRE.figure(any.wetThicknessM()) + " wet");
    }
    same.add(RecipeWords.plate(any.plate()));
    return "%s of %s each, one pot per group, that differ in %s alone: %s %s. The same in all: %s."
        .formatted(
            Plural.of(series.groups().size(), "group"),
            Plural.of(series.series().platesEach(), "plate"),
            what.words(),
            series.groups().stream()
                .map(group -> Figures.of(group.asked(), 3))
                .collect(Collectors.joining(", ")),
            what.unit(),
            String.join(", ", same));
  }

  private static String percent(double ratio) {
    return Figures.of(PERCENT.of(ratio), 2);
  }

  private static String row(Series.Group group) {
    Recipe recipe = group.recipe().potfuls().get(0).recipe();
    return LINE.formatted(
        group.name() + " " + Figures.of(group.asked(), 3),
        Figures.of(group.weighed(), 2),
        GRAM.noted(recipe.starchKg()),
        GRAM.noted(recipe.glycerol().massKg().value()),
        GRAM.noted(recipe.vinegar().massKg().value()),
        GRAM.noted(recipe.waterKg().value()),
        GRAM.noted(group.recipe().pourKg()),
        Spans.of(group.recipe().drying().dryThroughS().middle()));
  }

  /** Whether the difference will show: a line a thing that can be measured, and how. */
  private static List<String> shows(Series series) {
    List<String> lines = new ArrayList<>();
    for (TrendPower power : series.shows()) {
      lines.add("  - " + sentence(power, series.series().platesEach()));
    }
    lines.add(
        """
        A trend shows when a straight line through the logarithms differs from a level one \
        (two-sided test at 5 %%). Assumed scatter (judged, no source): plates of one recipe, the \
        part of the uncertainty in drying that is each plate\u2019s own; films, a fifth of the \
        variance between laboratories; hand-cut strips, 25 %% in strength and 40 %% in stretch, %s \
        strips per plate. Plates of one pot share the errors of its scale and cook, so comparing \
        them does not show those. Computed by the %s (recalled).\
        """
            .formatted(PlanQuestion.STRIPS_EACH, TrendPower.SOURCE.citation()));
    return lines;
  }

  private static String sentence(TrendPower power, int platesEach) {
    return "%s, one plate ± %s %%: the trend shows in %s such series%s."
        .formatted(
            trend(power),
            percent(Math.exp(power.logSd()) - 1),
            PlanWords.chance(power.chance()),
            enough(power, platesEach));
  }

  private static String trend(TrendPower power) {
    double first = power.first();
    double last = power.last();
    return switch (power.what()) {
      case DRY_THROUGH -> "Drying time, thick spot: " + Spans.of(first) + " → " + Spans.of(last);
      case STRETCH -> "Stretch at break: " + PERCENT.two(first) + " → " + PERCENT.figure(last);
      case STRENGTH -> "Strength: " + MEGAPASCAL.two(first) + " → " + MEGAPASCAL.figure(last);
    };
  }

  private static String enough(TrendPower power, int platesEach) {
    if (power.platesForEighty() == 0) {
      return "; up to 20 plates per group do not bring it to 8 of 10";
    }
    return power.platesForEighty() <= platesEach
        ? ""
        : "; with " + Plural.of(power.platesForEighty(), "plate") + " per group in 8 of 10";
  }
}
