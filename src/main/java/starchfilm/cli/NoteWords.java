package starchfilm.cli;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import starchfilm.amount.MistypedException;
import starchfilm.amount.Moment;
import starchfilm.amount.MomentParser;
import starchfilm.amount.NearMiss;
import starchfilm.amount.TypedNumber;
import starchfilm.drying.FaceChange;
import starchfilm.trial.FileWord;
import starchfilm.trial.Note;
import starchfilm.trial.ObservedFault;

/** Makes notes out of typed words; whatever cannot be read is a {@link MistypedException}. */
final class NoteWords {
  private final MomentParser moments;
  private final Optional<LocalDateTime> pouredAt;

  /**
   * Words typed now about one trial.
   *
   * @param moments reads times against the clock
   * @param pouredAt when the trial was poured, if known
   */
  NoteWords(MomentParser moments, Optional<LocalDateTime> pouredAt) {
    this.moments = moments;
    this.pouredAt = pouredAt;
  }

  /** A moment as the file keeps it. */
  String when(String typed) {
    return moments.lastingText(moments.parse(typed), pouredAt);
  }

  LocalDateTime pour(String typed) {
    return pour(moments, typed);
  }

  /** The moment of the pour: by the clock, since nothing can be counted from it yet. */
  static LocalDateTime pour(MomentParser moments, String typed) {
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
   */
  Note weighed(String typed, String at, boolean withoutPlate) {
    int equals = typed.lastIndexOf('=');
    String time = equals < 0 ? at : counted(typed.substring(0, equals).strip());
    return new Note.Weighed(
        when(time),
        TypedNumber.in("g", typed.substring(equals + 1)),
        withoutPlate ? Optional.of(false) : Optional.empty());
  }

  /** In front of =, a bare span such as 6h is counted from the pour, with or without its plus. */
  private static String counted(String time) {
    return time.matches("[0-9][0-9.,]*\\s*(min|h|d).*") && !time.endsWith("ago")
        ? "+" + time
        : time;
  }

  static Note thickness(String typed) {
    return new Note.Thickness(TypedNumber.in("um", typed));
  }

  /**
   * The load a strip broke at.
   *
   * @param number in N, or in kg where a mass hung on it
   * @param hung true for a mass
   */
  record Load(BigDecimal number, boolean hung) {
    static Load of(String typed) {
      boolean hung = typed.strip().toLowerCase(Locale.ROOT).endsWith("g");
      return new Load(TypedNumber.in(hung ? "kg" : "N", typed), hung);
    }
  }

  /** A strip, from its load and lengths as typed; what was not measured is empty. */
  static Note pulled(
      String load, String width, Optional<String> thickness, Optional<String> stretch) {
    return pulled(
        Load.of(load),
        TypedNumber.in("mm", width),
        thickness.map(t -> TypedNumber.in("um", t)),
        stretch.map(s -> TypedNumber.in("%", s)));
  }

  static Note pulled(
      Load load, BigDecimal width, Optional<BigDecimal> thickness, Optional<BigDecimal> stretch) {
    return new Note.Pulled(load.number(), load.hung(), width, thickness, stretch);
  }

  /** What went wrong, where, perhaps when and in which words. */
  Note wentWrong(
      String kind, Optional<String> where, Optional<String> at, Optional<String> remark) {
    return new Note.WentWrong(
        faultKind(kind),
        where.map(NoteWords::place).orElse(ObservedFault.Place.ALL),
        at.map(this::when),
        remark);
  }

  static ObservedFault.Kind faultKind(String typed) {
    return choice(ObservedFault.Kind.values(), typed);
  }

  static ObservedFault.Place place(String typed) {
    return choice(ObservedFault.Place.values(), typed);
  }

  Note moved(String faces, String at) {
    return new Note.Moved(when(at), choice(FaceChange.OpenFaces.values(), faces));
  }

  static Note rated(String typed) {
    if (!typed.strip().matches("[1-5]")) {
      throw new MistypedException(
          typed, "1 to 5", "write 1 for a failure to 5 for a film you want again");
    }
    return new Note.Rated(Integer.parseInt(typed.strip()));
  }

  static Note cooked(Optional<String> minutes, Optional<String> top, Optional<String> lost) {
    return new Note.Cooked(
        minutes.map(TypedNumber::minutes),
        top.map(t -> TypedNumber.in("C", t)),
        lost.map(l -> TypedNumber.in("g", l)));
  }

  /** A picture, by its name from the trial's folder on. */
  static Note photo(Path trial, Path picture) {
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
