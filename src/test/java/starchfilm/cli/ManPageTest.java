package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

class ManPageTest {
  /** A command whose texts would be taken for macros if they were not guarded. */
  @Command(
      name = "stir",
      version = "stir 1.0",
      description = {"Stir a pot.", "", ".Never stop: 100 %% of the time."},
      footer = {"Example:", "  stir C:\\pot --speed 3"})
  private static final class Stir {
    @Parameters(paramLabel = "POT", description = "The pot.")
    private Path pot = Path.of("");

    @Option(
        names = {"-s", "--speed"},
        paramLabel = "TURNS",
        description = "Turns a second.")
    private int speed;

    @Option(names = "--secret", hidden = true)
    private boolean secret;
  }

  @Test
  void writesThePageOfACommand() {
    assertThat(ManPage.of(new CommandLine(new Stir()).getCommandSpec()))
        .isEqualTo(
            """
            .TH "STIR" "1" "" "stir 1.0" ""
            .SH "NAME"
            stir \\- stir a pot
            .SH "SYNOPSIS"
            stir [\\-s=TURNS] POT
            .SH "DESCRIPTION"
            Stir a pot.
            .PP
            \\&.Never stop: 100 % of the time.
            .SH "ARGUMENTS"
            .TP
            POT
            The pot.
            .SH "OPTIONS"
            .TP
            \\-s, \\-\\-speed TURNS
            Turns a second.
            .SH "EXAMPLES AND EXIT CODES"
            .nf
            Example:
              stir C:\\epot \\-\\-speed 3
            .fi
            """);
  }

  @Test
  void namesEveryCommandBelow() {
    String page =
        ManPage.of(
            new App(new Terminal(Path.of("")).surroundings()).commandLine().getCommandSpec());

    assertThat(page).contains(".SH \"COMMANDS\"\n.TP\nstarchfilm\\-compare(1)\n");
  }
}
