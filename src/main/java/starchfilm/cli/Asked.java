package starchfilm.cli;

import java.io.BufferedReader;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import starchfilm.casting.trial.Trial;
import starchfilm.cli.OutputFile.OutputKind;
import starchfilm.learning.Workshops;
import starchfilm.request.Field;

/**
 * A command as it was asked.
 *
 * @param here where the command runs
 * @param clock the clock on the wall, in the reader's zone
 * @param in what answers are read from
 * @param entries what was written behind its name
 */
record Asked(
    Path here,
    Clock clock,
    PlainPrinter out,
    PlainPrinter err,
    BufferedReader in,
    OptionEntries entries) {
  static final String CSV = "results.table";
  static final String JSON = "results.data";

  static Asked of(CommandContext surroundings, OptionEntries entries) {
    return new Asked(
        surroundings.workingDirectory(),
        surroundings.clock(),
        surroundings.out(),
        surroundings.err(),
        surroundings.in(),
        entries);
  }

  /** A path as the user typed it, from where the command runs. */
  Path resolve(Path typed) {
    return here.resolve(typed);
  }

  /** What was learnt beside some trials; a file of it that cannot be read is reported. */
  Workshops workshops(List<Trial> trials) {
    Workshops workshops = new Workshops(clock);
    workshops.faults(trials).forEach(fault -> err.println(fault.sentence()));
    return workshops;
  }

  /** The command's own name. */
  String command() {
    return entries.parsed().commandSpec().name();
  }

  boolean has(String key) {
    return !entries.words(Field.of(key)).isEmpty();
  }

  /** The word of an option that takes one, or of a file, by its field. */
  Optional<String> word(String key) {
    List<String> words = entries.words(Field.of(key));
    if (words.size() > 1) {
      throw CommandFailure.wrongInput(
          entries.name(Field.of(key))
              + ": given more than once, allowed once; leave all but one out");
    }
    return words.stream().findFirst();
  }

  Optional<Path> path(String key) {
    return word(key).map(typed -> path(Field.of(key), typed));
  }

  /** Files and folders in a row. */
  List<Path> paths(String key) {
    Field field = Field.of(key);
    return entries.words(field).stream().map(typed -> path(field, typed)).toList();
  }

  /** A file name typed for a field. */
  static Path path(Field field, String typed) {
    try {
      return Path.of(typed);
    } catch (InvalidPathException impossible) {
      throw CommandFailure.wrongInput(
          (field.option().isEmpty() ? field.param() : field.name())
              + ": cannot be a file name; check its spelling");
    }
  }

  /** Where the answer goes beside or instead of the text. */
  Results results() {
    return results(OutputKind.TABLE, OutputKind.DATA);
  }

  /** Where an answer of these kinds goes. */
  Results results(OutputKind table, OutputKind data) {
    return new Results(this).to(CSV, table).to(JSON, data);
  }
}
