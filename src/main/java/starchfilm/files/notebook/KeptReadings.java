package starchfilm.files.notebook;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;
import starchfilm.files.notebook.NotebookReader.TrialReading;

/**
 * The readings of trial files without a fault, kept as long as size, time and identity of the file
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

  private record Kept(TrialReading reading, Map<Path, FileStamp> stamps) {
    boolean holds() {
      return stamps.entrySet().stream()
          .allMatch(stamp -> FileStamp.of(stamp.getKey()).is(stamp.getValue()));
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
    FileStamp before = FileStamp.of(file);
    TrialReading fresh = NotebookReader.fresh(file);
    Map<Path, FileStamp> stamps = new HashMap<>();
    stamps.put(file, FileStamp.of(file));
    fresh.findings().besides().forEach(beside -> stamps.put(beside, FileStamp.of(beside)));
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
