package starchfilm.report;

import static starchfilm.numerics.figures.ReaderUnit.CELSIUS;
import static starchfilm.numerics.figures.ReaderUnit.METRE_PER_SECOND;
import static starchfilm.numerics.figures.ReaderUnit.MICROMETRE;
import static starchfilm.numerics.figures.ReaderUnit.MILLIMETRE;
import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import starchfilm.casting.PlateMaterial;
import starchfilm.casting.trial.ObservedFault.FaultKind;
import starchfilm.casting.trial.Trial;
import starchfilm.change.Change;
import starchfilm.change.ChangeStep;
import starchfilm.change.Remedies;
import starchfilm.change.Rerun;
import starchfilm.change.TrialAnalysis;
import starchfilm.drying.DryingVerdict;
import starchfilm.film.Feel;
import starchfilm.film.risk.CrackRisk;
import starchfilm.film.risk.CurlRisk;
import starchfilm.film.risk.MouldRisk;
import starchfilm.film.risk.PlateRisks;
import starchfilm.film.risk.RiskLevel;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.figures.Figures;
import starchfilm.numerics.figures.ReaderUnit;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.PourCalendar;

/** The ways in which a plate may fail while it dries, and the change that would help most. */
public final class RiskTable {
  private RiskTable() {}

  /**
   * A risk.
   *
   * @param name what may happen
   * @param level how likely, one word
   * @param remedy the change that helps most, as the model sees it; may be empty
   */
  record RiskLine(String name, String level, String reason, String remedy) {}

  private static final double SHOWS = 0.01;
  private static final double LIFT_SHOWS_M = 1e-3;

  /**
   * The risks of a trial.
   *
   * @return cracks, curling, then mould; mould alone where it never dries, and so never shrinks
   */
  public static List<RiskLine> of(TrialAnalysis analysis) {
    TrialForecast trial = analysis.forecast();
    PourCalendar calendar = PourCalendar.of(trial.trial());
    RiskLine mould = mould(trial, analysis.remedies().mould(), calendar);
    return trial.drying().verdict() == DryingVerdict.TOO_DAMP
        ? List.of(mould)
        : List.of(crack(trial, analysis.remedies().crack()), curl(trial, calendar), mould);
  }

  private static RiskLine crack(TrialForecast trial, Optional<Rerun> best) {
    CrackRisk risk = trial.risks().crack();
    String reason =
        ("Film of this paste that dries stuck to its plate should stay whole up to %s (within a"
                + " factor of 5); the thick spot will be %s%s.%s%s%s")
            .formatted(
                risk.criticalDryThicknessM() > CrackRisk.THICKEST_TOLD_M
                    ? "more than " + MICROMETRE.figure(CrackRisk.THICKEST_TOLD_M) + " dry"
                    : "about " + MICROMETRE.figure(risk.criticalDryThicknessM()) + " dry",
                MICROMETRE.figure(risk.dryThicknessM()),
                best.map(rerun -> cause(rerun.step().change())).orElse(""),
                risk.mayTearAtRim()
                    ? " It comes off the plate, and may tear where the rim holds it."
                    : "",
                trial.film().feel() == Feel.BRITTLE
                    ? " Because it is brittle, it can still crack from a nick or a bubble, or when"
                        + " it is lifted."
                    : "",
                risk.level() == RiskLevel.LOW
                        || risk.criticalDryThicknessM() > CrackRisk.THICKEST_TOLD_M
                    ? ""
                    : " With more glycerol, damper air or a warmer room thicker film stays whole.");
    return new RiskLine(
        "Cracks",
        PlainWords.word(risk.level()),
        reason,
        helps(trial, best, Remedies::cracking, "pull over toughness ", ""));
  }

  /** The change that helps most; nothing where its figures would read the same. */
  private static String helps(
      TrialForecast trial,
      Optional<Rerun> best,
      ToDoubleFunction<PlateRisks> risk,
      String measure,
      String unit) {
    String before = Figures.two(risk.applyAsDouble(trial.risks()));
    String after = best.map(rerun -> Figures.two(risk.applyAsDouble(rerun.risks()))).orElse(before);
    return best.filter(rerun -> !after.equals(before))
        .map(
            rerun ->
                "%s: %s%s → %s%s."
                    .formatted(sentence(trial.trial(), rerun.step()), measure, before, after, unit))
        .orElse("");
  }

  private static RiskLine curl(TrialForecast trial, PourCalendar calendar) {
    CurlRisk risk = trial.risks().curl();
    PlateMaterial material = trial.casting().plate().material();
    String plate = material == PlateMaterial.OTHER ? "plate" : material.tradeName();
    String shrinks =
        risk.shrinking() < SHOWS
            ? "keeps its size"
            : "shrinks by %s %% in length and width"
                .formatted(
                    risk.leastShrinking() < SHOWS
                        ? "up to " + PERCENT.two(risk.shrinking())
                        : span(PERCENT.two(risk.leastShrinking()), PERCENT.two(risk.shrinking())));
    String lifts =
        risk.edgeLiftM() < LIFT_SHOWS_M
            ? ""
            : "; its edges lift by about %s (within a factor of 2)"
                .formatted(MILLIMETRE.figure(risk.edgeLiftM()));
    String reason =
        risk.looseFromS().isPresent()
            ? "It comes off the %s about %s, and then %s%s."
                .formatted(plate, calendar.moment(risk.looseFromS().getAsDouble()), shrinks, lifts)
            : "It should stay on the %s and dry flat.".formatted(plate)
                + (risk.shrinking() < SHOWS
                        || trial.drying().verdict() == DryingVerdict.NEVER_PEELABLE
                    ? ""
                    : " Peeled as soon as it is firm, it still "
                        + shrinks
                        + " and curls; peeled once dry through, it stays flat.");
    return new RiskLine(
        "Lifting and curling",
        PlainWords.word(risk.level()),
        reason,
        risk.level() == RiskLevel.LOW ? "" : AGAINST_CURLING);
  }

  private static String span(String least, String most) {
    return least.equals(most) ? "about " + most : Figures.range(least, most);
  }

  private static final String AGAINST_CURLING =
      "Common practice (no source): put weights or tape on"
          + " the edges, use a frame or a mesh on both sides; or peel it while limp"
          + " and dry it pressed under a board, turned daily.";

  private static RiskLine mould(TrialForecast trial, Optional<Rerun> best, PourCalendar calendar) {
    MouldRisk risk = trial.risks().mould();
    String reason =
        "Mould in the wettest part grows as much as in %s hours at its fastest%s."
            .formatted(
                Figures.two(risk.weightedHours()),
                Double.isInfinite(risk.growthFromS())
                    ? ""
                    : "; it may show from " + calendar.moment(risk.growthFromS()) + " on");
    return new RiskLine(
        "Mould",
        PlainWords.word(risk.level()),
        reason,
        helps(trial, best, Remedies::moulding, "", " hours"));
  }

  /** What is wrong with a plate that a change helps most against cracks, after its thickness. */
  private static String cause(Change change) {
    return switch (change) {
      case MORE_GLYCEROL -> ": the film is too brittle to shrink without cracking";
      case POUR_THINNER -> ": the layer is so thick that the skin is dry long before the core";
      case COVER_THE_PLATE -> ": the air dries the skin too fast";
      case LEVEL_THE_PLATE -> ": the thin edge is dry while the thick spot still shrinks";
      default -> "";
    };
  }

  private static String sentence(Trial trial, ChangeStep step) {
    // A plate that dries already gains less of other air.
    boolean late = trial.pouredAt().isPresent() && step.change().thing() == Change.Thing.AIR;
    return "Best change: " + remedy(trial, step) + (late ? " from the pour on" : "");
  }

  /** A change that helps, in words: what, from where to where. */
  public static String remedy(Trial trial, ChangeStep step) {
    return switch (step.change()) {
      case POUR_THINNER -> "pour thinner, " + change(step, MILLIMETRE, " mm");
      case MORE_GLYCEROL -> "more glycerol, " + change(step, PERCENT, " g per 100 g dry starch");
      case LEVEL_THE_PLATE -> "level the plate better, ± " + change(step, PERCENT, " %");
      case COVER_THE_PLATE -> "dry more slowly, " + change(step, PERCENT, " % RH");
      case FAN -> movingAir(trial) + ", " + change(step, METRE_PER_SECOND, " m/s");
      case DRIER_ROOM -> "a drier room, " + change(step, PERCENT, " % RH");
      case WARMER_ROOM -> "a warmer room, " + change(step, CELSIUS, " °C");
      default -> throw new IllegalStateException(step.change() + " is no remedy");
    };
  }

  /** A fan sparks beside methanol, and spreads the spores of film that moulds. */
  private static String movingAir(Trial trial) {
    if (trial.recipe().glycerol().mayHoldMethanol()) {
      return "a draught from open windows as strong as a fan's (no fan: the glycerol may hold"
          + " methanol)";
    }
    return trial.seen().hasFault(FaultKind.MOULD)
        ? "for the next pour a fan, its cable off the wet trays (none on film that moulds)"
        : "a fan, its cable off the wet trays";
  }

  private static String change(ChangeStep step, ReaderUnit unit, String symbol) {
    return unit.two(step.from()) + " → " + unit.two(step.to()) + symbol;
  }
}
