package starchfilm.request;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import starchfilm.casting.Casting;
import starchfilm.casting.ClosedHeat;
import starchfilm.casting.ConstantRoom;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.trial.NotRecorded;
import starchfilm.casting.trial.Trial;
import starchfilm.files.amount.Dimension;
import starchfilm.files.amount.Moment;
import starchfilm.files.amount.MomentParser;
import starchfilm.files.amount.TypedAmount;
import starchfilm.files.amount.WeighedSoFar;
import starchfilm.files.findings.Fault;
import starchfilm.files.findings.Findings;
import starchfilm.files.json.FileText;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.ListValue;
import starchfilm.files.json.Located.NumberValue;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.Located.Place;
import starchfilm.files.json.Located.TextValue;
import starchfilm.files.json.Located.WordValue;
import starchfilm.files.json.LocatedReader;
import starchfilm.files.json.UnreadableFileException;
import starchfilm.files.notebook.FileWord;
import starchfilm.files.notebook.JarLevel;
import starchfilm.files.notebook.SoundPart;
import starchfilm.files.notebook.TrialField;
import starchfilm.files.notebook.TrialReader;
import starchfilm.files.notebook.TypedValue;
import starchfilm.files.saving.CastingFields;
import starchfilm.files.saving.FreshTrial;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.TrialTree;
import starchfilm.material.air.AirState;

/**
 * A trial that is asked about: out of a file, written field by field, or a file with other values
 * over it, which ask what if.
 *
 * @param trial the trial
 * @param assumptions what was taken for granted of what was written, a sentence each; what a trial
 *     does not record is in the trial
 */
public record TrialQuestion(Trial trial, List<String> assumptions) {

  /** The unit of every number of a trial file, by its path. */
  private static final Map<String, String> UNITS =
      TrialField.TRIAL.all().stream()
          .filter(field -> !field.unit().isEmpty())
          .collect(Collectors.toMap(TrialField::path, TrialField::unit));

  /** What a plate that is written says of itself. */
  private static final String[] ON_PLATE = {
    "pour.plate.material",
    "pour.plate.thickness_mm",
    "pour.plate.diameter_mm",
    "pour.plate.length_mm",
    "pour.plate.width_mm",
    "pour.plate.area_cm2",
    "pour.plate.shape"
  };

  private static final Dimension[] WEIGHED_OR_MEASURED = {Dimension.MASS, Dimension.VOLUME};

  /** A stand-in, so that mistakes of a place are found beside others. */
  private static final DryingPlace ANY =
      new DryingPlace(new ConstantRoom(new AirState(293.15, 0.5, 0.1)), OptionalDouble.empty());

  /** A trial of which nothing is written yet. */
  static final ObjectValue NOTHING = new ObjectValue(new Place("", 1, 1), Map.of(), List.of());

  public TrialQuestion {
    assumptions = List.copyOf(assumptions);
  }

  /** A trial file that was read and is sound. */
  public record Base(Trial trial, ObjectValue fields) {
    private static final String SKETCH = "sketch";

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
        String text = FileText.utf8(FileText.bytes(trial.file(), TrialReader.MAX_BYTES));
        return new LocatedReader().read(text) instanceof ObjectValue fields
            ? Optional.of(new Base(trial, SoundPart.fields(fields, trial.file())))
            : Optional.empty();
      } catch (UnreadableFileException changed) {
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
      Findings findings = new Findings(SKETCH);
      Trial trial = sound(new TrialReader().read(text, file, findings), findings);
      try {
        return new Base(trial, (ObjectValue) new LocatedReader().read(text));
      } catch (UnreadableFileException impossible) {
        throw new IllegalStateException("the text was read before", impossible);
      }
    }

    /** The same of its fields. */
    static Base of(ObjectValue fields, Path file) throws NotWrittenException {
      Findings findings = new Findings(SKETCH);
      return new Base(sound(new TrialReader().read(fields, file, findings), findings), fields);
    }

    private static Trial sound(Optional<Trial> trial, Findings findings)
        throws NotWrittenException {
      if (trial.isEmpty() || !findings.faults().isEmpty()) {
        throw new NotWrittenException(findings.faults());
      }
      return trial.get();
    }

    /** The same to be poured again, without its history. */
    public Base fresh() throws NotWrittenException {
      return of(FreshTrial.of(fields), trial.file());
    }

    /** The same with another text in a field. */
    public Base with(String path, String text) throws NotWrittenException {
      return of(fields.with(path, text), trial.file());
    }

    /** The text of a file with these fields. */
    public String text() {
      return TrialTree.text(TrialTree.of(fields));
    }
  }

  /**
   * Whether anything is written of the trial itself.
   *
   * @param entries what was written
   * @return false where a file is taken as it stands, weighings apart
   */
  public static boolean isWritten(Entries entries) {
    return isWritten(new EntryReader(entries));
  }

  private static boolean isWritten(EntryReader in) {
    return in.hasAnyOf("trial") || WrittenPlace.isAnyWritten(in);
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
    double agoS = Duration.between(pouredAt.orElse(now), now).toSeconds();
    return in.number(
        "when.by",
        typed ->
            pouredAt.isPresent()
                ? WrittenDate.secondsFrom(pouredAt.get(), agoS, typed, clock)
                : WrittenDate.secondsFromNow(in, typed, clock));
  }

  /** The trial, and its fields with what was written in them; plate and room are in the trial. */
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
      fields = fields.with("poured_at", text("so far.poured", poured.get().toString()));
    }
    return over(in, fields, base.map(Base::trial), folder, clock);
  }

  /**
   * A trial with what is written put over its fields.
   *
   * @param base the trial that a file says they are, where one does
   */
  static Optional<Base> over(
      EntryReader in, ObjectValue start, Optional<Trial> base, Path folder, Clock clock) {
    Path beside = base.map(Trial::file).orElse(folder.resolve("as-typed"));
    Optional<JarLevel> jar =
        WrittenJar.read(in, beside.resolveSibling(""), "trial.purity", "trial.salt", "jar.origin");
    ObjectValue filled = amounts(in, recipe(in, outOf(jar, start)));
    ObjectValue onPlate =
        WrittenKitchen.plates(in, "trial.plate")
            .map(WrittenPlates::mean)
            .map(plates -> sized(in, filled, plates))
            .orElse(filled);
    ObjectValue fields = weighed(in, onPlate, clock);
    if (in.hasMistakes()) {
      WrittenPlace.read(
          in, Optional.of(base.map(trial -> trial.casting().place()).orElse(ANY)), folder, clock);
      return Optional.empty();
    }
    Findings findings = new Findings(base.isPresent() ? beside.toString() : "as typed");
    Optional<Trial> trial = new TrialReader().read(fields, beside, findings);
    findings.faults().forEach(fault -> in.refuse(sentence(fault, base.isPresent())));
    jar.ifPresent(
        level -> {
          in.remark(level.sentence());
          trial
              .flatMap(read -> level.tooLittleFor(read.recipe().glycerol().massKg().value()))
              .ifPresent(text -> in.remark("It takes " + text + "."));
        });
    ObjectValue written = fields;
    return trial
        .flatMap(read -> placed(in, read, base.isPresent(), folder, clock))
        .map(placed -> new Base(placed, written));
  }

  /** A kept jar says itself what is in it. */
  private static ObjectValue outOf(Optional<JarLevel> jar, ObjectValue fields) {
    return jar.map(
            level ->
                fields
                    .without(
                        "recipe.glycerol.purity_pct",
                        "recipe.glycerol.salt_pct",
                        "recipe.glycerol.origin")
                    .with("recipe.glycerol.jar", text("jar.kept", level.jar().name())))
        .orElse(fields);
  }

  /** A fault of a value that was typed is named by its option, and such a value has no line. */
  private static String sentence(Fault fault, boolean inFile) {
    if (inFile && !fault.field().startsWith("--")) {
      return fault.sentence();
    }
    String place = fault.field().startsWith("--") ? "" : "as typed: ";
    return place + fault.field() + ": " + inOptions(fault.clause());
  }

  /** With options for the fields of a file. */
  private static String inOptions(String text) {
    String words = text;
    for (String key : List.of("so far.poured", "trial.plate", "trial.poured-mass", "trial.tare")) {
      Field field = Field.of(key);
      words = words.replaceAll("\\b" + Pattern.quote(field.path()) + "\\b", field.name());
    }
    return words;
  }

  private static ObjectValue recipe(EntryReader in, ObjectValue fields) {
    ObjectValue trial = fields;
    Optional<List<Located>> starches = in.all("trial.starch", words -> starches(in, words));
    if (starches.isPresent()) {
      trial = trial.with("recipe.starch", new ListValue(place("trial.starch"), starches.get()));
    }
    Optional<Located> origin =
        JarOrigin.stated(in).map(from -> text("jar.origin", FileWord.of(from)));
    return origin.isPresent() ? trial.with("recipe.glycerol.origin", origin.get()) : trial;
  }

  private static List<Located> starches(EntryReader in, List<String> words) {
    List<Located> starches = new ArrayList<>();
    for (WrittenSupplies.Written starch : WrittenSupplies.written(words)) {
      if (starch.isFlour()) {
        in.remark(starch.remark());
      }
      Place here = new Place("recipe.starch[" + (starches.size() + 1) + "]", 1, 1);
      ObjectValue portion =
          new ObjectValue(here, Map.of(), List.of())
              .with("kind", text("trial.starch", starch.kind().tradeName()));
      portion = put(portion, "mass_g", starch.mass());
      portion = put(portion, "inert_pct", starch.inert());
      starches.add(put(portion, "moisture_pct", starch.moisture()));
    }
    return starches;
  }

  private static ObjectValue put(ObjectValue portion, String field, Optional<String> typed) {
    String unit = String.valueOf(UNITS.get("recipe.starch." + field));
    return typed
        .map(
            words ->
                with(portion, field, unit, amount(words, dimensions(field, unit)), "trial.starch"))
        .orElse(portion);
  }

  /** Mass and volume for whatever goes into the pot, which is not always weighed. */
  private static Dimension[] dimensions(String path, String unit) {
    return path.endsWith("mass_g") ? WEIGHED_OR_MEASURED : new Dimension[] {Dimension.ofUnit(unit)};
  }

  /** Every amount that stands in one field of the trial. */
  private static ObjectValue amounts(EntryReader in, ObjectValue fields) {
    ObjectValue trial = fields;
    if (in.has("trial.wet")) {
      trial = trial.without("pour.poured_g", "pour.measured_from");
    }
    if (in.has("trial.rim")) {
      trial = trial.without("pour.plate.rim_mm");
    }
    if (in.has("trial.poured-mass")) {
      trial = trial.without("pour.wet_thickness_mm", "pour.measured_from");
    }
    for (Field field : Field.group("trial")) {
      String unit = UNITS.getOrDefault(field.path(), "");
      if (!unit.isEmpty()) {
        ObjectValue before = trial;
        trial =
            in.one(field.key(), typed -> amount(typed, dimensions(field.path(), unit)))
                .map(amount -> with(before, field.path(), unit, amount, field.key()))
                .orElse(trial);
      }
    }
    return trial;
  }

  /** On the plate that was written; what an empty one weighs stays as it is. */
  private static ObjectValue sized(EntryReader in, ObjectValue trial, WrittenPlates plates) {
    ObjectValue sized = trial.without(ON_PLATE);
    if (!in.has("trial.rim")) {
      sized = sized.without("pour.plate.rim_mm", "pour.plate.rim_height_mm");
    }
    if (plates.count() != 1) {
      sized = sized.with("pour.plates", number("trial.plate", BigDecimal.valueOf(plates.count())));
    }
    for (Map.Entry<String, JsonNode> one : CastingFields.plate(plates.plate(), 0).properties()) {
      JsonNode value = one.getValue();
      sized =
          sized.with(
              "pour.plate." + one.getKey(),
              value.isNumber()
                  ? number("trial.plate", value.decimalValue())
                  : text("trial.plate", value.asText()));
    }
    return sized;
  }

  private static ObjectValue weighed(EntryReader in, ObjectValue trial, Clock clock) {
    in.requireWhole("so far.film-only", "so far.weighed");
    Optional<List<Located>> typed =
        in.all(
            "so far.weighed",
            words ->
                words.stream()
                    .map(word -> weighing(word, in.has("so far.film-only"), clock))
                    .toList());
    if (typed.isEmpty()) {
      return trial;
    }
    List<Located> all = new ArrayList<>();
    Located.Member there = trial.members().get("weighings");
    if (there != null) {
      all.addAll(there.value() instanceof ListValue list ? list.entries() : List.of(there.value()));
    }
    all.addAll(typed.get());
    return trial.with("weighings", new ListValue(place("so far.weighed"), all));
  }

  private static Located weighing(String typed, boolean filmOnly, Clock clock) {
    String mass = typed.substring(typed.indexOf('=') + 1);
    ObjectValue entry =
        new ObjectValue(place("so far.weighed"), Map.of(), List.of())
            .with("at", text("so far.weighed", weighedAt(typed, clock)))
            .with(
                "mass_g",
                TypedValue.of(amount(mass, Dimension.MASS), "g", place("so far.weighed")));
    return filmOnly
        ? entry.with("with_plate", new WordValue(place("so far.weighed"), WordValue.Word.FALSE))
        : entry;
  }

  /** Since the pour, or by the clock on the wall, as a file has it. */
  private static String weighedAt(String typed, Clock clock) {
    String time = typed.substring(0, Math.max(0, typed.indexOf('=')));
    if (time.matches(".*(?:\\d:|\\d-\\d|day|now).*")
        && new MomentParser(clock).parse(time) instanceof Moment.ByTheClock at) {
      return at.time().withSecond(0).withNano(0).toString();
    }
    double minutes = WeighedSoFar.parse(typed).timeS() / 60;
    return "+" + BigDecimal.valueOf(minutes).toPlainString() + "min";
  }

  /** The trial in the room that was written, if any was. */
  private static Optional<Trial> placed(
      EntryReader in, Trial trial, boolean isInFile, Path folder, Clock clock) {
    Casting casting = trial.casting();
    if (WrittenPlace.isAnyWritten(in)) {
      Optional<WrittenPlace> place =
          WrittenPlace.read(in, Optional.of(casting.place()), folder, clock);
      if (place.isEmpty()) {
        return Optional.empty();
      }
      casting = casting.with(place.get().place());
      ClosedHeat.of(trial.recipe().glycerol(), casting.place())
          .ifPresent(
              closed ->
                  in.refuse(
                      WrittenPlace.ROOM,
                      "%s given, allowed %s; %s"
                          .formatted(closed, ClosedHeat.allowed(), ClosedHeat.mend())));
    }
    List<NotRecorded> notRecorded =
        trial.notRecorded().stream()
            .filter(gap -> !Unwritten.isWritten(in, gap.field()))
            .map(gap -> isInFile ? gap : Unwritten.asTyped(in, gap))
            .toList();
    return Optional.of(trial.cast(casting, notRecorded));
  }

  static Located number(String key, BigDecimal value) {
    return new NumberValue(place(key), value.toPlainString(), value.doubleValue());
  }

  /** What was measured by volume goes into the field of the volume. */
  private static ObjectValue with(
      ObjectValue trial, String path, String unit, TypedAmount amount, String key) {
    Place place = place(key);
    if (!path.endsWith("mass_g")) {
      return trial.with(path, TypedValue.of(amount, unit, place));
    }
    String volume = path.replace("mass_g", "volume_ml");
    return amount.is(Dimension.VOLUME)
        ? trial.without(path).with(volume, TypedValue.of(amount, "ml", place))
        : trial.without(volume).with(path, TypedValue.of(amount, unit, place));
  }

  /** An amount, which must have a unit of its own. */
  private static TypedAmount amount(String typed, Dimension... dimensions) {
    return TypedAmount.read(
        typed,
        dimensions.length == 1 ? dimensions[0].allowed() : Quantities.MASS_OR_VOLUME,
        List.of(dimensions));
  }

  static Located text(String key, String text) {
    return new TextValue(place(key), text);
  }

  /** A value that was typed stands where a fault of it is named: at its option. */
  private static Place place(String key) {
    return new Place(Field.of(key).name(), 1, 1);
  }
}
