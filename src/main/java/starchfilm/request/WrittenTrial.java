package starchfilm.request;

import static java.util.Collections.nCopies;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import starchfilm.casting.Casting;
import starchfilm.casting.ClosedHeat;
import starchfilm.casting.Plate;
import starchfilm.casting.trial.NotRecorded;
import starchfilm.casting.trial.Trial;
import starchfilm.files.amount.Dimension;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.Moment;
import starchfilm.files.amount.MomentParser;
import starchfilm.files.amount.TypedAmount;
import starchfilm.files.findings.Fault;
import starchfilm.files.findings.Findings;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.ListValue;
import starchfilm.files.json.Located.NumberValue;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.Located.Place;
import starchfilm.files.json.Located.TextValue;
import starchfilm.files.json.Located.WordValue;
import starchfilm.files.notebook.FieldInput;
import starchfilm.files.notebook.JarLevel;
import starchfilm.files.notebook.TrialField;
import starchfilm.files.notebook.TrialField.ValueKind;
import starchfilm.files.notebook.TrialReader;
import starchfilm.files.notebook.Volumes;
import starchfilm.files.saving.CastingFields;
import starchfilm.numerics.units.Named;

/** Puts what is written of a trial into the fields of its file, and reads what they make then. */
final class WrittenTrial {
  /** Every number of a trial file, by its path. */
  private static final Map<String, TrialField> NUMBERS =
      TrialField.TRIAL.all().stream()
          .filter(field -> !field.unit().isEmpty())
          .collect(Collectors.toMap(TrialField::path, Function.identity()));

  private static final String TIME_AND_MASS = "time=mass, such as 6h=412g or 1d12h=388.5g";

  private final EntryReader in;
  private final Optional<Trial> base;
  private final Path folder;
  private final Clock clock;
  private ObjectValue fields;

  /**
   * A trial that is written.
   *
   * @param start its fields before that
   * @param base the trial that a file says they are, where one does
   * @param folder where a room log lies, and where a trial without a file would stand
   */
  WrittenTrial(EntryReader in, ObjectValue start, Optional<Trial> base, Path folder, Clock clock) {
    this.in = in;
    this.fields = start;
    this.base = base;
    this.folder = folder;
    this.clock = clock;
  }

  /** The trial, and its fields with what was written in them. */
  Optional<TrialQuestion.Base> read() {
    Path beside = base.map(Trial::file).orElse(folder.resolve("as-typed"));
    Optional<JarLevel> jar =
        WrittenJar.read(in, beside.resolveSibling(""), "trial.purity", "trial.salt", "jar.origin");
    jar.ifPresent(this::outOf);
    starches();
    if (base.isEmpty() && !in.has("trial.starch")) {
      // A page has no field of its own for it.
      String name = in.quoted("trial.starch");
      in.refuseAs(
          "trial.starch",
          (name.isEmpty() ? "What you cooked" : name)
              + ": no starch given; write one and its mass, such as 20 g potato");
    }
    JarOrigin.stated(in)
        .ifPresent(from -> put("recipe.glycerol.origin", text("jar.origin", Named.of(from))));
    if (in.has("line.shop")) {
      in.remark(
          "Glycerol \"%s\" is taken as bought with a label; if it has none, write --origin unknown."
              .formatted(in.word("line.shop")));
    }
    amounts();
    WrittenKitchen.plates(in, "trial.plate", base.map(trial -> trial.casting().plate()))
        .ifPresent(this::sized);
    weighed();
    if (in.hasMistakes()) {
      // So that the mistakes of a place are found beside others.
      WrittenPlace.read(in, base.map(trial -> trial.casting().place()), folder, clock);
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
    if (in.has("trial.poured-mass") && in.has("trial.wet")) {
      in.remark(
          "The wet thickness follows from %s; %s is not used."
              .formatted(in.quoted("trial.poured-mass"), in.quoted("trial.wet")));
    }
    if (in.has("trial.poured-mass") && !in.has("line.each")) {
      trial.filter(read -> read.plates() > 1).ifPresent(this::tellEach);
    }
    return trial.flatMap(this::placed).map(placed -> new TrialQuestion.Base(placed, fields));
  }

  private void tellEach(Trial trial) {
    in.remark(
        """
        %s of paste is taken as what lies on each of the %d plates; if it lies on all of them \
        together, divide it by their number.\
        """
            .formatted(in.word("trial.poured-mass"), trial.plates()));
  }

  private void put(String path, Located value) {
    fields = fields.with(path, value);
  }

  /** A kept jar says itself what is in it. */
  private void outOf(JarLevel jar) {
    fields =
        fields.without(
            "recipe.glycerol.purity_pct", "recipe.glycerol.salt_pct", "recipe.glycerol.origin");
    put("recipe.glycerol.jar", text("jar.kept", jar.jar().name()));
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

  private void starches() {
    in.all("trial.starch", this::starches)
        .ifPresent(all -> put("recipe.starch", new ListValue(at("trial.starch"), all)));
  }

  private List<Located> starches(List<String> words) {
    List<Located> starches = new ArrayList<>();
    for (WrittenStarch starch : WrittenStarch.all(words)) {
      if (starch.isFlour()) {
        in.remark(starch.remark());
      }
      Place here = new Place("recipe.starch[" + (starches.size() + 1) + "]", 1, 1);
      starches.add(
          starch.into(
              new ObjectValue(here, Map.of(), List.of()),
              "",
              Quantities::massOrVolume,
              field -> at("trial.starch")));
    }
    return starches;
  }

  /** Every amount that stands in one field of the trial. */
  private void amounts() {
    if (in.has("trial.wet")) {
      fields = fields.without("pour.poured_g", "pour.measured_from");
    }
    if (in.has("trial.rim")) {
      fields = fields.without("pour.plate.rim_mm");
    }
    if (in.has("trial.poured-mass")) {
      fields = fields.without("pour.wet_thickness_mm", "pour.measured_from");
    }
    for (Field field : Field.group("trial")) {
      TrialField number = NUMBERS.get(field.path());
      if (number != null) {
        in.one(field.key(), typed -> with(number, typed, field.key()))
            .ifPresent(changed -> fields = changed);
      }
    }
  }

  /** On the plate that was written; what an empty one weighs, and what is not written, stays. */
  private void sized(List<WrittenPlates> sizes) {
    boolean isSized =
        base.isEmpty() || sizes.size() > 1 || !WrittenPlates.isSizeless(in.word("trial.plate"));
    boolean isMade = base.isEmpty() || sizes.get(0).isMaterialGiven();
    fields =
        fields.without(
            TrialField.TRIAL.field("pour").field("plate").all().stream()
                .map(TrialField::path)
                .filter(path -> !path.endsWith("tare_g"))
                .filter(path -> !path.contains("rim") || (isSized && !in.has("trial.rim")))
                .filter(path -> path.matches(".*(?:material|[.]thickness_mm)") ? isMade : isSized)
                .toArray(String[]::new));
    List<Plate> each =
        sizes.stream().flatMap(size -> nCopies(size.count(), size.plate()).stream()).toList();
    fields =
        new WrittenPlates(
                each.get(0),
                each.size(),
                sizes.get(0).isMaterialGiven(),
                sizes.get(0).isThicknessGiven())
            .into(
                isSized ? fields.without("pour.other_areas_cm2") : fields,
                isSized,
                field -> at("trial.plate"));
    if (sizes.size() > 1) {
      put("pour.other_areas_cm2", CastingFields.otherAreas(each));
    }
  }

  private void weighed() {
    in.requireWhole("so far.film-only", "so far.weighed");
    List<Located> typed = in.each("so far.weighed", this::weighing);
    if (!typed.isEmpty()) {
      List<Located> all = Stream.concat(weighings(), typed.stream()).toList();
      put("weighings", new ListValue(at("so far.weighed"), all));
    }
  }

  private Stream<Located> weighings() {
    return fields.get("weighings").stream().flatMap(noted -> noted.entries().stream());
  }

  private Located weighing(String typed) {
    int equals = typed.indexOf('=');
    if (equals < 0 || equals != typed.lastIndexOf('=')) {
      throw new MistypedException(typed, TIME_AND_MASS, "join time and mass with one =");
    }
    String mass = typed.substring(equals + 1);
    Place here = at("so far.weighed");
    ObjectValue entry =
        new ObjectValue(here, Map.of(), List.of())
            .with("at", new TextValue(here, weighedAt(typed.substring(0, equals).strip(), typed)));
    if (Dimension.MASS.si(mass) <= 0) {
      throw new MistypedException(typed, TIME_AND_MASS, "write what the scale showed, above 0 g");
    }
    entry = entry.with("mass_g", TypedAmount.of(Dimension.MASS, mass).written("g", here));
    return in.has("so far.film-only")
        ? entry.with("with_plate", new WordValue(here, Optional.of(false)))
        : entry;
  }

  /** Since the pour, or by the clock on the wall in the words that a note takes. */
  private String weighedAt(String time, String typed) {
    if (time.matches("-\\s*[0-9].*")) {
      throw new MistypedException(
          typed, TIME_AND_MASS, "a plate cannot be weighed before the pour");
    }
    boolean isNumber = time.matches("[+0-9.,]*(?:e[0-9]+.*)?");
    if (!isNumber
        && !MomentParser.isSpan(time)
        && new MomentParser(clock).parse(time) instanceof Moment.ByTheClock at) {
      return at.time().withSecond(0).withNano(0).toString();
    }
    double seconds = Dimension.TIME.si(time.startsWith("+") ? time.substring(1) : time);
    return "+" + BigDecimal.valueOf(seconds / 60).toPlainString() + "min";
  }

  /** The trial in the room that was written, if any was; what is assumed of it is not noted. */
  private Optional<Trial> placed(Trial trial) {
    Casting casting = trial.casting();
    List<NotRecorded> notRecorded =
        trial.notRecorded().stream()
            .filter(gap -> !Unwritten.isWritten(in, gap.field()))
            .map(gap -> base.isPresent() ? gap : Unwritten.asTyped(in, gap))
            .toList();
    if (in.hasAnyOf("place")) {
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
      Stream<String> open = notRecorded.stream().map(NotRecorded::field);
      fields =
          fields
              .with("room", CastingFields.room(casting.place(), place.get().log()))
              .without(Stream.concat(place.get().assumed().stream(), open).toArray(String[]::new));
    }
    return Optional.of(trial.cast(casting, notRecorded));
  }

  static Located number(String key, BigDecimal value) {
    return new NumberValue(at(key), value);
  }

  /** With an amount that has a unit of its own, a range only where the field takes one. */
  private ObjectValue with(TrialField field, String typed, String key) {
    String path = field.path();
    Place place = at(key);
    if (field.kind() == ValueKind.AMOUNT && FieldInput.isUnknown(typed)) {
      return fields.without(Volumes.field(path)).with(path, FieldInput.of(field, typed, place));
    }
    if (path.endsWith("mass_g")) {
      TypedAmount amount =
          Quantities.massOrVolume(
              in, typed, key.equals("trial.vinegar") ? "trial.acidity" : "trial.purity");
      return Quantities.into(fields, path, amount, place);
    }
    TypedAmount amount = TypedAmount.of(Dimension.ofUnit(field.unit()), typed);
    return fields.with(
        path,
        field.kind() == ValueKind.NUMBER
            ? new NumberValue(place, amount.in(field.unit()))
            : amount.written(field.unit(), place));
  }

  static Located text(String key, String text) {
    return new TextValue(at(key), text);
  }

  /** A value that was typed stands where a fault of it is named: at its option. */
  private static Place at(String key) {
    return new Place(Field.of(key).name(), 1, 1);
  }
}
