package starchfilm.cli;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Random;

/** A program of its own for tests: writes by every command that writes, until it is killed. */
final class BusyHand {
  private BusyHand() {}

  /**
   * Writes for ever; says the number of each note once it is done.
   *
   * @param args the folder, and the first number
   */
  public static void main(String[] args) {
    Path folder = Path.of(args[0]);
    int first = Integer.parseInt(args[1]);
    Random random = new Random(first);
    for (int number = first; true; number++) {
      if (random.nextInt(12) == 0) {
        run(folder, "dry", "a.json", "--json", "dry.json", "--csv", "dry.csv");
        run(folder, "compare", "a.json", "--out", "page.html");
      }
      if (random.nextInt(12) == 0) {
        run(folder, "learn", ".");
      }
      if (run(folder, "note", "a.json", "--remark", "seen " + number) == 0) {
        System.out.println(number);
      }
    }
  }

  private static int run(Path folder, String... words) {
    PrintWriter errors = new PrintWriter(System.err, true);
    Clock noon = Clock.fixed(Instant.parse("2026-04-20T12:00:00Z"), ZoneOffset.UTC);
    BufferedReader nobody = new BufferedReader(new StringReader(""));
    PrintWriter silent = new PrintWriter(PrintWriter.nullWriter());
    return new App(new CommandContext(folder, noon, silent, errors, nobody)).run(words);
  }
}
