package starchfilm.report;

import static starchfilm.numerics.units.Units.G_PER_KG;
import static starchfilm.numerics.units.Units.HOUR_S;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import starchfilm.casting.Spot;
import starchfilm.drying.CurvePoint;
import starchfilm.drying.Milestone;
import starchfilm.drying.MilestoneForecast;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Band;

/**
 * A drying forecast for other programs. Every name carries its unit; figures are not rounded for
 * reading, and a time that never comes is left empty or null.
 */
public final class DryingFile {
  private static final int DECIMALS = 4;
  private static final String CSV_HEAD =
      "time_h,at,film_g_low,film_g,film_g_high,water_kg_per_kg_dry_thin_edge,"
          + "water_kg_per_kg_dry_average,water_kg_per_kg_dry_thick_spot\n";

  private DryingFile() {}

  /**
   * The curve as CSV.
   *
   * @param trial the trial
   * @return one line a moment, with a head; line ends are a line feed
   */
  public static String csv(TrialForecast trial) {
    CurveReading reading = new CurveReading(trial);
    StringBuilder text = new StringBuilder(CSV_HEAD);
    for (CurvePoint point : trial.drying().curve()) {
      // Numbers and dates hold no comma and no quote, so nothing needs quoting.
      text.append(
          String.join(
              ",",
              number(point.timeS() / HOUR_S),
              at(trial, point.timeS()).orElse(""),
              number(G_PER_KG * reading.massKg(point.nominal().low())),
              number(G_PER_KG * reading.massKg(point.nominal().middle())),
              number(G_PER_KG * reading.massKg(point.nominal().high())),
              number(point.thinEdge()),
              number(point.nominal().middle()),
              number(point.thickSpot())));
      text.append('\n');
    }
    return text.toString();
  }

  /**
   * Milestones, curve and verdict as JSON.
   *
   * @param trial the trial
   * @return one object
   */
  public static String json(TrialForecast trial) {
    ObjectMapper mapper = new ObjectMapper();
    ObjectNode root = mapper.createObjectNode();
    root.put("what", "drying forecast");
    root.put("name", trial.trial().name());
    trial.trial().pouredAt().ifPresent(poured -> root.put("poured_at", poured.toString()));
    root.put("verdict", trial.drying().verdict().name().toLowerCase(Locale.ROOT));
    root.put("start_water_kg_per_kg_dry", rounded(trial.drying().startMoisture()));
    root.put("resting_water_kg_per_kg_dry", rounded(trial.drying().equilibriumMoisture()));
    ObjectNode spots = root.putObject("spots");
    for (Spot spot : Spot.values()) {
      ObjectNode one = spots.putObject(spot.name().toLowerCase(Locale.ROOT));
      one.put("wet_thickness_mm", rounded(1e3 * trial.drying().at(spot).wetThicknessM()));
      one.put("dry_thickness_um", rounded(1e6 * trial.drying().at(spot).dryThicknessM()));
      for (Milestone milestone : Milestone.values()) {
        milestone(
            trial,
            trial.drying().at(spot).at(milestone),
            one.putObject(milestone.name().toLowerCase(Locale.ROOT)));
      }
    }
    curve(trial, root.putArray("curve"));
    try {
      return mapper.writer(pretty()).writeValueAsString(root) + "\n";
    } catch (JsonProcessingException impossible) {
      throw new UncheckedIOException("a tree in memory cannot fail", impossible);
    }
  }

  /** The same line ends on every system. */
  private static DefaultPrettyPrinter pretty() {
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    return new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines);
  }

  private static void milestone(TrialForecast trial, MilestoneForecast forecast, ObjectNode node) {
    Band band = forecast.timeS();
    List<String> names = List.of("low_h", "middle_h", "high_h");
    List<Double> seconds = List.of(band.low(), band.middle(), band.high());
    for (int i = 0; i < names.size(); i++) {
      if (Double.isInfinite(seconds.get(i))) {
        node.putNull(names.get(i));
      } else {
        node.put(names.get(i), rounded(seconds.get(i) / HOUR_S));
      }
    }
    at(trial, band.middle()).ifPresent(moment -> node.put("middle_at", moment));
    node.put("share_reached", rounded(forecast.shareReached()));
  }

  private static void curve(TrialForecast trial, ArrayNode curve) {
    CurveReading reading = new CurveReading(trial);
    for (CurvePoint point : trial.drying().curve()) {
      curve
          .addObject()
          .put("time_h", rounded(point.timeS() / HOUR_S))
          .put("film_g_low", rounded(G_PER_KG * reading.massKg(point.nominal().low())))
          .put("film_g", rounded(G_PER_KG * reading.massKg(point.nominal().middle())))
          .put("film_g_high", rounded(G_PER_KG * reading.massKg(point.nominal().high())))
          .put("water_kg_per_kg_dry_thin_edge", rounded(point.thinEdge()))
          .put("water_kg_per_kg_dry_average", rounded(point.nominal().middle()))
          .put("water_kg_per_kg_dry_thick_spot", rounded(point.thickSpot()));
    }
  }

  private static Optional<String> at(TrialForecast trial, double seconds) {
    if (Double.isInfinite(seconds)) {
      return Optional.empty();
    }
    return trial
        .trial()
        .pouredAt()
        .map(poured -> poured.plusSeconds(Math.round(seconds)).truncatedTo(ChronoUnit.MINUTES))
        .map(LocalDateTime::toString);
  }

  private static String number(double value) {
    return Double.toString(rounded(value));
  }

  private static double rounded(double value) {
    double scale = Math.pow(10, DECIMALS);
    return Math.round(value * scale) / scale;
  }
}
