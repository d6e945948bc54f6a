package starchfilm.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import starchfilm.files.notebook.FileWord;
import starchfilm.jar.assay.Assay;
import starchfilm.jar.assay.Assayer;
import starchfilm.jar.assay.DensityReading;
import starchfilm.jar.assay.JarReading;
import starchfilm.material.ingredient.VolkKaehler2018;
import starchfilm.material.recipe.GlycerolOrigin;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.report.plan.AssaySheet;

/** Says what is in a jar of glycerol. */
@Command(
    name = "assay",
    sortOptions = false,
    customSynopsis = {
      "starchfilm assay --mass AMOUNT --label SHARE [a reading]",
      "       starchfilm assay --mass AMOUNT [--origin ORIGIN] [--salt SHARE] a reading",
      "       starchfilm assay --mass MASS a record of recovery [a reading]",
      "       starchfilm assay ph ..."
    },
    description = {
      "Say what is in a jar of glycerol: glycerol, water and salt with a range, and what to mind.",
      "",
      "Go by the label, by a reading (hydrometer, weighed bottle, refractometer), or by the record"
          + " of how it was recovered from oil; a record and a reading together are best."
    },
    optionListHeading = "%nThe jar:%n",
    commandListHeading = "%nMore:%n",
    footer = {
      "",
      "Examples:",
      "  starchfilm assay --mass \"500 g\" --label \"99.5 %%\"",
      "  starchfilm assay --mass \"500 g\" --origin recovered --bottle \"52 g\" \"258 g\" \"303 g\" \\",
      "      --at \"20 C\"",
      "  starchfilm assay --mass \"125 g\" --oil sunflower \"1 l\" --alcohol methanol \"220 ml\""
          + " \\",
      "      --catalyst NaOH \"3.5 g\" --acid HCl \"30 ml\" \"10 %%\" --density \"1.24 g/ml\" --at \"21"
          + " C\"",
      "",
      "Exit codes: 0 done, 2 wrong input."
    })
final class AssayCommand implements Callable<Integer> {
  private static final double ROOM_K = 293.15;

  private final CommandContext surroundings;

  @Option(
      names = "--mass",
      paramLabel = "AMOUNT",
      description =
          "What the jar holds, without the jar: 500 g, or 400 ml where it was not weighed.")
  private @Nullable String amount;

  @Option(
      names = "--label",
      paramLabel = "SHARE",
      description = "Glycerol by the label of a bought jar, such as 99.5 %%.")
  private @Nullable String label;

  @Option(
      names = TypedOrigin.NAME,
      paramLabel = TypedOrigin.LABEL,
      description = TypedOrigin.DESCRIPTION)
  private @Nullable String origin;

  @Option(
      names = "--salt",
      paramLabel = "SHARE",
      description = "Salt and soap in it, if known, such as 3 %%.")
  private @Nullable String salt;

  @ArgGroup(exclusive = false, heading = "%nA reading of the jar:%n")
  private ReadingOptions reading = new ReadingOptions();

  @ArgGroup(exclusive = false, heading = "%nHow it was recovered:%n")
  private @Nullable RecoveryOptions recovery;

  AssayCommand(CommandContext surroundings) {
    this.surroundings = surroundings;
  }

  /**
   * The command with the one below it.
   *
   * @param surroundings what it touches
   * @return assay and assay ph
   */
  static CommandLine withPh(CommandContext surroundings) {
    return new CommandLine(new AssayCommand(surroundings))
        .addSubcommand(new PhCommand(surroundings));
  }

  @Override
  public Integer call() {
    Assay assay;
    try {
      assay = assay();
    } catch (IllegalArgumentException e) {
      // The domain refuses impossible jars in one sentence meant for the reader.
      throw CommandFailure.wrongInput(String.valueOf(e.getMessage()));
    }
    new AssayText(surroundings.out()).write(AssaySheet.of(assay));
    return ExitCodes.DONE;
  }

  /** What the words ask for; a sentence for the reader where it cannot be. */
  Assay assay() {
    if (amount == null) {
      throw CommandFailure.wrongInput(
          "--mass: not given; write what the jar holds, such as --mass \"500 g\"");
    }
    Assayer assayer = new Assayer();
    Optional<JarReading> read = reading.reading();
    if (recovery != null) {
      if (label != null || salt != null) {
        throw CommandFailure.wrongInput(
            "--label and --salt: given beside a record of recovery, which tells both; leave them"
                + " out");
      }
      requireOrigin(GlycerolOrigin.RECOVERED, "a record of recovery");
      return assayer.recovered(recovery.log(TypedAmounts.massKg("--mass", amount)), read);
    }
    if (label != null) {
      if (salt != null) {
        throw CommandFailure.wrongInput(
            "--label: given beside --salt; a bought jar holds none, leave one out");
      }
      requireOrigin(GlycerolOrigin.BOUGHT, "--label");
      double share = TypedAmounts.share("--label", label);
      Estimate mass = jarKg(amount, read, share);
      return assayer.bought(mass, share, read);
    }
    if (read.isEmpty()) {
      throw CommandFailure.wrongInput(
          "nothing to go by given; add --label, a reading such as --density, or the record of"
              + " recovery beginning with --oil");
    }
    Optional<Estimate> knownSalt =
        Optional.ofNullable(salt).map(s -> Estimate.exact(TypedAmounts.share("--salt", s)));
    return assayer.measured(
        jarKg(amount, read, 1), read.get(), knownSalt, TypedOrigin.of(origin, salt));
  }

  private void requireOrigin(GlycerolOrigin only, String because) {
    TypedOrigin.stated(origin)
        .filter(stated -> stated != only)
        .ifPresent(
            stated -> {
              throw CommandFailure.wrongInput(
                  "--origin: "
                      + FileWord.of(stated)
                      + " given beside "
                      + because
                      + ", which means "
                      + FileWord.of(only)
                      + "; leave one out");
            });
  }

  /** Mass as weighed, or from the volume by the density read, else by that of the label. */
  private static Estimate jarKg(String text, Optional<JarReading> read, double label) {
    double labelled =
        label > 0 && label <= 1 ? new VolkKaehler2018().kgPerM3(label, ROOM_K) : Double.NaN;
    double density =
        read.isPresent() && read.get() instanceof DensityReading measured
            ? measured.densityKgPerM3().value()
            : labelled;
    return Double.isNaN(density)
        ? TypedAmounts.massKg("--mass", text)
        : TypedAmounts.massKg("--mass", text, density);
  }
}
