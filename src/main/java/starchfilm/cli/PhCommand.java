package starchfilm.cli;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import starchfilm.jar.reagent.PhAdjustment;
import starchfilm.jar.reagent.Reagent;
import starchfilm.material.ingredient.MolarMass;
import starchfilm.numerics.evidence.Figures;
import starchfilm.report.caution.Cautions;

/** Says how much dilute acid or lye goes from one pH to another. */
@Command(
    name = "ph",
    sortOptions = false,
    description = {
      "Say how many millilitres of a dilute acid or lye take a volume from one pH to another.",
      "",
      "Read the pH of a sample thinned with as much water or more: syrupy glycerol shows no true pH."
    },
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Example:",
      "  starchfilm assay ph --volume \"500 ml\" --from 9.5 --to 6.5 --with vinegar --strength \"5 %%\"",
      "",
      "Exit codes: 0 done, 2 wrong input."
    })
final class PhCommand implements Callable<Integer> {
  private static final String PH = "a pH, 0 to 14";

  /** Sodium oleate stands for soap (kg/mol). */
  private static final double SOAP_KG_PER_MOL =
      MolarMass.OLEIC_ACID - MolarMass.HYDROGEN + MolarMass.SODIUM;

  /** Nothing stronger is dosed by the millilitre (kg per kg); judged, no source. */
  private static final double STRONGEST = 0.1;

  private static final Set<Reagent> STRONG_ACIDS =
      EnumSet.of(Reagent.PHOSPHORIC, Reagent.HYDROCHLORIC, Reagent.SULFURIC);

  private final CommandContext surroundings;

  @Option(
      names = "--volume",
      required = true,
      paramLabel = "VOLUME",
      description = "The volume to adjust, such as 500 ml.")
  private String volume = "";

  @Option(names = "--from", required = true, paramLabel = "PH", description = "The pH now.")
  private String from = "";

  @Option(names = "--to", required = true, paramLabel = "PH", description = "The pH wanted.")
  private String to = "";

  @Option(
      names = "--with",
      required = true,
      paramLabel = "WHAT",
      description =
          "At home vinegar, citric (acid) or baking soda; under supervision also H3PO4, HCl, H2SO4,"
              + " NaOH or KOH.")
  private String with = "";

  @Option(
      names = "--strength",
      required = true,
      paramLabel = "STRENGTH",
      description = "Its strength: 0.1 mol/l, or 4 %% of its mass; at most 10 %%.")
  private String strength = "";

  @Option(
      names = "--soap",
      paramLabel = "MASS",
      description = "Soap in the volume, if known; it takes up acid.")
  private @Nullable String soap;

  PhCommand(CommandContext surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    try {
      print();
    } catch (IllegalArgumentException e) {
      throw CommandFailure.wrongInput(String.valueOf(e.getMessage()));
    }
    return ExitCodes.DONE;
  }

  private void print() {
    double soapMol =
        soap == null ? 0 : TypedAmounts.massKg("--soap", soap).value() / SOAP_KG_PER_MOL;
    PhAdjustment.Bath bath =
        new PhAdjustment.Bath(
            TypedAmounts.volumeM3("--volume", volume),
            TypedAmounts.number("--from", from, PH),
            soapMol);
    double target = TypedAmounts.number("--to", to, PH);
    Reagent reagent =
        KnownNames.find(
            "--with",
            with,
            List.of(Reagent.values()),
            one -> List.of(one.formula(), one.tradeName()));
    PhAdjustment step = PhAdjustment.to(bath, target, reagent, molPerM3(reagent, strength));
    write(
        "Add about "
            + Figures.of(step.millilitres(), 2)
            + " ml of "
            + reagent.tradeName()
            + " ("
            + strength
            + "), a little at a time, stirring and reading the pH in between.");
    write(
        soapMol > 0
            ? "Soap was counted as the only buffer; carbonate and other salts take up more."
            : "No buffer was assumed, so this is the least it takes: soap, fatty acid, carbonate and"
                + " phosphate take up more.");
    if (reagent == Reagent.BAKING_SODA) {
      write(
          "Its carbon dioxide was taken to stay dissolved: as it escapes the pH rises further, so"
              + " stir and wait an hour before adding more.");
    } else if (reagent.isLye() || STRONG_ACIDS.contains(reagent)) {
      write(
          "At home "
              + (reagent.isAcid() ? "vinegar or citric acid does" : "baking soda does")
              + " the same with less danger.");
    }
    write(
        String.format(
            Locale.ROOT,
            "One drop (0.05 ml) too many would end at pH %.1f; with a solution ten times weaker at pH"
                + " %.1f. That is why a weaker solution does not overshoot.",
            step.phOneDropOver(),
            step.phOneDropOverTenthStrength()));
    write(
        "Safer: test on a tenth of it, count the drops, then add nine times as many to the rest.");
    Cautions.ofAcidsAndLyes().forEach(caution -> write("! " + caution.sentence()));
  }

  private void write(String sentence) {
    Paragraph.of(sentence, "", "").forEach(surroundings.out()::println);
  }

  private static double molPerM3(Reagent reagent, String strength) {
    boolean molar = TypedAmounts.isConcentration(strength);
    double share =
        molar
            ? reagent.massShare(TypedAmounts.molPerM3("--strength", strength))
            : TypedAmounts.share("--strength", strength);
    if (share > STRONGEST) {
      throw CommandFailure.wrongInput(
          "--strength: "
              + strength
              + " of "
              + reagent.tradeName()
              + (molar ? " (" + Figures.percent(share) + " %)" : "")
              + " given, allowed up to 10 %; dilute it first, acid or lye into water and never water"
              + " into it, and ask again");
    }
    return molar
        ? TypedAmounts.molPerM3("--strength", strength)
        : share * reagent.solutionKgPerM3(share) / reagent.kgPerMol();
  }
}
