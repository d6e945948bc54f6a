package starchfilm.planning;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import starchfilm.film.Feel;
import starchfilm.film.FilmForecast;

/** Refuses wishes that no amount of glycerol can meet together in the air of use. */
final class WishCheck {
  private static final double STEP = 0.02;

  private final PlanRequest request;
  private final List<StarchBlend> blends;

  WishCheck(PlanRequest request) {
    this.request = request;
    this.blends = StarchBlend.of(request.supplies());
  }

  void requirePossible() {
    if (possible(request.wish())) {
      return;
    }
    Wish wish = request.wish();
    List<String> asked = asked(wish);
    String air =
        " in air of " + Sentence.percent(request.use().relativeHumidity()) + " relative humidity";
    if (asked.size() == 1) {
      throw new UnworkableRequestException(
          asked.get(0) + ": no amount of glycerol gives that" + air + "; " + within());
    }
    throw new UnworkableRequestException(
        String.join(" and ", asked)
            + ": no amount of glycerol gives both"
            + air
            + "; "
            + eachAlone(wish)
            + "; give up one of them");
  }

  private boolean possible(Wish wish) {
    PlanRequest asked = request.with(wish);
    return blends.stream().anyMatch(blend -> !WishWindow.of(asked, blend).isEmpty());
  }

  private static List<String> asked(Wish wish) {
    List<String> asked = new ArrayList<>();
    wish.feel().ifPresent(feel -> asked.add(word(feel) + " film"));
    wish.strengthPa().ifPresent(pa -> asked.add(megapascals(pa) + " of strength"));
    wish.elongation().ifPresent(ratio -> asked.add(Sentence.percent(ratio) + " of stretch"));
    return asked;
  }

  /** What the film can be at all. */
  private String within() {
    double strongest = 0;
    double stretchiest = 0;
    Set<Feel> feels = EnumSet.noneOf(Feel.class);
    for (StarchBlend blend : blends) {
      for (double g = 0; g <= WishWindow.MOST_PLASTICISER; g += STEP) {
        FilmForecast forecast = WishWindow.at(g, blend, request);
        strongest = Math.max(strongest, forecast.tensileStrengthPa().middle());
        stretchiest = Math.max(stretchiest, forecast.elongationAtBreak().middle());
        feels.add(forecast.feel());
      }
    }
    feels.removeAll(EnumSet.of(Feel.BRITTLE, Feel.STICKY));
    return "it can be "
        + String.join(" or ", feels.stream().map(WishCheck::word).toList())
        + ", up to "
        + megapascals(strongest)
        + " strong, or stretch up to "
        + Sentence.percent(stretchiest);
  }

  /** What each wish alone leaves for the others. */
  private String eachAlone(Wish wish) {
    List<String> parts = new ArrayList<>();
    OptionalDouble none = OptionalDouble.empty();
    if (wish.feel().isPresent()) {
      parts.add(alone(new Wish(wish.feel(), none, none, none), word(wish.feel().get()) + " film"));
    }
    if (wish.strengthPa().isPresent()) {
      parts.add(
          alone(
              new Wish(Optional.empty(), wish.strengthPa(), none, none),
              "film of " + megapascals(wish.strengthPa().getAsDouble())));
    }
    if (wish.elongation().isPresent()) {
      parts.add(
          alone(
              new Wish(Optional.empty(), none, wish.elongation(), none),
              "film that stretches " + Sentence.percent(wish.elongation().getAsDouble())));
    }
    return String.join(", ", parts);
  }

  private String alone(Wish wish, String what) {
    PlanRequest asked = request.with(wish);
    for (StarchBlend blend : blends) {
      WishWindow window = WishWindow.of(asked, blend);
      if (!window.isEmpty()) {
        FilmForecast stiffest = WishWindow.at(window.from(), blend, request);
        FilmForecast softest = WishWindow.at(window.to(), blend, request);
        return what
            + " has about "
            + megapascals(softest.tensileStrengthPa().middle())
            + " to "
            + megapascals(stiffest.tensileStrengthPa().middle())
            + " and "
            + Sentence.percent(stiffest.elongationAtBreak().middle())
            + " to "
            + Sentence.percent(softest.elongationAtBreak().middle())
            + " of stretch";
      }
    }
    return what + " is out of reach";
  }

  private static String megapascals(double pa) {
    return Sentence.two(pa * 1e-6) + " MPa";
  }

  private static String word(Feel feel) {
    return feel.name().toLowerCase(Locale.ROOT);
  }
}
