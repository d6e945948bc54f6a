package starchfilm.cli;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.TypedAmount;
import starchfilm.files.saving.Note;
import starchfilm.files.saving.PotLine;

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

  @Option(
      names = "--starch",
      paramLabel = "[KIND ]MASS",
      description = "Powder that was really weighed out, such as 13.4g; of several, \"corn 6.2g\".")
  private List<String> starches = List.of();

  @Option(
      names = "--glycerol",
      paramLabel = "MASS",
      description = "Glycerol that was really weighed out.")
  private @Nullable String glycerol;

  @Option(
      names = "--vinegar",
      paramLabel = "MASS",
      description = "Vinegar that was really weighed out.")
  private @Nullable String vinegar;

  @Option(
      names = "--water",
      paramLabel = "MASS",
      description = "Water that was really weighed out.")
  private @Nullable String water;

  /** What was weighed out, of the lines of the file; a line that is not there is refused. */
  List<Note> weighedOut(Supplier<List<PotLine>> lines) {
    Map<String, String> typed = new LinkedHashMap<>();
    for (String starch : starches) {
      String[] words = starch.strip().split("\\s+", 2);
      boolean named = words.length == 2 && words[0].matches("\\p{L}+");
      typed.put(named ? words[0] + " starch" : "starch", named ? words[1] : starch);
    }
    put(typed, "glycerol", glycerol);
    put(typed, "vinegar", vinegar);
    put(typed, "water", water);
    List<Note> notes = new ArrayList<>();
    typed.forEach(
        (what, mass) -> {
          String option = what.endsWith("starch") ? "--starch" : "--" + what;
          notes.add(
              NoteCommand.read(
                  option, () -> line(what, lines.get()).weighedOut(TypedAmount.number("g", mass))));
        });
    return notes;
  }

  private static void put(Map<String, String> typed, String what, @Nullable String mass) {
    if (mass != null) {
      typed.put(what, mass);
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
        new Note.Cooked(
            number("--cook-time", "min", cookTime),
            number("--cook-top", "C", cookTop),
            number("--cook-lost", "g", cookLost)));
  }

  private static Optional<BigDecimal> number(String option, String unit, @Nullable String written) {
    return Optional.ofNullable(written)
        .map(typed -> NoteCommand.read(option, () -> TypedAmount.number(unit, typed)));
  }
}
