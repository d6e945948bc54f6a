package starchfilm.cli;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import starchfilm.files.notebook.FileWord;
import starchfilm.files.saving.Note;

/** Says a note back to its maker, so that a slip of the finger is seen at once. */
final class NoteSentence {
  private NoteSentence() {}

  static String of(Note note) {
    if (note instanceof Note.Weighed weighed) {
      boolean alone = weighed.withPlate().equals(Optional.of(false));
      return "weighed "
          + weighed.massG()
          + " g"
          + (alone ? ", film alone" : "")
          + ", "
          + weighed.at();
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
          + wrong.at().map(at -> ", " + at).orElse("");
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
              poured.at(),
              part(poured.pouredG(), "", " g on one plate"),
              part(poured.tareG(), "plate ", " g"));
    }
    if (note instanceof Note.Moved moved) {
      return "open faces: " + FileWord.of(moved.open()) + ", " + moved.at();
    }
    if (note instanceof Note.Rated rated) {
      return "rating " + rated.stars();
    }
    if (note instanceof Note.Remarked remarked) {
      return "remark: " + remarked.words();
    }
    if (note instanceof Note.Photographed photo) {
      return "photo " + photo.name();
    }
    return ((Note.Several) note)
        .notes().stream().map(NoteSentence::of).collect(Collectors.joining("; "));
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
