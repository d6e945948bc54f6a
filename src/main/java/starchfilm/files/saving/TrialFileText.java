package starchfilm.files.saving;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.UUID;
import java.util.regex.Pattern;
import starchfilm.files.amount.Wording;
import starchfilm.files.findings.Findings;
import starchfilm.files.findings.PlainLine;
import starchfilm.files.json.FileText;
import starchfilm.files.json.Located;
import starchfilm.files.json.LocatedReader;
import starchfilm.files.json.UnreadableFileException;
import starchfilm.files.notebook.TrialReader;
import starchfilm.files.saving.SafeFile.WrittenFile;

/**
 * A trial file as a text to be edited whole.
 *
 * @param file the file
 * @param text its text
 * @param version a fingerprint of its bytes: who saves an edited text shows the version it was made
 *     from, so that two who edit at once do not overwrite each other
 */
public record TrialFileText(Path file, String text, String version) {
  private static final int LONGEST_NAME = 60;

  /** The file in which the program keeps what it learned, and what Windows keeps for devices. */
  private static final Pattern TAKEN = Pattern.compile("workshop|con|prn|aux|nul|(?:com|lpt)[0-9]");

  /**
   * Reads a file.
   *
   * @param file the file
   * @return its text, sound or not
   * @throws NotWrittenException where it cannot be read as text
   */
  public static TrialFileText of(Path file) throws NotWrittenException {
    try {
      byte[] bytes = FileText.bytes(file, TrialReader.MAX_BYTES);
      return new TrialFileText(file, FileText.utf8(bytes), version(bytes));
    } catch (UnreadableFileException e) {
      throw NotWrittenException.because(file, e);
    }
  }

  /**
   * The fields of a trial.
   *
   * @param text the text of its file
   * @throws NotWrittenException where the text is no JSON object
   */
  public static Located.ObjectValue fields(String text) throws NotWrittenException {
    try {
      return LocatedReader.object(text, "");
    } catch (UnreadableFileException e) {
      throw NotWrittenException.because(
          Path.of("the file"), "a file that is no JSON object", "fix its text first");
    }
  }

  /**
   * Replaces a file by an edited text.
   *
   * @param file the file
   * @param text the new text; it must be a sound trial
   * @param version the version the text was made from
   * @return the version the file has now
   * @throws ChangedMeanwhileException where the file has another version by now
   * @throws NotWrittenException where the text has faults or the file cannot be written
   */
  public static String replace(Path file, String text, String version)
      throws ChangedMeanwhileException, NotWrittenException {
    requireSound(file, text);
    WrittenFile written =
        SafeFile.rewrite(
            file,
            before -> {
              byte[] old =
                  before.orElseThrow(
                      () ->
                          NotWrittenException.because(
                              file, "the file is not there any more", "save your text elsewhere"));
              return version(old).equals(version) ? likeBefore(old, text) : old;
            });
    if (written.before().isEmpty() && !written.version().equals(version)) {
      throw new ChangedMeanwhileException(of(file));
    }
    return written.version();
  }

  /** A form loses the mark at the beginning of a file and the kind of its line ends. */
  private static byte[] likeBefore(byte[] old, String text) {
    String was = new String(old, StandardCharsets.UTF_8);
    int windows = was.split("\r\n", -1).length - 1;
    int lines = was.split("\n", -1).length - 1;
    boolean lostLineEnds = !text.contains("\r") && windows > lines / 2;
    String like = lostLineEnds ? text.replace("\n", "\r\n") : text;
    return (FileText.mark(old) + like).getBytes(StandardCharsets.UTF_8);
  }

  /**
   * Writes a new file, under a name that is free.
   *
   * @param folder the folder
   * @param name what its maker calls the trial; the file's name is made from it
   * @param text its text; it must be a sound trial
   * @return the file
   * @throws NotWrittenException where the text has faults or nothing can be written
   */
  public static Path create(Path folder, String name, String text) throws NotWrittenException {
    requireSound(folder.resolve("new.json"), text);
    String base = base(name);
    return SafeFile.create(
        folder,
        i -> base + (i == 1 ? "" : "-" + i) + ".json",
        text.getBytes(StandardCharsets.UTF_8));
  }

  private static String base(String name) {
    String plain = Wording.plain(name).replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
    String base = plain.isEmpty() ? "trial" : plain;
    String free = TAKEN.matcher(base).matches() ? base + "-trial" : base;
    return free.substring(0, Math.min(LONGEST_NAME, free.length()));
  }

  private static void requireSound(Path file, String text) throws NotWrittenException {
    if (text.getBytes(StandardCharsets.UTF_8).length > TrialReader.MAX_BYTES) {
      throw NotWrittenException.because(file, "more than 2 MB of text", "keep a trial below 2 MB");
    }
    Findings findings = new Findings(PlainLine.of(file));
    new TrialReader().read(text, file, findings);
    if (!findings.faults().isEmpty()) {
      throw new NotWrittenException(findings.faults());
    }
  }

  static String version(byte[] bytes) {
    return UUID.nameUUIDFromBytes(bytes).toString();
  }
}
