package starchfilm.report.words;

import static starchfilm.numerics.figures.ReaderUnit.GRAM;
import static starchfilm.numerics.figures.ReaderUnit.LITRE;
import static starchfilm.numerics.figures.ReaderUnit.MEGAPASCAL;
import static starchfilm.numerics.figures.ReaderUnit.MICROMETRE;
import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.figures.Figures;
import starchfilm.numerics.figures.Spans;
import starchfilm.numerics.units.Plural;
import starchfilm.planning.BindingLimit;
import starchfilm.planning.GiveUp;
import starchfilm.planning.Goal;
import starchfilm.planning.Limit;
import starchfilm.planning.PlanRequest;
import starchfilm.planning.RecipeOutcome;
import starchfilm.planning.Wish;

/** The findings of a plan, in plain words. */
public final class PlanWords {
  /** A difference by less is none (ratio; judged). */
  private static final double NOTICEABLE = 0.01;

  private PlanWords() {}

  /**
   * The title of a recipe: what it is best at.
   *
   * @param goals at least one
   * @return such as {@code Safest and ready soonest}
   */
  public static String title(Collection<Goal> goals) {
    return PlainWords.capital(PlainWords.list(goals.stream().map(PlainWords::word).toList()));
  }

  /**
   * The film asked for.
   *
   * @param wish the wish
   * @return such as {@code flexible film, 120 µm thick}
   */
  public static String wish(Wish wish) {
    List<String> parts = new ArrayList<>();
    parts.add(wish.feel().map(feel -> PlainWords.word(feel) + " film").orElse("film"));
    wish.strengthPa().ifPresent(pa -> parts.add("at least " + MEGAPASCAL.noted(pa) + " strong"));
    wish.elongation().ifPresent(ratio -> parts.add("stretching at least " + PERCENT.noted(ratio)));
    wish.dryThicknessM()
        .ifPresent(m -> parts.add(MICROMETRE.noted(m) + " thick, give or take about a tenth"));
    return String.join(", ", parts);
  }

  /**
   * The chance that something has come by a moment.
   *
   * @param byS the moment (s)
   * @param comesS when it comes (s, in the same count)
   * @return such as {@code 5 to 9 of 10 likely cases}
   */
  public static String casesBy(double byS, Band comesS) {
    String few = byS >= comesS.low() ? "1 to 5 of 10" : NEARLY_NONE;
    String many = byS >= comesS.high() ? NEARLY_ALL : "5 to 9 of 10";
    return (byS >= comesS.middle() ? many : few) + " likely cases";
  }

  /**
   * Said where the end of a range decides, which 9 in 10 cases keep, and of a chance above 0.95.
   */
  public static final String NEARLY_ALL = "at least 9 of 10";

  /** Said where the other end of a range decides, and of a chance below 0.05. */
  private static final String NEARLY_NONE = "at most 1 of 10";

  /**
   * A chance.
   *
   * @param share 0 to 1
   * @return such as {@code 8 of 10}; never a certainty
   */
  public static String chance(double share) {
    if (share > 0.95) {
      return NEARLY_ALL;
    }
    return share < 0.05 ? NEARLY_NONE : Math.round(10 * share) + " of 10";
  }

  /**
   * A limit with what moving it would buy.
   *
   * @param limit the limit
   * @return one sentence; empty where moving it buys nothing
   */
  public static Optional<String> sentence(BindingLimit limit) {
    return limit
        .buys()
        .map(buys -> gains(limit, buys))
        .filter(gains -> !gains.isEmpty())
        .map(gains -> moved(limit) + ": " + String.join(", ", gains) + ".");
  }

  private static String moved(BindingLimit limit) {
    DoubleFunction<String> figure =
        switch (limit.limit()) {
          case GLYCEROL, STARCH -> GRAM::two;
          case POT -> LITRE::two;
          case THICKEST_FILM, THINNEST_FILM -> MICROMETRE::two;
          case LEVELLING -> PERCENT::two;
          case PLATES -> Figures::whole;
          case WISH ->
              none ->
                  limit
                      .buys()
                      .map(b -> RecipeWords.plasticiser(b.plasticiser()))
                      .orElse("another plasticiser level");
          case DATE, RIM -> none -> "";
        };
    return PlainWords.word(limit.limit())
        .formatted(figure.apply(limit.moved()), figure.apply(limit.now()));
  }

  /** What changes by it; as differences, for the recipe's own figures are of rounded grams. */
  private static List<String> gains(BindingLimit limit, RecipeOutcome buys) {
    RecipeOutcome gives = limit.gives();
    List<String> gains = new ArrayList<>();
    switch (limit.goal()) {
      case MOST_FILM -> {
        double more = buys.filmKg() - gives.filmKg();
        if (Math.abs(more) > NOTICEABLE * gives.filmKg()) {
          gains.add(GRAM.two(Math.abs(more)) + " g " + (more > 0 ? "more" : "less") + " film");
        }
      }
      case SOONEST -> {
        double sooner = gives.readyS() - buys.readyS();
        if (Math.abs(sooner) > NOTICEABLE * gives.readyS()) {
          gains.add(
              "ready " + Spans.of(Math.abs(sooner)) + " " + (sooner > 0 ? "sooner" : "later"));
        }
      }
      case SAFEST ->
          chances(
                  "as asked and in time",
                  gives.chance() * gives.wishChance(),
                  buys.chance() * buys.wishChance())
              .ifPresent(gains::add);
      case CLOSEST ->
          chances("as asked", gives.wishChance(), buys.wishChance()).ifPresent(gains::add);
    }
    if (buys.plates() > gives.plates()
        && limit.goal() != Goal.SAFEST
        && limit.limit() != Limit.PLATES) {
      gains.add(buys.plates() + " plates instead of " + gives.plates());
    }
    return gains;
  }

  private static Optional<String> chances(String how, double before, double after) {
    return chance(after).equals(chance(before))
        ? Optional.empty()
        : Optional.of(
            "%s in %s likely cases instead of %s".formatted(how, chance(after), chance(before)));
  }

  /**
   * A way out where nothing fits.
   *
   * @param way the way
   * @param request what was asked
   * @return one sentence
   */
  public static String sentence(GiveUp way, PlanRequest request) {
    RecipeOutcome gives = way.gives();
    return "%s: film of %s µm on %s, ready in %s in the middle case, and within %s in %s likely cases%s."
        .formatted(
            PlainWords.capital(
                PlainWords.list(
                    way.wishes().stream().map(wish -> given(wish, way, request)).toList())),
            MICROMETRE.two(gives.dryThicknessM()),
            Plural.of(gives.plates(), "plate"),
            Spans.of(gives.readyS()),
            Spans.of(gives.surelyReadyS()),
            chance(request.sure()),
            request.byS().isEmpty() ? "" : "; by your date in " + chance(gives.chance()));
  }

  private static String given(Limit wish, GiveUp way, PlanRequest request) {
    RecipeOutcome gives = way.gives();
    return switch (wish) {
      case DATE -> "give up the date";
      case THINNEST_FILM, THICKEST_FILM -> "give up the thickness asked for";
      case WISH ->
          "take %s film%s"
              .formatted(
                  way.feel().map(PlainWords::word).orElse("other"),
                  request.wish().feel().map(f -> " instead of " + PlainWords.word(f)).orElse(""));
      case GLYCEROL ->
          "get glycerol%s, %s g of %s for %s"
              .formatted(
                  request.supplies().glycerolKg() == 0 ? " with a label" : "",
                  GRAM.two(gives.glycerolKg()),
                  request.supplies().glycerolKg() == 0 ? "it pure" : "the kind in this jar",
                  gives.plates() == 1 ? "1 plate" : "all " + gives.plates() + " plates");
      case STARCH -> "get starch, " + GRAM.two(gives.starchKg()) + " g of it counted dry";
      case POT -> "use a pot of %s l or more".formatted(LITRE.two(gives.potM3()));
      case PLATES -> "use more plates";
      case RIM -> "use deeper plates";
      case LEVELLING -> "spread a thicker paste with a rod";
    };
  }
}
