package starchfilm.report.words;

import java.math.BigDecimal;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import starchfilm.files.amount.Moment;
import starchfilm.files.amount.MomentParser;
import starchfilm.files.notebook.FileWord;
import starchfilm.files.saving.Note;
import starchfilm.files.saving.NotedLine;

/** Says a note back to its maker, so that a slip of the finger is seen at once. */
public final class NoteSentence {
  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("EEE d MMM, HH:mm", Locale.ENGLISH);

  private NoteSentence() {}

  /**
   * A note in words.
   *
   * @param note the note
   * @return such as {@code weighed 690 g, Fri 27 Nov, 09:08}
   */
  public static String of(Note note) {
    if (note instanceof Note.Weighed weighed) {
      boolean alone = weighed.withPlate().equals(Optional.of(false));
      String plate = weighed.plate().isPresent() ? plate(weighed.plate().getAsInt()) + " " : "";
      return plate
          + "weighed "
          + weighed.massG()
          + " g"
          + (alone ? ", film alone" : "")
          + ", "
          + when(weighed.at())
          + weighed.samePlate().map(same -> same ? "" : ", another plate").orElse("");
    }
    if (note instanceof Note.Confirmed confirmed) {
      return "weighing of " + confirmed.at() + " confirmed";
    }
    if (note instanceof Note.Tared tared) {
      return plate(tared.plate()) + " weighs " + tared.tareG() + " g empty";
    }
    if (note instanceof Note.Ended ended) {
      return (ended.plate().isPresent() ? plate(ended.plate().getAsInt()) + " " : "")
          + ended.givenUp().map(why -> "given up, " + why).orElse("off the plate")
          + ", "
          + when(ended.at());
    }
    if (note instanceof Note.WeighedOut out) {
      return "weighed out: " + out.massG() + " g " + out.what();
    }
    if (note instanceof Note.Dropped dropped) {
      return "removed: " + of(dropped.line());
    }
    if (note instanceof Note.Corrected corrected) {
      return "corrected: " + of(corrected.line()) + " is now " + corrected.value();
    }
    if (note instanceof Note.PutAway put) {
      return put.away() ? "put away" : "fetched back";
    }
    if (note instanceof Note.Thickness thickness) {
      return "dry thickness " + thickness.um() + " \u00B5m";
    }
    if (note instanceof Note.Pulled pulled) {
      return "strip of "
          + pulled.widthMm()
          + " mm broke at "
          + pulled.load()
          + (pulled.loadInKg() ? " kg" : " N")
          + pulled.stretchPct().map(pct -> ", stretched by " + pct + " %").orElse("");
    }
    if (note instanceof Note.WentWrong wrong) {
      return FileWord.of(wrong.kind())
          + ", "
          + FileWord.of(wrong.where())
          + wrong.at().map(at -> ", " + when(at)).orElse("");
    }
    if (note instanceof Note.Cooked cooked) {
      return "cook: "
          + joined(
              part(cooked.minutes(), "", " min"),
              part(cooked.topC(), "up to ", " \u00B0C"),
              part(cooked.waterLostG(), "lost ", " g"));
    }
    if (note instanceof Note.Poured poured) {
      return "pour: "
          + joined(
              poured.at().map(NoteSentence::when),
              part(poured.pouredG(), "", " g on one plate"),
              part(poured.tareG(), "plate ", " g"));
    }
    if (note instanceof Note.Moved moved) {
      return "open faces: " + FileWord.of(moved.open()) + ", " + when(moved.at());
    }
    if (note instanceof Note.Rated rated) {
      return "rating " + rated.stars();
    }
    if (note instanceof Note.Remarked remarked) {
      return "remark: " + remarked.words();
    }
    if (note instanceof Note.Photographed photo) {
      return "photo "
          + photo.name()
          + photo.caption().map(words -> ", " + words).orElse("")
          + photo.at().map(at -> ", " + when(at)).orElse("");
    }
    return ((Note.Several) note)
        .notes().stream().map(NoteSentence::of).collect(Collectors.joining("; "));
  }

  /**
   * A line noted before.
   *
   * @param line the line
   * @return its words; those of its text where it cannot be read
   */
  public static String of(NotedLine line) {
    return line.note().map(NoteSentence::of).orElseGet(line::name);
  }

  private static String plate(int number) {
    return "plate " + number;
  }

  /** The clock's time as people say it; a time counted from the pour as it was typed. */
  private static String when(String at) {
    return MomentParser.lasting(at) instanceof Moment.ByTheClock clock
        ? CLOCK.format(clock.time())
        : at;
  }

  private static Optional<String> part(Optional<BigDecimal> number, String before, String unit) {
    return number.map(value -> before + value + unit);
  }

  @SafeVarargs
  private static String joined(Optional<String>... parts) {
    List<String> there = new ArrayList<>();
    for (Optional<String> part : parts) {
      part.ifPresent(there::add);
    }
    return String.join(", ", there);
  }
}
