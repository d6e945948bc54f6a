package starchfilm.web;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.Supplier;
import starchfilm.casting.trial.ObservedFault;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.MomentParser;
import starchfilm.files.amount.TypedAmount;
import starchfilm.files.notebook.FileWord;
import starchfilm.files.saving.Note;
import starchfilm.files.saving.NoteWords;
import starchfilm.files.saving.NotedLine;
import starchfilm.files.saving.PotLine;
import starchfilm.web.http.Fields;
import starchfilm.web.http.HttpError;

/** Reads the small forms that note something about a trial. */
final class NoteForm {
  private static final String NOW = "now";

  private final Fields fields;
  private final MomentParser moments;
  private final NoteWords words;
  private final List<NotedLine> lines;
  private final List<PotLine> pot;

  /**
   * A form.
   *
   * @param lines what the trial holds already
   * @param pot what goes into its pot
   */
  NoteForm(
      Fields fields,
      MomentParser moments,
      Optional<LocalDateTime> pouredAt,
      List<NotedLine> lines,
      List<PotLine> pot) {
    this.fields = fields;
    this.pot = pot;
    this.lines = lines;
    this.moments = moments;
    this.words = new NoteWords(moments, pouredAt);
  }

  /** What can go wrong, for a choice. */
  static List<String> faultKinds() {
    return FileWord.all(ObservedFault.Kind.values());
  }

  /**
   * The note a form holds.
   *
   * @return the note
   * @throws MistypedException where a field cannot be read; its sentence names the field
   */
  Note note() {
    return switch (fields.text("kind")) {
      case "poured" -> poured();
      case "cooked" ->
          named(
              "minutes, top temperature, weight lost",
              () -> NoteWords.cooked(optional("minutes"), optional("top"), optional("lost")));
      case "weighed" ->
          named(
              "weight",
              () -> {
                Note.Weighed weighed =
                    words.weighed(
                        required("mass", "what the scale showed"), at(), isTicked("alone"));
                Note.Weighed ofPlate = weighed.ofPlate(plate());
                return optional("same")
                    .map(same -> ofPlate.onSamePlate(same.equals("yes")))
                    .orElse(ofPlate);
              });
      // Whoever types why and presses Enter means it.
      case "off" -> named("off the plate", () -> words.ended(allOr(), at(), optional("words")));
      case "given-up" ->
          named(
              "given up",
              () ->
                  words.ended(
                      allOr(),
                      at(),
                      Optional.of(required("words", "why, such as the cat, spilt or mould"))));
      case "thickness" ->
          named(
              "dry thickness",
              () -> new Note.Several(NoteWords.thicknesses(required("um", "micrometres"))));
      case "weighed-out" -> weighedOut();
      case "put-away" -> new Note.PutAway(true);
      case "fetch-back" -> new Note.PutAway(false);
      case "drop" -> new Note.Dropped(line());
      case "correct" ->
          named(fields.text("line"), () -> line().with(required("value", "its new value")));
      case "pulled" -> pulled();
      case "fault" ->
          named(
              "fault",
              () ->
                  words.wentWrong(
                      fields.text("what"), optional("where"), optional("at"), optional("remark")));
      case "confirmed" -> named("time", () -> words.confirmed(required("at", "its time")));
      case "moved" -> named("moved", () -> words.moved(fields.text("faces"), at()));
      case "rated" -> named("rating", () -> NoteWords.rated(fields.text("rating")));
      case "remark" ->
          named("remark", () -> new Note.Remarked(required("words", "a text of your own")));
      default -> throw HttpError.malformed("This form notes nothing this page knows.");
    };
  }

  /** The line that was looked at; one that changed since is refused where it is taken out. */
  private NotedLine line() {
    return named("line", () -> NotedLine.seen(lines, fields.text("line"), fields.text("was")));
  }

  /** The plate that is meant; the first of a pour needs no number. */
  private OptionalInt plate() {
    int number = optional("plate").map(NoteWords::plate).orElse(1);
    return number == 1 ? OptionalInt.empty() : OptionalInt.of(number);
  }

  /** The plate that is named; all of them where none is. */
  private OptionalInt allOr() {
    return optional("plate")
        .map(typed -> OptionalInt.of(NoteWords.plate(typed)))
        .orElseGet(OptionalInt::empty);
  }

  /** Of every line of the pot whose weight is other than in the file. */
  private Note weighedOut() {
    List<Note> notes = new ArrayList<>();
    for (int i = 0; i < pot.size(); i++) {
      PotLine line = pot.get(i);
      grams("pot-" + i, line.what())
          .filter(grams -> !grams.toPlainString().equals(line.massG()))
          .ifPresent(grams -> notes.add(line.weighedOut(grams)));
    }
    if (notes.isEmpty()) {
      throw new NamedMistake(
          "weighed out",
          new MistypedException("", "another weight than the recipe's", "write what was weighed"));
    }
    return new Note.Several(notes);
  }

  private Note poured() {
    return new Note.Poured(
        Optional.of(
            named(
                "time of the pour",
                () -> NoteWords.pour(moments, optional("at").orElse(NOW)).toString())),
        grams("mass", "paste on one plate"),
        grams("tare", "the empty plate"));
  }

  private Note pulled() {
    return named(
        "strip",
        () -> {
          String unit = fields.text("load_unit").equals("kg") ? " kg" : " N";
          return NoteWords.pulled(
              withUnit(required("load", "the load it broke at"), unit),
              required("width", "the strip's width"),
              optional("strip_um"),
              optional("stretch"));
        });
  }

  private static String withUnit(String typed, String unit) {
    return Character.isLetter(typed.charAt(typed.length() - 1)) ? typed : typed + unit;
  }

  private Optional<java.math.BigDecimal> grams(String field, String name) {
    Function<String, java.math.BigDecimal> read = typed -> TypedAmount.number("g", typed);
    return optional(field).map(typed -> named(name, () -> read.apply(typed)));
  }

  /** When, checked by itself, so that a refusal names the right field. */
  private String at() {
    return named("time", () -> words.when(optional("at").orElse(NOW)));
  }

  private boolean isTicked(String field) {
    return fields.has(field);
  }

  private Optional<String> optional(String field) {
    return Optional.of(fields.text(field)).filter(text -> !text.isEmpty());
  }

  private String required(String field, String what) {
    return optional(field).orElseThrow(() -> new MistypedException("", what, "fill in this field"));
  }

  private static <T> T named(String what, Supplier<T> read) {
    try {
      return read.get();
    } catch (MistypedException e) {
      throw new NamedMistake(what, e);
    }
  }

  /** A field that cannot be read, with its name. */
  static final class NamedMistake extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    NamedMistake(String field, MistypedException e) {
      super(field + ": " + e.getMessage() + ".", e);
    }
  }
}
