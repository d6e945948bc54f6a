package starchfilm.report.plan;

import static starchfilm.numerics.units.ReaderUnit.GRAM;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import starchfilm.forecast.Oddity;
import starchfilm.numerics.units.Spans;
import starchfilm.planning.GiveUp;
import starchfilm.planning.Plan;
import starchfilm.planning.PlanRequest;
import starchfilm.planning.Supplies;
import starchfilm.report.caution.Cautions;
import starchfilm.report.words.OddityWords;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.PlanWords;
import starchfilm.report.words.PotLine;
import starchfilm.report.words.RoomWords;

/** A plan for a terminal: plain lines that need no colour. */
public final class PlanText {
  private static final String NAME = "%-23s ";

  private PlanText() {}

  /**
   * The whole plan, or what its pieces take and the recipe of one pour.
   *
   * @param plan the plan
   * @param remarks what was taken for granted, in sentences
   * @return lines; long sentences are not broken, and parts are indented
   */
  public static List<String> of(Plan plan, List<String> remarks) {
    List<String> lines =
        new ArrayList<>(plan.pieces().map(PiecesText::of).orElseGet(() -> asked(plan.request())));
    lines.addAll(remarks);
    List<NamedRecipe> recipes = NamedRecipe.of(plan);
    if (recipes.isEmpty()) {
      lines.add("");
      lines.addAll(nothingFits(plan));
    } else {
      addSheets(lines, recipes, plan.request());
    }
    return lines;
  }

  private static void addSheets(
      List<String> lines, List<NamedRecipe> recipes, PlanRequest request) {
    List<PlanSheet> sheets = PlanSheet.of(recipes, request);
    sheets.forEach(sheet -> add(lines, sheet));
    addCooking(lines, sheets);
    lines.add("");
    lines.add("Ranges hold 8 of 10 likely cases.");
    Cautions.of(request).forEach(caution -> lines.add("! " + caution.sentence()));
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
                            Spans.of(request.byS().getAsDouble()),
                            PlanWords.chance(request.sure()))));
    return lines;
  }

  private static String jar(Supplies supplies) {
    return supplies.glycerolKg() == 0
        ? "no glycerol"
        : "%s of glycerol (%s pure)"
            .formatted(GRAM.noted(supplies.glycerolKg()), GRAM.noted(supplies.pureGlycerolKg()));
  }

  /**
   * What would help where nothing fits.
   *
   * @param plan the plan
   * @return lines; empty where there is a recipe
   */
  public static List<String> waysOut(Plan plan) {
    return plan.recipes().isEmpty() ? nothingFits(plan) : List.of();
  }

  private static List<String> nothingFits(Plan plan) {
    List<String> lines = new ArrayList<>();
    if (plan.giveUps().isEmpty()) {
      lines.add(
          "No recipe fits, and giving up one or two wishes would not help: in"
              + " this air the film does not get dry. Move the plates to drier or"
              + " warmer air.");
      return lines;
    }
    lines.add("No recipe meets every wish. What would help:");
    for (GiveUp way : plan.giveUps()) {
      lines.add("  - " + PlanWords.sentence(way, plan.request()));
    }
    return lines;
  }

  private static void add(List<String> lines, PlanSheet sheet) {
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
  private static void addCooking(List<String> lines, List<PlanSheet> sheets) {
    Map<List<String>, Set<String>> starches = new LinkedHashMap<>();
    for (PlanSheet sheet : sheets) {
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
