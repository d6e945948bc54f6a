package starchfilm.report.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import starchfilm.casting.trial.Trial;
import starchfilm.forecast.Oddity;
import starchfilm.planning.PourThickness;
import starchfilm.planning.PourThickness.Reach;
import starchfilm.planning.ThicknessAnswer;
import starchfilm.planning.ThicknessRequest;
import starchfilm.report.words.Figures;
import starchfilm.report.words.OddityWords;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.PlanWords;
import starchfilm.report.words.ReaderUnit;
import starchfilm.report.words.RecipeWords;
import starchfilm.report.words.RoomWords;
import starchfilm.report.words.Spans;

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
    return answer.pours().stream().anyMatch(pour -> pour.reach() != Reach.TOO_SOON);
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
                .filter(pour -> pour.reach() == Reach.FOUND)
                .flatMap(
                    pour -> Oddity.thin(request.casting().pouredTo(pour.wetThicknessM())).stream()))
        .map(OddityWords::of)
        .forEach(sentence -> lines.add("Odd: " + sentence));
    lines.add(
        "Dry through everywhere within "
            + Spans.of(request.byS())
            + " on "
            + RecipeWords.plate(request.casting().plate())
            + ", in "
            + RoomWords.humidity(request.casting().room())
            + " and "
            + RoomWords.temperature(request.casting().room())
            + ", air at "
            + RoomWords.speed(request.casting().room())
            + ":");
    lines.add("");
    answer.pours().forEach(pour -> lines.add(line(pour)));
    lines.add("");
    if (isAnyFound(answer)) {
      lines.add(
          "The last of these is dry through in "
              + Spans.of(answer.readyS())
              + "; the film "
              + PlainWords.inTheHand(answer.film().feel())
              + ".");
    } else {
      lines.add("Choose a later date, or dry it in warmer, drier or moving air.");
    }
    lines.addAll(limits(answer));
    return lines;
  }

  private static String line(PourThickness pour) {
    String sure = "in " + PlanWords.chance(pour.sure()) + " likely cases: ";
    return switch (pour.reach()) {
      case TOO_SOON -> sure + "no pour, not even one of 0.1 mm";
      case ANY -> sure + "any pour up to 25 mm; thicker ones were not computed";
      case FOUND ->
          sure
              + ReaderUnit.MILLIMETRE.two(pour.wetThicknessM())
              + " mm wet, "
              + Figures.whole(ReaderUnit.GRAM.of(pour.pourKg()))
              + " g per plate, which dries to "
              + ReaderUnit.MILLIMETRE.band(pour.dryThicknessM());
    };
  }

  private static List<String> limits(ThicknessAnswer answer) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Starch in the paste "
            + ReaderUnit.PERCENT.two(answer.body().starchInPaste())
            + " %: it settles below "
            + ReaderUnit.PERCENT.two(answer.body().settlesBelow())
            + " % and does not level above "
            + ReaderUnit.PERCENT.two(answer.body().levelsUpTo())
            + " % (critical and cast concentrations, recalled handbook figures; the upper limit is"
            + " judged).");
    lines.add(
        "Thinner than about "
            + ReaderUnit.MILLIMETRE.two(answer.levelling().levelsFromM())
            + " mm it hardly levels by itself before it sets, so spread it with a"
            + " rod (Orchard's rule for a viscosity of about "
            + Figures.two(answer.levelling().viscosityPaS())
            + " Pa s, which is assumed).");
    lines.add(
        answer.request().rimM() > 0
            ? "The rim stands "
                + ReaderUnit.MILLIMETRE.two(answer.request().rimM())
                + " mm above the plate; keep the thick spot below it."
            : "Without a rim it runs off above about "
                + ReaderUnit.MILLIMETRE.two(answer.levelling().standsUpToM())
                + " mm, if not before (height of a pool of hot water at a sharp edge).");
    return lines;
  }
}
