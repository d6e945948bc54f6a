package starchfilm.cli;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/** The program run in memory: what was typed in, what came out. */
final class Terminal {
  private static final Instant NOON = Instant.parse("2026-04-20T12:00:00Z");

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private final Path directory;
  private final Clock clock;
  private String answers = "";

  Terminal(Path directory) {
    this(directory, Clock.fixed(NOON, ZoneOffset.UTC));
  }

  Terminal(Path directory, Clock clock) {
    this.directory = directory;
    this.clock = clock;
  }

  /** Sets what is typed in answer to questions. */
  Terminal answering(String... lines) {
    answers = String.join("\n", lines);
    return this;
  }

  int run(String... words) {
    return new App(surroundings()).run(words);
  }

  /** Plans from 20 g of bought glycerol for one plate. */
  int plan(String... more) {
    List<String> words =
        new ArrayList<>(
            List.of("plan", "--starch", "potato", "--glycerol", "20g", "--purity", "99%"));
    words.addAll(List.of("--room", "20C,50%", "--plates", "1x300x200mm glass"));
    words.addAll(List.of(more));
    return run(words.toArray(String[]::new));
  }

  CommandContext surroundings() {
    return new CommandContext(
        directory,
        clock,
        new PrintWriter(out, true),
        new PrintWriter(err, true),
        new BufferedReader(new StringReader(answers)));
  }

  String out() {
    return out.toString();
  }

  String err() {
    return err.toString();
  }
}
