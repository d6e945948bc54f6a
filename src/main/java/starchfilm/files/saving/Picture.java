package starchfilm.files.saving;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import starchfilm.files.findings.Fault;
import starchfilm.files.findings.Findings;
import starchfilm.files.json.Located;
import starchfilm.files.notebook.BesideFile;

/** The kinds of picture that a page can show, told by their first bytes. */
public enum Picture {
  JPEG("\u00FF\u00D8\u00FF", ".jpg"),
  PNG("\u0089PNG\r\n\u001A\n", ".png"),
  GIF("GIF8", ".gif");

  /** The largest picture taken; a telephone's are a fifth of it. */
  private static final long MAX_BYTES = 30_000_000;

  private static final int HEAD_BYTES = 16;
  private static final String SHOWN = "JPEG, PNG or GIF";

  private final String head;
  private final String ending;

  Picture(String head, String ending) {
    this.head = head;
    this.ending = ending;
  }

  /** How the name of such a file ends. */
  String ending() {
    return ending;
  }

  /**
   * The media type a page is told of a picture.
   *
   * @param content its bytes
   * @return its media type; that of a camera's where it is none of these
   */
  public static String mediaType(byte[] content) {
    return "image/" + of(content).orElse(JPEG).name().toLowerCase(Locale.ROOT);
  }

  /** The kind of a picture; empty where it is none of these. */
  static Optional<Picture> of(byte[] content) {
    String head = head(content);
    return Stream.of(values()).filter(kind -> head.startsWith(kind.head)).findFirst();
  }

  private static String head(byte[] content) {
    byte[] head = Arrays.copyOf(content, Math.min(content.length, HEAD_BYTES));
    return new String(head, StandardCharsets.ISO_8859_1);
  }

  /**
   * A picture beside a trial.
   *
   * @param name its name in the trial file
   * @throws NotWrittenException where there is none of this name that a page can show
   */
  static Path beside(Path trialFile, String name) throws NotWrittenException {
    Findings findings = new Findings(name);
    Located.Place place = new Located.Place("", 1, 1);
    Optional<Path> file = BesideFile.find(trialFile, name, place, findings);
    if (file.isEmpty()) {
      Fault outside = findings.faults().get(0);
      throw refused(name, outside.given(), outside.allowed(), outside.mend());
    }
    if (!Files.isRegularFile(file.get())) {
      throw refused(name, "there is no such picture", "", "check its name and folder");
    }
    try (InputStream in = Files.newInputStream(file.get())) {
      refuseUnlessShown(name, Files.size(file.get()), in.readNBytes(HEAD_BYTES));
      return file.get();
    } catch (IOException e) {
      throw refused(name, "a picture that may not be read", "", "check its permissions");
    }
  }

  private static NotWrittenException refused(
      String name, String given, String allowed, String mend) {
    return new NotWrittenException(Fault.of(name, "", given, allowed, mend));
  }

  /**
   * Refuses what no page can show.
   *
   * @param name what it is called in the sentence
   */
  static void refuseUnlessShown(String name, byte[] content) throws NotWrittenException {
    refuseUnlessShown(name, content.length, content);
  }

  private static void refuseUnlessShown(String name, long bytes, byte[] content)
      throws NotWrittenException {
    if (bytes > MAX_BYTES) {
      String given = "a picture of " + Math.round(bytes / 1e6) + " MB";
      throw refused(name, given, "at most " + MAX_BYTES / 1_000_000 + " MB", "save it smaller");
    }
    if (of(content).isEmpty()) {
      throw head(content).startsWith("ftyp", 4)
          ? refused(name, "a photo or film in a format of phones", SHOWN, "export it as JPEG")
          : refused(name, "a file that is no picture", SHOWN, "name the picture itself");
    }
  }
}
