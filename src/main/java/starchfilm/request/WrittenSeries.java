package starchfilm.request;

import java.math.BigInteger;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import starchfilm.files.amount.MistypedException;
import starchfilm.planning.Kitchen;
import starchfilm.planning.SeriesRequest;
import starchfilm.planning.Varied;

/** A series as written: {@code glycerol 15,20,25,30,35}. */
final class WrittenSeries {

  private static final String VALUES = "numbers with commas between, such as 15,20,25";
  private static final Pattern SPAN = Pattern.compile("[0-9.,]+\\s*(?:-|\u2013|to)\\s*[0-9.,]+");
  private static final String WHOLE = "a whole number, such as 2";

  private WrittenSeries() {}

  static Optional<SeriesRequest> read(EntryReader in, Optional<Kitchen> kitchen, Clock clock) {
    for (String part : List.of("series.replicates", "series.groups", "series.seed")) {
      in.requireWhole(part, "series.vary");
    }
    if (!in.has("series.vary")) {
      return Optional.empty();
    }
    Optional<Varied> what =
        in.all(
            "series.vary",
            words -> EntryReader.chosen(parts(words).get(0), List.of(Varied.values())));
    Optional<List<Double>> values = in.all("series.vary", words -> values(parts(words).get(1)));
    Optional<List<String>> names =
        in.one(
            "series.groups",
            typed -> Arrays.stream(typed.split(",", -1)).map(String::strip).toList());
    Optional<Long> seed = in.one("series.seed", typed -> whole(typed));
    Optional<Long> replicates = in.one("series.replicates", typed -> whole(typed));
    if (in.hasMistakes() || kitchen.isEmpty()) {
      return Optional.empty();
    }
    int groups = values.orElseThrow().size();
    int plates = kitchen.get().plates();
    long each = replicates.orElse((long) plates / groups);
    if (each < 1 || each > plates / groups) {
      in.refuse(
          "kitchen.plates",
          "%s plates given for %s groups%s, allowed %s or more; write how many there are in all"
              .formatted(
                  plates,
                  groups,
                  each > 1 ? " of " + each + " plates" : "",
                  BigInteger.valueOf(groups).multiply(BigInteger.valueOf(Math.max(1, each)))));
      return Optional.empty();
    }
    return in.made(
        () ->
            new SeriesRequest(
                what.orElseThrow(),
                values.get(),
                names.orElse(List.of()),
                (int) each,
                seed.orElseGet(() -> LocalDate.now(clock).toEpochDay())));
  }

  /** How many plates a series takes at least, of which nobody said how many there are. */
  static int platesNeeded(EntryReader in) {
    long each = in.one("series.replicates", WrittenSeries::whole, 1L);
    int pots = in.all("series.vary", words -> values(parts(words).get(1)).size()).orElse(1);
    return (int) Math.max(1, Math.min(1000, Math.min(1000, each) * pots));
  }

  /** What is varied, and its values, perhaps written in one text. */
  private static List<String> parts(List<String> words) {
    String typed = String.join(" ", words).strip();
    List<String> parts = List.of(typed.split("\\s*[=:]\\s*|\\s+", 2));
    if (parts.size() < 2) {
      throw new MistypedException(
          typed, "what to vary and its values, such as glycerol 15,20,25", "write both");
    }
    return parts;
  }

  private static List<Double> values(String typed) {
    return Arrays.stream(typed.split("[,;]", -1))
        .map(
            value -> {
              if (SPAN.matcher(value.strip()).matches()) {
                throw new MistypedException(typed, VALUES, "write each value");
              }
              return Quantities.number(value.strip(), VALUES);
            })
        .toList();
  }

  private static long whole(String typed) {
    if (!typed.strip().matches("[0-9]{1,18}")) {
      throw new MistypedException(typed, WHOLE, "write digits alone");
    }
    return Long.parseLong(typed.strip());
  }
}
