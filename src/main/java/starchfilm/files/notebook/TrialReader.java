package starchfilm.files.notebook;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.regex.Pattern;
import starchfilm.casting.Casting;
import starchfilm.casting.ClosedHeat;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.Use;
import starchfilm.casting.trial.EachPlate;
import starchfilm.casting.trial.Observations;
import starchfilm.casting.trial.ObservedFault;
import starchfilm.casting.trial.PhotoNote;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.Wanted;
import starchfilm.casting.trial.Weighing;
import starchfilm.files.findings.Findings;
import starchfilm.files.findings.PlainLine;
import starchfilm.files.json.FileText;
import starchfilm.files.json.Located;
import starchfilm.files.json.LocatedReader;
import starchfilm.files.json.UnreadableFileException;
import starchfilm.material.recipe.Paste;
import starchfilm.material.recipe.Recipe;
import starchfilm.numerics.evidence.Estimate;

/** Reads one trial file. */
public final class TrialReader {
  /** The largest trial file that is read; 2,000 weighings need a tenth of it. */
  public static final long MAX_BYTES = 2_000_000;

  private static final Pattern OWN_FORECAST =
      Pattern.compile("\\{\\s*\"what\"\\s*:\\s*\"drying forecast\"");

  /** Makes a reader; it keeps nothing of what it read. */
  public TrialReader() {}

  /**
   * Reads one file.
   *
   * @param file the file
   * @param findings takes what turns up
   * @return the trial, if the file has no fault
   */
  Optional<Trial> read(Path file, Findings findings) {
    try {
      String text = FileText.utf8(FileText.bytes(file, MAX_BYTES));
      if (OWN_FORECAST.matcher(text).lookingAt()) {
        findings.notice("written by dry --json, not a trial; skipped");
        return Optional.empty();
      }
      return read(text, file, findings);
    } catch (UnreadableFileException e) {
      findings.fault(e);
      return Optional.empty();
    }
  }

  /**
   * Reads a text as if it were the file's.
   *
   * @param text the text
   * @param file the file it is or will be in
   * @param findings takes what turns up
   * @return the trial, if the text has no fault
   */
  public Optional<Trial> read(String text, Path file, Findings findings) {
    try {
      return read(fields(text), file, findings);
    } catch (UnreadableFileException e) {
      findings.fault(e);
      return Optional.empty();
    }
  }

  /**
   * Reads a trial whose fields are at hand.
   *
   * @param object the trial
   * @param file the file it is or would be in
   * @param findings takes what turns up
   * @return the trial, if it has no fault
   */
  public Optional<Trial> read(Located.ObjectValue object, Path file, Findings findings) {
    ObjectReader section = new ObjectReader(object, TrialField.TRIAL, findings);
    Optional<Trial> trial;
    try {
      trial = trial(section, file, findings);
    } catch (RuntimeException failure) {
      // A net: whatever one file does to us is a fault of that file, and the others go through.
      findings.fault(
          object.place(),
          "a trial this program cannot compute (" + failure.getMessage() + ")",
          "",
          "undo what was changed last in it, and please report this");
      return Optional.empty();
    }
    UnknownFields.tell(object, TrialField.TRIAL, findings);
    return findings.faults().isEmpty() ? trial : Optional.empty();
  }

  /**
   * Returns whether a text is of a trial, whatever is wrong with it: one JSON object with a recipe.
   *
   * @param text the text
   * @return false where it is something else or no JSON
   */
  public boolean readsAsTrial(String text) {
    try {
      return fields(text).members().containsKey("recipe");
    } catch (UnreadableFileException e) {
      return false;
    }
  }

  static Located.ObjectValue fields(String text) throws UnreadableFileException {
    return LocatedReader.object(text, "write the trial as {\"recipe\": {..}, ..}");
  }

  private static Optional<Trial> trial(ObjectReader section, Path file, Findings findings) {
    String name = PlainLine.of(section.text("name").orElse(baseName(file)));
    boolean invented = section.flag("invented").orElse(false);
    if (section.flag("put_away").orElse(false)) {
      findings.putAway();
    }
    Optional<String> from =
        // It may be gone or elsewhere by now; its name alone is kept.
        section.beside("from", file).flatMap(found -> section.text("from"));
    Optional<LocalDateTime> pouredAt = TimesReader.pouredAt(section);
    Optional<Recipe> recipe = RecipeReader.read(section, file);
    Optional<Paste> paste =
        findings.faults().isEmpty()
            ? recipe.flatMap(whole -> PasteReader.cooked(section, whole))
            : Optional.empty();
    PourReader.Poured poured = PourReader.read(section, paste);
    // A fault above makes every weighing look wrong; one sentence is enough.
    Optional<Paste> trusted = findings.faults().isEmpty() ? paste : Optional.empty();
    DryingPlace place = RoomReader.read(section, file, pouredAt);
    TimesReader times = new TimesReader(pouredAt);
    ObservationsReader seen = new ObservationsReader(times);
    Estimate fresh = fresh(poured, trusted);
    PlatesReader.Plates plates =
        new PlatesReader(times).read(section, poured.pour().plates(), poured.tare());
    SortedMap<Integer, List<Weighing>> weighings =
        new WeighingsReader(times)
            .read(section, poured.sized(), plates, poured.pour().areasM2(), fresh, solids(trusted));
    List<Weighing> ofFirst = Optional.ofNullable(weighings.remove(1)).orElse(List.of());
    List<Double> dryThickness = new ArrayList<>(section.numbers("dry_thickness_um"));
    plates.thicknessesM().values().forEach(dryThickness::addAll);
    List<ObservedFault> faults = seen.faults(section);
    List<ObservationsReader.Pulled> pulls = seen.pulls(section, plates, dryThickness);
    var moved = seen.moved(section);
    Use use = use(section);
    OptionalInt rating = section.count("rating");
    List<String> remarks = section.texts("remarks");
    List<Path> photos = photos(section, file, findings);
    recipe
        .flatMap(whole -> ClosedHeat.of(whole.glycerol(), place))
        .ifPresent(
            closed -> section.fault("room", closed, ClosedHeat.allowed(), ClosedHeat.mend()));
    if (recipe.isEmpty() || !findings.faults().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Trial(
            file,
            name,
            invented,
            from,
            wanted(section),
            pouredAt,
            recipe.get(),
            Casting.of(recipe.get(), poured.plate(), poured.pour(), moved, place, use),
            new Observations(
                ofFirst,
                faults,
                pulls.stream().map(ObservationsReader.Pulled::strip).toList(),
                dryThickness,
                rating,
                remarks,
                photos,
                photoNotes(section, file, times, plates),
                new EachPlate(
                    1,
                    plates.emptyKg(),
                    weighings,
                    plates.ends(),
                    ObservationsReader.films(plates, pulls))),
            findings.notRecorded()));
  }

  /** The paste on one plate: as weighed, or from its thickness with the doubt of a ruler. */
  private static Estimate fresh(PourReader.Poured poured, Optional<Paste> paste) {
    if (paste.isEmpty()) {
      return Estimate.exact(1e6);
    }
    if (poured.pour().weighedKg().isPresent()) {
      return poured.pour().weighedKg().get();
    }
    double perM = paste.get().composition().pasteDensityKgPerM3() * poured.plate().areaM2();
    Estimate mass = poured.pour().wetThicknessM().times(perM);
    return new Estimate(mass.value(), Math.hypot(mass.sd(), 0.1 * mass.value()));
  }

  /** Dry solids (kg per kg paste); without a paste none, so that nothing is held against them. */
  private static Estimate solids(Optional<Paste> paste) {
    if (paste.isEmpty()) {
      return Estimate.exact(0);
    }
    double solids = paste.get().composition().drySolids();
    return new Estimate(solids, solids * paste.get().solidsRelativeSd());
  }

  /** What a plan was asked for. */
  private static Wanted wanted(ObjectReader trial) {
    Optional<ObjectReader> wish = trial.section("wish");
    if (wish.isEmpty()) {
      return Wanted.NOTHING;
    }
    return new Wanted(wish.get().text("film"), wish.get().number("ready_after_days"));
  }

  /** Use where nobody says: the standard atmosphere of ISO 291, a week on. */
  private static Use use(ObjectReader trial) {
    ObjectReader use = trial.sectionOrEmpty("use");
    return new Use(
        use.takenNumber("rh_pct"), use.takenNumber("air_C"), use.takenNumber("after_days"));
  }

  private static List<Path> photos(ObjectReader trial, Path file, Findings findings) {
    List<Path> photos = new ArrayList<>();
    for (Located entry : trial.entries("photos")) {
      if (!(entry instanceof Located.TextValue text)) {
        findings.fault(entry, "the name of a picture file", "write its name in double quotes");
        continue;
      }
      Optional<Path> photo = BesideFile.find(file, text.text(), text.place(), findings);
      if (photo.isPresent() && Files.isRegularFile(photo.get())) {
        photos.add(photo.get());
      } else if (photo.isPresent()) {
        findings.notice(text.place(), "there is no picture of this name; the page goes without it");
      }
    }
    return photos;
  }

  private static Map<Path, PhotoNote> photoNotes(
      ObjectReader trial, Path file, TimesReader times, PlatesReader.Plates plates) {
    Map<Path, PhotoNote> notes = new HashMap<>();
    for (ObjectReader entry : trial.sections("photo_notes")) {
      Optional<Path> photo = entry.beside("file", file);
      PhotoNote note =
          new PhotoNote(times.at(entry, "a photo"), entry.text("caption"), plates.number(entry));
      photo.ifPresent(path -> notes.merge(path, note, PhotoNote::with));
    }
    return notes;
  }

  /** The name of a file without what stands behind its last dot. */
  public static String baseName(Path file) {
    return String.valueOf(file.getFileName()).replaceFirst("(?<=.)\\.[^.]*$", "");
  }
}
