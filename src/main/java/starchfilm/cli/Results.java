package starchfilm.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import starchfilm.cli.OutputFile.OutputKind;
import starchfilm.report.data.AnswerTable;
import starchfilm.report.data.Sheet;
import starchfilm.request.Field;

/**
 * Where the results of a command go beside or instead of its text, by the options that named them;
 * a place that cannot be is refused before anything is computed.
 */
final class Results {
  private final Asked asked;
  private final Map<String, OutputFile> files = new LinkedHashMap<>();

  Results(Asked asked) {
    this.asked = asked;
  }

  /** A result that an option asks for, if it was given. */
  Results to(String key, OutputKind kind) {
    return to(key, asked.word(key), kind);
  }

  /** Sends a result to another place than its option names. */
  Results to(String key, Optional<String> typed, OutputKind kind) {
    typed.ifPresent(place -> files.put(key, OutputFile.of(asked, Field.of(key), place, kind)));
    List<String> there =
        files.entrySet().stream()
            .filter(one -> one.getValue().isStandardOutput())
            .map(one -> Field.of(one.getKey()).name() + " -")
            .toList();
    if (there.size() > 1) {
      // Nobody could take them apart again.
      throw CommandFailure.wrongInput(
          String.join(" beside ", there)
              + " given, allowed one result on standard output; name a file for the others.");
    }
    return this;
  }

  boolean isEmpty() {
    return files.isEmpty();
  }

  /** Whether a result goes somewhere. */
  boolean has(String key) {
    return files.containsKey(key);
  }

  /** Whether one of them is standard output, so that no text goes there. */
  boolean areOnStandardOutput() {
    return files.values().stream().anyMatch(OutputFile::isStandardOutput);
  }

  /** The answer for a reader, in parts; left out where a result goes to standard output. */
  @SafeVarargs
  final void print(List<String>... parts) {
    if (!areOnStandardOutput()) {
      for (List<String> part : parts) {
        asked.out().printSentences(part);
      }
    }
  }

  /** An answer: for other programs where they were asked for, and for a reader. */
  void show(Sheet answer) {
    write(Asked.CSV, answer::csv);
    write(Asked.JSON, answer::json);
    print(answer.lines());
  }

  /** The printer of remarks: standard output, or standard error where a result goes there. */
  PlainPrinter remarks() {
    return areOnStandardOutput() ? asked.err() : asked.out();
  }

  /** Writes what the option asked for, if it was given. */
  void write(String key, Supplier<String> result) {
    OutputFile file = files.get(key);
    if (file != null) {
      file.write(result);
    }
  }

  /** Writes the answer as CSV and as JSON, where they were asked for. */
  void write(Supplier<AnswerTable> answer) {
    if (files.containsKey(Asked.CSV) || files.containsKey(Asked.JSON)) {
      AnswerTable table = answer.get();
      write(Asked.CSV, table::csv);
      write(Asked.JSON, table::json);
    }
  }

  /** Says where the result of an option went: a number of things, and what they are for. */
  void say(String key, String before, String after) {
    OutputFile file = files.get(key);
    if (file != null && !file.isStandardOutput()) {
      remarks().println(before + file.typed() + after);
    }
  }
}
