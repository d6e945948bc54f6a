package starchfilm.files.saving;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.Weighing;
import starchfilm.files.findings.Notice;
import starchfilm.files.findings.Words;

/** Says when a new weighing may be of another plate: a film that gained more than it can have. */
final class PlateDoubt {
  /** A drying film gains no more than damp air gives it back; judged, no source. */
  private static final double GAIN = 0.1;

  private static final double SIGMAS = 3;

  private PlateDoubt() {}

  static List<Notice> notices(String file, Optional<Trial> was, Optional<Trial> is) {
    if (was.isEmpty() || is.isEmpty()) {
      return List.of();
    }
    List<Weighing> weighings = is.get().seen().weighings();
    for (int i = 1; i < weighings.size(); i++) {
      Weighing before = weighings.get(i - 1);
      Weighing next = weighings.get(i);
      boolean fresh =
          !was.get().seen().weighings().contains(before)
              || !was.get().seen().weighings().contains(next);
      double most =
          before.filmMassKg() * (1 + GAIN)
              + SIGMAS * Math.hypot(before.massSdKg(), next.massSdKg());
      if (fresh && next.filmMassKg() > most) {
        return List.of(
            new Notice(
                file,
                OptionalInt.empty(),
                "weighings",
                "the film is "
                    + Words.number((next.filmMassKg() - before.filmMassKg()) * 1000)
                    + " g heavier than "
                    + Words.span(next.timeS() - before.timeS())
                    + " before; was this the same plate?"));
      }
    }
    return List.of();
  }
}
