package starchfilm.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;

/**
 * Where a page goes: a file, replaced in one step so that nobody finds half a page, or standard
 * output.
 *
 * <p>A file that is no page (a trial file, say) is never written over.
 */
final class PageFile {
  private static final String STANDARD_OUTPUT = "-";
  private static final String PAGE_START = "<!DOCTYPE html>";

  private final Surroundings surroundings;
  private final String typed;

  /** Empty for standard output. */
  private final Optional<Path> path;

  private PageFile(Surroundings surroundings, String typed, Optional<Path> path) {
    this.surroundings = surroundings;
    this.typed = typed;
    this.path = path;
  }

  /**
   * A page's place, refused at once where it cannot be written, before anything is computed.
   *
   * @param typed what the user typed; {@code -} for standard output
   * @param surroundings the working directory and standard output
   * @return the place
   */
  static PageFile of(String typed, Surroundings surroundings) {
    if (typed.equals(STANDARD_OUTPUT)) {
      return new PageFile(surroundings, typed, Optional.empty());
    }
    Path path = surroundings.resolve(path(typed)).toAbsolutePath();
    if (Files.isDirectory(path)) {
      throw refused(typed, "is a folder; name a file in it, such as " + path.resolve("page.html"));
    }
    if (!Files.isDirectory(folder(path))) {
      throw refused(typed, "has no folder to go to; make the folder first");
    }
    if (Files.exists(path) && !isPage(path)) {
      throw refused(typed, "is there and is no page; it was left alone, choose another name");
    }
    return new PageFile(surroundings, typed, Optional.of(path));
  }

  /**
   * Whether the page goes to standard output.
   *
   * @return true for {@code -}
   */
  boolean isStandardOutput() {
    return path.isEmpty();
  }

  /**
   * The place as the user typed it.
   *
   * @return a file name or path
   */
  String shown() {
    return typed;
  }

  /**
   * Writes the page.
   *
   * @param html the whole page
   */
  void write(String html) {
    if (path.isEmpty()) {
      surroundings.out().print(html);
      surroundings.out().flush();
      return;
    }
    Path target = path.get();
    try {
      // Beside the page, so that the move stays within one file system; with the usual permissions,
      // which a file made for secrets would not have.
      Path half = folder(target).resolve("." + target.getFileName() + ".part");
      try {
        Files.writeString(half, html);
        Files.move(half, target, StandardCopyOption.REPLACE_EXISTING);
      } finally {
        Files.deleteIfExists(half);
      }
    } catch (AccessDeniedException denied) {
      throw CommandFailure.notComputed(
          typed + ": the page may not be written there; choose another place with --out");
    } catch (IOException failure) {
      throw CommandFailure.notComputed(
          typed + ": the page could not be written (" + failure + "); is the disk full?");
    }
  }

  private static Path path(String typed) {
    try {
      return Path.of(typed);
    } catch (InvalidPathException impossible) {
      throw refused(typed, "is no file name here; choose another");
    }
  }

  private static Path folder(Path path) {
    Path parent = path.getParent();
    if (parent == null) {
      throw new IllegalArgumentException(path + " has no folder");
    }
    return parent;
  }

  private static boolean isPage(Path path) {
    try (InputStream in = Files.newInputStream(path)) {
      byte[] start = in.readNBytes(PAGE_START.length());
      return start.length == 0
          || new String(start, StandardCharsets.UTF_8).equalsIgnoreCase(PAGE_START);
    } catch (IOException unreadable) {
      return false;
    }
  }

  private static CommandFailure refused(String typed, String why) {
    return CommandFailure.wrongInput("--out " + typed + " " + why + ".");
  }
}
