package starchfilm.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import starchfilm.files.amount.MomentParser;
import starchfilm.files.findings.Findings;
import starchfilm.files.findings.FirstFaults;
import starchfilm.files.saving.NewTrialFile;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.TrialFileText;
import starchfilm.request.NewTrial;
import starchfilm.request.TrialQuestion;
import starchfilm.request.TrialTable;

/** Starts a trial file. */
record NewCommand(Asked asked) implements Callable<Integer> {

  @Override
  public Integer call() throws NotWrittenException {
    OptionEntries entries = asked.entries();
    Optional<Path> from = asked.path("start.from");
    if (!asked.has("line.cooked") && from.isEmpty() && !TrialQuestion.isWritten(entries)) {
      throw CommandFailure.wrongInput(
          "new needs what you cooked, such as \"20 g potato, 6 g glycerol, 360 g water; 30x20cm"
              + " glass, 3 mm\", or an earlier trial with --from.");
    }
    Path home = home(from);
    Path folder = asked.resolve(home);
    if (!Files.isDirectory(folder)) {
      throw CommandFailure.wrongInput(
          "--in " + home + ": no folder of this name; make it first, or name another.");
    }
    if (from.filter(file -> file.toString().toLowerCase(Locale.ROOT).endsWith(".csv"))
        .isPresent()) {
      return fromTable(from.get(), folder, home, entries);
    }
    Optional<TrialQuestion.Base> base =
        from.isEmpty() ? Optional.empty() : OneTrial.whole(asked, from.get()).base();
    NewTrial made = NewTrial.read(entries, base, folder, asked.clock());
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
        .forEach(asked.out()::printSentences);
    return ExitCodes.DONE;
  }

  /** All rows or none, so that a table may be fixed and read again. */
  private int fromTable(Path table, Path folder, Path home, OptionEntries entries)
      throws NotWrittenException {
    if (asked.has("line.cooked") || TrialQuestion.isWritten(entries)) {
      throw CommandFailure.wrongInput(
          "--from " + table + ": a table is read as it is; leave the other options out.");
    }
    Findings findings = new Findings(table.toString());
    List<NewTrialFile> rows =
        TrialTable.read(asked.resolve(table), findings, new MomentParser(asked.clock()));
    findings.notices().forEach(notice -> asked.err().println(notice.sentence()));
    if (!findings.faults().isEmpty()) {
      FirstFaults.sentences(findings.faults()).forEach(asked.err()::println);
      throw CommandFailure.wrongInput("nothing was written; fix the table and run it again.");
    }
    for (Path file : NewTrialFile.write(rows, Optional.empty(), folder)) {
      asked.out().println("Trial started: " + home.resolve(file.getFileName()) + ".");
    }
    return ExitCodes.DONE;
  }

  private Path home(Optional<Path> from) {
    return asked
        .path("start.in")
        .or(() -> from.flatMap(earlier -> Optional.ofNullable(earlier.getParent())))
        .orElse(Path.of(""));
  }
}
