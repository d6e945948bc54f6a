package starchfilm.planning;

import static starchfilm.numerics.figures.ReaderUnit.MEGAPASCAL;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import starchfilm.film.Feel;
import starchfilm.film.FilmForecast;
import starchfilm.numerics.figures.Figures;
import starchfilm.numerics.units.Named;

/** Refuses wishes that no amount of glycerol can meet together in the air of use. */
final class WishCheck {
  private static final double STEP = 0.02;

  private final PlanRequest request;
  private final List<StarchBlend> blends;

  WishCheck(PlanRequest request) {
    this.request = request;
    this.blends = StarchBlend.of(request.supplies());
  }

  /**
   * One thing that is wished of a film.
   *
   * @param words what is asked
   * @param film film that has it
   * @param alone the wish for it alone
   */
  private record SingleWish(String words, String film, Wish alone) {}

  void requirePossible() {
    if (window(request.wish()).isPresent()) {
      return;
    }
    List<SingleWish> asked = asked(request.wish());
    boolean one = asked.size() == 1;
    throw new IllegalArgumentException(
        "%s: no amount of glycerol gives %s in air of %s %% relative humidity; %s"
            .formatted(
                asked.stream().map(SingleWish::words).collect(Collectors.joining(" and ")),
                one ? "that" : "both",
                Figures.percent(request.use().relativeHumidity()),
                one
                    ? within()
                    : asked.stream().map(this::alone).collect(Collectors.joining(", "))
                        + "; give up one of them"));
  }

  /** The window of the first blend that meets a wish, with that blend. */
  private Optional<Map.Entry<StarchBlend, WishWindow>> window(Wish wish) {
    PlanRequest asked = request.with(wish);
    return blends.stream()
        .map(blend -> Map.entry(blend, WishWindow.of(asked, blend)))
        .filter(found -> !found.getValue().isEmpty())
        .findFirst();
  }

  private static List<SingleWish> asked(Wish wish) {
    OptionalDouble none = OptionalDouble.empty();
    List<SingleWish> asked = new ArrayList<>();
    if (wish.feel().isPresent()) {
      String film = Named.of(wish.feel().get()) + " film";
      asked.add(new SingleWish(film, film, new Wish(wish.feel(), none, none, none)));
    }
    if (wish.strengthPa().isPresent()) {
      String strength = MEGAPASCAL.brief(wish.strengthPa().getAsDouble());
      Wish alone = new Wish(Optional.empty(), wish.strengthPa(), none, none);
      asked.add(new SingleWish(strength + " of strength", "film of " + strength, alone));
    }
    if (wish.elongation().isPresent()) {
      String stretch = Figures.percent(wish.elongation().getAsDouble()) + " %";
      Wish alone = new Wish(Optional.empty(), none, wish.elongation(), none);
      asked.add(new SingleWish(stretch + " of stretch", "film that stretches " + stretch, alone));
    }
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
    return "it can be %s, up to %s strong, or stretch up to %s %%"
        .formatted(
            feels.stream().map(Named::of).collect(Collectors.joining(" or ")),
            MEGAPASCAL.brief(strongest),
            Figures.percent(stretchiest));
  }

  /** What one wish alone leaves for the others. */
  private String alone(SingleWish part) {
    return part.film() + window(part.alone()).map(this::between).orElse(" is out of reach");
  }

  private String between(Map.Entry<StarchBlend, WishWindow> found) {
    FilmForecast stiffest = WishWindow.at(found.getValue().from(), found.getKey(), request);
    FilmForecast softest = WishWindow.at(found.getValue().to(), found.getKey(), request);
    return " has about %s to %s and %s %% to %s %% of stretch"
        .formatted(
            MEGAPASCAL.brief(softest.tensileStrengthPa().middle()),
            MEGAPASCAL.brief(stiffest.tensileStrengthPa().middle()),
            Figures.percent(stiffest.elongationAtBreak().middle()),
            Figures.percent(softest.elongationAtBreak().middle()));
  }
}
