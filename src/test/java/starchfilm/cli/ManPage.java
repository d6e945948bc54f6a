package starchfilm.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * The manual page of one command, written from what its help is written from.
 *
 * <p>The commands' library writes AsciiDoc, which a further program would have to turn into a page;
 * the few macros of man(7) that a page needs are written here directly.
 */
final class ManPage {
  private static final int UNWRAPPED = 100_000;

  private final CommandSpec command;
  private final StringBuilder page = new StringBuilder();

  private ManPage(CommandSpec command) {
    this.command = command;
  }

  /** The page's name without its section: the words of the command, joined by hyphens. */
  static String name(CommandSpec command) {
    return command.qualifiedName("-");
  }

  /** The page of a command, in the language of man(7). */
  static String of(CommandSpec command) {
    return new ManPage(command).write();
  }

  private String write() {
    String program = String.join(" ", command.root().version());
    macro("TH", name(command).toUpperCase(Locale.ROOT), "1", "", program, "");
    List<String> paragraphs = formatted(command.usageMessage().description());
    section("NAME");
    line(name(command) + " - " + asPhrase(paragraphs.get(0)));
    section("SYNOPSIS");
    line(command.commandLine().getHelp().synopsis(0).trim().replaceAll("\\s+", " "));
    section("DESCRIPTION");
    paragraphs.forEach(this::paragraph);
    writeArguments();
    writeCommands();
    writeFooter();
    return page.toString();
  }

  private void writeArguments() {
    List<PositionalParamSpec> parameters = command.positionalParameters();
    List<OptionSpec> options =
        command.options().stream().filter(option -> !option.hidden()).toList();
    if (!parameters.isEmpty()) {
      section("ARGUMENTS");
      parameters.forEach(parameter -> entry(parameter.paramLabel(), parameter));
    }
    section("OPTIONS");
    for (OptionSpec option : options) {
      String names = String.join(", ", option.names());
      boolean takesWord = option.arity().max() > 0;
      entry(takesWord ? names + " " + option.paramLabel() : names, option);
    }
  }

  private void writeCommands() {
    if (command.subcommands().isEmpty()) {
      return;
    }
    section("COMMANDS");
    for (CommandLine line : command.subcommands().values()) {
      CommandSpec below = line.getCommandSpec();
      if (below.usageMessage().hidden()) {
        continue;
      }
      macro("TP");
      line(name(below) + "(1)");
      line(formatted(below.usageMessage().description()).get(0));
    }
  }

  private void writeFooter() {
    section("EXAMPLES AND EXIT CODES");
    macro("nf");
    formatted(command.usageMessage().footer()).forEach(this::line);
    macro("fi");
  }

  private void entry(String head, ArgSpec argument) {
    macro("TP");
    line(head);
    line(String.join(" ", argument.description()));
  }

  private void paragraph(String text) {
    if (text.isEmpty()) {
      macro("PP");
    } else {
      line(text);
    }
  }

  /**
   * The texts of a command are format strings, and the library fills them for the help only; those
   * of its options are filled already.
   */
  private static List<String> formatted(String... texts) {
    StringBuilder filled = new StringBuilder();
    CommandLine.Help.join(Ansi.OFF, UNWRAPPED, false, texts, filled);
    return Arrays.asList(filled.toString().stripTrailing().split("\\R", -1));
  }

  private static String asPhrase(String sentence) {
    String phrase =
        sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    return phrase.substring(0, 1).toLowerCase(Locale.ROOT) + phrase.substring(1);
  }

  private void section(String title) {
    macro("SH", title);
  }

  private void macro(String name, String... arguments) {
    page.append('.').append(name);
    for (String argument : arguments) {
      page.append(" \"").append(argument).append('"');
    }
    page.append('\n');
  }

  /** Text that must not be taken for a macro, nor its hyphens for printed dashes. */
  private void line(String text) {
    String literal = text.replace("\\", "\\e").replace("-", "\\-");
    page.append(literal.startsWith(".") || literal.startsWith("'") ? "\\&" : "");
    page.append(literal).append('\n');
  }
}
