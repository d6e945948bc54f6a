package starchfilm;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Answers by casting and quantity, as {@code tripwire.csv} holds them. */
final class TripwireTable {
  /** How far a number may move unseen (ratio). */
  static final double HELD_WITHIN = 0.005;

  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT
          .builder()
          .setCommentMarker('#')
          .setHeader("casting", "quantity", "value")
          .setSkipHeaderRecord(true)
          .get();

  private final Map<HeldFigure, String> values = new LinkedHashMap<>();

  private record HeldFigure(String casting, String quantity) {
    @Override
    public String toString() {
      return casting + ", " + quantity;
    }
  }

  static TripwireTable read(Path file) throws IOException {
    TripwireTable table = new TripwireTable();
    try (Reader reader = Files.newBufferedReader(file)) {
      for (CSVRecord row : FORMAT.parse(reader)) {
        table.text(row.get("casting"), row.get("quantity"), row.get("value"));
      }
    }
    return table;
  }

  void text(String casting, String quantity, String value) {
    String before = values.put(new HeldFigure(casting, quantity), value);
    if (before != null) {
      throw new IllegalStateException(casting + ", " + quantity + " is there twice");
    }
  }

  void number(String casting, String quantity, double value) {
    text(casting, quantity, Double.isInfinite(value) ? "never" : written(value));
  }

  private static String written(double value) {
    return String.format(Locale.ROOT, "%.5g", value);
  }

  /** Every difference, a line each: casting, quantity, what is held and what was found. */
  List<String> differencesFrom(TripwireTable held) {
    List<String> differences = new ArrayList<>();
    held.values.forEach(
        (cell, value) -> {
          String now = values.get(cell);
          if (now == null) {
            differences.add(cell + ": held " + value + ", not found");
          } else if (!isSame(value, now)) {
            differences.add(cell + ": held " + value + ", found " + now + moved(value, now));
          }
        });
    values.forEach(
        (cell, value) -> {
          if (!held.values.containsKey(cell)) {
            differences.add(cell + ": not held, found " + value);
          }
        });
    return differences;
  }

  private static boolean isSame(String held, String found) {
    return held.equals(found)
        || isNumber(held)
            && isNumber(found)
            && Math.abs(Double.parseDouble(found) - Double.parseDouble(held))
                <= HELD_WITHIN * Math.abs(Double.parseDouble(held));
  }

  private static String moved(String held, String found) {
    return isNumber(held) && isNumber(found) && Double.parseDouble(held) != 0
        ? String.format(
            Locale.ROOT,
            " (%+.1f %%)",
            100 * (Double.parseDouble(found) / Double.parseDouble(held) - 1))
        : "";
  }

  private static boolean isNumber(String value) {
    return value.matches("-?\\d.*");
  }

  /** Writes the answers below the list of changes, which stays, and says what moved. */
  List<String> rewrite(Path file) throws IOException {
    List<String> lines =
        new ArrayList<>(
            Files.readAllLines(file).stream().filter(line -> line.startsWith("#")).toList());
    List<String> moved = differencesFrom(read(file));
    lines.add(String.join(",", FORMAT.getHeader()));
    values.forEach(
        (cell, value) -> lines.add(FORMAT.format(cell.casting(), cell.quantity(), value)));
    Files.writeString(file, String.join("\n", lines) + "\n");
    return moved;
  }
}
