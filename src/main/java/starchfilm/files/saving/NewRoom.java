package starchfilm.files.saving;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.findings.Fault;
import starchfilm.files.findings.Findings;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.TextEdit;
import starchfilm.files.notebook.FieldInput;
import starchfilm.files.notebook.RoomAccount;
import starchfilm.files.notebook.TrialField;
import starchfilm.files.notebook.TrialReader;
import starchfilm.files.roomlog.RoomLogReader;

/** Gives a trial another account of its room: a hygrometer's log, or one told by its fields. */
public final class NewRoom {
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
    String base = TrialReader.baseName(trial) + "-room";
    Path log =
        SafeFile.create(
            trial.resolveSibling(""), i -> base + (i == 1 ? "" : "-" + i) + ".csv", content);
    try {
      Findings findings = new Findings("the log");
      new RoomLogReader(new Findings("the log")).read(log, pouredAt, 0.1, findings);
      if (!findings.faults().isEmpty()) {
        throw new NotWrittenException(findings.faults());
      }
      note(trial, RoomAccount.LOG, Located.text(String.valueOf(log.getFileName())));
      return log;
    } catch (NotWrittenException e) {
      SafeFile.delete(List.of(log));
      throw e;
    }
  }

  /**
   * Notes a room that is told field by field.
   *
   * @param trial the trial file
   * @param account which account it is
   * @param typed what was typed of a field, by its name; empty for nothing
   * @throws NotWrittenException where one cannot be read or the file cannot be written
   */
  public static void note(Path trial, RoomAccount account, UnaryOperator<String> typed)
      throws NotWrittenException {
    ObjectValue told = Located.object();
    for (TrialField field : account.fields()) {
      String key = field.key();
      String words = typed.apply(key).strip();
      try {
        if (!words.isEmpty()) {
          told = told.with(key, FieldInput.of(field, words));
        }
      } catch (MistypedException e) {
        throw new NotWrittenException(Fault.of("", key, e.given(), e.allowed(), e.mend()));
      }
    }
    note(trial, account, told);
  }

  /** Another account of the room, in place of all others. */
  private static void note(Path trial, RoomAccount account, Located value)
      throws NotWrittenException {
    NoteWriter.add(
        trial,
        new Note.Edit(
            account.key(),
            text -> {
              String changed = text;
              for (String other : account.otherKeys()) {
                changed = TextEdit.remove(changed, "room." + other);
              }
              return TextEdit.set(changed, "room." + account.key(), value);
            }));
  }
}
