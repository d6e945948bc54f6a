package starchfilm.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import picocli.CommandLine.Model.UsageMessageSpec;
import starchfilm.files.json.PackedText;
import starchfilm.request.Field;
import starchfilm.request.Field.FieldSection;

/**
 * The help of a command and what may be asked of it, out of {@code commands.txt}.
 *
 * @param heads its name, the headings of its options and of its files, and its groups of fields
 * @param lines the text
 */
record HelpText(List<String> heads, List<String> lines) {
  private static final List<HelpText> ALL = read();

  private static List<HelpText> read() {
    List<HelpText> all = new ArrayList<>();
    for (String line : PackedText.of(HelpText.class, "commands.txt").lines().toList()) {
      if (line.startsWith("= ")) {
        List<String> heads =
            Arrays.stream(line.substring(2).split("\\|", 4)).map(String::strip).toList();
        all.add(new HelpText(heads, new ArrayList<>()));
      } else if (!all.isEmpty()) {
        all.get(all.size() - 1).lines().add(line.replace("%", "%%"));
      }
    }
    return List.copyOf(all);
  }

  /** The help of the program itself. */
  static HelpText program() {
    return ALL.get(0);
  }

  /** The help of every command, in the order of the program's help. */
  static List<HelpText> all() {
    return ALL.subList(1, ALL.size());
  }

  /** The command it is of, with the one it is below before it. */
  String command() {
    return heads.get(0);
  }

  List<FieldSection> sections() {
    return Field.sections(heads.get(3).split(",\\s*"));
  }

  /** Puts it into the usage of its command. */
  void into(UsageMessageSpec usage) {
    List<String> calls = lines.stream().takeWhile(line -> line.startsWith("  ")).toList();
    List<String> text = lines.subList(calls.size(), lines.size());
    Predicate<String> below = line -> !line.matches("(Examples?|Start with):.*");
    usage
        .customSynopsis(
            IntStream.range(0, calls.size())
                .mapToObj(
                    i -> (i == 0 ? "" : " ".repeat("Usage: ".length())) + calls.get(i).strip())
                .toArray(String[]::new))
        .description(trimmed(text.stream().takeWhile(below)))
        .footer(
            Stream.concat(Stream.of(""), Stream.of(trimmed(text.stream().dropWhile(below))))
                .toArray(String[]::new))
        .optionListHeading("%n" + heads.get(1) + ":%n")
        .parameterListHeading("%n" + heads.get(2) + ":%n")
        .commandListHeading(equals(program()) ? "%nCommands:%n" : "%nMore:%n")
        .sortOptions(equals(program()));
  }

  private static String[] trimmed(Stream<String> lines) {
    return lines.collect(Collectors.joining("\n")).strip().split("\n", -1);
  }
}
