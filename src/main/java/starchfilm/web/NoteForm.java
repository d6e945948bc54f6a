package starchfilm.web;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import starchfilm.casting.trial.ObservedFault;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.MomentParser;
import starchfilm.files.amount.TypedAmount;
import starchfilm.files.notebook.FileWord;
import starchfilm.files.saving.Note;
import starchfilm.files.saving.NoteWords;
import starchfilm.files.saving.NotedLine;
import starchfilm.files.saving.NotedLine.Kind;
import starchfilm.files.saving.PotLine;
import starchfilm.web.http.Fields;
import starchfilm.web.http.HttpError;

/** Reads the small forms that note something about a trial. */
final class NoteForm {
  private static final String NOW = "now";

  private final Fields fields;
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
      case "cooked" -> cooked();
      case "weighed" ->
          named(
              "weight",
              () -> {
                Note.Added weighed =
                    words.weighed(
                        required("mass", "what the scale showed"),
                        at(),
                        plate(),
                        fields.has("alone"));
                return optional("same")
                    .map(same -> weighed.onSamePlate(same.equals("yes")))
                    .orElse(weighed);
              });
      // Whoever types why and presses Enter means it.
      case "off" -> named("off the plate", () -> ended(fields.text("words")));
      case "given-up" ->
          named("given up", () -> ended(required("words", "why, such as the cat, spilt or mould")));
      case "thickness" ->
          named(
              "dry thickness",
              () -> words.thicknesses(required("um", "micrometres"), fields.text("plate")));
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
                  words.line(
                      Kind.FAULT,
                      Map.of(
                          "kind", required("what", "what went wrong"),
                          "where", optional("where").orElse("all"),
                          "at", fields.text("at"),
                          "remark", fields.text("remark"))));
      case "confirmed" -> named("time", () -> words.confirmed(required("at", "its time")));
      case "moved" ->
          named(
              "moved",
              () ->
                  words.line(
                      Kind.MOVE,
                      Map.of("at", at(), "faces", required("faces", "which faces are open"))));
      case "rated" ->
          named("rating", () -> words.put(Map.of("rating", required("rating", "1 to 5"))));
      case "remark" ->
          named("remark", () -> words.one(Kind.REMARK, required("words", "a text of your own")));
      default -> throw HttpError.malformed("This form notes nothing this page knows.");
    };
  }

  /** The line that was looked at; one that changed since is refused where it is taken out. */
  private NotedLine line() {
    return named("line", () -> NotedLine.seen(lines, fields.text("line"), fields.text("was")));
  }

  /** The plate that is meant; the first of a pour needs no number. */
  private String plate() {
    return fields.text("plate").equals("1") ? "" : fields.text("plate");
  }

  /** A plate is done, or all of them where none is named. */
  private Note ended(String why) {
    return words.line(
        Kind.PLATE, Map.of("plate", fields.text("plate"), "off_at", at(), "given_up", why));
  }

  /** Of every line of the pot whose weight is other than in the file. */
  private Note weighedOut() {
    List<Note> notes = new ArrayList<>();
    for (int i = 0; i < pot.size(); i++) {
      PotLine line = pot.get(i);
      optional("pot-" + i)
          .map(typed -> named(line.what(), () -> TypedAmount.number("g", typed)))
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
    Map<String, JsonNode> values = new LinkedHashMap<>();
    String at = optional("at").orElse(NOW);
    values.put("poured_at", named("time of the pour", () -> words.value("poured_at", at)));
    take(values, "pour.poured_g", "mass", "paste on one plate");
    take(values, "pour.plate.tare_g", "tare", "the empty plate");
    return new Note.Put(values);
  }

  private Note cooked() {
    Map<String, JsonNode> values = new LinkedHashMap<>();
    take(values, "cook.minutes", "minutes", "minutes");
    take(values, "cook.top_C", "top", "top temperature");
    take(values, "cook.water_lost_g", "lost", "weight lost");
    return new Note.Put(values);
  }

  private void take(Map<String, JsonNode> values, String path, String field, String name) {
    optional(field)
        .ifPresent(typed -> values.put(path, named(name, () -> words.value(path, typed))));
  }

  private Note pulled() {
    return named(
        "strip",
        () -> {
          String unit = fields.text("load_unit").equals("kg") ? " kg" : " N";
          return words.pulled(
              withUnit(required("load", "the load it broke at"), unit),
              required("width", "the strip's width"),
              fields.text("strip_um"),
              fields.text("stretch"),
              fields.text("plate"));
        });
  }

  private static String withUnit(String typed, String unit) {
    return Character.isLetter(typed.charAt(typed.length() - 1)) ? typed : typed + unit;
  }

  /** When, checked by itself, so that a refusal names the right field. */
  private String at() {
    return named("time", () -> words.when(optional("at").orElse(NOW)));
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
