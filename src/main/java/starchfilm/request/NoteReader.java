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
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.MomentParser;
import starchfilm.files.amount.TypedAmount;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.Note;
import starchfilm.files.saving.NoteWords;
import starchfilm.files.saving.NotedLine;
import starchfilm.files.saving.NotedLine.Kind;
import starchfilm.files.saving.PotLine;
import starchfilm.files.saving.TrialFileText;

/** Reads the notes of one trial, kind by kind. */
final class NoteReader {
  /** That a pour is noted, now unless its time is written. */
  static final Field POURING = Field.of("pot.pouring");

  private static final Field AT = Field.of("note.at");
  private static final Field OF = Field.of("note.of");
  private static final Field WEIGHED = Field.of("note.weighed");
  private static final Field OFF = Field.of("note.off");
  private static final Field GIVEN_UP = Field.of("note.given-up");
  private static final Field SAME_PLATE = Field.of("note.same-plate");
  private static final Field DROP = Field.of("note.drop");
  private static final Field REPLACE = Field.of("note.replace");
  private static final Field GONE = Field.of("note.gone");
  private static final Field LINE = Field.of("note.line");
  private static final Field WAS = Field.of("note.was");
  private static final Field VALUE = Field.of("note.value");
  private static final Field PUT_AWAY = Field.of("note.put-away");
  private static final Field FETCH_BACK = Field.of("note.fetch-back");
  private static final Field MOVED = Field.of("note.moved");
  private static final Field RATING = Field.of("note.rating");
  private static final Field PULL = Field.of("strip.pull");
  private static final Field WIDTH = Field.of("strip.width");
  private static final Field FAULT = Field.of("went wrong.fault");
  private static final Field POURED = Field.of("pot.poured");
  private static final Field POURED_MASS = Field.of("pot.poured-mass");
  private static final Field TARE = Field.of("pot.tare");
  private static final List<Field> COOK =
      List.of(Field.of("pot.cook-time"), Field.of("pot.cook-top"), Field.of("pot.cook-lost"));
  private static final String NOW = "now";

  private final EntryReader in;
  private final NoteRequest.Subject subject;
  private final Optional<LocalDateTime> pouredAt;
  private final NoteWords words;
  private final String at;
  private final String plate;
  private final List<Note> notes = new ArrayList<>();

  NoteReader(EntryReader in, NoteRequest.Subject subject) {
    this.in = in;
    this.subject = subject;
    MomentParser moments = new MomentParser(subject.clock());
    pouredAt =
        in.one(POURED, typed -> NoteWords.pour(moments, typed))
            .or(
                () ->
                    in.has(POURING) ? Optional.of(NoteWords.pour(moments, NOW)) : Optional.empty())
            .or(subject::pouredAt);
    words = new NoteWords(moments, pouredAt);
    at = in.one(AT, words::when, "");
    plate = checked(in, OF, words::plate);
  }

  NoteRequest read() throws NotWrittenException {
    weighedOut();
    pour();
    put(Map.of(), COOK);
    weighings();
    if (in.has(OFF) || in.has(GIVEN_UP)) {
      add(Kind.PLATE, Map.of("plate", plate, "off_at", time(), "given_up", value(in, GIVEN_UP)));
    }
    each("note.confirm", typed -> notes.add(words.confirmed(typed)));
    each("note.thickness", typed -> notes.addAll(words.thicknesses(typed, plate).notes()));
    lines();
    if (in.has(PUT_AWAY) || in.has(FETCH_BACK)) {
      notes.add(new Note.PutAway(in.has(PUT_AWAY)));
    }
    in.times("strip").forEach(this::strip);
    in.times("went wrong").forEach(this::fault);
    if (in.has(MOVED)) {
      add(Kind.MOVE, Map.of("at", time(), "faces", value(in, MOVED)));
    }
    put(Map.of(), List.of(RATING));
    each("note.remark", typed -> notes.add(words.one(Kind.REMARK, typed)));
    each("note.photo", typed -> notes.add(photo(typed)));
    return in.finished(() -> new NoteRequest(notes, pouredAt, in.has(Field.of("note.keep-place"))));
  }

  private String time() {
    return at.isEmpty() ? NOW : at;
  }

  private void each(String field, Consumer<String> note) {
    in.all(
        Field.of(field),
        typed -> {
          typed.forEach(note);
          return true;
        });
  }

  /** What was typed where it can be read; empty where nothing was, or it cannot. */
  private static String checked(EntryReader in, Field field, Consumer<String> meaning) {
    return in.one(
        field,
        typed -> {
          meaning.accept(typed);
          return typed.strip();
        },
        "");
  }

  private String value(EntryReader from, Field field) {
    return checked(from, field, typed -> words.value(field.path(), typed));
  }

  private void add(Supplier<Note> note) {
    if (!in.hasMistakes()) {
      notes.add(note.get());
    }
  }

  private void add(Kind kind, Map<String, String> typed) {
    add(() -> words.line(kind, typed));
  }

  /** Whichever of these fields are written, in one note with what is known already. */
  private void put(Map<String, String> known, List<Field> fields) {
    Map<String, String> typed = new LinkedHashMap<>(known);
    fields.stream().filter(in::has).forEach(field -> typed.put(field.path(), value(in, field)));
    if (!typed.isEmpty()) {
      add(() -> words.put(typed));
    }
  }

  /** The pour; of a plate that is named, its tare apart from the others'. */
  private void pour() {
    if (!plate.isEmpty() && in.has(TARE)) {
      add(Kind.PLATE, Map.of("plate", plate, "tare_g", value(in, TARE)));
    }
    boolean poured = in.has(POURED) || in.has(POURING);
    put(
        poured ? Map.of(POURED.path(), in.one(POURED, String::strip, NOW)) : Map.of(),
        plate.isEmpty() ? List.of(POURED_MASS, TARE) : List.of(POURED_MASS));
  }

  private void weighings() {
    // The first plate of a pour needs no number.
    String number = plate.equals("1") ? "" : plate;
    Optional<Boolean> same = in.one(SAME_PLATE, NoteReader::isYes);
    boolean alone = in.has(Field.of("note.without-plate"));
    in.all(
            WEIGHED,
            typed -> typed.stream().map(one -> words.weighed(one, time(), number, alone)).toList())
        .orElse(List.of())
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
    if (!in.hasAny(List.of(DROP, REPLACE, GONE, LINE))) {
      return;
    }
    List<NotedLine> lines = NotedLine.of(TrialFileText.of(subject.file()).text());
    each(REPLACE.key(), typed -> notes.add(NoteWords.corrected(lines, typed)));
    // From the last line on, so that those before keep their places.
    in
        .all(DROP, typed -> typed.stream().map(name -> NotedLine.named(lines, name)).toList())
        .orElse(List.of())
        .stream()
        .sorted(Comparator.comparingInt(NotedLine::number).reversed())
        .forEach(line -> notes.add(new Note.Dropped(line)));
    String was = in.one(WAS, String::strip, "");
    in.one(GONE, name -> NotedLine.seen(lines, name, was))
        .ifPresent(line -> notes.add(new Note.Dropped(line)));
    if (in.has(LINE)) {
      in.require(VALUE, "what stands in its place");
      in.one(LINE, name -> NotedLine.seen(lines, name, was))
          .flatMap(line -> in.one(VALUE, line::with))
          .ifPresent(notes::add);
    }
  }

  private void strip(EntryReader strip) {
    if (!strip.hasAny(Field.group("strip"))) {
      return;
    }
    strip.require(PULL, "the load the strip broke at, such as 9.4N");
    strip.require(WIDTH, "the strip's width, such as 10mm");
    String unit = strip.one(Field.of("strip.load-unit"), String::strip, "N");
    String load =
        strip.one(
            PULL,
            typed -> {
              boolean hasUnit = Character.isLetter(typed.charAt(typed.length() - 1));
              String whole = hasUnit ? typed : typed + " " + unit;
              words.value("pulls." + NoteWords.loadField(whole), whole);
              return whole;
            },
            "");
    String width = value(strip, WIDTH);
    String thickness = value(strip, Field.of("strip.strip-thickness"));
    String stretch = value(strip, Field.of("strip.stretch"));
    add(() -> words.pulled(load, width, thickness, stretch, plate));
  }

  private void fault(EntryReader fault) {
    if (!fault.hasAny(Field.group("went wrong"))) {
      return;
    }
    fault.require(FAULT, "what went wrong, such as cracked");
    String where = value(fault, Field.of("went wrong.where"));
    add(
        Kind.FAULT,
        Map.of(
            "kind",
            value(fault, FAULT),
            "where",
            where.isEmpty() ? "all" : where,
            "at",
            at,
            "remark",
            value(fault, Field.of("went wrong.fault-remark"))));
  }

  private Note photo(String typed) {
    Path picture;
    try {
      picture = subject.folder().resolve(typed);
    } catch (InvalidPathException impossible) {
      throw new MistypedException(typed, "the name of a file", "check its spelling");
    }
    return new Note.Photographed(
        NoteWords.photo(subject.file(), picture).name(),
        Optional.of(at).filter(time -> !time.isEmpty()),
        in.one(Field.of("note.caption"), Function.identity()),
        words.plate(plate));
  }

  /** What was really weighed out, of the lines of the file; a line that is not there is refused. */
  private void weighedOut() throws NotWrittenException {
    List<Field> ingredients =
        List.of(
            Field.of("pot.starch"),
            Field.of("pot.glycerol"),
            Field.of("pot.vinegar"),
            Field.of("pot.water"));
    if (!in.hasAny(ingredients)) {
      return;
    }
    List<PotLine> lines = PotLine.of(TrialFileText.of(subject.file()).text());
    for (Field field : ingredients) {
      String what = field.name().replace("--", "");
      each(
          field.key(),
          typed -> {
            String[] apart = typed.strip().split("\\s+", 2);
            boolean named = apart.length == 2 && apart[0].matches("\\p{L}+");
            String grams = named ? apart[1] : typed;
            notes.add(
                line(named ? apart[0] + " " + what : what, lines)
                    .weighedOut(TypedAmount.number("g", grams)));
          });
    }
  }

  private static PotLine line(String what, List<PotLine> lines) {
    List<PotLine> fitting =
        lines.stream()
            .filter(line -> line.what().equals(what) || line.what().endsWith(" " + what))
            .toList();
    if (fitting.size() == 1) {
      return fitting.get(0);
    }
    throw new MistypedException(
        what,
        String.join(", ", lines.stream().map(PotLine::what).toList()),
        fitting.isEmpty()
            ? "the recipe has no such thing; add it in the file"
            : "say which, such as \"" + fitting.get(0).what().replace(" starch", "") + " 6.2g\"");
  }
}
