package starchfilm.web;

import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import starchfilm.casting.trial.Trial;
import starchfilm.files.notebook.BesideFile;
import starchfilm.files.notebook.KeptJar;
import starchfilm.files.notebook.KeptReadings;
import starchfilm.files.notebook.Notebook;
import starchfilm.files.notebook.NotebookReader;
import starchfilm.files.notebook.SoundPart;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.TrialFileText;
import starchfilm.request.TrialQuestion;
import starchfilm.web.http.HttpError;

/**
 * The folder of trial files that is served; nothing outside it is ever read or written.
 *
 * @param root the folder
 * @param readings what was read of its files
 */
record NotebookFolder(Path root, KeptReadings readings) {
  private static final int LONGEST_NAME = 300;

  /** Fixes where the folder is, whatever the working directory becomes. */
  NotebookFolder {
    root = root.toAbsolutePath().normalize();
  }

  /**
   * Every trial of the folder.
   *
   * @return what could be read and what was wrong; empty for a folder without trial files
   */
  Notebook read() {
    requireThere();
    return isEmpty() ? NotebookReader.NOTHING : read(List.of(root));
  }

  /** Some trials of the folder. */
  Notebook read(List<Path> files) {
    requireThere();
    return SoundPart.with(NotebookReader.read(files, readings));
  }

  /** The trial of a file, if it can be read. */
  Optional<Trial> trial(Path file) {
    return read(List.of(file)).trials().stream().findFirst();
  }

  /**
   * A trial file by the name it has on the pages.
   *
   * @param name its path from the folder, with / between folders
   * @return the file; it exists and lies in the folder
   */
  Path trialFile(String name) {
    requireThere();
    Path file = inside(name);
    if (!NotebookReader.isNamedAsTrial(file) || !Files.isRegularFile(file)) {
      throw HttpError.notFound(
          "There is no trial file of this name in this folder any more. The page"
              + " Trials lists those that exist.");
    }
    return file;
  }

  /**
   * A path in the folder, whether or not anything is there.
   *
   * @param name the path from the folder, with / between folders
   * @return the path
   * @throws HttpError where it leads out of the folder, be it by a link
   */
  Path inside(String name) {
    try {
      Path named = Path.of(name);
      Path file = root.resolve(named).normalize();
      boolean plain =
          !name.isEmpty()
              && name.length() <= LONGEST_NAME
              && !named.isAbsolute()
              && !name.contains("\\")
              && !isHidden(name);
      if (plain
          && file.startsWith(root)
          && !file.equals(root)
          && !BesideFile.leavesByLink(file, root)) {
        return file;
      }
    } catch (InvalidPathException e) {
      // Falls through: such a name cannot be a file of the folder.
    }
    throw HttpError.notFound("This name is not in the folder of the trials.");
  }

  /** Whether a name is of a file that begins with a dot, or lies in a folder that does. */
  static boolean isHidden(String name) {
    return ("/" + name).contains("/.");
  }

  /** A trial as it would be in a file of the folder. */
  TrialQuestion.Base sketched(String text) throws NotWrittenException {
    return TrialQuestion.Base.of(text, root.resolve(".sketch.json"));
  }

  /**
   * A new trial file.
   *
   * @param name what the trial is called
   * @param text the text of its file
   */
  Path create(String name, String text) throws NotWrittenException {
    requireThere();
    return TrialFileText.create(root, name, text);
  }

  /**
   * The name of a file on the pages.
   *
   * @return its path from the folder, with / between folders
   */
  String name(Path file) {
    return root.relativize(file.toAbsolutePath().normalize()).toString().replace('\\', '/');
  }

  /**
   * The address of a page about one file.
   *
   * @param page the page's path
   * @return such as {@code /trial?file=garden%2Fa.json}
   */
  static String address(String page, String name) {
    return page + "?file=" + URLEncoder.encode(name, StandardCharsets.UTF_8);
  }

  /** Refuses with a plain sentence where the folder was moved or unplugged while we ran. */
  void requireThere() {
    if (!Files.isDirectory(root)) {
      throw new HttpError(
          503,
          "The folder of the trials no longer exists: "
              + root
              + ". Put it back, or plug the disk in again, then load this page again.");
    }
  }

  private boolean isEmpty() {
    try (Stream<Path> files = Files.walk(root, 8)) {
      return files.noneMatch(file -> NotebookReader.isNamedAsTrial(file) || KeptJar.isJar(file));
    } catch (IOException | java.io.UncheckedIOException e) {
      // The reader says what it cannot open.
      return false;
    }
  }
}
