package starchfilm.files.saving;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.findings.Fault;
import starchfilm.files.findings.Findings;
import starchfilm.files.json.TextEdit;
import starchfilm.files.notebook.TrialField;
import starchfilm.files.roomlog.RoomLogReader;

/** Gives a trial another account of its room: a hygrometer's log, or a day and a night. */
public final class NewRoom {
  private static final String ROOM = "room.";
  private static final String LOG = "log_csv";
  private static final String SWING = "swing";
  private static final List<String> ACCOUNTS = List.of(LOG, SWING, "air_C", "rh_pct");

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
    String base = TrialFileText.baseName(trial) + "-room";
    Path log =
        SafeFile.create(
            trial.resolveSibling(""), i -> base + (i == 1 ? "" : "-" + i) + ".csv", content);
    try {
      Findings findings = new Findings("the log");
      new RoomLogReader(new Findings("the log")).read(log, pouredAt, 0.1, findings);
      if (!findings.faults().isEmpty()) {
        throw new NotWrittenException(findings.faults());
      }
      note(trial, LOG, TextNode.valueOf(String.valueOf(log.getFileName())));
      return log;
    } catch (NotWrittenException e) {
      SafeFile.delete(List.of(log));
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
        throw new NotWrittenException(Fault.of("", key, e.given(), e.allowed(), e.mend()));
      }
    }
    note(trial, SWING, swing);
  }

  /** Another account of the room, in place of all others. */
  private static void note(Path trial, String account, JsonNode value) throws NotWrittenException {
    NoteWriter.add(
        trial,
        new Note.Edit(
            account,
            text -> {
              String changed = text;
              for (String other : ACCOUNTS) {
                changed = other.equals(account) ? changed : TextEdit.remove(changed, ROOM + other);
              }
              return TextEdit.set(changed, ROOM + account, value);
            }));
  }

  /** The fields of a swing, in their order. */
  public static List<TrialField> swingFields() {
    return List.copyOf(TrialField.TRIAL.field("room").field(SWING).fields().values());
  }
}
