package starchfilm.request;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.MomentParser;
import starchfilm.files.amount.TypedAmount;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.Note;
import starchfilm.files.saving.NoteWords;
import starchfilm.files.saving.NotedLine;
import starchfilm.files.saving.NotedLine.NoteKind;
import starchfilm.files.saving.PotEntry;
import starchfilm.files.saving.TrialFileText;

/** Reads the notes of one trial, kind by kind. */
final class NoteReader {
  private static final String NOW = "now";

  private final EntryReader in;
  private final NoteRequest.Subject subject;
  private final Optional<LocalDateTime> pouredAt;
  private final NoteWords words;
  private final Optional<LocalDateTime> pouring;
  private final Optional<Located> at;
  private final Optional<Located> plate;
  private final List<Note> notes = new ArrayList<>();

  NoteReader(EntryReader in, NoteRequest.Subject subject) {
    this.in = in;
    this.subject = subject;
    MomentParser moments = new MomentParser(subject.clock());
    pouring =
        in.one("pot.poured", typed -> NoteWords.pour(moments, typed))
            .or(
                () ->
                    in.has("pot.pouring") && subject.pouredAt().isEmpty()
                        ? Optional.of(NoteWords.pour(moments, NOW))
                        : Optional.empty());
    pouredAt = pouring.or(subject::pouredAt);
    words = new NoteWords(moments, pouredAt);
    at = in.one("note.at", words::when).map(Located::text);
    plate = value(in, "note.of");
  }

  NoteRequest read() throws NotWrittenException {
    weighedOut();
    pour();
    put(Map.of(), "pot.cook-time", "pot.cook-top", "pot.cook-lost");
    weighings();
    if (in.has("note.off") || in.has("note.given-up")) {
      ended(onPlate().with("off_at", time()).with("given_up", value(in, "note.given-up")));
    }
    notes.addAll(in.each("note.confirm", typed -> words.confirmed(typed, plate)));
    in.each("note.thickness", typed -> words.thicknesses(typed, plate))
        .forEach(several -> notes.addAll(several.notes()));
    lines();
    if (in.has("note.put-away") || in.has("note.fetch-back")) {
      notes.add(NoteWords.putAway(in.has("note.put-away")));
    }
    in.times("strip").forEach(this::strip);
    in.times("went wrong").forEach(this::fault);
    if (in.has("note.moved")) {
      add(
          NoteKind.MOVE,
          Located.object().with("at", time()).with("faces", value(in, "note.moved")));
    }
    put(Map.of(), "note.rating");
    notes.addAll(in.each("note.remark", typed -> words.one(NoteKind.REMARK, typed)));
    notes.addAll(in.each("note.photo", this::photo));
    return in.finished(() -> new NoteRequest(notes, pouredAt, in.has("note.keep-place")));
  }

  private Located time() {
    return at.orElseGet(() -> Located.text(words.when(NOW)));
  }

  private ObjectValue onPlate() {
    return Located.object().with("plate", plate);
  }

  /** What was typed, as the file keeps it; nothing where nothing was, or it cannot be read. */
  private Optional<Located> value(EntryReader from, String key) {
    return from.one(key, typed -> words.value(Field.of(key).path(), typed));
  }

  private void add(NoteKind kind, ObjectValue line) {
    if (!in.hasMistakes()) {
      notes.add(new Note.Added(kind, line));
    }
  }

  /** The end of a plate; where several were poured and none is named, of all of them. */
  private void ended(ObjectValue line) {
    Note.Added end = new Note.Added(NoteKind.PLATE, line);
    if (!in.hasMistakes()) {
      notes.add(
          plate.isEmpty() && subject.hasSeveralPlates()
              ? new Note.Edit("all plates of the pour: " + end.words(), end::in)
              : end);
    }
  }

  /** Whichever of these fields are written, in one note with what is known already. */
  private void put(Map<String, Located> known, String... keys) {
    Map<String, Located> values = new LinkedHashMap<>(known);
    for (String key : keys) {
      value(in, key).ifPresent(value -> values.put(Field.of(key).path(), value));
    }
    if (!values.isEmpty() && !in.hasMistakes()) {
      notes.add(NoteWords.put(values));
    }
  }

  /** The pour; of a plate that is named, its tare apart from the others'. */
  private void pour() {
    if (plate.isPresent() && in.has("pot.tare")) {
      add(NoteKind.PLATE, onPlate().with("tare_g", value(in, "pot.tare")));
    }
    if (plate.filter(named -> !named.quoted().equals("1")).isPresent()) {
      in.refuseBeside(
          "pot.poured-mass",
          "note.of",
          "; it is the paste on the first plate, and the others are poured as thick; leave one"
              + " out");
    }
    put(
        pouring
            .map(time -> Map.<String, Located>of("poured_at", Located.text(time.toString())))
            .orElse(Map.of()),
        plate.isEmpty()
            ? new String[] {"pot.poured-mass", "pot.tare"}
            : new String[] {"pot.poured-mass"});
  }

  private void weighings() {
    // The only plate of a pour needs no number; the first of several keeps the one it has.
    Optional<Located> number =
        subject.hasSeveralPlates()
            ? plate.or(() -> Optional.of(words.value(Field.of("note.of").path(), "1")))
            : plate.filter(named -> !named.quoted().equals("1"));
    Optional<Boolean> same = in.one("note.same-plate", NoteReader::isYes);
    boolean alone = in.has("note.without-plate");
    in.each("note.weighed", typed -> words.weighed(typed, time(), number, alone))
        .forEach(one -> notes.add(same.map(one::onSamePlate).orElse(one)));
  }

  private static boolean isYes(String typed) {
    if (!typed.matches("yes|no|true|false")) {
      throw new MistypedException(typed, "yes or no", "write one of these");
    }
    return typed.matches("yes|true");
  }

  /** Lines that were noted before: of a form as they were seen, of a command by their names. */
  private void lines() throws NotWrittenException {
    if (!in.hasAny("note.drop", "note.replace", "note.gone", "note.line")) {
      return;
    }
    List<NotedLine> lines = NotedLine.of(TrialFileText.of(subject.file()).text());
    notes.addAll(in.each("note.replace", typed -> words.corrected(lines, typed)));
    // From the last line on, so that those before keep their places.
    in.each("note.drop", name -> NotedLine.named(lines, name)).stream()
        .sorted(Comparator.comparingInt(NotedLine::number).reversed())
        .forEach(line -> notes.add(line.dropped()));
    String was = in.word("note.was");
    in.one("note.gone", name -> NotedLine.seen(lines, name, was))
        .ifPresent(line -> notes.add(line.dropped()));
    if (in.has("note.line")) {
      in.require("note.value", "what stands in its place");
      in.one("note.line", name -> NotedLine.seen(lines, name, was))
          .flatMap(line -> in.one("note.value", typed -> words.corrected(line, typed)))
          .ifPresent(notes::add);
    }
  }

  private void strip(EntryReader strip) {
    if (!strip.hasAnyOf("strip")) {
      return;
    }
    strip.require("strip.pull", "the load the strip broke at, such as 9.4N");
    strip.require("strip.width", "the strip's width, such as 10mm");
    String unit = strip.one("strip.load-unit", String::strip, "N");
    add(
        NoteKind.PULL,
        strip
            .one("strip.pull", typed -> load(typed, unit), Located.object())
            .with("width_mm", value(strip, "strip.width"))
            .with("thickness_um", value(strip, "strip.strip-thickness"))
            .with("plate", plate)
            .with("stretch_pct", value(strip, "strip.stretch")));
  }

  private ObjectValue load(String typed, String unit) {
    boolean hasUnit = Character.isLetter(typed.charAt(typed.length() - 1));
    String whole = hasUnit ? typed : typed + " " + unit;
    String field = NoteWords.loadField(whole);
    return Located.object().with(field, words.value("pulls." + field, whole));
  }

  private void fault(EntryReader fault) {
    if (!fault.hasAnyOf("went wrong")) {
      return;
    }
    fault.require("went wrong.fault", "what went wrong, such as cracked");
    add(
        NoteKind.FAULT,
        Located.object()
            .with("kind", value(fault, "went wrong.fault"))
            .with("where", value(fault, "went wrong.where").orElseGet(() -> Located.text("all")))
            .with("at", at)
            .with("remark", value(fault, "went wrong.fault-remark")));
  }

  private Note photo(String typed) {
    Path picture;
    try {
      picture = subject.folder().resolve(typed);
    } catch (InvalidPathException impossible) {
      throw new MistypedException(typed, "the name of a file", "check its spelling");
    }
    return new Note.Added(
        NoteKind.PHOTO,
        Located.object()
            .with("file", NoteWords.photo(subject.file(), picture))
            .with("at", at)
            .with("caption", in.one("note.caption", Located::text))
            .with("plate", plate));
  }

  /** What was really weighed out, of the lines of the file; a line that is not there is refused. */
  private void weighedOut() throws NotWrittenException {
    String[] ingredients = {"pot.starch", "pot.glycerol", "pot.vinegar", "pot.water"};
    if (!in.hasAny(ingredients)) {
      return;
    }
    List<PotEntry> lines = PotEntry.of(TrialFileText.of(subject.file()).text());
    for (String key : ingredients) {
      String what = key.replace("pot.", "");
      notes.addAll(in.each(key, typed -> weighedOut(typed, what, lines)));
    }
  }

  private static Note weighedOut(String typed, String what, List<PotEntry> lines) {
    String[] apart = typed.strip().split("\\s+", 2);
    boolean named = apart.length == 2 && apart[0].matches("\\p{L}+");
    return potLine(named ? apart[0] + " " + what : what, lines)
        .weighedOut(TypedAmount.number("g", named ? apart[1] : typed));
  }

  private static PotEntry potLine(String what, List<PotEntry> lines) {
    List<PotEntry> fitting =
        lines.stream()
            .filter(line -> line.what().equals(what) || line.what().endsWith(" " + what))
            .toList();
    if (fitting.size() == 1) {
      return fitting.get(0);
    }
    throw new MistypedException(
        what,
        String.join(", ", lines.stream().map(PotEntry::what).toList()),
        fitting.isEmpty()
            ? "the recipe has no such thing; add it in the file"
            : "say which, such as \"" + fitting.get(0).what().replace(" starch", "") + " 6.2g\"");
  }
}
