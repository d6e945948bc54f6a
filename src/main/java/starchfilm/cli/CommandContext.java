package starchfilm.cli;

import java.io.BufferedReader;
import java.io.Console;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;

/**
 * What a command touches outside its own memory, so that a test can hand it something else.
 *
 * @param workingDirectory what relative paths start from
 * @param clock the clock on the wall, in the reader's zone
 */
record CommandContext(
    Path workingDirectory, Clock clock, PlainPrinter out, PlainPrinter err, BufferedReader in) {
  private static final String WRITTEN = "µ°–·█";

  /**
   * Surroundings with any printers.
   *
   * @param workingDirectory what relative paths start from
   * @param clock the clock on the wall, in the reader's zone
   */
  CommandContext(
      Path workingDirectory, Clock clock, PrintWriter out, PrintWriter err, BufferedReader in) {
    this(workingDirectory, clock, new PlainPrinter(out), new PlainPrinter(err), in);
  }

  /**
   * The surroundings of the running program.
   *
   * @return its directory, clock and streams
   */
  static CommandContext ofThisProcess() {
    Charset charset = terminalCharset();
    return new CommandContext(
        Path.of(""),
        Clock.system(ZoneId.systemDefault()),
        new PrintWriter(System.out, true, charset),
        new PrintWriter(System.err, true, charset),
        new BufferedReader(new InputStreamReader(System.in, charset)));
  }

  /** A terminal that cannot show what we write usually understands UTF-8 all the same. */
  @SuppressWarnings("SystemConsoleNull") // null on 17 when redirected; never null from 22 on
  private static Charset terminalCharset() {
    Console console = System.console();
    return console != null && console.charset().newEncoder().canEncode(WRITTEN)
        ? console.charset()
        : StandardCharsets.UTF_8;
  }
}
