package starchfilm.report.plan;

import static starchfilm.numerics.units.ReaderUnit.GRAM;
import static starchfilm.numerics.units.ReaderUnit.MILLIMETRE;
import static starchfilm.numerics.units.ReaderUnit.PERCENT;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import starchfilm.casting.trial.Trial;
import starchfilm.forecast.Oddity;
import starchfilm.numerics.units.Figures;
import starchfilm.numerics.units.Spans;
import starchfilm.planning.PourThickness;
import starchfilm.planning.PourThickness.DateReach;
import starchfilm.planning.ThicknessAnswer;
import starchfilm.planning.ThicknessRequest;
import starchfilm.report.words.OddityWords;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.PlanWords;
import starchfilm.report.words.RecipeWords;
import starchfilm.report.words.RoomWords;

/** How thick to pour, for a terminal: plain lines that need no colour. */
public final class ThicknessText {
  private ThicknessText() {}

  /**
   * Whether any pour meets the date.
   *
   * @param answer the answer
   * @return false where even the thinnest is too late
   */
  public static boolean isAnyFound(ThicknessAnswer answer) {
    return answer.pours().stream().anyMatch(pour -> pour.reach() != DateReach.TOO_SOON);
  }

  /**
   * The whole answer.
   *
   * @param answer how thick
   * @param trial what is poured; how thick it is poured is not used
   * @return lines; long sentences are not broken
   */
  public static List<String> of(ThicknessAnswer answer, Trial trial) {
    ThicknessRequest request = answer.request();
    List<String> lines = new ArrayList<>();
    Stream.concat(
            Oddity.of(trial).stream()
                .filter(
                    odd ->
                        !(odd instanceof Oddity.TooLittlePaste || odd instanceof Oddity.TooThin)),
            answer.pours().stream()
                .filter(pour -> pour.reach() == DateReach.FOUND)
                .flatMap(
                    pour -> Oddity.thin(request.casting().pouredTo(pour.wetThicknessM())).stream()))
        .map(OddityWords::of)
        .forEach(sentence -> lines.add("Odd: " + sentence));
    lines.add(
        "Dry through everywhere within %s on %s, in %s and %s, air at %s:"
            .formatted(
                Spans.of(request.byS()),
                RecipeWords.plate(request.casting().plate()),
                RoomWords.humidity(request.casting().room()),
                RoomWords.temperature(request.casting().room()),
                RoomWords.speed(request.casting().room())));
    lines.add("");
    answer.pours().forEach(pour -> lines.add(line(pour)));
    lines.add("");
    if (isAnyFound(answer)) {
      lines.add(
          "The last of these is dry through in %s; the film %s."
              .formatted(
                  Spans.of(answer.readyS()), PlainWords.word(answer.film().feel(), "in the hand")));
    } else {
      lines.add("Choose a later date, or dry it in warmer, drier or moving air.");
    }
    lines.addAll(limits(answer));
    return lines;
  }

  private static String line(PourThickness pour) {
    String found =
        switch (pour.reach()) {
          case TOO_SOON -> "no pour, not even one of 0.1 mm";
          case ANY -> "any pour up to 25 mm; thicker ones were not computed";
          case FOUND ->
              "%s wet, %s g per plate, which dries to %s"
                  .formatted(
                      MILLIMETRE.figure(pour.wetThicknessM()),
                      Figures.whole(GRAM.of(pour.pourKg())),
                      MILLIMETRE.band(pour.dryThicknessM()));
        };
    return "in " + PlanWords.chance(pour.sure()) + " likely cases: " + found;
  }

  private static List<String> limits(ThicknessAnswer answer) {
    return List.of(
        ("Starch in the paste %s: it settles below %s and does not level above %s (critical and"
                + " cast concentrations, recalled handbook figures; the upper limit is judged).")
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
            : ("Without a rim, paste runs off the plate above about %s at the latest (height of a pool"
                    + " of hot water at a sharp edge).")
                .formatted(MILLIMETRE.figure(answer.levelling().standsUpToM())));
  }
}
