package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import starchfilm.proof.BigNotebook;

/** What the guides and the help texts tell people to type works, beside a copy of the demo. */
class DocumentedCommandsTest {
  /** What a guide sets as code: a fenced block, an indented line, or words between backticks. */
  private static final Pattern CODE =
      Pattern.compile("(?ms)^```\\w*\n(.*?)^```|^ {4}([^\n]*)|`([^`\n]+)`");

  /** Our own command in a line for a shell, up to the next command or a remark. */
  private static final Pattern COMMAND =
      Pattern.compile(
          "(?m)(?:^|&& )(?:java (?:-X\\S+ )*-jar target/starchfilm\\.jar|(?:\\./)?starchfilm)"
              + " ((?:\"[^\"]*\"|[^&#\"\n])+)");

  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
  private static final Pattern JSON_BLOCK = Pattern.compile("(?s)```json\n(.*?)```");

  @TempDir private Path folder;

  @BeforeEach
  void copyTheDemo() throws IOException {
    Path demo = Path.of("formulations");
    try (Stream<Path> files = Files.walk(demo)) {
      for (Path file : files.toList()) {
        Files.copy(file, folder.resolve(file));
      }
    }
    // The trial that the examples of note write to.
    Files.createDirectory(folder.resolve("garden"));
    Files.copy(demo.resolve("starter-first-film.json"), folder.resolve("garden/7.json"));
    // What the guide for developers calls a big notebook.
    BigNotebook.write(folder.resolve("big"), 3);
  }

  @ParameterizedTest
  @ValueSource(strings = {"README.md", "DEVELOPERS.md"})
  void guidesQuoteCommandsThatWork(String guide) throws IOException {
    commandsIn(code(guide)).forEach(this::works);
  }

  @Test
  void theFirstPageQuotesCommands() throws IOException {
    assertThat(commandsIn(code("README.md"))).isNotEmpty();
  }

  static Stream<CommandLine> everyCommand() {
    return withThoseBelow(new App(new Terminal(Path.of("")).surroundings()).commandLine());
  }

  private static Stream<CommandLine> withThoseBelow(CommandLine line) {
    return Stream.concat(
        Stream.of(line),
        line.getSubcommands().values().stream().flatMap(DocumentedCommandsTest::withThoseBelow));
  }

  @ParameterizedTest
  @MethodSource("everyCommand")
  void helpShowsExamplesThatWork(CommandLine command) {
    String help =
        command
            .getUsageMessage(CommandLine.Help.Ansi.OFF)
            .replaceAll("(?m)^ {2}(?=starchfilm)", "");
    String examples = help.substring(Math.max(help.indexOf("Example"), help.indexOf("Start with")));

    List<List<String>> commands = commandsIn(examples);

    assertThat(commands).isNotEmpty();
    commands.forEach(this::works);
  }

  @Test
  void trialsInTheGuideAreSound() throws IOException {
    List<String> trials =
        JSON_BLOCK
            .matcher(Files.readString(Path.of("README.md")))
            .results()
            .map(block -> block.group(1))
            .toList();
    assertThat(trials).isNotEmpty();
    for (String trial : trials) {
      Files.writeString(folder.resolve("quoted.json"), trial);
      works(List.of("check", "quoted.json"));
    }
  }

  @Test
  void tellsTheVersionOfTheBuild() throws IOException {
    Terminal terminal = new Terminal(folder);
    terminal.run("--version");
    String pom = Files.readString(Path.of("pom.xml"));
    assertThat(terminal.out().trim())
        .isEqualTo("starchfilm " + pom.replaceAll("(?s).*?<version>(.*?)</version>.*", "$1"));
  }

  private void works(List<String> words) {
    Terminal terminal = new Terminal(folder);
    if (words.contains("open")) {
      // It would serve until it is stopped; that its words are understood must do.
      new App(terminal.surroundings()).commandLine().parseArgs(words.toArray(String[]::new));
      return;
    }
    int exit = terminal.run(words.toArray(String[]::new));
    assertThat(exit).as("%s%n%s", words, terminal.err()).isZero();
  }

  private static String code(String guide) throws IOException {
    StringBuilder code = new StringBuilder();
    Matcher found = CODE.matcher(Files.readString(Path.of(guide)));
    while (found.find()) {
      for (int group = 1; group <= found.groupCount(); group++) {
        code.append(found.group(group) == null ? "" : found.group(group) + "\n");
      }
    }
    return code.toString();
  }

  private static List<List<String>> commandsIn(String text) {
    List<List<String>> commands = new ArrayList<>();
    COMMAND
        .matcher(text.replaceAll("\\\\\\R\\s*", ""))
        .results()
        .forEach(found -> commands.add(words(found.group(1))));
    return commands;
  }

  private static List<String> words(String line) {
    return WORD.matcher(line.strip()).results().map(DocumentedCommandsTest::unquoted).toList();
  }

  private static String unquoted(MatchResult word) {
    return word.group(1) == null ? word.group(2) : word.group(1);
  }
}
