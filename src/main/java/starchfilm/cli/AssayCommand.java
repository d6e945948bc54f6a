package starchfilm.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import starchfilm.jar.assay.Assay;
import starchfilm.report.plan.AssayFile;
import starchfilm.report.plan.AssaySheet;
import starchfilm.request.AssayRequest;

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
  private final CommandContext surroundings;

  @Option(
      names = "--json",
      paramLabel = "DATA",
      description = "Also write it as JSON; - for standard output instead of the text.")
  private @Nullable String json;

  @Spec private CommandSpec spec = CommandSpec.create();

  private AssayCommand(CommandContext surroundings) {
    this.surroundings = surroundings;
  }

  /**
   * The command with the one below it.
   *
   * @param surroundings what it touches
   * @return assay and assay ph
   */
  static CommandLine of(CommandContext surroundings) {
    return OptionEntries.on(new AssayCommand(surroundings), AssayRequest.SECTIONS)
        .addSubcommand(PhCommand.of(surroundings));
  }

  @Override
  public Integer call() {
    AssayRequest request = AssayRequest.read(OptionEntries.of(spec));
    Assay assay = request.answer();
    Optional<OutputFile> data =
        Optional.ofNullable(json)
            .map(name -> OutputFile.of("--json", name, OutputFile.Kind.ASSAY, surroundings));
    data.ifPresent(file -> file.write(() -> AssayFile.json(assay, request.assumptions())));
    if (data.isEmpty() || !data.get().isStandardOutput()) {
      new AssayText(surroundings.out()).write(AssaySheet.of(assay), request.assumptions());
    }
    return ExitCodes.DONE;
  }
}
