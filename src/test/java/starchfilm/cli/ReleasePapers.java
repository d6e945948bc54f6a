package starchfilm.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.AutoComplete;
import picocli.CommandLine;

/**
 * Writes what a release holds besides the program, from the commands themselves: the manual pages
 * and the completion for shells. The build runs it; it is no part of the program.
 */
public final class ReleasePapers {
  private ReleasePapers() {}

  /**
   * Writes the papers.
   *
   * @param words the folder they go to
   * @throws IOException where a file cannot be written
   */
  public static void main(String[] words) throws IOException {
    Path folder = Path.of(words[0]);
    CommandLine program = new App(CommandContext.ofThisProcess()).commandLine();
    Path completion = Files.createDirectories(folder.resolve("completion"));
    Files.writeString(
        completion.resolve("starchfilm.bash"), AutoComplete.bash("starchfilm", program));
    writeManPages(program, Files.createDirectories(folder.resolve("man/man1")));
  }

  private static void writeManPages(CommandLine line, Path folder) throws IOException {
    Path page = folder.resolve(ManPage.name(line.getCommandSpec()) + ".1");
    Files.writeString(page, ManPage.of(line.getCommandSpec()));
    for (CommandLine below : line.getSubcommands().values()) {
      writeManPages(below, folder);
    }
  }
}
