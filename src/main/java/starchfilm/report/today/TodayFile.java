package starchfilm.report.today;

import static starchfilm.numerics.units.Units.G_PER_KG;
import static starchfilm.numerics.units.Units.HOUR_S;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Stream;
import starchfilm.casting.trial.Weighing;
import starchfilm.drying.Milestone;
import starchfilm.files.findings.PlainLine;
import starchfilm.numerics.evidence.Band;
import starchfilm.report.Awaited;
import starchfilm.report.data.CsvLine;
import starchfilm.report.data.JsonText;
import starchfilm.report.words.PourCalendar;
import starchfilm.today.Standing;
import starchfilm.today.Today;

/** What to do now, for other programs: every name carries its unit; never is null or empty. */
final class TodayFile {
  private static final List<String> COLUMNS =
      Stream.of(
              Stream.of("file", "name", "plates", "need", "sentence", "look_from", "look_until"),
              Stream.of("scale_now_g"),
              Awaited.all().stream().map(TodayFile::scaleColumn),
              Stream.of("water_left_pct"))
          .flatMap(columns -> columns)
          .toList();

  private TodayFile() {}

  /** One object. */
  static String json(TodaySheet sheet) {
    Today today = sheet.today();
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("what", "plates to look after");
    root.put("now", today.now().truncatedTo(ChronoUnit.MINUTES).toString());
    root.put("headline", sheet.headline());
    today.standings().stream().map(TodayFile::plate).forEach(root.putArray("plates")::add);
    today.planned().forEach(trial -> root.withArray("planned").add(trial.name()));
    sheet.questions().forEach(root.withArray("questions")::add);
    return JsonText.of(root);
  }

  private static ObjectNode plate(Standing standing) {
    PlateNow now = new PlateNow(standing);
    double emptyKg = standing.emptyKg().orElse(0);
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("file", PlainLine.of(standing.forecast().trial().file()));
    node.put("name", standing.forecast().trial().name());
    standing.plates().forEach(node.putArray("plates")::add);
    node.put("plates_poured", standing.of());
    node.put("need", now.need());
    node.put("sentence", now.sentence());
    put(node, "look_from", standing, standing.lookFromS());
    put(node, "look_until", standing, standing.lookUntilS());
    put(node, "mould_from", standing, standing.mouldFromS());
    for (Milestone one : Awaited.all()) {
      band(node.putObject(Awaited.field(one)), standing, standing.forecast().drying().timeS(one));
    }
    if (standing.forecast().weighed().takenIn() > 0) {
      band(node.putObject("dry_through_at_the_pour"), standing, standing.readyAtThePourS());
    }
    JsonText.put(node.putObject("water_left_pct"), "", standing.waterLeft().times(100));
    standing.emptyKg().ifPresent(kg -> node.put("empty_plate_g", grams(kg)));
    node.put("scale_includes_plate", standing.emptyKg().isPresent());
    JsonText.put(
        node.putObject("scale_now_g"),
        "",
        standing.scale().nowKg().map(kg -> G_PER_KG * (emptyKg + kg)));
    for (Milestone one : Awaited.all()) {
      node.put(scaleColumn(one), grams(emptyKg + standing.scale().kgAt(one)));
    }
    node.put("scale_at_rest_g", grams(emptyKg + standing.scale().restKg()));
    node.put("range_left_by_a_weighing_now", JsonText.rounded(standing.scale().rangeLeft()));
    standing
        .last()
        .filter(Weighing::tared)
        .ifPresent(
            last -> {
              ObjectNode weighed = node.putObject("last_weighed");
              put(weighed, "at", standing, last.timeS());
              weighed.put("scale_g", grams(emptyKg + last.filmMassKg()));
            });
    return node;
  }

  private static String scaleColumn(Milestone milestone) {
    return "scale_" + Awaited.key(milestone) + "_g";
  }

  private static void band(ObjectNode node, Standing standing, Band band) {
    JsonText.put(node, "_h", band.times(1 / HOUR_S));
    put(node, "low_at", standing, band.low());
    put(node, "middle_at", standing, band.middle());
    put(node, "high_at", standing, band.high());
  }

  private static void put(ObjectNode node, String field, Standing standing, double atS) {
    node.put(field, PourCalendar.of(standing.forecast().trial()).iso(atS).orElse(null));
  }

  private static double grams(double kg) {
    return JsonText.rounded(G_PER_KG * kg);
  }

  /** A line a plate, with a head; line ends are a line feed. */
  static String csv(Today today) {
    StringBuilder text = new StringBuilder(CsvLine.of(COLUMNS));
    for (Standing standing : today.standings()) {
      ObjectNode plate = plate(standing);
      text.append(CsvLine.of(COLUMNS.stream().map(column -> cell(plate, column)).toList()));
    }
    return text.toString();
  }

  private static String cell(ObjectNode plate, String column) {
    JsonNode value = plate.get(column);
    if (column.equals("plates")) {
      return value.toString().replaceAll("[\\[\\]]", "").replace(',', ' ');
    }
    return value.isNull() ? "" : (value.isObject() ? value.get("middle") : value).asText();
  }
}
