package starchfilm.request;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.WallClock;
import starchfilm.files.findings.Findings;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.Located.Place;
import starchfilm.files.json.LocatedWriter;
import starchfilm.files.notebook.SoundPart;
import starchfilm.files.notebook.TrialReader;
import starchfilm.files.saving.FreshTrial;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.TrialFileText;

/**
 * A trial that is asked about: out of a file, written field by field, or a file with other values
 * over it, which ask what if.
 *
 * @param trial the trial
 * @param assumptions what was taken for granted of what was written, a sentence each; what a trial
 *     does not record is in the trial
 */
public record TrialQuestion(Trial trial, List<String> assumptions) {

  /** A trial of which nothing is written yet. */
  static final ObjectValue NOTHING = new ObjectValue(new Place("", 1, 1), Map.of(), List.of());

  /** A trial file that was read and is sound. */
  public record Base(Trial trial, ObjectValue fields) {
    /**
     * A trial to be asked about; its file is read again where something is written over it.
     *
     * @param trial a trial that was read
     * @param entries what was written
     * @return empty where its file was changed meanwhile
     */
    public static Optional<Base> of(Trial trial, Entries entries) {
      return isTakenAsItStands(new EntryReader(entries))
          ? Optional.of(new Base(trial, NOTHING))
          : of(trial);
    }

    /**
     * A trial with the fields of its file, those that are wrong left out.
     *
     * @param trial a trial that was read
     * @return empty where its file was changed meanwhile
     */
    public static Optional<Base> of(Trial trial) {
      try {
        ObjectValue fields = TrialFileText.fields(TrialFileText.of(trial.file()).text());
        return Optional.of(new Base(trial, SoundPart.fields(fields, trial.file())));
      } catch (NotWrittenException changed) {
        return Optional.empty();
      }
    }

    /**
     * A trial that may not be written yet.
     *
     * @param text its text
     * @param file the file it is or would be in
     * @throws NotWrittenException where it has faults
     */
    public static Base of(String text, Path file) throws NotWrittenException {
      return of(TrialFileText.fields(text), file);
    }

    /**
     * The same to be poured again: without its history, and without a log of the days it had.
     *
     * @throws NotWrittenException where it makes no trial
     */
    public Base again() throws NotWrittenException {
      return of(FreshTrial.of(fields), trial.file());
    }

    /** The name of the log that its room follows; empty where it follows none. */
    public Optional<String> log() {
      return fields.at("room.log_csv").map(Located::shown);
    }

    /** A trial to begin with, read from its fields. */
    static Base of(ObjectValue fields, Path file) throws NotWrittenException {
      Findings findings = new Findings("sketch");
      Trial read =
          new TrialReader()
              .read(fields, file, findings)
              .orElseThrow(() -> new NotWrittenException(findings.faults()));
      return new Base(read, fields);
    }

    /** The same trial with another text in a field. */
    public Base with(String path, String text) throws NotWrittenException {
      return of(fields.with(path, text), trial.file());
    }

    /** The text of a file with these fields. */
    public String text() {
      return LocatedWriter.lines(fields);
    }
  }

  /**
   * Tells whether anything is written of the trial itself.
   *
   * @param entries what was written
   * @return false where a file is taken as it stands, weighings apart
   */
  public static boolean isWritten(Entries entries) {
    return isWritten(new EntryReader(entries));
  }

  static boolean isWritten(EntryReader in) {
    return in.hasAnyOf("trial") || in.hasAnyOf("place");
  }

  /**
   * Reads what was written.
   *
   * @param entries what was written
   * @param base what it is put over, if a file was named
   * @param folder where a room log lies, and where a trial without a file would stand
   * @param clock the clock on the wall
   * @return the question
   * @throws RefusedRequestException where it cannot be meant
   */
  public static TrialQuestion read(Entries entries, Optional<Base> base, Path folder, Clock clock) {
    EntryReader in = new EntryReader(entries);
    Optional<Base> read = read(in, base, folder, clock);
    OptionalDouble byS = wantedByS(in, read.map(Base::trial).flatMap(Trial::pouredAt), clock);
    return in.finished(
        () -> {
          Trial trial = read.orElseThrow().trial();
          return new TrialQuestion(
              byS.isPresent() ? trial.wantedBy(byS.getAsDouble()) : trial, in.assumptions());
        });
  }

  private static boolean isTakenAsItStands(EntryReader in) {
    return !isWritten(in) && !in.hasAny("so far.poured", "so far.weighed");
  }

  /** When it was poured. */
  static Optional<LocalDateTime> poured(EntryReader in, Clock clock) {
    return in.one("so far.poured", typed -> WrittenDate.poured(typed, in, clock));
  }

  /** When it is wanted (s after the pour), which is now where it is not noted. */
  static OptionalDouble wantedByS(EntryReader in, Optional<LocalDateTime> pouredAt, Clock clock) {
    LocalDateTime now = LocalDateTime.now(clock);
    double agoS = WallClock.secondsBetween(pouredAt.orElse(now), now);
    return in.number(
        "when.by",
        typed ->
            pouredAt.isPresent()
                ? WrittenDate.secondsFrom(pouredAt.get(), agoS, typed, clock)
                : WrittenDate.secondsFromNow(in, typed, clock));
  }

  /** The trial, and its fields with what was written in them. */
  static Optional<Base> read(EntryReader in, Optional<Base> base, Path folder, Clock clock) {
    if (base.isPresent() && isTakenAsItStands(in)) {
      in.requireWhole("so far.film-only", "so far.weighed");
      return base;
    }
    ObjectValue fields = base.map(Base::fields).orElseGet(() -> NOTHING.with("name", "as typed"));
    if (isWritten(in)) {
      // What happened to the real plate says nothing about the one that is asked for.
      fields = fields.without("weighings", "faults", "pulls", "dry_thickness_um", "rating");
    }
    Optional<LocalDateTime> poured = poured(in, clock);
    if (poured.isPresent()) {
      fields =
          fields.with("poured_at", WrittenTrial.text("so far.poured", poured.get().toString()));
    }
    return new WrittenTrial(in, fields, base.map(Base::trial), folder, clock).read();
  }
}
