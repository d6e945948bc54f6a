package starchfilm.report;

import static starchfilm.numerics.figures.ReaderUnit.MICROMETRE;
import static starchfilm.numerics.figures.ReaderUnit.MILLIMETRE;
import static starchfilm.numerics.units.Units.G_PER_KG;
import static starchfilm.numerics.units.Units.HOUR_S;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import starchfilm.casting.Spot;
import starchfilm.drying.CurvePoint;
import starchfilm.drying.Milestone;
import starchfilm.drying.MilestoneForecast;
import starchfilm.drying.SpotForecast;
import starchfilm.files.findings.PlainLine;
import starchfilm.film.FilmForecast;
import starchfilm.film.risk.CrackRisk;
import starchfilm.film.risk.PlateRisks;
import starchfilm.forecast.CurveReading;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.units.Named;
import starchfilm.report.caution.Caution;
import starchfilm.report.caution.Cautions;
import starchfilm.report.data.CsvLine;
import starchfilm.report.data.JsonText;
import starchfilm.report.words.OddityWords;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.PourCalendar;

/**
 * A drying forecast for other programs. Every name carries its unit; figures are not rounded for
 * reading, and a time that never comes is left empty or null.
 */
final class DryingFile {
  private DryingFile() {}

  /**
   * The curve as CSV.
   *
   * @param trial the trial
   * @param assumptions what was taken for granted of what was typed, a sentence each
   * @return one line a moment, with a head; line ends are a line feed; what was assumed stands in
   *     lines that begin with # at the end
   */
  static String csv(TrialForecast trial, List<String> assumptions) {
    CurveReading reading = new CurveReading(trial);
    PourCalendar calendar = PourCalendar.of(trial.trial());
    StringBuilder text = new StringBuilder();
    for (CurvePoint point : trial.drying().curve()) {
      Map<String, Double> figures = figures(point, reading);
      if (text.isEmpty()) {
        text.append(CsvLine.of(with("at", figures.keySet())));
      }
      text.append(CsvLine.of(with(calendar.iso(point.timeS()).orElse(""), figures.values())));
    }
    assumed(trial, assumptions)
        .forEach(one -> text.append("# assumed: ").append(PlainLine.of(one)).append('\n'));
    return text.toString();
  }

  /** When a moment is by the clock stands behind when it is after the pour. */
  private static List<Object> with(String clock, Collection<?> cells) {
    List<Object> all = new ArrayList<>(cells);
    all.add(1, clock);
    return all;
  }

  /**
   * Verdict, milestones, film, risks and curve as JSON.
   *
   * @param trial the trial
   * @param assumptions what was taken for granted of what was typed, a sentence each
   * @return one object
   */
  static String json(TrialForecast trial, List<String> assumptions) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("what", "drying forecast");
    root.put("name", trial.trial().name());
    trial.trial().pouredAt().ifPresent(poured -> root.put("poured_at", poured.toString()));
    root.put("verdict", trial.drying().verdict().name().toLowerCase(Locale.ROOT));
    root.put("start_water_kg_per_kg_dry", JsonText.rounded(trial.drying().startMoisture()));
    JsonText.put(
        root,
        "resting_water_kg_per_kg_dry",
        Headline.restsBeyondMeasure(trial)
            ? Double.POSITIVE_INFINITY
            : trial.drying().equilibriumMoisture());
    ObjectNode spots = root.putObject("spots");
    for (Spot spot : Spot.values()) {
      SpotForecast at = trial.drying().at(spot);
      ObjectNode one = spots.putObject(spot.name().toLowerCase(Locale.ROOT));
      one.put("wet_thickness_mm", JsonText.rounded(MILLIMETRE.of(at.wetThicknessM())));
      one.put("dry_thickness_um", JsonText.rounded(MICROMETRE.of(at.dryThicknessM())));
      for (Milestone milestone : Milestone.values()) {
        String key = milestone.name().toLowerCase(Locale.ROOT);
        milestone(trial, at.at(milestone), one.putObject(key));
      }
    }
    film(trial.film(), root.putObject("film"));
    risk(trial.risks(), root.putObject("risk"));
    OddityWords.of(trial.trial()).forEach(root.putArray("odd")::add);
    ArrayNode questions = root.putArray("questions");
    trial
        .weighed()
        .questions()
        .forEach(question -> questions.add(question.withCommand(trial.trial())));
    assumed(trial, assumptions).forEach(root.putArray("assumptions")::add);
    Cautions.of(trial).stream().map(Caution::sentence).forEach(root.putArray("cautions")::add);
    curve(trial, root.putArray("curve"));
    return JsonText.of(root);
  }

  /** Everything that was taken for granted, and where rules were used outside their range. */
  private static List<String> assumed(TrialForecast trial, List<String> ofTyped) {
    List<String> all = new ArrayList<>();
    trial.trial().notRecorded().forEach(gap -> all.add(gap.words()));
    all.addAll(ofTyped);
    all.addAll(TrialView.extrapolations(trial));
    return all;
  }

  /** What the dry film is like; a figure that is not to be stated is left out, and why is said. */
  private static void film(FilmForecast film, ObjectNode node) {
    // Each spot has its own thickness, and says it.
    for (FilmFigure figure : EnumSet.complementOf(EnumSet.of(FilmFigure.THICKNESS))) {
      ObjectNode one = node.putObject(figure.key());
      // Moisture is a ratio here, as everywhere in this file.
      Band band = figure.of(film);
      figure
          .withheld(film)
          .ifPresentOrElse(
              why -> one.put("withheld", why),
              () ->
                  JsonText.put(
                      one, "", figure == FilmFigure.MOISTURE ? band : figure.unit().of(band)));
    }
    node.put("feel", PlainWords.word(film.feel()));
  }

  private static void risk(PlateRisks risks, ObjectNode node) {
    double criticalM = risks.crack().criticalDryThicknessM();
    node.putObject("crack")
        .put("level", Named.of(risks.crack().level()))
        .put(
            "critical_dry_thickness_um",
            JsonText.rounded(MICROMETRE.of(Math.min(CrackRisk.THICKEST_TOLD_M, criticalM))))
        .put("critical_dry_thickness_is_more", criticalM > CrackRisk.THICKEST_TOLD_M);
    node.put("curl", Named.of(risks.curl().level())).put("mould", Named.of(risks.mould().level()));
  }

  private static void milestone(TrialForecast trial, MilestoneForecast forecast, ObjectNode node) {
    Band band = forecast.timeS();
    JsonText.put(node, "_h", band.times(1 / HOUR_S));
    PourCalendar.of(trial.trial())
        .iso(band.middle())
        .ifPresent(moment -> node.put("middle_at", moment));
    node.put("share_reached", JsonText.rounded(forecast.shareReached()));
  }

  private static void curve(TrialForecast trial, ArrayNode curve) {
    CurveReading reading = new CurveReading(trial);
    for (CurvePoint point : trial.drying().curve()) {
      ObjectNode one = curve.addObject();
      figures(point, reading).forEach(one::put);
    }
  }

  /** A moment of the curve, for table and tree alike. */
  private static Map<String, Double> figures(CurvePoint point, CurveReading reading) {
    Map<String, Double> figures = new LinkedHashMap<>();
    figures.put("time_h", point.timeS() / HOUR_S);
    Band film = reading.massKg(point.nominal()).times(G_PER_KG);
    figures.put("film_g_low", film.low());
    figures.put("film_g", film.middle());
    figures.put("film_g_high", film.high());
    figures.put("water_kg_per_kg_dry_thin_edge", point.thinEdge());
    figures.put("water_kg_per_kg_dry_average", point.nominal().middle());
    figures.put("water_kg_per_kg_dry_thick_spot", point.thickSpot());
    figures.replaceAll((key, figure) -> JsonText.rounded(figure));
    return figures;
  }
}
