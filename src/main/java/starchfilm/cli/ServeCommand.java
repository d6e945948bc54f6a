package starchfilm.cli;

import picocli.CommandLine.Command;

/** What {@code open} was called in version 0.1.0; goes with the version after this one. */
@Command(
    name = "serve",
    hidden = true,
    description = "Old name of the command open.",
    footer = {"", "Example:", "  starchfilm open formulations/garden"})
final class ServeCommand extends OpenCommand {
  private final CommandContext surroundings;

  ServeCommand(CommandContext surroundings) {
    super(surroundings);
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws InterruptedException {
    surroundings
        .err()
        .println(
            "starchfilm: this command is called open now; the next version will not know serve.");
    surroundings.err().flush();
    return super.call();
  }
}
