package starchfilm.report.words;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import starchfilm.planning.BindingLimit;
import starchfilm.planning.GiveUp;
import starchfilm.planning.Goal;
import starchfilm.planning.Limit;
import starchfilm.planning.Outcome;
import starchfilm.planning.PlanRequest;
import starchfilm.planning.Wish;

/** What a plan finds, in plain words. */
public final class PlanWords {
  private static final double POT_FILLED = 0.75;
  private static final double STEAM = 1.07;
  private static final double LITRES_PER_KG = 1.003;

  private PlanWords() {}

  /**
   * What a recipe is best at.
   *
   * @param goals at least one
   * @return such as {@code Safest and ready soonest}
   */
  public static String title(Collection<Goal> goals) {
    String text =
        PlainWords.list(
            goals.stream()
                .map(
                    goal ->
                        switch (goal) {
                          case SAFEST -> "safest";
                          case MOST_FILM -> "most film";
                          case SOONEST -> "ready soonest";
                          case CLOSEST -> "closest to the wish";
                        })
                .toList());
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }

  /**
   * The film asked for.
   *
   * @param wish the wish
   * @return such as {@code flexible film, 0.12 mm thick}
   */
  public static String wish(Wish wish) {
    List<String> parts = new ArrayList<>();
    parts.add(wish.feel().map(feel -> PlainWords.word(feel) + " film").orElse("film"));
    wish.strengthPa()
        .ifPresent(pa -> parts.add("at least " + ReaderUnit.MEGAPASCAL.noted(pa) + " strong"));
    wish.elongation()
        .ifPresent(ratio -> parts.add("stretching at least " + ReaderUnit.PERCENT.noted(ratio)));
    wish.dryThicknessM().ifPresent(m -> parts.add(ReaderUnit.MILLIMETRE.noted(m) + " thick"));
    return String.join(", ", parts);
  }

  /**
   * A chance.
   *
   * @param share 0 to 1
   * @return such as {@code 8 of 10}; never a certainty
   */
  public static String chance(double share) {
    if (share > 0.95) {
      return "over 9 of 10";
    }
    return share < 0.05 ? "under 1 of 10" : Math.round(10 * share) + " of 10";
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
        .map(buys -> moved(limit) + ": " + gain(limit.goal(), limit.gives(), buys) + ".");
  }

  private static String moved(BindingLimit limit) {
    return switch (limit.limit()) {
      case GLYCEROL ->
          "Glycerol is the limit; with "
              + ReaderUnit.GRAM.two(limit.moved())
              + " g of it instead of "
              + ReaderUnit.GRAM.two(limit.now())
              + " g";
      case STARCH ->
          "Starch is the limit; with "
              + ReaderUnit.GRAM.two(limit.moved())
              + " g of dry starch instead of "
              + ReaderUnit.GRAM.two(limit.now())
              + " g";
      case POT ->
          "One plate takes everything the pot holds; with a pot of "
              + Figures.two(1e3 * limit.moved())
              + " l";
      case PLATES ->
          "Every plate is used; with "
              + Math.round(limit.moved())
              + " plates instead of "
              + Math.round(limit.now());
      case DATE -> "The date limits the thickness; a day later";
      case THICKEST_FILM ->
          "Already as thick as you asked for, or as is usual; at "
              + ReaderUnit.MILLIMETRE.two(limit.moved())
              + " mm instead of "
              + ReaderUnit.MILLIMETRE.two(limit.now())
              + " mm";
      case THINNEST_FILM ->
          "Already as thin as you asked for, or as is usual; at "
              + ReaderUnit.MILLIMETRE.two(limit.moved())
              + " mm instead of "
              + ReaderUnit.MILLIMETRE.two(limit.now())
              + " mm";
      case RIM -> "The pour is as high as the plate can hold";
      case LEVELLING ->
          "This is the thickest paste that levels by itself; spread with a rod,"
              + " at up to "
              + ReaderUnit.PERCENT.two(limit.moved())
              + " % starch";
      case WISH ->
          "It is at the limit of the film you asked for; with "
              + limit.buys().map(b -> level(b.plasticiser())).orElse("another plasticiser level");
    };
  }

  private static String gain(Goal goal, Outcome gives, Outcome buys) {
    String text =
        switch (goal) {
          case MOST_FILM ->
              ReaderUnit.GRAM.two(buys.filmKg())
                  + " g of film instead of "
                  + ReaderUnit.GRAM.two(gives.filmKg())
                  + " g";
          case SOONEST ->
              "ready in " + Spans.of(buys.readyS()) + " rather than " + Spans.of(gives.readyS());
          case SAFEST ->
              "as asked and in time in "
                  + chance(buys.chance() * buys.wishChance())
                  + " likely cases instead of "
                  + chance(gives.chance() * gives.wishChance());
          case CLOSEST ->
              "as asked in "
                  + chance(buys.wishChance())
                  + " likely cases instead of "
                  + chance(gives.wishChance());
        };
    return buys.plates() > gives.plates() && goal != Goal.SAFEST
        ? text + ", on " + buys.plates() + " plates instead of " + gives.plates()
        : text;
  }

  private static String level(double plasticiser) {
    return Figures.two(100 * plasticiser) + " g glycerol per 100 g dry starch";
  }

  /**
   * A way out where nothing fits.
   *
   * @param way the way
   * @param request what was asked
   * @return one sentence
   */
  public static String sentence(GiveUp way, PlanRequest request) {
    List<String> parts = new ArrayList<>();
    for (Limit wish : way.wishes()) {
      parts.add(given(wish, way, request));
    }
    String text = PlainWords.list(parts);
    Outcome gives = way.gives();
    return Character.toUpperCase(text.charAt(0))
        + text.substring(1)
        + ": film of "
        + ReaderUnit.MILLIMETRE.two(gives.dryThicknessM())
        + " mm on "
        + Plural.of(gives.plates(), "plate")
        + ", ready in "
        + Spans.of(gives.readyS())
        + " in the middle case, and within "
        + Spans.of(gives.surelyReadyS())
        + " in "
        + chance(request.sure())
        + " likely cases"
        + byTheDate(request.byS(), gives)
        + ".";
  }

  private static String byTheDate(OptionalDouble byS, Outcome gives) {
    return byS.isEmpty() ? "" : "; by your date in " + chance(gives.chance());
  }

  private static String given(Limit wish, GiveUp way, PlanRequest request) {
    Outcome gives = way.gives();
    return switch (wish) {
      case DATE -> "give up the date";
      case THINNEST_FILM, THICKEST_FILM -> "give up the thickness asked for";
      case WISH ->
          "take "
              + way.feel().map(PlainWords::word).orElse("other")
              + " film"
              + request.wish().feel().map(f -> " instead of " + PlainWords.word(f)).orElse("");
      case GLYCEROL ->
          "get glycerol, "
              + ReaderUnit.GRAM.two(gives.glycerolKg())
              + (request.supplies().glycerolKg() == 0
                  ? " g of it pure for "
                  : " g of the kind in this jar for ")
              + (gives.plates() == 1 ? "1 plate" : "all " + gives.plates() + " plates");
      case STARCH ->
          "get starch, " + ReaderUnit.GRAM.two(gives.starchKg()) + " g of it counted dry";
      case POT ->
          "use a pot of "
              + Figures.two(gives.potfulKg() * STEAM * LITRES_PER_KG / POT_FILLED)
              + " l or more";
      case PLATES -> "use more plates";
      case RIM -> "use deeper plates";
      case LEVELLING -> "spread a thicker paste with a rod";
    };
  }
}
