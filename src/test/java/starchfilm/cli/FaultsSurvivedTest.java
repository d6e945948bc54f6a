package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import starchfilm.proof.Kills;
import starchfilm.proof.OwnJava;
import starchfilm.proof.SmallDisk;

/**
 * Kills, full disks, disks that may only be read, and files cut off: every file is the old or the
 * new one, whole, and the sentence says what to do.
 *
 * <p>{@code -Dstarchfilm.kills=200} kills that often ({@code -Dstarchfilm.seed} at other moments),
 * and as root also fills a disk of its own and takes the right to write away.
 */
@Timeout(3_000)
class FaultsSurvivedTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir private Path folder;
  private Path file = Path.of("");

  @BeforeEach
  void writeTrial() throws IOException {
    file = folder.resolve("a.json");
    Files.copy(Path.of("formulations/garden/4-blend.json"), file);
  }

  @Test
  void aKillAtAnyMoment(@TempDir Path outside) throws Exception {
    Random random = Kills.moments();
    List<String> seen = new ArrayList<>();
    for (int kill = 0; kill < Kills.COUNT; kill++) {
      int first = kill * 100_000;
      Path said = Files.createFile(outside.resolve("said" + kill));
      Process hand = start(first, said, outside.resolve("errors"));
      int atLeast = 1 + random.nextInt(Kills.LONG ? 12 : 6);
      while (lines(said).size() < atLeast) {
        assertThat(hand.isAlive()).as(Files.readString(outside.resolve("errors"))).isTrue();
        Thread.sleep(1);
      }
      Kills.soon(hand, random);

      List<String> told = lines(said).stream().map(number -> "seen " + number).toList();
      List<String> kept = remarks(file);
      // The last note may have been written and not told.
      List<String> expected = new ArrayList<>(seen);
      expected.addAll(told);
      if (kept.size() == expected.size() + 1) {
        expected.add("seen " + (first + told.size()));
      }
      assertThat(kept).isEqualTo(expected);
      seen = expected;
      assertThat(remarks(folder.resolve("a.json.before")).size())
          .isBetween(seen.size() - 1, seen.size());
      wholeOrNotThere("page.html", "<!DOCTYPE html>", "</html>");
      wholeOrNotThere("dry.json", "{", "}");
      wholeOrNotThere("dry.csv", "time_h", "");
      wholeOrNotThere("workshop.json", "{", "}");
      assertThat(Outcome.of(folder, "check", "a.json").exit()).isZero();
    }
    System.out.printf("killed %d times in %d notes; nothing lost%n", Kills.COUNT, seen.size());
  }

  @Test
  void aFileCutOffAnywhere() throws IOException {
    byte[] whole = Files.readAllBytes(file);
    Files.copy(Path.of("formulations/starter-first-film.json"), folder.resolve("b.json"));
    int most = new String(whole, StandardCharsets.UTF_8).stripTrailing().length();
    for (int length = 0; length < most; length += Kills.LONG ? 1 : 37) {
      byte[] cut = Arrays.copyOf(whole, length);
      Files.write(file, cut);
      Outcome check = Outcome.of(folder, "check", ".");
      assertThat(check.exit()).isEqualTo(2);
      assertThat(check.out()).startsWith("1 trial sound, 1 file with 1 fault");
      assertThat(check.err()).contains("a.json");
      assertThat(Outcome.of(folder, "note", "a.json", "--rating", "4").exit()).isEqualTo(2);
      assertThat(file).hasBinaryContent(cut);
    }
  }

  @Test
  void aFullDisk() throws Exception {
    int full = 0;
    try (SmallDisk disk = SmallDisk.at(folder, "400k")) {
      Files.writeString(file, trialOf(30_000));
      assertThat(Outcome.of(folder, "compare", "a.json", "--out", "page.html").exit()).isZero();
      assertThat(Outcome.of(folder, "learn", ".").exit()).isZero();
      for (int free = 0; free < 100; free++) {
        byte[] before = Files.readAllBytes(file);
        byte[] page = Files.readAllBytes(folder.resolve("page.html"));
        disk.leave(free * 1_024L);
        Outcome note = Outcome.of(folder, "note", "a.json", "--remark", "seen " + free);
        if (note.exit() == 0) {
          assertThat(remarks(file)).contains("seen " + free).hasSize(remarks(before).size() + 1);
        } else {
          full++;
          assertThat(note.err()).contains("the disk is full; nothing was changed; make room");
          assertThat(file).hasBinaryContent(before);
        }
        Outcome compare = Outcome.of(folder, "compare", "a.json", "--out", "page.html");
        if (compare.exit() != 0) {
          assertThat(compare.err()).contains("the disk is full").doesNotContain("java.");
          assertThat(folder.resolve("page.html")).hasBinaryContent(page);
        }
        byte[] workshop = Files.readAllBytes(folder.resolve("workshop.json"));
        Outcome learn = Outcome.of(folder, "learn", ".");
        if (learn.exit() != 0) {
          assertThat(learn.err()).contains("the disk is full").doesNotContain("java.");
          assertThat(folder.resolve("workshop.json")).hasBinaryContent(workshop);
        }
      }
    }
    assertThat(full).isPositive();
    System.out.printf("disk full in %d of 100 notes; nothing lost%n", full);
  }

  @Test
  void aDiskThatMayOnlyBeRead() throws Exception {
    try (SmallDisk disk = SmallDisk.at(folder, "4m")) {
      Files.copy(Path.of("formulations/garden/4-blend.json"), file);
      byte[] before = Files.readAllBytes(file);
      disk.makeReadOnly();
      Outcome note = Outcome.of(folder, "note", "a.json", "--rating", "4");
      assertThat(note.exit()).isEqualTo(2);
      assertThat(note.err())
          .contains("may not be written to; nothing was changed; check the folder");
      Outcome compare = Outcome.of(folder, "compare", "a.json", "--out", "page.html");
      assertThat(compare.exit()).isEqualTo(2);
      assertThat(compare.err()).contains("may not be written").doesNotContain("java.");
      Outcome learn = Outcome.of(folder, "learn", ".");
      assertThat(learn.exit()).isEqualTo(2);
      assertThat(learn.err()).contains("may not be written").doesNotContain("java.");
      assertThat(file).hasBinaryContent(before);
    }
  }

  private void wholeOrNotThere(String name, String start, String end) throws IOException {
    Path result = folder.resolve(name);
    if (Files.exists(result)) {
      assertThat(Files.readString(result).strip()).startsWith(start).endsWith(end);
      if (name.endsWith(".json")) {
        assertThat(JSON.readTree(result.toFile()).isObject()).as(name).isTrue();
      }
    }
  }

  private Process start(int first, Path said, Path errors) throws IOException {
    return OwnJava.of(BusyHand.class.getName(), folder.toString(), String.valueOf(first))
        .redirectOutput(said.toFile())
        .redirectError(errors.toFile())
        .start();
  }

  /** Whole lines; the kill may have cut the last one. */
  private static List<String> lines(Path said) throws IOException {
    String text = Files.readString(said);
    return text.substring(0, text.lastIndexOf('\n') + 1).lines().toList();
  }

  private static List<String> remarks(Path file) throws IOException {
    return remarks(Files.readAllBytes(file));
  }

  private static List<String> remarks(byte[] bytes) throws IOException {
    List<String> remarks = new ArrayList<>();
    for (JsonNode remark : JSON.readTree(bytes).path("remarks")) {
      if (remark.asText().startsWith("seen ")) {
        remarks.add(remark.asText());
      }
    }
    return remarks;
  }

  private static String trialOf(int length) throws IOException {
    String text = Files.readString(Path.of("formulations/garden/4-blend.json"));
    return text.replaceFirst("\\{", "{\n  \"_mine\": \"" + "x".repeat(length) + "\",");
  }
}
