package starchfilm.learning;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.WeakHashMap;
import starchfilm.casting.Casting;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.files.json.UnreadableFileException;
import starchfilm.files.notebook.NotebookReader;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.SafeFile;
import starchfilm.film.FilmForecaster;
import starchfilm.film.FilmProperty;
import starchfilm.film.LearntFilm;
import starchfilm.forecast.CastingForecaster;
import starchfilm.forecast.PlateParameters;
import starchfilm.forecast.TrialKnowledge;
import starchfilm.learning.summary.DoubtedReading;
import starchfilm.learning.summary.Learnt;
import starchfilm.learning.summary.RoomLearnt;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.numerics.evidence.Estimate;

/**
 * The knowledge that the trials of one folder have taught, kept in the file {@value #FILE_NAME}
 * beside them.
 *
 * <p>Asked about a trial it has learnt from, it leaves that trial's own likelihood out, so that the
 * trial's weighings count once in {@link #drying} and not at all in {@link #atThePour}. The plates
 * of one pour teach each other as plates of one room and starch do: that they also share the paste
 * and the days is left out, which leaves their ranges rather too wide. Immutable; safe to share.
 */
public final class Workshop implements TrialKnowledge {
  /** The file what was learnt is kept in. */
  public static final String FILE_NAME = NotebookReader.WORKSHOP_FILE;

  /** How many plates of a pour tell of its air and paste nearly what all would; judged. */
  private static final int MOST_SIBLINGS = 3;

  private final Path folder;
  private final Learnt learnt;
  private final List<PlateLikelihood> plates;
  private final List<StripLikelihood> strips;
  private final List<TrialFacts> facts;
  private final SummedLikelihood all;
  private final SharedParameters shared;

  /** Kept, since a checksum over tens of thousands of weighings takes its time. */
  private final Map<Trial, Set<String>> files = Collections.synchronizedMap(new WeakHashMap<>());

  private Workshop(
      Path folder,
      Learnt learnt,
      List<PlateLikelihood> plates,
      List<StripLikelihood> strips,
      List<TrialFacts> facts) {
    this.folder = folder;
    this.learnt = learnt;
    this.plates = List.copyOf(plates);
    this.strips = List.copyOf(strips);
    this.facts = List.copyOf(facts);
    this.all = SummedLikelihood.of(plates);
    this.shared = all.factors();
  }

  /**
   * A workshop in which nothing was learnt: the textbook.
   *
   * @param folder its folder
   * @return the workshop
   */
  public static Workshop untaught(Path folder) {
    return new Workshop(folder, Learnt.NOTHING, List.of(), List.of(), List.of());
  }

  /**
   * Learns from trials.
   *
   * @param folder the folder they lie in, or in folders below it
   * @param trials the trials; those without weighings and strips teach nothing
   * @return what they teach; what could not be learnt from is named in {@link #learnt}
   */
  public static Workshop taughtBy(Path folder, List<Trial> trials) {
    return taughtBy(folder, trials, () -> {});
  }

  /**
   * Learns from trials, as long as somebody wants it.
   *
   * @param folder the folder they lie in, or in folders below it
   * @param trials the trials; those without weighings and strips teach nothing
   * @param requireWanted called before each step; what it throws ends the learning
   * @return what they teach; what could not be learnt from is named in {@link #learnt}
   */
  public static Workshop taughtBy(Path folder, List<Trial> trials, Runnable requireWanted) {
    Copies plates = Copies.among(folder, trials);
    List<Trial> weighed =
        plates.once().stream().flatMap(trial -> trial.weighedPlates().stream()).toList();
    Learner learner = Learner.taughtBy(weighed, folder, requireWanted);
    StripLikelihoods strips = new StripLikelihoods();
    for (Trial trial : plates.once()) {
      requireWanted.run();
      strips.add(trial, TrialName.from(folder, trial));
    }
    return new Workshop(
        folder,
        Summary.of(learner, strips, plates.copies()),
        learner.likelihoods(),
        strips.likelihoods(),
        TrialFacts.ofAll(folder, trials));
  }

  /**
   * Reads the workshop file of a folder.
   *
   * @param folder the folder
   * @return what was learnt there; without a file, the textbook
   * @throws UnreadableFileException where there is a file, but not as learn writes it
   */
  public static Workshop read(Path folder) throws UnreadableFileException {
    Path file = file(folder);
    if (!Files.exists(file)) {
      return untaught(folder);
    }
    WorkshopFile read = WorkshopFile.read(file);
    return new Workshop(folder, read.learnt(), read.plates(), read.strips(), read.learntFrom());
  }

  /**
   * Writes the workshop file: whole or not at all.
   *
   * @return the file
   * @throws NotWrittenException where it cannot be written; an older file is as it was
   */
  public Path write() throws NotWrittenException {
    byte[] text =
        new WorkshopFile(learnt, plates, strips, facts).text().getBytes(StandardCharsets.UTF_8);
    SafeFile.rewrite(file(folder), before -> text);
    return file(folder);
  }

  /**
   * What is to be said of the file that {@link #write} will replace.
   *
   * @return a sentence; empty where there is none, or one that this version wrote
   */
  public Optional<String> replaces() {
    try {
      read(folder);
      return Optional.empty();
    } catch (UnreadableFileException foreign) {
      return Optional.of(
          "The %1$s that was there is not as this version writes it; it is kept as %1$s.before until the file next changes."
              .formatted(FILE_NAME));
    }
  }

  static Path file(Path folder) {
    return folder.resolve(FILE_NAME);
  }

  /**
   * Returns the name of its folder.
   *
   * @return the last part of its path
   */
  public String folderName() {
    Path name = folder.toAbsolutePath().normalize().getFileName();
    return name == null ? folder.toString() : name.toString();
  }

  /**
   * The trial that a doubted reading is of.
   *
   * @param reading the reading
   * @param trials where to look
   * @return the trial; empty where it is none of them
   */
  public Optional<Trial> trialOf(DoubtedReading reading, List<Trial> trials) {
    return trials.stream()
        .filter(trial -> TrialName.from(folder, trial).equals(reading.file()))
        .findFirst();
  }

  /**
   * Returns the summary of what was learnt.
   *
   * @return rooms, starch kinds, hand and films
   */
  public Learnt learnt() {
    return learnt;
  }

  /**
   * Tells whether anything was learnt that a forecast can use.
   *
   * @return false for the textbook
   */
  public boolean isTaught() {
    return !(plates.isEmpty() && strips.isEmpty());
  }

  /**
   * Describes what has changed since it was learnt.
   *
   * @param trials trials of its folder; those that are not given are only looked for
   * @return a sentence that names trials with more or fewer readings, edited trials and files that
   *     are gone; empty where none shows
   */
  public Optional<String> outdated(List<Trial> trials) {
    return isTaught()
        ? new Outdated(folder, plates, strips, facts).sentence(learnt, trials)
        : Optional.empty();
  }

  @Override
  public PlateParameters atThePour(Trial trial) {
    PlateModel plate = new PlateModel(trial, List.of());
    return new PlateParameters(plate.model(plate.before(sharedWithout(trial))), true);
  }

  @Override
  public PlateParameters drying(Trial trial) {
    SharedParameters others = sharedWithout(trial);
    List<PlateLikelihood> siblings =
        trial.weighedSiblings().stream()
            .sorted(Comparator.comparingInt((Trial plate) -> -plate.seen().weighings().size()))
            .limit(MOST_SIBLINGS)
            .flatMap(plate -> Learner.likelihood(plate, folder, others).stream())
            .toList();
    int heard = siblings.stream().mapToInt(PlateLikelihood::weighings).sum();
    return PlateKnowledge.of(trial, heard == 0 ? others : sharedWithout(trial, siblings), heard);
  }

  /**
   * Returns the knowledge of a plate that nobody has poured yet.
   *
   * @param roomName where it will dry
   * @param starchShares share of each kind in its dry starch
   * @param pourWeighed whether its paste will be weighed when it is poured
   * @return the factors; a forecast adds what the plate's own paste, pour and room leave uncertain
   */
  public ParameterDistribution factors(
      String roomName, Map<StarchKind, Double> starchShares, boolean pourWeighed) {
    PlateKey key = new PlateKey(RoomLearnt.key(roomName), starchShares, pourWeighed);
    return shared.of(key).widened(PlateModel.ownVariances(pourWeighed)).model();
  }

  /**
   * Looks back on trials in the order they were poured: how near each could have been forecast.
   *
   * @param trials the trials of this workshop
   * @param shown those of them that are looked back on
   * @return one look for each of these that is dated and was learnt from, the earliest pour first
   */
  public List<Hindsight> hindsight(List<Trial> trials, List<Trial> shown) {
    return Hindsight.over(trials, shown, plates, trial -> TrialName.from(folder, trial));
  }

  /**
   * Tells whether a trial repeats one that was learnt from, as in a backup folder.
   *
   * @param trial the trial
   * @return a sentence that names the other; empty where it is no copy
   */
  public Optional<String> copyOf(Trial trial) {
    String own = TrialName.from(folder, trial);
    return files(trial).stream()
        .filter(file -> !file.equals(own) && isLearntFrom(file))
        .findFirst()
        .map(file -> own + ": the same plate as " + file + ", which counts once.");
  }

  private boolean isLearntFrom(String file) {
    return plates.stream().anyMatch(plate -> plate.file().equals(file))
        || strips.stream().anyMatch(film -> film.file().equals(file));
  }

  /** The files that hold this trial's plate: its own, and those it repeats. */
  private Set<String> files(Trial trial) {
    return files.computeIfAbsent(trial, this::filesOf);
  }

  private Set<String> filesOf(Trial trial) {
    Set<String> named = new LinkedHashSet<>(Set.of(TrialName.from(folder, trial)));
    TrialFacts.of(folder, trial)
        .ifPresent(
            own ->
                facts.stream()
                    .filter(other -> other.checksum().equals(own.checksum()))
                    .forEach(other -> named.add(other.file())));
    return named;
  }

  /** What the other trials taught, and some plates of this one. */
  private SharedParameters sharedWithout(Trial trial, List<PlateLikelihood> siblings) {
    Set<String> own = files(trial);
    List<PlateLikelihood> likelihoods = new ArrayList<>(plates);
    likelihoods.removeIf(likelihood -> own.contains(likelihood.file()));
    likelihoods.addAll(siblings);
    return SharedParameters.after(likelihoods);
  }

  private SharedParameters sharedWithout(Trial trial) {
    Set<String> own = files(trial);
    SummedLikelihood others = all;
    for (PlateLikelihood likelihood : plates) {
      if (own.contains(likelihood.file())) {
        others = others.minus(likelihood);
      }
    }
    return others.factors();
  }

  @Override
  public LearntFilm film(Trial trial) {
    Set<String> own = files(trial);
    List<StripLikelihood> others =
        strips.stream().filter(likelihood -> !own.contains(likelihood.file())).toList();
    return film(others, trial.casting().composition().starchShares());
  }

  @Override
  public CastingForecaster changed(Trial trial, Casting changed) {
    Map<StarchKind, Double> starchShares = changed.composition().starchShares();
    return new CastingForecaster(
        new PlateParameters(factors(changed.place().name(), starchShares, false), false),
        new FilmForecaster(film(strips, starchShares)));
  }

  private static LearntFilm film(
      List<StripLikelihood> likelihoods, Map<StarchKind, Double> starchShares) {
    Map<FilmProperty, Estimate> factors = new EnumMap<>(FilmProperty.class);
    SharedStrips.byProperty(likelihoods)
        .forEach((property, shared) -> factors.put(property, shared.nextFilm(starchShares)));
    return new LearntFilm(factors);
  }

  /**
   * Returns the knowledge of a film that nobody has cast yet.
   *
   * @param starchShares share of each kind in its dry starch
   * @return what all strips taught
   */
  public LearntFilm film(Map<StarchKind, Double> starchShares) {
    return film(strips, starchShares);
  }
}
