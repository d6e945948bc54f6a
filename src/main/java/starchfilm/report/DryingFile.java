package starchfilm.report;

import static starchfilm.numerics.units.Units.G_PER_KG;
import static starchfilm.numerics.units.Units.HOUR_S;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import starchfilm.casting.Spot;
import starchfilm.drying.CurvePoint;
import starchfilm.drying.Milestone;
import starchfilm.drying.MilestoneForecast;
import starchfilm.files.findings.PlainLine;
import starchfilm.film.FilmForecast;
import starchfilm.film.risk.CrackRisk;
import starchfilm.film.risk.PlateRisks;
import starchfilm.film.risk.RiskLevel;
import starchfilm.forecast.CurveReading;
import starchfilm.forecast.Oddity;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Band;
import starchfilm.report.caution.Caution;
import starchfilm.report.caution.Cautions;
import starchfilm.report.words.OddityWords;
import starchfilm.report.words.PlainWords;

/**
 * A drying forecast for other programs. Every name carries its unit; figures are not rounded for
 * reading, and a time that never comes is left empty or null.
 */
public final class DryingFile {
  private static final String CSV_HEAD =
      "time_h,at,film_g_low,film_g,film_g_high,water_kg_per_kg_dry_thin_edge,"
          + "water_kg_per_kg_dry_average,water_kg_per_kg_dry_thick_spot\n";

  private static final Map<FilmFigure, String> FILM_KEYS =
      new EnumMap<>(
          Map.of(
              FilmFigure.STRENGTH, "strength_MPa",
              FilmFigure.ELONGATION, "stretch_pct",
              FilmFigure.STIFFNESS, "stiffness_MPa",
              FilmFigure.GLASS_TRANSITION, "glass_transition_C",
              FilmFigure.MOISTURE, "moisture_kg_per_kg_dry",
              FilmFigure.PERMEABILITY, "permeability_g_mm_per_m2_d_kPa"));

  private DryingFile() {}

  /**
   * The curve as CSV.
   *
   * @param trial the trial
   * @param assumptions what was taken for granted of what was typed, a sentence each
   * @return one line a moment, with a head; line ends are a line feed; what was assumed stands in
   *     lines that begin with # at the end
   */
  public static String csv(TrialForecast trial, List<String> assumptions) {
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
    assumed(trial, assumptions)
        .forEach(one -> text.append("# assumed: ").append(PlainLine.of(one)).append('\n'));
    return text.toString();
  }

  /**
   * Verdict, milestones, film, risks and curve as JSON.
   *
   * @param trial the trial
   * @param assumptions what was taken for granted of what was typed, a sentence each
   * @return one object
   */
  public static String json(TrialForecast trial, List<String> assumptions) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("what", "drying forecast");
    root.put("name", trial.trial().name());
    trial.trial().pouredAt().ifPresent(poured -> root.put("poured_at", poured.toString()));
    root.put("verdict", trial.drying().verdict().name().toLowerCase(Locale.ROOT));
    root.put("start_water_kg_per_kg_dry", JsonText.rounded(trial.drying().startMoisture()));
    if (Headline.restsBeyondMeasure(trial)) {
      root.putNull("resting_water_kg_per_kg_dry");
    } else {
      root.put(
          "resting_water_kg_per_kg_dry", JsonText.rounded(trial.drying().equilibriumMoisture()));
    }
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
    film(trial.film(), root.putObject("film"));
    risk(trial.risks(), root.putObject("risk"));
    OddityWords.of(Oddity.of(trial.trial())).forEach(root.putArray("odd")::add);
    trial.weighed().questions().forEach(root.putArray("questions")::add);
    assumed(trial, assumptions).forEach(root.putArray("assumptions")::add);
    Cautions.of(trial).stream().map(Caution::sentence).forEach(root.putArray("cautions")::add);
    curve(trial, root.putArray("curve"));
    return JsonText.of(root);
  }

  /** Everything that was taken for granted, and where rules were used outside their range. */
  private static List<String> assumed(TrialForecast trial, List<String> ofTyped) {
    List<String> all = new ArrayList<>();
    trial.trial().notRecorded().forEach(gap -> all.add(gap.field() + " as " + gap.assumed()));
    all.addAll(ofTyped);
    all.addAll(PlainWords.extrapolations(trial.drying().extrapolations()));
    if (trial.drying().logEndsEarly()) {
      all.add(TrialView.LOG_ENDS_EARLY);
    }
    return all;
  }

  /** What the dry film is like; a figure that is not to be stated is left out, and why is said. */
  private static void film(FilmForecast film, ObjectNode node) {
    FILM_KEYS.forEach(
        (figure, key) -> {
          ObjectNode one = node.putObject(key);
          Optional<String> withheld = figure.withheld(film);
          if (withheld.isPresent()) {
            one.put("withheld", withheld.get());
          } else {
            Band band = figure.of(film);
            one.put("low", JsonText.rounded(factor(figure, band.low())));
            one.put("middle", JsonText.rounded(factor(figure, band.middle())));
            one.put("high", JsonText.rounded(factor(figure, band.high())));
          }
        });
    node.put("feel", PlainWords.word(film.feel()));
  }

  /** Moisture is per kg dry solids, as everywhere in this file; all else in the reader's unit. */
  private static double factor(FilmFigure figure, double value) {
    return figure == FilmFigure.MOISTURE ? value : figure.unit().of(value);
  }

  private static void risk(PlateRisks risks, ObjectNode node) {
    ObjectNode crack = node.putObject("crack");
    crack.put("level", level(risks.crack().level()));
    crack.put(
        "critical_dry_thickness_um",
        JsonText.rounded(
            1e6 * Math.min(CrackRisk.THICKEST_TOLD_M, risks.crack().criticalDryThicknessM())));
    crack.put(
        "critical_dry_thickness_is_more",
        risks.crack().criticalDryThicknessM() > CrackRisk.THICKEST_TOLD_M);
    node.put("curl", level(risks.curl().level()));
    node.put("mould", level(risks.mould().level()));
  }

  private static String level(RiskLevel level) {
    return level.name().toLowerCase(Locale.ROOT);
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
