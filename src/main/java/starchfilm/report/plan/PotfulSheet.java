package starchfilm.report.plan;

import static starchfilm.numerics.figures.ReaderUnit.GRAM;

import java.util.List;
import starchfilm.numerics.units.Plural;
import starchfilm.planning.Potful;
import starchfilm.report.words.PotLine;

/**
 * The ingredients that go into the pot at once.
 *
 * @param heading for which plates, and how often
 * @param lines one an ingredient
 * @param total everything before the cook
 * @param cooked what the pot's content weighs once topped up
 */
public record PotfulSheet(String heading, List<PotLine> lines, String total, String cooked) {
  static PotfulSheet of(Potful potful, String heading) {
    return new PotfulSheet(
        heading,
        PotLine.of(potful.recipe(), kg -> GRAM.noted(kg.value())),
        GRAM.noted(potful.recipe().massKg()),
        GRAM.noted(potful.cookedKg()));
  }

  /** For which plates, and how often. */
  static String heading(Potful potful, boolean alone) {
    String plates = Plural.of(potful.plates(), "plate");
    if (alone) {
      return "One potful for "
          + switch (potful.plates()) {
            case 1 -> plates;
            case 2 -> "both plates";
            default -> "all " + plates;
          };
    }
    return potful.times() == 1
        ? "One potful for " + plates
        : "Each of " + potful.times() + " potfuls, for " + plates;
  }
}
