package starchfilm.report.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import starchfilm.forecast.Oddity;
import starchfilm.planning.GiveUp;
import starchfilm.planning.PiecesPlan;
import starchfilm.planning.Plan;
import starchfilm.planning.PlanRequest;
import starchfilm.planning.Supplies;
import starchfilm.report.caution.Caution;
import starchfilm.report.caution.Cautions;
import starchfilm.report.words.OddityWords;
import starchfilm.report.words.PlanWords;
import starchfilm.report.words.PotLine;
import starchfilm.report.words.ReaderUnit;
import starchfilm.report.words.RecipeWords;
import starchfilm.report.words.RoomWords;
import starchfilm.report.words.Spans;

/** A plan for a terminal: plain lines that need no colour. */
public final class PlanText {
  private static final int NAME = 24;
  private static final int AMOUNT = 8;

  private PlanText() {}

  /**
   * The whole plan.
   *
   * @param plan the plan
   * @param remarks what was taken for granted, in sentences
   * @return lines; long sentences are not broken, and parts are indented
   */
  public static List<String> of(Plan plan, List<String> remarks) {
    List<String> lines = new ArrayList<>();
    Oddity.air(plan.request().place().room())
        .ifPresent(odd -> lines.add("Odd: " + OddityWords.of(odd)));
    lines.add(asked(plan.request()));
    lines.addAll(remarks);
    if (plan.recipes().isEmpty()) {
      lines.add("");
      lines.addAll(nothingFits(plan));
      return lines;
    }
    List<PlanSheet> sheets = PlanSheets.of(plan);
    sheets.forEach(sheet -> add(lines, sheet));
    addCooking(lines, sheets, plan);
    lines.add("");
    lines.add("Ranges hold 8 of 10 likely cases.");
    Cautions.of(plan.request()).forEach(caution -> lines.add("! " + caution.sentence()));
    return lines;
  }

  /**
   * What pieces take, and the recipe of one pour.
   *
   * @param needed what they take
   * @param each the recipe under its name
   * @param remarks what was taken for granted, in sentences
   * @param cautions what to mind
   * @return lines
   */
  public static List<String> pieces(
      PiecesPlan needed, NamedRecipe each, List<String> remarks, List<Caution> cautions) {
    List<String> lines = new ArrayList<>(PiecesText.of(needed));
    lines.addAll(remarks);
    List<PlanSheet> sheets = PlanSheets.of(List.of(each), needed.request());
    sheets.forEach(sheet -> add(lines, sheet));
    lines.add("");
    lines.add("To cook it:");
    sheets.get(0).cook().forEach(step -> lines.add("   " + step));
    lines.add("");
    lines.add("Ranges hold in 8 likely cases of 10.");
    cautions.forEach(caution -> lines.add("! " + caution.sentence()));
    return lines;
  }

  private static String asked(PlanRequest request) {
    return "Asked for: %s from %s, in %s and %s%s."
        .formatted(
            PlanWords.wish(request.wish()),
            jar(request.supplies()),
            RoomWords.humidity(request.place().room()),
            RoomWords.temperature(request.place().room()),
            request.byS().isEmpty()
                ? ""
                : ", ready %s after the pour in %s likely cases"
                    .formatted(
                        Spans.of(request.byS().getAsDouble()), PlanWords.chance(request.sure())));
  }

  private static String jar(Supplies supplies) {
    return supplies.glycerolKg() == 0
        ? "no glycerol"
        : "%s of glycerol (%s pure)"
            .formatted(
                ReaderUnit.GRAM.noted(supplies.glycerolKg()),
                ReaderUnit.GRAM.noted(supplies.pureGlycerolKg()));
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
    for (PlanSheet.Potful potful : sheet.potfuls()) {
      lines.add("   " + potful.heading() + ":");
      for (PotLine line : potful.lines()) {
        lines.add("     " + amounts(line));
      }
    }
    lines.add("   Cooked: " + lowerFirst(sheet.topUp()));
    sheet.pour().forEach(step -> lines.add("   " + step));
    Stream.concat(sheet.film().stream(), sheet.drying().stream())
        .forEach(figure -> lines.add("     " + padded(figure.name()) + figure.value()));
    if (!sheet.byDate().isEmpty()) {
      lines.add("   " + sheet.byDate());
    }
    sheet.limits().forEach(limit -> lines.add("   > " + limit));
    sheet.warnings().forEach(warning -> lines.add("   ! " + warning));
  }

  /** How each starch or blend is cooked, once. */
  private static void addCooking(List<String> lines, List<PlanSheet> sheets, Plan plan) {
    Map<List<String>, String> starches = new LinkedHashMap<>();
    for (int i = 0; i < sheets.size(); i++) {
      String kinds = RecipeWords.starchKinds(plan.recipes().get(i).potfuls().get(0).recipe());
      starches.merge(sheets.get(i).cook(), kinds, (a, b) -> a.contains(b) ? a : a + "; " + b);
    }
    starches.forEach(
        (steps, kinds) -> {
          lines.add("");
          lines.add("To cook it (" + kinds + " starch):");
          steps.forEach(step -> lines.add("   " + step));
        });
  }

  private static String lowerFirst(String text) {
    return Character.toLowerCase(text.charAt(0)) + text.substring(1);
  }

  private static String amounts(PotLine line) {
    String grams = " ".repeat(Math.max(0, AMOUNT - line.grams().length())) + line.grams();
    String jug =
        line.millilitres().isEmpty()
            ? ""
            : " ".repeat(Math.max(0, AMOUNT - line.millilitres().length())) + line.millilitres();
    String text = padded(line.name()) + grams + "  " + jug;
    return line.note().isEmpty()
        ? text.stripTrailing()
        : text
            + " ".repeat(Math.max(1, 2 * AMOUNT + 2 - grams.length() - jug.length()))
            + line.note();
  }

  private static String padded(String name) {
    return name + " ".repeat(Math.max(1, NAME - name.length()));
  }
}
