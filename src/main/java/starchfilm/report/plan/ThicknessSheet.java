package starchfilm.report.plan;

import static starchfilm.numerics.figures.ReaderUnit.GRAM;
import static starchfilm.numerics.figures.ReaderUnit.MICROMETRE;
import static starchfilm.numerics.figures.ReaderUnit.MILLIMETRE;
import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.stream.Stream;
import starchfilm.film.FilmCaution;
import starchfilm.forecast.Oddity;
import starchfilm.learning.Workshop;
import starchfilm.numerics.figures.Figures;
import starchfilm.numerics.figures.Spans;
import starchfilm.numerics.units.Named;
import starchfilm.planning.PourThickness;
import starchfilm.planning.PourThickness.DateReach;
import starchfilm.planning.ThicknessAnswer;
import starchfilm.planning.ThicknessRequest;
import starchfilm.report.caution.Caution;
import starchfilm.report.caution.Cautions;
import starchfilm.report.data.AnswerTable;
import starchfilm.report.data.Sheet;
import starchfilm.report.learnt.LearntSheet;
import starchfilm.report.words.OddityWords;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.PlanWords;
import starchfilm.report.words.RecipeWords;
import starchfilm.report.words.RoomWords;
import starchfilm.request.RefusedRequestException;
import starchfilm.request.ThicknessQuestion;

/**
 * An answer to how thick to pour.
 *
 * @param question what was asked
 * @param answer how thick
 * @param learnt what it has from earlier trials, in sentences
 */
public record ThicknessSheet(
    ThicknessQuestion question, ThicknessAnswer answer, List<String> learnt)
    implements Sheet.OfRows {
  /**
   * Answers a question.
   *
   * @param question what is asked
   * @param workshop what earlier trials taught
   * @throws RefusedRequestException where the model cannot hold what was asked
   */
  public static ThicknessSheet of(ThicknessQuestion question, Workshop workshop) {
    return new ThicknessSheet(
        question,
        question.answer(workshop),
        LearntSheet.told(workshop, question.trial().casting().place()));
  }

  /** What was taken for granted, and what was learnt. */
  public List<String> assumptions() {
    return Stream.concat(question.assumptions().stream(), learnt.stream()).toList();
  }

  /** Returns whether any pour meets the date; false where even the thinnest is too late. */
  public boolean isAnyFound() {
    return answer.pours().stream().anyMatch(pour -> pour.reach() != DateReach.TOO_SOON);
  }

  /** The cautions it calls for. */
  public List<Caution> cautions() {
    return Cautions.of(question.trial().recipe(), answer.request().casting().place());
  }

  @Override
  public List<String> lines() {
    List<String> lines = new ArrayList<>(said());
    lines.addAll(assumptions());
    cautions().forEach(caution -> lines.add("! " + caution.sentence()));
    return lines;
  }

  /** A row a share of the likely cases. */
  @Override
  public AnswerTable table() {
    AnswerTable table = new AnswerTable("thickness");
    for (PourThickness pour : answer.pours()) {
      table
          .row("pour", "")
          .put("sure_pct", pour.sure())
          .put("reach", Named.of(pour.reach()))
          .put("wet_thickness_mm", pour.wetThicknessM())
          .put("pour_g", pour.pourKg())
          .put("dry_thickness_um", pour.dryThicknessM());
    }
    return table.assuming(assumptions()).cautioning(cautions());
  }

  /** The answer alone, in sentences: how thick, what is odd, and what that is like. */
  public List<String> said() {
    return Stream.of(pours(), odd(), around()).flatMap(List::stream).toList();
  }

  /** What is odd about what was asked, and about the pours that answer it. */
  public List<String> odd() {
    ThicknessRequest request = answer.request();
    return Stream.concat(
            Oddity.of(question.trial()).stream()
                .filter(
                    odd ->
                        !(odd instanceof Oddity.TooLittlePaste || odd instanceof Oddity.TooThin)),
            answer.pours().stream()
                .filter(pour -> pour.reach() == DateReach.FOUND)
                .flatMap(
                    pour -> Oddity.thin(request.casting().pouredTo(pour.wetThicknessM())).stream()))
        .map(odd -> "Odd: " + OddityWords.of(odd))
        .toList();
  }

  /** How thick, a sentence a pour; the surest first: it is the one to take. */
  public List<String> pours() {
    List<String> lines = new ArrayList<>();
    for (int i = answer.pours().size() - 1; i >= 0; i--) {
      lines.add(line(answer.pours().get(i)));
    }
    return lines;
  }

  /** What it is dried on and in, what the surest pour is like, and what limits it. */
  public List<String> around() {
    ThicknessRequest request = answer.request();
    List<String> lines = new ArrayList<>();
    lines.add("");
    lines.add(
        "That is within %s on %s, in %s and %s, air at %s."
            .formatted(
                Spans.given(request.byS()),
                RecipeWords.plate(request.casting().plate()),
                RoomWords.humidity(request.casting().room()),
                RoomWords.temperature(request.casting().room()),
                RoomWords.speed(request.casting().room())));
    if (!isAnyFound()) {
      lines.add("Choose a later date, or dry it in warmer, drier or moving air.");
    } else if (answer.surest().reach() == DateReach.FOUND) {
      lines.add(
          "Poured %s deep it is dry through in %s; the film %s."
              .formatted(
                  MILLIMETRE.figure(answer.surest().wetThicknessM()),
                  Spans.of(answer.readyS()),
                  PlainWords.word(answer.film().feel(), "in the hand")));
      answer.film().cautions().stream()
          .filter(EnumSet.of(FilmCaution.THIN_FILM, FilmCaution.THICK_FILM)::contains)
          .map(PlainWords::word)
          .forEach(lines::add);
    }
    lines.addAll(limits());
    return lines;
  }

  private String line(PourThickness pour) {
    String dry =
        "dry through everywhere by %s in %s likely cases"
            .formatted(question.by(), PlanWords.chance(pour.sure()));
    return switch (pour.reach()) {
      case TOO_SOON -> "No pour is " + dry + ", not even one of 0.1 mm.";
      case ANY -> "Any pour up to 25 mm is " + dry + "; thicker ones were not computed.";
      case FOUND ->
          "Pour %s wet, %s g per plate: it is %s, and %s thick then."
              .formatted(
                  MILLIMETRE.figure(pour.wetThicknessM()),
                  Figures.whole(GRAM.of(pour.pourKg())),
                  dry,
                  MICROMETRE.band(pour.dryThicknessM()));
    };
  }

  private List<String> limits() {
    return List.of(
        ("The paste holds %s starch. With less than %s it would settle, with more than %s it would"
                + " not level (critical and cast concentrations, recalled handbook figures; the"
                + " upper limit is judged).")
            .formatted(
                PERCENT.figure(answer.body().starchInPaste()),
                PERCENT.figure(answer.body().settlesBelow()),
                PERCENT.figure(answer.body().levelsUpTo())),
        ("A pour thinner than about %s hardly levels by itself before it sets: spread it with a"
                + " rod (Orchard's rule for an assumed viscosity of about %s Pa s).")
            .formatted(
                MILLIMETRE.figure(answer.levelling().levelsFromM()),
                Figures.two(answer.levelling().viscosityPaS())),
        answer.request().rimM() > 0
            ? "The rim stands %s above the plate; keep the thick spot below it."
                .formatted(MILLIMETRE.figure(answer.request().rimM()))
            : ("Without a rim, paste runs off the plate above about %s at the latest (height of a"
                    + " pool of hot water at a sharp edge).")
                .formatted(MILLIMETRE.figure(answer.levelling().standsUpToM())));
  }
}
