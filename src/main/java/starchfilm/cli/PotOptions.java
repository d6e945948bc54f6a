package starchfilm.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.TypedAmount;
import starchfilm.files.saving.Note;
import starchfilm.files.saving.NoteWords;
import starchfilm.files.saving.NotedLine;
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
  List<Note> pour(NoteWords words, Optional<LocalDateTime> at, String plate) {
    List<Note> notes = new ArrayList<>();
    Map<String, JsonNode> values = new LinkedHashMap<>();
    if (poured != null) {
      at.ifPresent(time -> values.put("poured_at", TextNode.valueOf(time.toString())));
    }
    take(words, values, "pour.poured_g", "--poured-mass", pouredMass);
    if (plate.isEmpty()) {
      take(words, values, "pour.plate.tare_g", "--tare", tare);
    } else if (tare != null) {
      Map<String, String> empty = Map.of("plate", plate, "tare_g", tare);
      notes.add(NoteCommand.read("--tare", () -> words.line(NotedLine.Kind.PLATE, empty)));
    }
    if (!values.isEmpty()) {
      notes.add(new Note.Put(values));
    }
    return notes;
  }

  List<Note> cook(NoteWords words) {
    Map<String, JsonNode> values = new LinkedHashMap<>();
    take(words, values, "cook.minutes", "--cook-time", cookTime);
    take(words, values, "cook.top_C", "--cook-top", cookTop);
    take(words, values, "cook.water_lost_g", "--cook-lost", cookLost);
    return values.isEmpty() ? List.of() : List.of(new Note.Put(values));
  }

  private static void take(
      NoteWords words,
      Map<String, JsonNode> values,
      String path,
      String option,
      @Nullable String typed) {
    if (typed != null) {
      values.put(path, NoteCommand.read(option, () -> words.value(path, typed)));
    }
  }
}
