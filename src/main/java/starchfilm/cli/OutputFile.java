package starchfilm.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import starchfilm.files.saving.SafeFile;

/**
 * Where a result goes: a file, replaced in one step so that nobody finds half of it, or standard
 * output.
 *
 * <p>Only a result of the same kind is ever written over; a trial file, say, is left alone.
 */
final class OutputFile {
  private static final String STANDARD_OUTPUT = "-";

  private final CommandContext surroundings;
  private final String typed;

  /** Empty for standard output. */
  private final Optional<Path> path;

  private OutputFile(CommandContext surroundings, String typed, Optional<Path> path) {
    this.surroundings = surroundings;
    this.typed = typed;
    this.path = path;
  }

  /** What is written, and how a file of the kind begins. */
  enum Kind {
    /** An HTML page. */
    PAGE("page", "<!DOCTYPE html>"),
    /** A drying curve as CSV. */
    CURVE("table of a drying curve", "time_h,at,film_g_low"),
    /** A drying forecast as JSON. */
    FORECAST("drying forecast", "{\n  \"what\" : \"drying forecast\"");

    private final String words;
    private final String start;

    Kind(String words, String start) {
      this.words = words;
      this.start = start;
    }
  }

  /**
   * A result's place, refused at once where it cannot be written, before anything is computed.
   *
   * @param option the option that named it, for the sentence
   * @param typed what the user typed; {@code -} for standard output
   * @param kind what will be written
   * @param surroundings the working directory and standard output
   * @return the place
   */
  static OutputFile of(String option, String typed, Kind kind, CommandContext surroundings) {
    if (typed.equals(STANDARD_OUTPUT)) {
      return new OutputFile(surroundings, typed, Optional.empty());
    }
    String given = option + " " + typed;
    Path path = surroundings.resolve(path(given, typed)).toAbsolutePath();
    if (Files.isDirectory(path)) {
      throw refused(given, "is a folder; name a file in it");
    }
    if (!Files.isDirectory(folder(path))) {
      throw refused(given, "has no folder to go to; make the folder first");
    }
    if (Files.exists(path) && !isOfKind(path, kind)) {
      throw refused(
          given, "is there and is no " + kind.words + "; it was left alone, choose another name");
    }
    return new OutputFile(surroundings, typed, Optional.of(path));
  }

  /**
   * Whether the result goes to standard output.
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
   * Writes the result.
   *
   * @param result gives the whole text
   */
  void write(Supplier<String> result) {
    if (path.isEmpty()) {
      surroundings.out().print(result.get());
      surroundings.out().flush();
      return;
    }
    Path target = path.get();
    // Beside the result, so that the move stays within one file system; with the usual permissions,
    // which a file made for secrets would not have.
    Path half = folder(target).resolve("." + target.getFileName() + ".part");
    String text = result.get();
    try {
      try {
        Files.writeString(half, text);
        Files.move(half, target, StandardCopyOption.REPLACE_EXISTING);
      } finally {
        Files.deleteIfExists(half);
      }
    } catch (AccessDeniedException denied) {
      throw CommandFailure.notComputed(typed + ": may not be written there; choose another place.");
    } catch (IOException failure) {
      throw CommandFailure.notComputed(typed + ": " + SafeFile.why(failure) + ".");
    }
  }

  private static Path path(String given, String typed) {
    try {
      return Path.of(typed);
    } catch (InvalidPathException impossible) {
      throw refused(given, "is no file name here; choose another");
    }
  }

  private static Path folder(Path path) {
    Path parent = path.getParent();
    if (parent == null) {
      throw new IllegalArgumentException(path + " has no folder");
    }
    return parent;
  }

  /** An empty file may be written over: there is nothing to lose. */
  private static boolean isOfKind(Path path, Kind kind) {
    try (InputStream in = Files.newInputStream(path)) {
      String start = new String(in.readNBytes(kind.start.length()), StandardCharsets.UTF_8);
      return start.isEmpty()
          || start.toLowerCase(Locale.ROOT).equals(kind.start.toLowerCase(Locale.ROOT));
    } catch (IOException unreadable) {
      return false;
    }
  }

  private static CommandFailure refused(String given, String why) {
    return CommandFailure.wrongInput(given + " " + why + ".");
  }
}
