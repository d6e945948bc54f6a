package starchfilm.cli;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import starchfilm.files.amount.TypedAmount;
import starchfilm.files.saving.Note;
import starchfilm.files.saving.NoteWords;

/** What {@code note} takes about the cook and the pour. */
final class PotOptions {
  @Option(
      names = "--poured",
      paramLabel = "TIME",
      description = "When it was poured, such as now or \"today 10:30\".")
  @Nullable String poured;

  @Option(
      names = "--poured-mass",
      paramLabel = "MASS",
      description = "Paste on one plate, such as 150g.")
  private @Nullable String pouredMass;

  @Option(
      names = "--tare",
      paramLabel = "MASS",
      description = "The empty plate, so that it can be weighed with its film.")
  private @Nullable String tare;

  @Option(
      names = "--cook-time",
      paramLabel = "TIME",
      description = "At the top temperature, such as 12min.")
  private @Nullable String cookTime;

  @Option(
      names = "--cook-top",
      paramLabel = "TEMPERATURE",
      description = "Highest temperature, such as 92C.")
  private @Nullable String cookTop;

  @Option(
      names = "--cook-lost",
      paramLabel = "MASS",
      description = "Weight the pot lost while cooking, such as 26g.")
  private @Nullable String cookLost;

  String pouredAt() {
    return String.valueOf(poured);
  }

  /** The pour; of a plate that is named, its tare apart from the others'. */
  List<Note> pour(Optional<LocalDateTime> at, OptionalInt plate) {
    List<Note> notes = new ArrayList<>();
    Optional<BigDecimal> tareG =
        Optional.ofNullable(tare)
            .map(typed -> NoteCommand.read("--tare", () -> TypedAmount.number("g", typed)));
    if (plate.isPresent()) {
      tareG.ifPresent(grams -> notes.add(new Note.Tared(plate.getAsInt(), grams)));
    }
    if (poured != null || pouredMass != null || (tare != null && plate.isEmpty())) {
      notes.add(
          new Note.Poured(
              poured == null ? Optional.empty() : at.map(LocalDateTime::toString),
              Optional.ofNullable(pouredMass)
                  .map(
                      typed ->
                          NoteCommand.read("--poured-mass", () -> TypedAmount.number("g", typed))),
              plate.isPresent() ? Optional.empty() : tareG));
    }
    return notes;
  }

  Optional<Note> cook() {
    if (cookTime == null && cookTop == null && cookLost == null) {
      return Optional.empty();
    }
    return Optional.of(
        NoteCommand.read(
            "--cook-time, --cook-top or --cook-lost",
            () ->
                NoteWords.cooked(
                    Optional.ofNullable(cookTime),
                    Optional.ofNullable(cookTop),
                    Optional.ofNullable(cookLost))));
  }
}
