package starchfilm.cli;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import starchfilm.report.data.DataSheet;

/** What every command takes that writes its answer for other programs. */
final class DataOptions {
  @Option(
      names = "--csv",
      paramLabel = "TABLE",
      description = "Also write the answer as CSV; - for standard output instead of the text.")
  private @Nullable String csv;

  @Option(
      names = "--json",
      paramLabel = "DATA",
      description =
          "Also write it as JSON, with unit and meaning of each key; - for" + " standard output.")
  private @Nullable String json;

  /**
   * Where the answer goes; a place that cannot be is refused before anything is computed.
   *
   * @param table the CSV
   * @param data the JSON
   */
  record Places(Optional<OutputFile> table, Optional<OutputFile> data) {
    /** Whether one of them is standard output, so that no text goes there. */
    boolean isOnStandardOutput() {
      return Stream.of(table, data)
          .flatMap(Optional::stream)
          .anyMatch(OutputFile::isStandardOutput);
    }

    /** Whether nothing is to be written. */
    boolean isEmpty() {
      return table.isEmpty() && data.isEmpty();
    }

    /** Writes what was asked for. */
    void write(Supplier<DataSheet> answer) {
      if (!isEmpty()) {
        DataSheet sheet = answer.get();
        table.ifPresent(file -> file.write(sheet::csv));
        data.ifPresent(file -> file.write(sheet::json));
      }
    }
  }

  Places places(CommandContext surroundings) {
    Optional<OutputFile> table =
        OutputFile.named("--csv", csv, OutputFile.Kind.TABLE, surroundings);
    Optional<OutputFile> data =
        OutputFile.named("--json", json, OutputFile.Kind.DATA, surroundings);
    OutputFile.requireOneOnStandardOutput(List.of(table, data));
    return new Places(table, data);
  }
}
