package starchfilm.film;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import starchfilm.casting.Casting;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Ingredient;
import starchfilm.material.sorption.FilmIsotherm;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.evidence.Extrapolation;
import starchfilm.numerics.evidence.Source;

/**
 * Forecasts the dry film from the paste, the pour, the cook and the air of use.
 *
 * <p>Each property is its rule's value times what acid, salt, age and workmanship do to it. The
 * band adds in squares, on the rule's own scale: the scatter between laboratories, the uncertainty
 * of the plasticiser level (the rule evaluated again one standard deviation below and above), and
 * the uncertainty of each influence. The influences are taken as independent.
 *
 * <p>One instance serves any number of threads.
 *
 * @param workmanship {@link Workmanship#HOME} for film made at home or at school
 * @param learnt what strips of that hand taught
 */
public record FilmForecaster(Workmanship workmanship, LearntFilm learnt) {
  /** An influence under this size is not listed among the sources or the extrapolations. */
  private static final double SHOWS = 0.005;

  private static final FilmRules RULES = FilmRules.published();

  /** A forecaster for film made at home or at school by a hand whose strips were pulled. */
  public FilmForecaster(LearntFilm learnt) {
    this(Workmanship.HOME, learnt);
  }

  /** A forecaster for film made at home or at school. */
  public FilmForecaster() {
    this(LearntFilm.NOTHING);
  }

  /**
   * Forecasts a film.
   *
   * @param casting paste, pour, cook and air of use
   * @return every property with its band, the feel, the cautions, and what the figures rest on
   */
  public FilmForecast forecast(Casting casting) {
    return forecast(casting, false);
  }

  /**
   * The same of a paste that may have been scorched: then what a pull test measures is withheld.
   */
  public FilmForecast forecast(Casting casting, boolean scorched) {
    FilmLimits.require(casting);
    Films films = Films.of(casting);
    ChainCuts cuts = new ChainCuts(casting.composition(), casting.cook());
    Ageing ageing = new Ageing(casting.use().ageS(), RULES);
    List<FilmInfluence> influences = List.of(cuts, new Salt(), new InertSolids(), ageing);
    List<FilmInfluence> acting =
        influences.stream().filter(influence -> shows(influence, films.middle())).toList();
    EquilibriumMoisture rest =
        new EquilibriumMoisture(FilmIsotherm.of(casting.composition()), films.middle());
    Band moisture = rest.band(films.below().waterKgPerKgDry(), films.above().waterKgPerKgDry());
    Band thickness = DryThickness.of(casting, moisture);
    Band glassTransition = band(FilmProperty.GLASS_TRANSITION, films, influences);
    double uncooked = FilmCautions.uncooked(casting.composition(), casting.cook());
    AcidEffect acid = cuts.acidEffect();
    List<FilmCaution> cautions =
        new FilmCautions(
                casting, films.middle(), glassTransition.middle(), acid, thickness.middle())
            .all();
    return new FilmForecast(
        moisture,
        thickness,
        glassTransition,
        lowered(band(FilmProperty.TENSILE_STRENGTH, films, influences), uncooked),
        lowered(band(FilmProperty.ELONGATION, films, influences), uncooked),
        lowered(band(FilmProperty.YOUNGS_MODULUS, films, influences), uncooked),
        band(FilmProperty.VAPOUR_PERMEABILITY, films, influences),
        acid,
        FeelInTheHand.of(
            Ageing.aged(films.middle().aboveGlassK(), ageing.mostK(films.middle())),
            FeelInTheHand.sticky(films.middle())),
        feelChances(films.middle(), glassTransition, ageing),
        Withholding.of(films.middle(), uncooked, scorched),
        cautions,
        extrapolations(rest, films.middle(), acting),
        sources(rest, acting, cautions));
  }

  /**
   * How far film of an unknown hand lies from a rule.
   *
   * @param property one whose figures scatter by a factor, such as tensile strength
   * @return standard deviation of the natural logarithm
   */
  public double logScatter(FilmProperty property) {
    return Math.log(workmanship.widened(property, RULES.of(property).scatter()).oneSigma());
  }

  /** The film as forecast, and with one standard deviation less and more plasticiser. */
  private record Films(FilmState below, FilmState middle, FilmState above) {
    static Films of(Casting casting) {
      FilmState middle = atRest(casting, casting.composition());
      double sd = Estimate.sdOfLog(casting.paste().plasticiserRelativeSd());
      if (sd == 0 || casting.composition().glycerol() == 0) {
        return new Films(middle, middle, middle);
      }
      return new Films(
          atRest(casting, casting.composition().times(Math.exp(-sd), Ingredient.GLYCEROL)),
          middle,
          atRest(casting, casting.composition().times(Math.exp(sd), Ingredient.GLYCEROL)));
    }

    private static FilmState atRest(Casting casting, Composition paste) {
      return FilmState.atRest(
          paste, casting.use().relativeHumidity(), casting.use().temperatureK());
    }
  }

  private Band band(FilmProperty property, Films films, List<FilmInfluence> influences) {
    FilmRule rule = RULES.of(property);
    double logVariance = 0;
    for (FilmInfluence influence : influences) {
      logVariance += Math.pow(influence.on(property, films.middle()).logSd(), 2);
    }
    Band band =
        learnt
            .left(property, workmanship.widened(property, rule.scatter()))
            .band(
                value(rule, films.middle(), influences),
                value(rule, films.below(), influences),
                value(rule, films.above(), influences),
                Math.sqrt(logVariance));
    return new Band(band.low() / rule.lowEndDividedBy(films.middle()), band.middle(), band.high());
  }

  /** Starch that did not gelatinise binds nothing: the low end falls with it (judged). */
  private static Band lowered(Band band, double uncooked) {
    return new Band(band.low() / (1 + 2 * uncooked), band.middle(), band.high());
  }

  private static FeelChances feelChances(FilmState film, Band glassTransition, Ageing ageing) {
    return new FeelChances(
        film.aboveGlassK(),
        glassTransition.estimate().sd(),
        ageing.mostK(film),
        FeelInTheHand.sticky(film));
  }

  private double value(FilmRule rule, FilmState film, List<FilmInfluence> influences) {
    double value =
        rule.predict(film) * workmanship.on(rule.property()) * learnt.on(rule.property());
    for (FilmInfluence influence : influences) {
      value *= influence.on(rule.property(), film).factor();
    }
    return value;
  }

  private List<Extrapolation> extrapolations(
      EquilibriumMoisture rest, FilmState film, List<FilmInfluence> acting) {
    List<Extrapolation> outside = new ArrayList<>(rest.extrapolations());
    Stream.concat(RULES.all().stream(), acting.stream())
        .flatMap(basis -> basis.outside(film))
        .forEach(outside::add);
    return outside;
  }

  private List<Source> sources(
      EquilibriumMoisture rest, List<FilmInfluence> acting, List<FilmCaution> cautions) {
    return Source.once(
        Stream.of(
                rest.sources().stream(),
                Stream.of(DryThickness.SOURCE),
                RULES.all().stream().flatMap(rule -> rule.sources().stream()),
                workmanship.sources().stream(),
                acting.stream().flatMap(influence -> influence.sources().stream()),
                Stream.of(FeelInTheHand.SOURCE),
                cautions.stream().map(FilmCaution::source))
            .flatMap(sources -> sources));
  }

  private static boolean shows(FilmInfluence influence, FilmState film) {
    return Arrays.stream(FilmProperty.values())
        .map(property -> influence.on(property, film))
        .anyMatch(effect -> Math.max(Math.abs(Math.log(effect.factor())), effect.logSd()) > SHOWS);
  }
}
