package starchfilm.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import starchfilm.files.findings.Fault;
import starchfilm.files.saving.JarFile;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.SafeFile;
import starchfilm.jar.assay.Assay;
import starchfilm.jar.assay.JarContent;
import starchfilm.report.caution.Cautions;
import starchfilm.report.data.Answers;
import starchfilm.report.plan.AssaySheet;
import starchfilm.request.AssayRequest;

/** Says what is in a jar of glycerol. */
@Command(
    name = "assay",
    sortOptions = false,
    customSynopsis = {
      "starchfilm assay --mass AMOUNT --label SHARE [a reading] [--keep NAME]",
      "       starchfilm assay --mass AMOUNT [--origin ORIGIN] [--salt SHARE] a reading",
      "       starchfilm assay --mass MASS a record of recovery [a reading]",
      "       starchfilm assay ph ..."
    },
    description = {
      "Work out what is in a jar of glycerol: glycerol, water and salt with"
          + " a range, and what to watch out for.",
      "",
      "Use the label, a reading (hydrometer, weighed bottle, refractometer),"
          + " or the record of how it was recovered from oil; a record and a"
          + " reading together are best."
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
      "      --catalyst NaOH \"3.5 g\" --acid HCl \"30 ml\" \"10 %%\" --density \"1.20 g/ml\" --at \"21"
          + " C\"",
      "",
      "Exit codes: 0 done, 1 no figures and so not kept, 2 wrong input."
    })
final class AssayCommand implements Callable<Integer> {
  private final CommandContext surroundings;

  @Mixin private DataOptions dataOptions = new DataOptions();

  @Option(
      names = "--keep",
      paramLabel = "NAME",
      description =
          "Keep the jar under this name, in the small file NAME.jar.json: trials"
              + " in that folder and plan --jar take glycerol from it, and check shows"
              + " what is left.")
  private @Nullable String keep;

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
    DataOptions.Places places = dataOptions.places(surroundings);
    places.write(() -> Answers.assay(assay, request.assumptions(), Cautions.of(assay)));
    if (!places.isOnStandardOutput()) {
      new AssayText(surroundings.out()).write(AssaySheet.of(assay), request.assumptions());
    }
    if (keep != null) {
      keep(keep, assay, places.isOnStandardOutput());
    }
    return ExitCodes.DONE;
  }

  private void keep(String typed, Assay assay, boolean quiet) {
    JarContent content =
        assay
            .content()
            .orElseThrow(
                () ->
                    CommandFailure.notComputed(
                        "--keep "
                            + typed
                            + ": not kept, because the figures contradict each other."));
    try {
      Path path = surroundings.resolve(Path.of(typed)).toAbsolutePath();
      SafeFile.Written written =
          JarFile.keep(
              path.resolveSibling(""),
              String.valueOf(path.getFileName()),
              assay.massKg(),
              content.stock(assay.origin()),
              LocalDateTime.now(surroundings.clock()));
      List<String> said = new ArrayList<>(written.remarks());
      said.add(
          "Kept as "
              + typed
              + ".jar.json"
              + written
                  .before()
                  .map(before -> "; the jar before is in " + before.getFileName())
                  .orElse("")
              + ". Take from it with \"jar\": \""
              + path.getFileName()
              + "\" under glycerol in a trial, or plan --jar "
              + typed
              + ".");
      (quiet ? surroundings.err() : surroundings.out()).printSentences(said);
    } catch (InvalidPathException impossible) {
      throw CommandFailure.wrongInput(
          "--keep " + typed + ": cannot be a file name here; choose another.");
    } catch (NotWrittenException refused) {
      Fault why = refused.faults().get(0);
      throw CommandFailure.wrongInput(
          "--keep " + typed + ": " + why.given() + "; " + why.mend() + ".");
    }
  }
}
