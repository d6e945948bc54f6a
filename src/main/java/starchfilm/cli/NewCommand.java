package starchfilm.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import starchfilm.files.amount.MomentParser;
import starchfilm.files.findings.Findings;
import starchfilm.files.findings.FirstFaults;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.TrialFileText;
import starchfilm.files.saving.TrialTable;
import starchfilm.request.NewTrial;
import starchfilm.request.TrialQuestion;

/** Starts a trial file. */
@Command(
    name = "new",
    sortOptions = false,
    customSynopsis = {
      "starchfilm new \"WHAT YOU COOKED\" [more of the trial]",
      "       starchfilm new --from TRIAL [--but CHANGE] [what to change in it]"
    },
    description = {
      "Start a trial file from one line that says what you cooked, or from" + " an earlier trial.",
      "",
      "The line holds amounts, plate, time and place in any order, separated"
          + " by semicolons, or by commas followed by a space. A trial from an"
          + " earlier one keeps its recipe, pour and room, without its history, and"
          + " remembers where it comes from, so that compare shows the two against"
          + " each other."
    },
    optionListHeading = "%nOptions:%n",
    parameterListHeading = "%nLine:%n",
    footer = {
      "",
      "Examples:",
      "  starchfilm new \"20 g potato, 6 g glycerol, 360 g water; 30x20cm; 20C,55%%\"",
      "  starchfilm new --from formulations/garden/4-blend.json --but thinner --in .",
      "  starchfilm new --from formulations/garden/4-blend.json --wet 1.5mm --name \"Thin blend\""
          + " --in .",
      "",
      "Exit codes: 0 done, 2 the trial is not possible or nothing could be" + " written."
    })
final class NewCommand implements Callable<Integer> {
  private final CommandContext surroundings;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(arity = "0..1", paramLabel = "LINE", description = "What you cooked.")
  private @Nullable String line;

  @Option(
      names = "--from",
      paramLabel = "TRIAL",
      description =
          "The file of an earlier trial that is poured again; or a table of old trials as CSV, its"
              + " columns named in your words, such as starch, water (ml), air F, or as the keys of"
              + " a trial file (see check --keys).")
  private @Nullable Path from;

  @Option(
      names = "--in",
      paramLabel = "FOLDER",
      description =
          "Where the file goes; nothing is overwritten. Not given: beside the"
              + " earlier trial, or here.")
  private @Nullable Path in;

  private NewCommand(CommandContext surroundings) {
    this.surroundings = surroundings;
  }

  static CommandLine of(CommandContext surroundings) {
    return OptionEntries.on(new NewCommand(surroundings), NewTrial.SECTIONS);
  }

  @Override
  public Integer call() {
    OptionEntries entries = OptionEntries.of(spec);
    if (line == null && from == null && !TrialQuestion.isWritten(entries)) {
      throw CommandFailure.wrongInput(
          "new needs what you cooked, such as \"20 g potato, 6 g glycerol, 360 g water; 30x20cm"
              + " glass, 3 mm\", or an earlier trial with --from.");
    }
    Path home = home();
    Path folder = surroundings.resolve(home);
    if (!Files.isDirectory(folder)) {
      throw CommandFailure.wrongInput(
          "--in " + home + ": no folder of this name; make it first, or name another.");
    }
    if (from != null && from.toString().toLowerCase(Locale.ROOT).endsWith(".csv")) {
      return fromTable(from, folder, home, entries);
    }
    Optional<TrialQuestion.Base> base =
        from == null
            ? Optional.empty()
            : OneTrial.read(from, entries, "new", "an earlier trial", surroundings).base();
    NewTrial made =
        NewTrial.read(Optional.ofNullable(line), entries, base, folder, surroundings.clock());
    try {
      Path file = TrialFileText.create(folder, made.name(), made.text());
      Stream.of(
              List.of("Trial started: " + home.resolve(file.getFileName()) + "."),
              made.changed().isEmpty()
                  ? List.<String>of()
                  : List.of("Changed: " + made.changed() + "."),
              made.assumptions(),
              List.of(
                  made.trial().pouredAt().isEmpty()
                      ? "Note its pour as soon as it is poured: starchfilm note "
                          + home.resolve(file.getFileName())
                          + " --poured now"
                      : "When it is dry: starchfilm dry " + home.resolve(file.getFileName())))
          .forEach(surroundings.out()::printSentences);
    } catch (NotWrittenException e) {
      throw CommandFailure.wrongInput(String.valueOf(e.getMessage()));
    }
    return ExitCodes.DONE;
  }

  /** All rows or none, so that a table may be mended and read again. */
  private int fromTable(Path table, Path folder, Path home, OptionEntries entries) {
    if (line != null || TrialQuestion.isWritten(entries)) {
      throw CommandFailure.wrongInput(
          "--from " + table + ": a table is read as it is; leave the other options out.");
    }
    Findings findings = new Findings(table.toString());
    List<TrialTable.Row> rows =
        TrialTable.read(
            surroundings.resolve(table), findings, new MomentParser(surroundings.clock()));
    findings.notices().forEach(notice -> surroundings.err().println(notice.sentence()));
    if (!findings.faults().isEmpty()) {
      FirstFaults.sentences(findings.faults()).forEach(surroundings.err()::println);
      throw CommandFailure.wrongInput("nothing was written; fix these cells and run it again.");
    }
    try {
      for (TrialTable.Row row : rows) {
        Path file = TrialFileText.create(folder, row.name(), row.text());
        surroundings.out().println("Trial started: " + home.resolve(file.getFileName()) + ".");
      }
    } catch (NotWrittenException e) {
      throw CommandFailure.notComputed(String.valueOf(e.getMessage()));
    }
    return ExitCodes.DONE;
  }

  private Path home() {
    if (in != null) {
      return in;
    }
    Path beside = from == null ? null : from.getParent();
    return beside == null ? Path.of("") : beside;
  }
}
