package starchfilm.files.saving;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.findings.Findings;
import starchfilm.files.json.FileText;
import starchfilm.files.json.TextEdit;
import starchfilm.files.json.UnreadableFileException;
import starchfilm.files.notebook.TrialField;
import starchfilm.files.notebook.TrialReader;
import starchfilm.files.roomlog.RoomLogReader;

/** Gives a trial another account of its room: a hygrometer's log, or a day and a night. */
public final class NewRoom {
  private static final int MOST_NAMES = 1_000;
  private static final String ROOM = "room";
  private static final String LOG = "log_csv";
  private static final String SWING = "swing";
  private static final List<String> AIR = List.of("air_C", "rh_pct");

  private NewRoom() {}

  /**
   * Keeps a log beside the trial, under a name that is free, and names it there.
   *
   * @param trial the trial file
   * @param content the log
   * @param pouredAt when the trial was poured, if known
   * @return the log's file
   * @throws NotWrittenException where it cannot be read as a log or nothing can be written; then
   *     nothing is kept
   */
  public static Path log(Path trial, byte[] content, Optional<LocalDateTime> pouredAt)
      throws NotWrittenException {
    Path log = kept(trial, content);
    try {
      Findings findings = new Findings("the log");
      new RoomLogReader(new Findings("the log")).read(log, pouredAt, 0.1, findings);
      if (!findings.faults().isEmpty()) {
        throw new NotWrittenException(findings.faults());
      }
      TextNode name = TextNode.valueOf(String.valueOf(log.getFileName()));
      rewrite(trial, text -> set(without(text, SWING), LOG, name));
      return log;
    } catch (NotWrittenException e) {
      try {
        Files.deleteIfExists(log);
      } catch (IOException stays) {
        e.addSuppressed(stays);
      }
      throw e;
    }
  }

  /**
   * Notes a room that warms by day and cools by night.
   *
   * @param trial the trial file
   * @param typed the fields of the swing by their names, as typed
   * @throws NotWrittenException where one cannot be read or the file cannot be written
   */
  public static void swing(Path trial, Map<String, String> typed) throws NotWrittenException {
    ObjectNode swing = JsonNodeFactory.instance.objectNode();
    for (TrialField field : swingFields()) {
      String key = field.key();
      String words = typed.getOrDefault(key, "").strip();
      try {
        if (!words.isEmpty()) {
          swing.set(key, FieldInput.of(field, words));
        }
      } catch (MistypedException e) {
        throw NotWrittenException.because(
            Path.of(key), e.given() + " given, allowed " + e.allowed(), e.mend());
      }
    }
    rewrite(trial, text -> set(without(text, LOG), SWING, swing));
  }

  /** The fields of a swing, in their order. */
  public static List<TrialField> swingFields() {
    return TrialField.TRIAL.all().stream()
        .filter(field -> field.path().startsWith(ROOM + "." + SWING + "."))
        .toList();
  }

  private interface Edit {
    String of(String text) throws UnreadableFileException;
  }

  private static String without(String text, String key) throws UnreadableFileException {
    String rest = TextEdit.remove(text, List.of(ROOM, key));
    for (String air : AIR) {
      rest = TextEdit.remove(rest, List.of(ROOM, air));
    }
    return rest;
  }

  private static String set(String text, String key, JsonNode value)
      throws UnreadableFileException {
    return TextEdit.set(text, List.of(ROOM, key), value);
  }

  private static void rewrite(Path trial, Edit edit) throws NotWrittenException {
    SafeFile.rewrite(
        trial,
        before -> {
          try {
            String text =
                edit.of(
                    FileText.utf8(
                        before.orElseThrow(
                            () ->
                                NotWrittenException.because(
                                    trial, "the file is not there any more", "put it back"))));
            Findings findings = new Findings(String.valueOf(trial.getFileName()));
            new TrialReader().read(text, trial, findings);
            if (!findings.faults().isEmpty()) {
              throw new NotWrittenException(findings.faults());
            }
            return text.getBytes(StandardCharsets.UTF_8);
          } catch (UnreadableFileException e) {
            throw NotWrittenException.because(trial, e.given(), e.mend());
          }
        });
  }

  private static Path kept(Path trial, byte[] content) throws NotWrittenException {
    String base = String.valueOf(trial.getFileName()).replaceFirst("\\.[^.]*$", "");
    for (int i = 1; i <= MOST_NAMES; i++) {
      Path file = trial.resolveSibling(base + "-room" + (i == 1 ? "" : "-" + i) + ".csv");
      if (SafeFile.create(file, content)) {
        return file;
      }
    }
    throw NotWrittenException.because(trial, "too many logs of this name", "clear the folder up");
  }
}
