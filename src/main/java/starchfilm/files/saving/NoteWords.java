package starchfilm.files.saving;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import starchfilm.casting.FaceChange;
import starchfilm.casting.trial.ObservedFault;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.Moment;
import starchfilm.files.amount.MomentParser;
import starchfilm.files.amount.NearMiss;
import starchfilm.files.amount.TypedAmount;
import starchfilm.files.notebook.FileWord;

/**
 * Makes notes out of typed words; whatever cannot be read is a {@link MistypedException}, whose
 * message is one sentence for the person who typed it.
 */
public final class NoteWords {
  private final MomentParser moments;
  private final Optional<LocalDateTime> pouredAt;

  /**
   * Words typed now about one trial.
   *
   * @param moments reads times against the clock
   * @param pouredAt when the trial was poured, if known
   */
  public NoteWords(MomentParser moments, Optional<LocalDateTime> pouredAt) {
    this.moments = moments;
    this.pouredAt = pouredAt;
  }

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
   * @param typed such as {@code today 10:30}
   * @return date and time
   */
  public LocalDateTime pour(String typed) {
    return pour(moments, typed);
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
      return clock.time().withNano(0);
    }
    throw new MistypedException(
        typed, "date and time of the pour", "write it like 2026-04-02 10:30 or today 10:30");
  }

  /**
   * A weighing.
   *
   * @param typed a mass, or time=mass
   * @param at when, where the mass has no time of its own
   * @param withoutPlate true where the film was weighed alone
   * @return the note
   */
  public Note.Weighed weighed(String typed, String at, boolean withoutPlate) {
    int equals = typed.lastIndexOf('=');
    String time = equals < 0 ? at : counted(typed.substring(0, equals).strip());
    return new Note.Weighed(
        when(time),
        TypedAmount.number("g", typed.substring(equals + 1)),
        withoutPlate ? Optional.of(false) : Optional.empty(),
        Optional.empty());
  }

  /**
   * A plate that is done.
   *
   * @param plate its number; empty for all plates of the pour
   * @param at when
   * @param givenUp why it was given up; empty where its film came off
   * @return the note
   */
  public Note ended(OptionalInt plate, String at, Optional<String> givenUp) {
    return new Note.Ended(plate, when(at), givenUp.map(String::strip));
  }

  /**
   * The number of a plate.
   *
   * @param typed such as {@code 2}
   * @return the number
   */
  public static int plate(String typed) {
    if (!typed.strip().matches("[1-9][0-9]{0,3}")) {
      throw new MistypedException(
          typed, "the number of a plate, such as 2", "count the plates of the pour from 1");
    }
    return Integer.parseInt(typed.strip());
  }

  /**
   * A weighing that is right as noted.
   *
   * @param typed its time
   * @return the note
   */
  public Note confirmed(String typed) {
    return new Note.Confirmed(when(counted(typed.strip())));
  }

  /** In front of =, a bare span such as 6h is counted from the pour, with or without its plus. */
  private static String counted(String time) {
    return time.matches("[0-9][0-9.,]*\\s*(min|h|d).*") && !time.endsWith("ago")
        ? "+" + time
        : time;
  }

  /**
   * A thickness of the dry film.
   *
   * @param typed such as {@code 112um}; a bare number is micrometres, and one below 1, which no
   *     film is, millimetres
   * @return the note
   */
  public static Note thickness(String typed) {
    boolean inMm = typed.strip().matches("0[.,][0-9]+");
    return new Note.Thickness(TypedAmount.number("um", inMm ? typed.strip() + " mm" : typed));
  }

  /**
   * Thicknesses of the dry film, measured in several places.
   *
   * @param typed such as {@code 112; 118; 131}, {@code 0.12 mm} or {@code 112um}; a bare number is
   *     micrometres, and one below 1, which no film is, millimetres
   * @return the notes
   */
  public static List<Note> thicknesses(String typed) {
    return Arrays.stream(typed.split(";", -1))
        .map(String::strip)
        .filter(one -> !one.isEmpty())
        .map(NoteWords::thickness)
        .toList();
  }

  /**
   * A line that was noted before, with another value.
   *
   * @param lines what was noted
   * @param typed such as {@code weighing 2=690g}
   * @return the note
   */
  public static Note corrected(List<NotedLine> lines, String typed) {
    int equals = typed.indexOf('=');
    if (equals < 0) {
      throw new MistypedException(
          typed, "a line and its new value, such as weighing 2=690g", "write it so");
    }
    return NotedLine.named(lines, typed.substring(0, equals)).with(typed.substring(equals + 1));
  }

  /**
   * The load a strip broke at.
   *
   * @param number in N, or in kg where a mass hung on it
   * @param hung true for a mass
   */
  public record Load(BigDecimal number, boolean hung) {
    /**
     * Reads a load.
     *
     * @param typed such as {@code 12N} or {@code 0.9kg}; a bare number is newtons
     * @return the load
     */
    public static Load of(String typed) {
      boolean hung = typed.strip().toLowerCase(Locale.ROOT).endsWith("g");
      return new Load(TypedAmount.number(hung ? "kg" : "N", typed), hung);
    }
  }

  /**
   * A strip pulled until it broke, as typed.
   *
   * @param load such as {@code 12N} or {@code 0.9kg}
   * @param width such as {@code 10mm}
   * @param thickness such as {@code 110um}; empty where it was not measured
   * @param stretch such as {@code 24%}; empty where it was not measured
   * @return the note
   */
  public static Note pulled(
      String load, String width, Optional<String> thickness, Optional<String> stretch) {
    return pulled(
        Load.of(load),
        TypedAmount.number("mm", width),
        thickness.map(t -> TypedAmount.number("um", t)),
        stretch.map(s -> TypedAmount.number("%", s)));
  }

  /**
   * A strip pulled until it broke.
   *
   * @param load the load
   * @param width width (mm)
   * @param thickness thickness (um); empty where it was not measured
   * @param stretch stretch at break (%); empty where it was not measured
   * @return the note
   */
  public static Note pulled(
      Load load, BigDecimal width, Optional<BigDecimal> thickness, Optional<BigDecimal> stretch) {
    return new Note.Pulled(load.number(), load.hung(), width, thickness, stretch);
  }

  /**
   * What went wrong.
   *
   * @param kind such as {@code still wet}
   * @param where edge, middle or all; empty for all over
   * @param at when it was seen; empty where nobody noted it
   * @param remark in the maker's words; may be empty
   * @return the note
   */
  public Note wentWrong(
      String kind, Optional<String> where, Optional<String> at, Optional<String> remark) {
    return new Note.WentWrong(
        faultKind(kind),
        where.map(NoteWords::place).orElse(ObservedFault.Place.ALL),
        at.map(this::when),
        remark);
  }

  /**
   * What can go wrong.
   *
   * @param typed such as {@code still wet}
   * @return the kind
   */
  public static ObservedFault.Kind faultKind(String typed) {
    return choice(ObservedFault.Kind.values(), typed);
  }

  /**
   * Where on a plate.
   *
   * @param typed edge, middle or all
   * @return the place
   */
  public static ObservedFault.Place place(String typed) {
    return choice(ObservedFault.Place.values(), typed);
  }

  /**
   * Peeled, turned or put on a rack.
   *
   * @param faces which faces are open from then on: upper, turned or both
   * @param at when
   * @return the note
   */
  public Note moved(String faces, String at) {
    return new Note.Moved(when(at), choice(FaceChange.OpenFaces.values(), faces));
  }

  /**
   * A rating.
   *
   * @param typed 1 to 5
   * @return the note
   */
  public static Note rated(String typed) {
    if (!typed.strip().matches("[1-5]")) {
      throw new MistypedException(
          typed, "1 to 5", "write 1 for a failure to 5 for a film you want again");
    }
    return new Note.Rated(Integer.parseInt(typed.strip()));
  }

  /**
   * The cook.
   *
   * @param minutes time at the top temperature; may be empty
   * @param top top temperature; may be empty
   * @param lost weight the pot lost; may be empty
   * @return the note
   */
  public static Note cooked(Optional<String> minutes, Optional<String> top, Optional<String> lost) {
    return new Note.Cooked(
        minutes.map(m -> TypedAmount.number("min", m)),
        top.map(t -> TypedAmount.number("C", t)),
        lost.map(l -> TypedAmount.number("g", l)));
  }

  /**
   * A picture, by its name from the trial's folder on.
   *
   * @param trial the trial file
   * @param picture the picture
   * @return the note
   */
  public static Note.Photographed photo(Path trial, Path picture) {
    Path whole = picture.toAbsolutePath().normalize();
    Path folder = trial.toAbsolutePath().normalize().getParent();
    Path name =
        folder != null && folder.getRoot().equals(whole.getRoot())
            ? folder.relativize(whole)
            : whole;
    return new Note.Photographed(name.toString().replace('\\', '/'));
  }

  private static <E extends Enum<E>> E choice(E[] all, String typed) {
    List<String> words = FileWord.all(all);
    String word = typed.strip().toLowerCase(Locale.ROOT).replace('-', ' ');
    return FileWord.find(all, word)
        .orElseThrow(
            () ->
                new MistypedException(
                    typed,
                    String.join(", ", words),
                    NearMiss.of(word, words)
                        .map(near -> "did you mean " + near + "?")
                        .orElse("write one of these")));
  }
}
