package starchfilm.files.notebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import starchfilm.files.notebook.NotebookReader.TrialReading;

/**
 * What was read of trial files without a fault, kept as long as size, time and identity of the file
 * and of each file it names beside it stay the same.
 *
 * <p>Safe to share between threads.
 */
public final class KeptReadings implements Function<Path, TrialReading> {
  /** A page goes over all files in turn: dropping the oldest would drop each before its turn. */
  private static final int KEPT = 1_000;

  /**
   * The clock of a file system may stand for so long (ms; 2 s on FAT): what changed later than this
   * before it was read may have changed again since, at the same time by that clock.
   */
  private static final long CLOCK_STEP_MS = 2_500;

  private final Map<Path, Kept> kept = new HashMap<>();

  /**
   * A file as it was when it was read.
   *
   * @param key what tells it from another file of its name, where the system has such a key
   */
  private record Stamp(long bytes, FileTime modified, Optional<Object> key) {
    /** No file of this name. */
    static final Stamp ABSENT = new Stamp(-1, FileTime.fromMillis(0), Optional.empty());

    static Stamp of(Path file) {
      try {
        BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
        return new Stamp(now.size(), now.lastModifiedTime(), Optional.ofNullable(now.fileKey()));
      } catch (IOException e) {
        return ABSENT;
      }
    }

    /** Compared by hand: what a record brings along takes the first page 20 ms. */
    boolean is(Stamp other) {
      return bytes == other.bytes && modified.equals(other.modified) && key.equals(other.key);
    }
  }

  private record Kept(TrialReading reading, Map<Path, Stamp> stamps) {
    boolean holds() {
      return stamps.entrySet().stream()
          .allMatch(stamp -> Stamp.of(stamp.getKey()).is(stamp.getValue()));
    }
  }

  /** A file, read now unless what was read of it still holds. */
  @Override
  public TrialReading apply(Path file) {
    Kept known;
    synchronized (kept) {
      known = kept.get(file);
    }
    if (known != null && known.holds()) {
      return known.reading();
    }
    long settledUntilMs = System.currentTimeMillis() - CLOCK_STEP_MS;
    Stamp before = Stamp.of(file);
    TrialReading fresh = NotebookReader.fresh(file);
    Map<Path, Stamp> stamps = new HashMap<>();
    stamps.put(file, Stamp.of(file));
    fresh.findings().besides().forEach(beside -> stamps.put(beside, Stamp.of(beside)));
    boolean settled =
        fresh.findings().faults().isEmpty()
            && stamps.get(file).is(before)
            && stamps.values().stream()
                .allMatch(stamp -> stamp.modified().toMillis() < settledUntilMs);
    synchronized (kept) {
      kept.remove(file);
      if (settled && kept.size() < KEPT) {
        kept.put(file, new Kept(fresh, stamps));
      }
    }
    return fresh;
  }
}
