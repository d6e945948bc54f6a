package starchfilm.files.notebook;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import starchfilm.casting.FaceChange;
import starchfilm.casting.PlateMaterial;
import starchfilm.casting.trial.ObservedFault.FaultKind;
import starchfilm.casting.trial.ObservedFault.FaultPlace;
import starchfilm.files.findings.Allowed;
import starchfilm.files.json.PackedText;
import starchfilm.files.json.TextEdit;
import starchfilm.files.notebook.TrialField.ValueKind;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.GlycerolOrigin;
import starchfilm.numerics.units.Named;

/** Reads the table of {@link TrialField}s. */
record TrialFieldTable(List<List<String>> rows) {
  private static final int COLUMNS = 10;
  private static final Pattern KIND =
      Pattern.compile("(required )?(per pour )?(list of )?([a-z ]+?)( of ([a-z ]+))?");
  private static final Pattern RANGE =
      Pattern.compile("(above |percent )?(-?[0-9.]+ )?to ([0-9.]+)( .+)?");

  /** The table of a kind of file. */
  static TrialField read(String table) {
    List<List<String>> rows = PackedText.rows(TrialFieldTable.class, table, COLUMNS);
    return new TrialFieldTable(rows).field(rows.get(0));
  }

  private TrialField field(List<String> row) {
    String path = row.get(0);
    Matcher kind = matched(KIND, row.get(1));
    String word = kind.group(4);
    boolean isChoice = kind.group(6) != null;
    String range = row.get(2);
    boolean isNumber = range.contains("to ");
    String mend = row.get(5);
    Map<String, TrialField> fields = new LinkedHashMap<>();
    for (List<String> other : rows) {
      if (!other.get(0).isEmpty() && TextEdit.around(other.get(0)).equals(path)) {
        TrialField field = field(other);
        fields.put(field.key(), field);
      }
    }
    return new TrialField(
        path,
        ValueKind.valueOf(word.replace(' ', '_').toUpperCase(Locale.ROOT)),
        kind.group(1) != null,
        kind.group(2) != null,
        kind.group(3) != null,
        isNumber ? Optional.of(allowed(range, mend)) : Optional.empty(),
        isNumber || range.isEmpty() ? 0 : Integer.parseInt(range),
        isChoice ? choices(kind.group(6)) : List.of(),
        row.get(3),
        row.get(4),
        mend.isEmpty() ? "write " + row.get(4) : mend,
        row.get(6),
        row.get(7),
        row.get(8),
        row.get(9),
        fields);
  }

  private static Allowed allowed(String range, String mend) {
    Matcher parts = matched(RANGE, range);
    double max = Double.parseDouble(parts.group(3));
    String unit = parts.group(4) == null ? "" : parts.group(4).strip();
    if ("percent ".equals(parts.group(1))) {
      return Allowed.percent(max, mend);
    }
    double min = Double.parseDouble(parts.group(2).strip());
    return parts.group(1) == null
        ? Allowed.between(min, max, unit, mend)
        : Allowed.above(min, max, unit, mend);
  }

  private static List<String> choices(String name) {
    return switch (name) {
      case "starch kinds" ->
          Stream.concat(
                  Stream.of(StarchKind.values()).map(StarchKind::tradeName),
                  Stream.of(TrialField.UNKNOWN))
              .toList();
      case "plate materials" -> Named.all(PlateMaterial.values());
      case "plate shapes" -> List.of("rectangle", "oval");
      case "origins" -> Named.all(GlycerolOrigin.values());
      case "open faces" -> Named.all(FaceChange.OpenFaces.values());
      case "faults" -> Named.all(FaultKind.values());
      case "places" -> Named.all(FaultPlace.values());
      default -> throw new IllegalStateException("no choice of " + name);
    };
  }

  private static Matcher matched(Pattern pattern, String text) {
    Matcher matcher = pattern.matcher(text);
    if (!matcher.matches()) {
      throw new IllegalStateException("in the table of fields: " + text);
    }
    return matcher;
  }
}
