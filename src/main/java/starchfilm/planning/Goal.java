package starchfilm.planning;

import java.util.OptionalDouble;
import starchfilm.film.FilmForecast;

/** An aim that a recipe may be best at. */
public enum Goal {
  /** Most likely that nothing goes wrong. */
  SAFEST,
  /** Most film, by its mass. */
  MOST_FILM,
  /** Ready soonest. */
  SOONEST,
  /** Closest to the film asked for. */
  CLOSEST;

  /** Small enough that what decides is never traded for comfort by more than it can show. */
  private static final double TIE_BREAKER = 0.003;

  /** A tenth more film is not worth halving the chance that it is the film asked for; ours. */
  private static final double WISH_SHARE = 0.2;

  private static final double SECOND_THOUGHT = 0.1;

  /** Film in the middle of what people cast (m); common practice, no source. */
  private static final double MIDDLING_M = 0.11e-3;

  /** Sour enough that bacteria keep away while the film dries; judged, no source. */
  private static final double SOUR_PH = 3.5;

  /** With less than this of the amylopectin's length left a paste may thin; judged. */
  private static final double LENGTH_LEFT = 0.15;

  private static final double THINNING_COUNTS = 5;

  /**
   * The place of the wet thickness between floor and ceiling, where the goal settles it.
   *
   * @return 0 for the thinnest, 1 for the thickest, empty where the search decides
   */
  OptionalDouble thickness() {
    return switch (this) {
      case MOST_FILM -> OptionalDouble.of(1);
      case SOONEST -> OptionalDouble.of(0);
      case SAFEST, CLOSEST -> OptionalDouble.empty();
    };
  }

  /** How good a recipe is; more is better, and only differences count. */
  double score(Candidate candidate, RecipeSpace space) {
    double inTime = Math.log(Math.max(1e-6, candidate.chance()));
    double asWished = Math.log(Math.max(1e-6, candidate.wishChance()));
    double comfort = comfort(candidate, space);
    return switch (this) {
      case SAFEST -> inTime + asWished + comfort;
      case MOST_FILM ->
          Math.log(candidate.filmKg()) + WISH_SHARE * asWished + TIE_BREAKER * comfort;
      case SOONEST -> -Math.log(candidate.readyS()) + WISH_SHARE * asWished + TIE_BREAKER * comfort;
      case CLOSEST -> -distance(candidate, space) + SECOND_THOUGHT * (comfort + inTime);
    };
  }

  /** How pleasant a recipe is to make; 0 at best, and small where nothing is at stake. */
  private static double comfort(Candidate candidate, RecipeSpace space) {
    StarchBlend blend = space.blend();
    double middle = (blend.castFrom() + blend.castTo()) / 2;
    double half = Math.max(1e-9, (blend.castTo() - blend.castFrom()) / 2);
    double body = square((candidate.design().starchInPaste() - middle) / half);
    double thickness = square(Math.log(candidate.dryThicknessM() / wishedThickness(space)));
    FilmForecast film = candidate.film();
    double sour = space.request().supplies().vinegarAcidityFraction() > 0 ? sour(film) : 0;
    return -0.1 * body - 0.2 * thickness - 0.1 * sour;
  }

  /** Too little vinegar leaves the paste to bacteria; more than that does nothing, or thins it. */
  static double sour(FilmForecast film) {
    double offSour = film.acid().pastePh() - SOUR_PH;
    double thinned = Math.max(0, Math.log(LENGTH_LEFT / film.acid().amylopectinLengthLeft()));
    return square(offSour) + square(THINNING_COUNTS * thinned);
  }

  private static double distance(Candidate candidate, RecipeSpace space) {
    WishWindow window = space.window();
    Wish wish = space.request().wish();
    double half = Math.max(1e-9, (window.to() - window.from()) / 2);
    double feel = square((candidate.design().plasticiser() - window.centre()) / half);
    double thickness =
        wish.dryThicknessM().isPresent()
            ? square(10 * Math.log(candidate.dryThicknessM() / wish.dryThicknessM().getAsDouble()))
            : 0;
    return feel + thickness;
  }

  private static double wishedThickness(RecipeSpace space) {
    return space.request().wish().dryThicknessM().orElse(MIDDLING_M);
  }

  private static double square(double x) {
    return x * x;
  }
}
