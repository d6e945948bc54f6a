package starchfilm.cli;

/** Where the program starts. */
public final class Main {
  private Main() {}

  /**
   * Runs one command and ends with its exit code.
   *
   * @param args the words of the command line
   */
  public static void main(String[] args) {
    System.exit(new App(CommandContext.ofThisProcess()).run(args));
  }
}
