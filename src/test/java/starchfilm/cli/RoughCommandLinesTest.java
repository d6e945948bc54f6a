package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;
import starchfilm.proof.Cases;
import starchfilm.proof.RoughJson;
import starchfilm.proof.RoughWords;

/** Whatever is typed behind a command, it ends in order and writes over nothing of the reader's. */
class RoughCommandLinesTest {
  private static final String TRIAL =
      """
      {
        "poured_at": "2026-04-19T09:00",
        "recipe": {"starch": [{"kind": "potato", "mass_g": 20}], "water": {"mass_g": 360}},
        "pour": {
          "plate": {"length_mm": 300, "width_mm": 200, "tare_g": 600},
          "poured_g": 150
        }
      }
      """;
  private static final String LETTER = "Dear Ann, the film has split again.\n";

  /** So that what lies beside the folder is ours, too. */
  @TempDir private Path outside;

  private Path folder = Path.of("");

  @Test
  void everyCommandEndsInOrder() throws IOException {
    Map<String, List<OptionSpec>> commands = commands();
    List<String> names = List.copyOf(commands.keySet());
    folder = Files.createDirectory(outside.resolve("notebook"));
    fill();
    Map<String, String> sound = contents();
    Cases.forEach(
        120,
        (random, number) -> {
          String command = RoughJson.any(names, random);
          List<String> words = words(command, commands.getOrDefault(command, List.of()), random);
          Terminal terminal =
              new Terminal(folder)
                  .answering(RoughWords.any(random), RoughWords.any(random), "", "remark", "x");
          Outcome.of(terminal, words.toArray(String[]::new));
          if (!contents().equals(sound)) {
            nothingIsLost(sound, words);
            fill();
          }
        });
  }

  private void nothingIsLost(Map<String, String> sound, List<String> words) {
    Map<String, String> now = contents();
    for (Map.Entry<String, String> file : sound.entrySet()) {
      String kept = now.getOrDefault(file.getKey() + ".before", now.get(file.getKey()));
      assertThat(kept).as("%s after %s", file.getKey(), words).isEqualTo(file.getValue());
      if (file.getKey().endsWith(".json") && !file.getKey().equals("faulty.json")) {
        assertThat(Outcome.of(folder, "check", file.getKey()).exit()).as(words.toString()).isZero();
      }
    }
  }

  private static List<String> words(String command, List<OptionSpec> options, Random random) {
    List<String> words = new ArrayList<>(List.of(command.split(" ")));
    for (int n = random.nextInt(7); n > 0; n--) {
      if (options.isEmpty() || random.nextInt(4) == 0) {
        words.add(RoughWords.any(random));
        continue;
      }
      OptionSpec option = RoughJson.any(options, random);
      String name = RoughJson.any(List.of(option.names()), random);
      boolean takesValue = option.arity().max() > 0 && random.nextInt(12) != 0;
      if (takesValue && random.nextBoolean()) {
        words.add(name + "=" + RoughWords.any(random));
      } else {
        words.add(random.nextInt(20) == 0 ? name + "x" : name);
        if (takesValue) {
          words.add(RoughWords.any(random));
        }
      }
    }
    if (command.equals("open") || command.equals("serve")) {
      // Never really opens: this port cannot be.
      words.addAll(List.of("--no-open", "--port", "99999"));
    }
    return words;
  }

  private static Map<String, List<OptionSpec>> commands() {
    Map<String, List<OptionSpec>> commands = new TreeMap<>();
    CommandLine all = new App(new Terminal(Path.of("")).surroundings()).commandLine();
    commands.put("", List.copyOf(all.getCommandSpec().options()));
    add(all, "", commands);
    return commands;
  }

  private static void add(CommandLine line, String prefix, Map<String, List<OptionSpec>> commands) {
    line.getSubcommands()
        .forEach(
            (name, below) -> {
              commands.put(prefix + name, List.copyOf(below.getCommandSpec().options()));
              add(below, prefix + name + " ", commands);
            });
  }

  private void fill() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.deleteIfExists(file);
      }
    }
    Files.writeString(folder.resolve("a.json"), TRIAL);
    Files.writeString(folder.resolve("faulty.json"), "{\"recipe\": 7");
    Files.writeString(folder.resolve("letter.txt"), LETTER);
    Files.writeString(folder.resolve("letter.html"), LETTER);
    Files.copy(Path.of("formulations/garden/shed-april.csv"), folder.resolve("log.csv"));
  }

  private Map<String, String> contents() {
    Map<String, String> contents = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        contents.put(
            folder.relativize(file).toString(),
            Files.readString(file, StandardCharsets.ISO_8859_1));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return contents;
  }
}
