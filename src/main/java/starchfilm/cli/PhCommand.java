package starchfilm.cli;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;
import starchfilm.jar.reagent.PhAdjustment;
import starchfilm.jar.reagent.Reagent;
import starchfilm.numerics.figures.Figures;
import starchfilm.report.caution.Cautions;
import starchfilm.request.PhRequest;

/** Says how much dilute acid or lye goes from one pH to another. */
record PhCommand(Asked asked) implements Callable<Integer> {
  private static final Set<Reagent> STRONG_ACIDS =
      EnumSet.of(Reagent.PHOSPHORIC_ACID, Reagent.HYDROCHLORIC_ACID, Reagent.SULFURIC_ACID);

  @Override
  public Integer call() {
    PhRequest request = PhRequest.read(asked.entries());
    PhAdjustment step = request.answer();
    Reagent reagent = request.reagent();
    List<String> lines = new ArrayList<>();
    lines.add(
        "Add about %s ml of %s (%s), a little at a time, stirring and reading the pH in between."
            .formatted(Figures.of(step.millilitres(), 2), reagent.tradeName(), request.strength()));
    lines.add(
        request.countsSoap()
            ? "Soap was counted as the only buffer; carbonate and other salts take up more."
            : "No buffer was assumed, so this is the least you need: soap, fatty"
                + " acid, carbonate and phosphate take up more.");
    if (reagent == Reagent.BAKING_SODA) {
      lines.add(
          "Its carbon dioxide is assumed to stay dissolved: as it escapes, the"
              + " pH rises further, so stir and wait an hour before adding more.");
    } else if (reagent.isLye() || STRONG_ACIDS.contains(reagent)) {
      lines.add(
          "At home "
              + (reagent.isAcid() ? "vinegar or citric acid does" : "baking soda does")
              + " the same with less danger.");
    }
    lines.add(
        String.format(
            Locale.ROOT,
            "One drop (0.05 ml) too many would end at pH %.1f; with a solution ten times weaker at"
                + " pH %.1f. That is why a weaker solution does not overshoot.",
            step.phOneDropOver(),
            step.phOneDropOverTenthStrength()));
    lines.add(
        "Safer: test on a tenth of it, count the drops, then add nine times as many to the rest.");
    Cautions.ofAcidsAndLyes().forEach(caution -> lines.add("! " + caution.sentence()));
    asked.out().printSentences(lines);
    return ExitCodes.DONE;
  }
}
