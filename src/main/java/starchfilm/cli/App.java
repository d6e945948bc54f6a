package starchfilm.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.UsageMessageSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.UnmatchedArgumentException;
import starchfilm.files.amount.NearMiss;
import starchfilm.files.amount.Synonyms;
import starchfilm.files.json.PackedText;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.numerics.diffusion.IntegrationFailure;
import starchfilm.report.TrialForecasts;
import starchfilm.request.RefusedRequestException;

/**
 * The program: its commands, and what happens when one of them fails.
 *
 * <p>To add a command, write a record of {@link Asked} that is a {@code Callable<Integer>}, name it
 * in {@link #command}, and write its help, with the groups of its fields, in {@code commands.txt}.
 */
@Command(name = "starchfilm", version = "starchfilm 0.2.0", synopsisSubcommandLabel = "COMMAND")
final class App implements Runnable {
  private static final int LONGEST_SENTENCE = 400;
  private static final int MOST_WORDS = 3;
  private static final String CONTINUED = "      ";

  /** The library sets its help no narrower. */
  private static final int LEAST_HELP_WIDTH = 55;

  private final CommandContext surroundings;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      scope = ScopeType.INHERIT,
      description = "Show this help and exit.")
  @SuppressWarnings("UnusedVariable") // the library acts on it
  private boolean help;

  @Option(
      names = {"-V", "--version"},
      versionHelp = true,
      description = "Show the version and exit.")
  @SuppressWarnings("UnusedVariable") // the library acts on it
  private boolean version;

  @Option(
      names = "--debug",
      scope = ScopeType.INHERIT,
      description = "On an unexpected error, show where in the program it happened.")
  private boolean debug;

  App(CommandContext surroundings) {
    this.surroundings = surroundings;
  }

  /** Runs one command. */
  int run(String... typed) {
    String[] args = typed.clone();
    if (args.length > 0 && args[0].equals("serve")) {
      // What it was called in version 0.1.0; goes with the version after this one.
      args[0] = "open";
      say("this command is called open now; the next version will not know serve.");
    }
    int exitCode = commandLine(args).execute(args);
    if (!surroundings.out().arrived()) {
      say(
          "the output could not be written: the disk is full, or the program that"
              + " reads it has ended.");
      exitCode = exitCode == ExitCodes.DONE ? ExitCodes.WRONG_INPUT : exitCode;
    }
    return exitCode;
  }

  /** The commands as picocli sees them. */
  CommandLine commandLine() {
    return commandLine(HelpText.all(), true);
  }

  /**
   * The command that is asked for alone, where that is plain: making the others takes time. Where
   * none is, they are there to be listed, without their options.
   */
  private CommandLine commandLine(String... args) {
    Set<String> words = Set.copyOf(Arrays.asList(args));
    List<HelpText> named =
        HelpText.all().stream().filter(help -> words.contains(first(help))).toList();
    boolean plain = !named.isEmpty() && first(named.get(0)).equals(args[0]);
    return commandLine(plain ? named : HelpText.all(), !named.isEmpty());
  }

  private static String first(HelpText help) {
    return help.command().split(" ", 2)[0];
  }

  private CommandLine commandLine(List<HelpText> commands, boolean options) {
    CommandLine line = new CommandLine(this);
    HelpText.program().into(line.getCommandSpec().usageMessage());
    for (HelpText help : commands) {
      String[] names = help.command().split(" ", -1);
      Objects.requireNonNull(names.length == 1 ? line : line.getSubcommands().get(names[0]))
          .addSubcommand(names[names.length - 1], made(help, options));
    }
    examplesFit(line);
    return line
        // What begins with @ is a remark or a name like any other.
        .setExpandAtFiles(false)
        .setOut(surroundings.out())
        .setErr(surroundings.err())
        .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
        .setUsageHelpWidth(Math.max(LEAST_HELP_WIDTH, Paragraph.WIDTH))
        .setParameterExceptionHandler(App::wrongUsage)
        .setExecutionExceptionHandler(this::failed);
  }

  /** A command with its options and its help; it is made once its words are known. */
  private CommandLine made(HelpText help, boolean options) {
    AtomicReference<CommandSpec> itself = new AtomicReference<>();
    Callable<Integer> run =
        () -> {
          CommandSpec spec = Objects.requireNonNull(itself.get());
          return command(help, Asked.of(surroundings, OptionEntries.of(spec))).call();
        };
    CommandSpec spec = CommandSpec.wrapWithoutInspection(run);
    itself.set(spec);
    if (options) {
      OptionEntries.add(help.sections(), spec);
    }
    help.into(spec.usageMessage());
    return new CommandLine(spec);
  }

  private static Callable<Integer> command(HelpText help, Asked asked) {
    return switch (help.command()) {
      case "compare" -> new CompareCommand(asked);
      case "dry" -> new DryCommand(asked);
      case "check" -> new CheckCommand(asked);
      case "new" -> new NewCommand(asked);
      case "today" -> new TodayCommand(asked);
      case "note" -> new NoteCommand(asked);
      case "learn" -> new LearnCommand(asked);
      case "plan" -> new PlanCommand(asked);
      case "sheet" -> new SheetCommand(asked);
      case "thickness" -> new ThicknessCommand(asked);
      case "assay" -> new AssayCommand(asked);
      case "assay ph" -> new PhCommand(asked);
      case "open" -> new OpenCommand(asked);
      default -> throw new IllegalStateException("no command " + help.command());
    };
  }

  /** An example that is longer than a line goes on in the next, as a shell takes it. */
  private static void examplesFit(CommandLine line) {
    UsageMessageSpec usage = line.getCommandSpec().usageMessage();
    List<String> footer = new ArrayList<>();
    for (String text : usage.footer()) {
      String rest = text;
      while (rest.startsWith("  ") && rest.length() > Paragraph.WIDTH - 1) {
        int end = rest.lastIndexOf(" --", Paragraph.WIDTH - 3);
        if (end <= CONTINUED.length()) {
          break;
        }
        footer.add(rest.substring(0, end) + " \\");
        rest = CONTINUED + rest.substring(end + 1);
      }
      footer.add(rest);
    }
    usage.footer(footer.toArray(String[]::new));
    line.getSubcommands().values().forEach(App::examplesFit);
  }

  /** Without a command there is nothing to do but to say which there are. */
  @Override
  public void run() {
    throw new ParameterException(commandLine(), "no command given");
  }

  private static int wrongUsage(ParameterException exception, String[] args) {
    CommandLine line = exception.getCommandLine();
    line.getErr().println("starchfilm: " + onOneLine(inWords(exception)));
    line.getErr().println("Help: " + line.getCommandSpec().qualifiedName() + " --help");
    return ExitCodes.WRONG_INPUT;
  }

  /** What is wrong, in words; the library counts places and names its own terms. */
  private static String inWords(ParameterException exception) {
    if (exception instanceof UnmatchedArgumentException unmatched && !unmatched.isUnknownOption()) {
      String words =
          unmatched.getUnmatched().stream()
              .limit(MOST_WORDS)
              .map(word -> '"' + word + '"')
              .collect(Collectors.joining(" "));
      return unmatched.getCommandLine().getParent() == null
          ? words
              + " is no command; "
              + NearMiss.of(
                      unmatched.getUnmatched().get(0),
                      HelpText.all().stream().map(HelpText::command).toList())
                  .map(near -> "did you mean " + near + "?")
                  .orElse("write starchfilm --help to see which there are")
          : words
              + " not understood: too many words; put what belongs together in quotes, such as"
              + " \"20 g\", and repeat an option for the next one";
    }
    if (exception instanceof MissingParameterException missing
        && missing.getMissing().size() == 1) {
      ArgSpec arg = missing.getMissing().get(0);
      return arg.isOption()
          ? "%s: too few words given; it takes %s. %s"
              .formatted(
                  ((OptionSpec) arg).longestName(),
                  arg.paramLabel(),
                  String.join(" ", arg.description()).replace("%%", "%"))
          : "no file named; write " + arg.paramLabel();
    }
    if (exception instanceof UnmatchedArgumentException unknown) {
      String option = unknown.getUnmatched().get(0).split("=", 2)[0];
      List<String> known =
          unknown.getCommandLine().getCommandSpec().options().stream()
              .map(OptionSpec::longestName)
              .toList();
      String everyday =
          Synonyms.of(PackedText.of(App.class, "options.words")).getOrDefault(option, option);
      return option
          + " is no option of this command"
          + NearMiss.of(known.contains(everyday) ? everyday : option, known)
              .map(near -> "; did you mean " + near + "?")
              .orElse("");
    }
    return String.valueOf(exception.getMessage());
  }

  /** The library repeats what was typed as it was, line breaks and all. */
  private static String onOneLine(String sentence) {
    String line = sentence.replaceAll("[\\p{Cntrl}\\s]+", " ").strip();
    return line.length() > LONGEST_SENTENCE ? line.substring(0, LONGEST_SENTENCE) + "..." : line;
  }

  private void say(@Nullable String sentence) {
    surroundings.err().println("starchfilm: " + sentence);
  }

  private int failed(Exception exception, CommandLine line, ParseResult parsed) {
    if (exception instanceof CommandFailure failure) {
      say(failure.getMessage());
      return failure.exitCode();
    }
    if (exception instanceof NotWrittenException) {
      say(exception.getMessage());
      return ExitCodes.WRONG_INPUT;
    }
    if (exception instanceof RefusedRequestException refused) {
      refused.sentences().forEach(this::say);
      return ExitCodes.WRONG_INPUT;
    }
    if (exception instanceof IntegrationFailure failure) {
      say(TrialForecasts.why(failure));
      return ExitCodes.NOT_COMPUTED;
    }
    say(
        "the program itself failed ("
            + exception
            + "); your files are fine. Run it again with --debug to see where.");
    if (debug) {
      exception.printStackTrace(line.getErr());
    }
    return ExitCodes.NOT_COMPUTED;
  }
}
