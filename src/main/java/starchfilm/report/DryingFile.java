package starchfilm.report;

import static starchfilm.numerics.units.Units.G_PER_KG;
import static starchfilm.numerics.units.Units.HOUR_S;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
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
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("what", "drying forecast");
    root.put("name", trial.trial().name());
    trial.trial().pouredAt().ifPresent(poured -> root.put("poured_at", poured.toString()));
    root.put("verdict", trial.drying().verdict().name().toLowerCase(Locale.ROOT));
    root.put("start_water_kg_per_kg_dry", JsonText.rounded(trial.drying().startMoisture()));
    root.put("resting_water_kg_per_kg_dry", JsonText.rounded(trial.drying().equilibriumMoisture()));
    ObjectNode spots = root.putObject("spots");
    for (Spot spot : Spot.values()) {
      ObjectNode one = spots.putObject(spot.name().toLowerCase(Locale.ROOT));
      one.put("wet_thickness_mm", JsonText.rounded(1e3 * trial.drying().at(spot).wetThicknessM()));
      one.put("dry_thickness_um", JsonText.rounded(1e6 * trial.drying().at(spot).dryThicknessM()));
      for (Milestone milestone : Milestone.values()) {
        milestone(
            trial,
            trial.drying().at(spot).at(milestone),
            one.putObject(milestone.name().toLowerCase(Locale.ROOT)));
      }
    }
    curve(trial, root.putArray("curve"));
    return JsonText.of(root);
  }

  private static void milestone(TrialForecast trial, MilestoneForecast forecast, ObjectNode node) {
    Band band = forecast.timeS();
    List<String> names = List.of("low_h", "middle_h", "high_h");
    List<Double> seconds = List.of(band.low(), band.middle(), band.high());
    for (int i = 0; i < names.size(); i++) {
      if (Double.isInfinite(seconds.get(i))) {
        node.putNull(names.get(i));
      } else {
        node.put(names.get(i), JsonText.rounded(seconds.get(i) / HOUR_S));
      }
    }
    at(trial, band.middle()).ifPresent(moment -> node.put("middle_at", moment));
    node.put("share_reached", JsonText.rounded(forecast.shareReached()));
  }

  private static void curve(TrialForecast trial, ArrayNode curve) {
    CurveReading reading = new CurveReading(trial);
    for (CurvePoint point : trial.drying().curve()) {
      curve
          .addObject()
          .put("time_h", JsonText.rounded(point.timeS() / HOUR_S))
          .put("film_g_low", JsonText.rounded(G_PER_KG * reading.massKg(point.nominal().low())))
          .put("film_g", JsonText.rounded(G_PER_KG * reading.massKg(point.nominal().middle())))
          .put("film_g_high", JsonText.rounded(G_PER_KG * reading.massKg(point.nominal().high())))
          .put("water_kg_per_kg_dry_thin_edge", JsonText.rounded(point.thinEdge()))
          .put("water_kg_per_kg_dry_average", JsonText.rounded(point.nominal().middle()))
          .put("water_kg_per_kg_dry_thick_spot", JsonText.rounded(point.thickSpot()));
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
    return Double.toString(JsonText.rounded(value));
  }
}
