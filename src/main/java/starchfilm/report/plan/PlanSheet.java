package starchfilm.report.plan;

import static starchfilm.numerics.figures.ReaderUnit.GRAM;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import starchfilm.forecast.Oddity;
import starchfilm.learning.Workshop;
import starchfilm.numerics.figures.Spans;
import starchfilm.planning.Plan;
import starchfilm.planning.PlanRequest;
import starchfilm.planning.Supplies;
import starchfilm.report.TrialRows;
import starchfilm.report.caution.Caution;
import starchfilm.report.caution.Cautions;
import starchfilm.report.data.AnswerTable;
import starchfilm.report.data.Sheet;
import starchfilm.report.learnt.LearntSheet;
import starchfilm.report.words.OddityWords;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.PlanWords;
import starchfilm.report.words.PotLine;
import starchfilm.report.words.RoomWords;
import starchfilm.request.PlanQuestion;
import starchfilm.request.RefusedRequestException;

/**
 * A plan for what is at hand: recipes, a series, or what pieces take.
 *
 * @param question what was asked
 * @param plan what was found
 * @param learnt what it has from earlier trials, in sentences
 */
public record PlanSheet(PlanQuestion question, Plan plan, List<String> learnt)
    implements Sheet.OfRows {
  private static final String NAME = "%-23s ";

  /**
   * Answers a question.
   *
   * @param question what is asked
   * @param workshop what earlier trials taught
   * @throws RefusedRequestException where it cannot be made of what is at hand
   */
  public static PlanSheet of(PlanQuestion question, Workshop workshop) {
    return new PlanSheet(
        question,
        question.answer(workshop),
        LearntSheet.told(workshop, question.request().place()));
  }

  /** What was taken for granted, and what was learnt. */
  public List<String> assumptions() {
    return Stream.concat(question.assumptions().stream(), learnt.stream()).toList();
  }

  /** Whatever was found, by the names it has on sheets, labels and files. */
  public List<NamedRecipe> recipes() {
    return NamedRecipe.of(plan);
  }

  /** The sheets of its recipes; none where nothing fits. */
  public List<RecipeSheet> sheets() {
    return RecipeSheet.of(recipes(), plan.request());
  }

  /** Labels for all plates. */
  public List<PlateLabel> labels() {
    return recipes().stream().flatMap(PlateLabel::of).toList();
  }

  /** The cautions it calls for. */
  public List<Caution> cautions() {
    return Cautions.of(plan.request());
  }

  /** The sentences of a page on a series or on pieces beside the sheets; empty for mere recipes. */
  public List<String> beside() {
    return plan.series()
        .map(SeriesText::beside)
        .or(() -> plan.pieces().map(PiecesText::of))
        .orElse(List.of());
  }

  /** The ways out where nothing fits. */
  public List<String> waysOut() {
    return plan.giveUps().stream().map(way -> PlanWords.sentence(way, plan.request())).toList();
  }

  @Override
  public AnswerTable table() {
    return plan.series()
        .map(SeriesText::table)
        .or(() -> plan.pieces().map(pieces -> PiecesText.table(pieces, recipes().get(0))))
        .orElseGet(this::recipeTable)
        .assuming(assumptions())
        .cautioning(cautions());
  }

  private AnswerTable recipeTable() {
    AnswerTable table = new AnswerTable("plan");
    recipes().forEach(named -> TrialRows.put(table.row("recipe", named.title()), named.recipe()));
    return table.tell("nothing_fits", recipes().isEmpty() ? nothingFits() : List.of());
  }

  @Override
  public List<String> lines() {
    List<String> lines =
        new ArrayList<>(plan.series().map(SeriesText::of).orElseGet(this::recipeLines));
    lines.addAll(assumptions());
    if (!recipes().isEmpty()) {
      cautions().forEach(caution -> lines.add("! " + caution.sentence()));
    }
    return lines;
  }

  private List<String> recipeLines() {
    List<String> lines = new ArrayList<>();
    List<RecipeSheet> sheets = sheets();
    if (sheets.isEmpty()) {
      lines.addAll(nothingFits());
    } else if (plan.pieces().isEmpty()) {
      lines.add(sheets.get(0).title() + ":");
      lines.add(sheets.get(0).lead(question.now()));
    }
    if (!lines.isEmpty()) {
      lines.add("");
    }
    lines.addAll(plan.pieces().map(PiecesText::of).orElseGet(() -> asked(plan.request())));
    if (sheets.isEmpty()) {
      lines.add("");
      return lines;
    }
    sheets.forEach(sheet -> add(lines, sheet));
    addCooking(lines, sheets);
    lines.add("");
    lines.add("Ranges hold 8 of 10 likely cases.");
    return lines;
  }

  private static List<String> asked(PlanRequest request) {
    List<String> lines = new ArrayList<>();
    Oddity.air(request.place().room()).ifPresent(odd -> lines.add("Odd: " + OddityWords.of(odd)));
    lines.add(
        "Asked for: %s from %s, in %s and %s%s."
            .formatted(
                PlanWords.wish(request.wish()),
                jar(request.supplies()),
                RoomWords.humidity(request.place().room()),
                RoomWords.temperature(request.place().room()),
                request.byS().isEmpty()
                    ? ""
                    : ", ready %s after the pour in %s likely cases"
                        .formatted(
                            Spans.given(request.byS().getAsDouble()),
                            PlanWords.chance(request.sure()))));
    return lines;
  }

  private static String jar(Supplies supplies) {
    return supplies.glycerolKg() == 0
        ? "no glycerol"
        : "%s of glycerol (%s pure)"
            .formatted(GRAM.noted(supplies.glycerolKg()), GRAM.noted(supplies.pureGlycerolKg()));
  }

  /** The sentence where there is no way out. */
  public String noWayOut() {
    return "Giving up one or two wishes would not help: in this air the film does not get dry. Move"
        + " the plates to drier or warmer air.";
  }

  private List<String> nothingFits() {
    List<String> ways = waysOut();
    if (ways.isEmpty()) {
      return List.of("No recipe meets every wish. " + noWayOut());
    }
    List<String> lines = new ArrayList<>(List.of("No recipe meets every wish. What would help:"));
    ways.forEach(way -> lines.add("  - " + way));
    return lines;
  }

  private static void add(List<String> lines, RecipeSheet sheet) {
    lines.add("");
    lines.add(sheet.number() + ". " + sheet.title());
    lines.add("   " + sheet.summary() + ".");
    for (PotfulSheet potful : sheet.potfuls()) {
      lines.add("   " + potful.heading() + ":");
      for (PotLine line : potful.lines()) {
        lines.add("     " + amounts(line));
      }
    }
    lines.add("   Cooked: " + PlainWords.afterColon(sheet.topUp()));
    sheet.pour().forEach(step -> lines.add("   " + step));
    Stream.concat(sheet.film().stream(), sheet.drying().stream())
        .forEach(figure -> lines.add("     " + NAME.formatted(figure.name()) + figure.value()));
    if (!sheet.byDate().isEmpty()) {
      lines.add("   " + sheet.byDate());
    }
    sheet.limits().forEach(limit -> lines.add("   > " + limit));
    sheet.warnings().forEach(warning -> lines.add("   ! " + warning));
  }

  /** How each starch or blend is cooked, once. */
  private static void addCooking(List<String> lines, List<RecipeSheet> sheets) {
    Map<List<String>, Set<String>> starches = new LinkedHashMap<>();
    for (RecipeSheet sheet : sheets) {
      starches
          .computeIfAbsent(sheet.cook(), none -> new LinkedHashSet<>())
          .add(sheet.starchKinds());
    }
    starches.forEach(
        (steps, kinds) -> {
          lines.add("");
          lines.add("To cook it (" + String.join("; ", kinds) + " starch):");
          steps.forEach(step -> lines.add("   " + step));
        });
  }

  private static String amounts(PotLine line) {
    return (NAME + "%8s  %8s  %s")
        .formatted(line.name(), line.grams(), line.millilitres(), line.note())
        .stripTrailing();
  }
}
