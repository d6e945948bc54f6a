package starchfilm.files.saving;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import starchfilm.files.amount.Dimension;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.Moment;
import starchfilm.files.amount.MomentParser;
import starchfilm.files.amount.TypedAmount;
import starchfilm.files.findings.PlainLine;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.TextEdit;
import starchfilm.files.json.UnreadableFileException;
import starchfilm.files.notebook.FieldInput;
import starchfilm.files.notebook.TrialField;
import starchfilm.files.saving.NotedLine.NoteKind;

/**
 * Makes notes out of typed words, each read as its field is declared; whatever cannot be read is a
 * {@link MistypedException}, whose message is one sentence for the person who typed it.
 *
 * @param moments reads times against the clock
 * @param pouredAt when the trial was poured, if known
 */
public record NoteWords(MomentParser moments, Optional<LocalDateTime> pouredAt) {
  /** Between several thicknesses; no number that is grouped by blanks is as thin as a film. */
  private static final Pattern SEVERAL =
      Pattern.compile(";|,\\s+|(?<=\\d\\d|[mM])\\s+(?=\\d\\d|0[.,])");

  /** How the fields of a pour and of a cook are said back, see {@link LineWords}. */
  private static final String POUR =
      "pour: [{poured_at}, ][{pour.poured_g} g on one plate, ][plate {pour.plate.tare_g} g, ]";

  private static final String COOK =
      "cook: [{cook.minutes} min, ][up to {cook.top_C} \u00B0C, ][lost {cook.water_lost_g} g, ]";

  /**
   * A moment as the file keeps it.
   *
   * @param typed such as {@code yesterday 18:30}
   * @return text for a file
   * @throws MistypedException where it lies in the future
   */
  public String when(String typed) {
    Moment moment = moments.parse(typed);
    moments.refuseFuture(moment, pouredAt, typed);
    return moments.lastingText(moment, pouredAt);
  }

  /**
   * The moment of the pour: by the clock, since nothing can be counted from it yet.
   *
   * @param moments reads times against the clock
   * @param typed such as {@code today 10:30}
   * @return date and time
   */
  public static LocalDateTime pour(MomentParser moments, String typed) {
    if (moments.parse(typed) instanceof Moment.ByTheClock clock) {
      moments.refuseFuture(clock, Optional.empty(), typed);
      return clock.time().withNano(0);
    }
    throw new MistypedException(
        typed, "date and time of the pour", "write it like 2026-04-02 10:30 or today 10:30");
  }

  /**
   * The value typed for a field, as the file keeps it.
   *
   * @param path the field, such as {@code cook.minutes}
   * @param typed what was typed
   * @return its value
   */
  public Located value(String path, String typed) {
    TrialField field = TrialField.TRIAL;
    for (String name : path.split("\\.", -1)) {
      field = field.field(name);
    }
    return value(field, typed.strip());
  }

  /** The same of a field at hand; a day without an hour stays one. */
  Located value(TrialField field, String typed) {
    boolean isHour = !typed.isEmpty() && !MomentParser.isDateAlone(typed);
    return switch (field.kind()) {
      case CLOCK -> isHour ? Located.text(pour(moments, typed).toString()) : Located.text(typed);
      case MOMENT -> Located.text(when(typed));
      default -> FieldInput.of(field, typed);
    };
  }

  /**
   * Fields of the pour or the cook, or the rating.
   *
   * @param values what they hold, by their paths
   * @return the note
   */
  public static Note put(Map<String, Located> values) {
    ObjectValue fields = Located.object();
    for (Map.Entry<String, Located> one : values.entrySet()) {
      fields = fields.with(one.getKey(), one.getValue());
    }
    String wording = fields.get("cook").isPresent() ? COOK : POUR;
    String words = LineWords.of(fields, "rating {rating}", wording).replaceFirst(", $", "");
    return new Note.Edit(words, text -> with(text, values));
  }

  private static String with(String text, Map<String, Located> values)
      throws UnreadableFileException {
    // A recipe that somebody pours is not invented any more.
    boolean isFirstPour =
        values.containsKey("poured_at") && TextEdit.remove(text, "poured_at").equals(text);
    String changed = isFirstPour ? TextEdit.remove(text, "invented") : text;
    for (Map.Entry<String, Located> one : values.entrySet()) {
      changed = TextEdit.set(changed, one.getKey(), one.getValue());
    }
    return changed;
  }

  /**
   * A weighing.
   *
   * @param typed a mass, or time=mass
   * @param at when, where the mass has no time of its own
   * @param plate which plate of the pour; empty for the first
   * @param withoutPlate true where the film was weighed alone
   * @return the note
   */
  public Note.Added weighed(
      String typed, Located at, Optional<Located> plate, boolean withoutPlate) {
    int equals = typed.lastIndexOf('=');
    Optional<String> mass =
        Optional.of(typed.substring(equals + 1)).filter(words -> !words.isEmpty());
    ObjectValue weighed =
        Located.object()
            .with("at", equals < 0 ? at : Located.text(when(counted(typed.substring(0, equals)))))
            .with("mass_g", mass.map(words -> value("weighings.mass_g", words)))
            .with("plate", plate);
    return new Note.Added(
        NoteKind.WEIGHING,
        withoutPlate ? weighed.with("with_plate", Located.flag(false)) : weighed);
  }

  /**
   * A weighing that is right as noted.
   *
   * @param typed its time
   * @param plate which plate of the pour; empty where none is named
   * @return the note
   */
  public Note confirmed(String typed, Optional<Located> plate) {
    String at = when(counted(typed));
    String of = plate.map(number -> "plate " + number.shown() + ", ").orElse("");
    return new Note.Edit(
        of + "weighing of " + at + " confirmed",
        text -> ConfirmedWeighing.in(text, at, plate.map(Located::shown)));
  }

  /**
   * The trial is put away, so that no list, comparison or lesson has it, or fetched back.
   *
   * @param away true to put it away
   * @return the note
   */
  public static Note putAway(boolean away) {
    return away
        ? new Note.Edit("put away", text -> TextEdit.set(text, "put_away", Located.flag(true)))
        : new Note.Edit("fetched back", text -> TextEdit.remove(text, "put_away"));
  }

  /** In front of =, a bare span such as 6h is counted from the pour, with or without its plus. */
  private static String counted(String typed) {
    String time = typed.strip();
    return time.matches("[0-9][0-9.,]*\\s*(min|h|d).*") && !time.endsWith("ago")
        ? "+" + time
        : time;
  }

  /**
   * Thicknesses of the dry film, measured in several places.
   *
   * @param typed such as {@code 112; 118; 131} or {@code 112 118 131}, {@code 0.12 mm} or {@code
   *     112um}; a bare number is micrometres, and one below 1, which no film is, millimetres
   * @param plate which plate of the pour; empty where none is named
   * @return the notes
   */
  public Note.Several thicknesses(String typed, Optional<Located> plate) {
    return new Note.Several(
        SEVERAL
            .splitAsStream(typed)
            .map(String::strip)
            .filter(one -> !one.isEmpty())
            .map(one -> one.matches("0[.,][0-9]+") ? one + " mm" : one)
            .map(
                one ->
                    plate.isEmpty()
                        ? one(NoteKind.THICKNESS, one)
                        : new Note.Added(
                            NoteKind.PLATE,
                            Located.object()
                                .with("plate", plate)
                                .with("dry_thickness_um", value("plates.dry_thickness_um", one))))
            .toList());
  }

  /**
   * The field a load belongs to.
   *
   * @param load as typed
   * @return that of a force, or of a mass that hung on the strip
   */
  public static String loadField(String load) {
    return TypedAmount.inUnit("N", load, Dimension.MASS).unit().dimension() == Dimension.MASS
        ? "load_kg"
        : "load_N";
  }

  /**
   * A remark, or another line of one value.
   *
   * @param kind which list
   * @param typed its value
   * @return the note
   */
  public Note one(NoteKind kind, String typed) {
    return new Note.Added(kind, value(kind.list(), typed));
  }

  /**
   * A line that was noted before, with another value or at another time.
   *
   * @param lines what was noted
   * @param typed such as {@code weighing 2=690g} or {@code weighing 2=yesterday 18:30}
   * @return the note
   */
  public Note corrected(List<NotedLine> lines, String typed) {
    int equals = typed.indexOf('=');
    if (equals < 0) {
      throw new MistypedException(
          typed, "a line and its new value, such as weighing 2=690g", "write it so");
    }
    return corrected(
        NotedLine.named(lines, typed.substring(0, equals)), typed.substring(equals + 1));
  }

  /**
   * The same of a line at hand.
   *
   * @param line what was noted
   * @param typed a time, where the line has one, or else its value
   */
  public Note corrected(NotedLine line, String typed) {
    String counted = counted(typed);
    return line.timeField().isPresent() && isTime(counted)
        ? line.at(when(counted))
        : line.with(typed);
  }

  private boolean isTime(String typed) {
    try {
      moments.parse(typed);
      return true;
    } catch (MistypedException noTime) {
      return false;
    }
  }

  /**
   * The name of a picture from the trial's folder on.
   *
   * @param trial the trial file
   * @param picture the picture
   * @return what a note calls it
   */
  public static String photo(Path trial, Path picture) {
    Path whole = picture.toAbsolutePath().normalize();
    Path folder = trial.toAbsolutePath().normalize().getParent();
    Path name =
        folder != null && folder.getRoot().equals(whole.getRoot())
            ? folder.relativize(whole)
            : whole;
    return PlainLine.of(name);
  }
}
