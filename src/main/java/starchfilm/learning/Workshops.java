package starchfilm.learning;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import starchfilm.casting.Casting;
import starchfilm.casting.trial.Trial;
import starchfilm.files.findings.Fault;
import starchfilm.files.findings.PlainLine;
import starchfilm.files.json.UnreadableFileException;
import starchfilm.files.notebook.FileStamp;
import starchfilm.film.LearntFilm;
import starchfilm.forecast.CastingForecaster;
import starchfilm.forecast.PlateParameters;
import starchfilm.forecast.TrialKnowledge;
import starchfilm.forecast.WeighingQuestion;

/**
 * Finds for each trial the workshop it belongs to: the workshop file in the trial's folder, or else
 * the nearest in the folders above it. A trial without any is forecast from the textbook.
 *
 * <p>A file is read when it is first asked for, and again once it has changed. Safe to share
 * between threads.
 */
public class Workshops implements TrialKnowledge {
  /**
   * How far above a trial its workshop is looked for, as far as a folder of trials reaches down.
   */
  private static final int FARTHEST_UP = 8;

  private final Clock clock;
  private final Map<Path, CachedWorkshop> readings = new ConcurrentHashMap<>();
  private final Map<Path, Workshop> untaught = new ConcurrentHashMap<>();

  /**
   * Workshops on this machine.
   *
   * @param clock tells which weighings lie in the future
   */
  public Workshops(Clock clock) {
    this.clock = clock;
  }

  /** A workshop as read, and what tells whether its file has changed since. */
  private record CachedWorkshop(FileStamp stamp, Workshop workshop, Optional<Fault> fault) {}

  /**
   * The workshop of a trial.
   *
   * @param trial the trial
   * @return its workshop; untaught where there is no workshop file, or none that can be read. The
   *     same object until the file changes: kept forecasts are found again by it
   */
  public Workshop of(Trial trial) {
    return in(folder(trial));
  }

  /**
   * The workshop of a folder.
   *
   * @param folder a folder that holds trials, or will
   * @return the workshop there, or else the nearest in the folders above; untaught where there is
   *     none that can be read
   */
  public Workshop in(Path folder) {
    Path own = folder.toAbsolutePath().normalize();
    return home(own)
        .map(home -> reading(home).workshop())
        .orElseGet(() -> untaught.computeIfAbsent(own, Workshop::untaught));
  }

  /**
   * Learns from the trials of a folder as far as they can have happened; writes nothing.
   *
   * @param folder the folder
   * @param trials its trials
   * @param requireWanted called before each step; what it throws ends the learning
   * @return what they teach
   */
  public Workshop learn(Path folder, List<Trial> trials, Runnable requireWanted) {
    LocalDateTime now = LocalDateTime.now(clock);
    List<Trial> past = trials.stream().map(trial -> trial.until(now)).toList();
    return Workshop.taughtBy(folder, past, requireWanted);
  }

  /**
   * The workshops that some trials belong to.
   *
   * @param trials the trials
   * @return each once, in the order of the trials; none of a trial without a workshop file
   */
  public List<Workshop> all(List<Trial> trials) {
    return homes(trials).map(home -> reading(home).workshop()).toList();
  }

  /** The folders of the workshop files that some trials belong to, each once, in their order. */
  private static Stream<Path> homes(List<Trial> trials) {
    return trials.stream().flatMap(trial -> home(folder(trial)).stream()).distinct();
  }

  /**
   * Describes what has changed among trials since their workshops were learnt.
   *
   * @param trials the trials
   * @return one sentence a workshop where something shows
   */
  public List<String> outdated(List<Trial> trials) {
    Map<Optional<Path>, List<Trial>> byHome =
        trials.stream().collect(Collectors.groupingBy(trial -> home(folder(trial))));
    return byHome.values().stream()
        .flatMap(ofOne -> of(ofOne.get(0)).outdated(ofOne).stream())
        .sorted()
        .toList();
  }

  /**
   * Plates that stand in two files.
   *
   * @param trials the trials
   * @return a sentence for each file that repeats another
   */
  public static List<String> copies(List<Trial> trials) {
    return Copies.among(Path.of("").toAbsolutePath(), trials).copies().stream()
        .map(copy -> copy.file() + ": " + copy.reason() + " in what is learnt.")
        .toList();
  }

  /**
   * Names the folders below one that keep to a workshop file of their own.
   *
   * @param folder a folder that was learnt from
   * @param trials the trials in it and below
   * @return a sentence for each nearer workshop file
   */
  public List<String> nearer(Path folder, List<Trial> trials) {
    Path own = folder.toAbsolutePath().normalize();
    return homes(trials)
        .filter(home -> home.startsWith(own) && !home.equals(own))
        .map(home -> PlainLine.of(own.relativize(home)))
        .map(
            name ->
                """
                The trials in %1$s keep to %1$s/%2$s, which is nearer; delete that file to have \
                them use this one.\
                """
                    .formatted(name, Workshop.FILE_NAME))
        .toList();
  }

  /**
   * The workshop files of trials that cannot be read.
   *
   * @param trials the trials
   * @return one fault a file
   */
  public List<Fault> faults(List<Trial> trials) {
    return homes(trials).flatMap(home -> reading(home).fault().stream()).toList();
  }

  /**
   * The workshop file of a folder, where it cannot be read.
   *
   * @param folder a folder that holds trials, or will
   * @return the fault, if there is one
   */
  public Optional<Fault> fault(Path folder) {
    return home(folder.toAbsolutePath().normalize()).flatMap(home -> reading(home).fault());
  }

  private CachedWorkshop reading(Path folder) {
    FileStamp now = FileStamp.of(Workshop.file(folder));
    CachedWorkshop last = readings.get(folder);
    if (last != null && last.stamp().is(now)) {
      return last;
    }
    CachedWorkshop fresh = read(folder, now);
    readings.put(folder, fresh);
    return fresh;
  }

  private static CachedWorkshop read(Path folder, FileStamp stamp) {
    try {
      return new CachedWorkshop(stamp, Workshop.read(folder), Optional.empty());
    } catch (UnreadableFileException e) {
      Fault fault =
          new Fault(
              PlainLine.of(Workshop.file(folder)),
              e.place(),
              e.given(),
              e.allowed(),
              e.mend() + "; until then the forecasts are the textbook's");
      return new CachedWorkshop(stamp, Workshop.untaught(folder), Optional.of(fault));
    }
  }

  private static Path folder(Trial trial) {
    Path file = trial.file().toAbsolutePath().normalize();
    Path parent = file.getParent();
    return parent == null ? file : parent;
  }

  private static Optional<Path> home(Path from) {
    @Nullable Path folder = from;
    for (int up = 0; up <= FARTHEST_UP && folder != null; up++) {
      if (Files.exists(Workshop.file(folder))) {
        return Optional.of(folder);
      }
      folder = folder.getParent();
    }
    return Optional.empty();
  }

  @Override
  public PlateParameters drying(Trial trial) {
    LocalDateTime now = LocalDateTime.now(clock);
    Trial past = trial.until(now);
    PlateParameters known = of(trial).drying(past);
    List<WeighingQuestion> questions = new ArrayList<>(known.questions());
    if (!trial.invented() && trial.isPouredAfter(now)) {
      questions.add(
          new WeighingQuestion(
              "The pour lies in the future: is its date right, and is the clock of this computer"
                  + " right?"));
    }
    int future = trial.seen().weighings().size() - past.seen().weighings().size();
    if (future > 0) {
      questions.add(
          new WeighingQuestion(
              future == 1
                  ? "One weighing lies in the future and is not counted: is its date right?"
                  : "%s weighings lie in the future and are not counted: are their dates right?"
                      .formatted(future)));
    }
    return new PlateParameters(known.factors(), known.wholly(), known.weighings(), questions);
  }

  @Override
  public PlateParameters atThePour(Trial trial) {
    return of(trial).atThePour(trial);
  }

  @Override
  public LearntFilm film(Trial trial) {
    return of(trial).film(trial);
  }

  @Override
  public CastingForecaster changed(Trial trial, Casting changed) {
    return of(trial).changed(trial, changed);
  }
}
