package starchfilm.files.notebook;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Optional;
import starchfilm.casting.Room;
import starchfilm.files.findings.Findings;
import starchfilm.files.json.Located.Place;
import starchfilm.files.roomlog.RoomLogReader;

/** Finds and reads the room log that a trial file names. */
final class RoomLog {
  private final Findings findings;
  private final Path trialFile;

  RoomLog(Findings findings, Path trialFile) {
    this.findings = findings;
    this.trialFile = trialFile;
  }

  Optional<Room> read(
      Place place, String name, Optional<LocalDateTime> pouredAt, double speedMPerS) {
    Optional<Path> file = BesideFile.find(trialFile, name, place, findings);
    if (file.isEmpty()) {
      return Optional.empty();
    }
    Path parent = trialFile.getParent();
    String shown = (parent == null ? Path.of(name) : parent.resolve(name)).toString();
    return new RoomLogReader(new Findings(shown.replace('\\', '/')))
        .read(file.get(), pouredAt, speedMPerS, findings)
        .map(logged -> logged);
  }
}
