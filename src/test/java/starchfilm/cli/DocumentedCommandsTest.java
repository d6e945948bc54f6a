package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import starchfilm.proof.BigNotebook;
import starchfilm.proof.GuidePart;

/** What the guides and the help texts tell people to type works, beside a copy of the demo. */
class DocumentedCommandsTest {
  /** What a guide sets as code: a fenced block, an indented line, or words between backticks. */
  private static final Pattern CODE =
      Pattern.compile("(?ms)^```\\w*\n(.*?)^```|^ {4,}([^\n]*)|`([^`\n]+)`");

  /** Our own command in a line for a shell, up to the next command or a remark. */
  private static final Pattern COMMAND =
      Pattern.compile(
          "(?m)(?:^|&& )(?:java (?:-X\\S+ )*-jar target/starchfilm\\.jar|(?:\\./)?starchfilm)"
              + " ((?:\"[^\"]*\"|[^&#\"\n])+)");

  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
  private static final Pattern JSON_BLOCK = Pattern.compile("(?s)```json\n(.*?)```");

  /** A link to a file of ours, with the heading it leads to. */
  private static final Pattern LINK =
      Pattern.compile("\\]\\((?![a-z]+:)([^)#\\s]*)(?:#([^)\\s]+))?\\)");

  /** The first word of a class in backticks, packages before it and a method behind it allowed. */
  private static final Pattern CLASS_NAME =
      Pattern.compile("`(?:[a-z]+\\.)*([A-Z][a-z0-9]+(?:[A-Z][A-Za-z0-9]*))[`.]");

  private static final Path README = Path.of("README.md");

  @TempDir private Path folder;

  @BeforeEach
  void copyTheDemo() throws IOException {
    Path demo = Path.of("formulations");
    try (Stream<Path> files = Files.walk(demo)) {
      for (Path file : files.toList()) {
        Files.copy(file, folder.resolve(file));
      }
    }
    // The trial that the examples of a command's help write to; a guide makes its own.
    Files.createDirectory(folder.resolve("garden"));
    Files.copy(demo.resolve("starter-first-film.json"), folder.resolve("garden/7.json"));
    // What the guide for developers calls a big notebook.
    BigNotebook.write(folder.resolve("big"), 3, 3);
  }

  static Stream<Path> guides() throws IOException {
    try (Stream<Path> docs = Files.list(Path.of("src/docs"))) {
      List<Path> guides = docs.filter(file -> file.toString().endsWith(".md")).sorted().toList();
      return Stream.concat(Stream.of(README, Path.of("DEVELOPERS.md")), guides.stream());
    }
  }

  @ParameterizedTest
  @MethodSource("guides")
  void guidesQuoteCommandsThatWork(Path guide) throws IOException {
    commandsIn(code(guide)).forEach(this::works);
  }

  @Test
  void theFirstPageBeginsWithACommandAndIsSoonRead() throws IOException {
    String readme = Files.readString(README);
    String first = readme.lines().limit(20).collect(Collectors.joining("\n"));
    String withoutChanges = readme.replaceAll("(?s)\n## Changes\n.*?(?=\n## )", "");

    assertThat(commandsIn(first.replaceAll("(?m)^ {4}", ""))).isNotEmpty();
    assertThat(withoutChanges.split("\\s+")).hasSizeLessThan(1_600);
  }

  /** Links within the guides lead to a file that is there, and to a heading of it. */
  @ParameterizedTest
  @MethodSource("guides")
  void guidesLinkToWhatIsThere(Path guide) throws IOException {
    for (MatchResult link : LINK.matcher(Files.readString(guide)).results().toList()) {
      String file = link.group(1);
      Path target = file.isEmpty() ? guide : guide.resolveSibling(file).normalize();
      assertThat(target).as("%s links to %s", guide, link.group()).exists();
      if (link.group(2) != null) {
        assertThat(headings(target))
            .as("%s links to %s", guide, link.group())
            .contains(link.group(2));
      }
    }
  }

  /** The headings of a guide, as a link names them. */
  private static List<String> headings(Path guide) throws IOException {
    return Files.readString(guide)
        .lines()
        .filter(line -> line.matches("#+ .*"))
        .map(line -> line.replaceFirst("#+ ", "").toLowerCase(Locale.ROOT))
        .map(line -> line.replaceAll("[^\\p{L}\\p{N} -]", "").replace(' ', '-'))
        .toList();
  }

  /** A class that a guide names is in the code, so that whoever looks for it finds it. */
  @ParameterizedTest
  @MethodSource("guides")
  void guidesNameClassesThatAreThere(Path guide) throws IOException {
    Set<String> classes;
    try (Stream<Path> files = Files.walk(Path.of("src"))) {
      classes =
          files
              .map(file -> file.getFileName().toString())
              .filter(name -> name.endsWith(".java"))
              .map(name -> name.replace(".java", ""))
              .collect(Collectors.toSet());
    }
    assertThat(CLASS_NAME.matcher(Files.readString(guide)).results().map(found -> found.group(1)))
        .isSubsetOf(classes);
  }

  @Test
  void theGuideToFilesListsEveryField() throws IOException {
    Terminal terminal = new Terminal(folder);
    terminal.run("check", "--keys");

    GuidePart.says("src/docs/files.md", "fields", "```text\n" + terminal.out() + "```");
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

  @ParameterizedTest
  @MethodSource("guides")
  void trialsInTheGuidesAreSound(Path guide) throws IOException {
    for (MatchResult trial : JSON_BLOCK.matcher(Files.readString(guide)).results().toList()) {
      Files.writeString(folder.resolve("quoted.json"), trial.group(1));
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

  private static String code(Path guide) throws IOException {
    StringBuilder code = new StringBuilder();
    Matcher found = CODE.matcher(Files.readString(guide));
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
