package starchfilm.film;

import java.util.function.Predicate;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/** The cautions of the film rules, each with its condition and its basis. */
public enum FilmCaution {
  /** Without starch there is no film; the glycerol stays a liquid. */
  NO_FILM(
      it -> it.casting().composition().dryStarch() == 0,
      new Source("common practice, no source", Check.JUDGED)),
  /** So little glycerol for this air that the film may crack off the plate. */
  MAY_CRACK_OFF(
      FilmCautions::mayCrackOff,
      new Source(
          "brittle below 20 g glycerol per 100 g starch at 50 % relative humidity, below 25 g under"
              + " 35 %: judged from the elongation rows and the glass transition",
          Check.JUDGED)),
  /** So dry that it breaks at its first flaw. */
  BREAKS_AT_FLAWS(
      it -> it.film().aboveGlassK() < StrengthRule.FLAWS_FROM_K,
      new Source(
          "Shogren and Jasberg 1994, corn film half as strong at 20 % relative humidity as at 50 %;"
              + " Chang et al. 2000, tapioca film strongest at 4 to 8 % water",
          Check.READ)),
  /** A little glycerol may make the film more brittle than none. */
  ANTIPLASTICISED(
      FilmCautions::isAntiplasticised,
      new Source(
          "Shimazu, Mali and Grossmann 2007, cassava film stiffer with up to 15 g glycerol below a"
              + " water activity of 0.58; Chang, Abd Karim and Seow 2006, tapioca, least strain at"
              + " 10 to 15 % glycerol",
          Check.READ)),
  /** Starch and glycerol may part into two phases under the microscope; seldom seen by eye. */
  MAY_SEPARATE(
      it -> it.plasticiser() >= 0.30 && it.plasticiser() <= FilmCaution.SEPARATES_ABOVE,
      phaseSeparation()),
  /** So much glycerol that starch and glycerol part into two phases. */
  SEPARATES(it -> it.plasticiser() > FilmCaution.SEPARATES_ABOVE, phaseSeparation()),
  /** Glycerol may sweat out as beads, sooner as the film ages and the humidity swings. */
  MAY_SWEAT(
      it -> it.plasticiser() > 0.50,
      new Source(
          "beads of glycerol above 50 to 60 g per 100 g starch: common practice, no source",
          Check.JUDGED)),
  /** Tacky in this air. */
  TACKY(
      it -> FeelInTheHand.sticky(it.film()),
      new Source(
          "tacky above 40 to 45 g glycerol per 100 g starch at 50 % relative humidity, above 35 g"
              + " at 75 %: common practice, no source",
          Check.JUDGED)),
  /** Salt over 2 % of the dry solids widens the bands. */
  SALT_NOTICEABLE(
      it -> it.film().saltFractionOfDry() > Composition.SALT_UNNOTICED && !Salt.isHigh(it.film()),
      Salt.SOURCE),
  /** Salt over 5 % of the dry solids lowers strength and stretch and may bloom. */
  SALT_HIGH(it -> Salt.isHigh(it.film()), Salt.SOURCE),
  /** Inert solids, of which only how wide they make the bands is known. */
  INERT_SOLIDS(it -> it.film().inertFractionOfDry() > InertSolids.SHOWS, InertSolids.SOURCE),
  /** An open pan does not gelatinise this starch. */
  NEEDS_PRESSURE_COOK(it -> it.leavesUncooked(false), StarchKind.SOURCE),
  /** The paste is too thick to level. */
  TOO_THICK_TO_LEVEL(it -> it.body().tooThickToLevel(), PasteBody.SOURCE),
  /** The paste is so thin that the starch settles. */
  MAY_SETTLE(it -> it.body().settles(), PasteBody.SOURCE),
  /** The top temperature was below the end of gelatinisation. */
  UNDERCOOKED(it -> it.leavesUncooked(true), StarchKind.SOURCE),
  /** The acid cuts the amylopectin so short that the paste thins, long before the film weakens. */
  PASTE_THINS(
      it -> it.acid().amylopectinLengthLeft() < 0.1,
      new Source(
          "less than a tenth of the amylopectin's length left: recalled rate of acid hydrolysis,"
              + " threshold judged",
          Check.JUDGED)),
  /** The film is kept so damp that it moulds even when dry. */
  MOULDS_IN_USE(
      it -> it.film().relativeHumidity() > 0.75,
      new Source(
          "lower limits of moulds, 75 to 80 % relative humidity: Beuchat 1981, Cereal Foods World"
              + " 26:345",
          Check.READ)),
  /** The dry film is thinner than people cast it: it tears easily. */
  THIN_FILM(
      it -> it.dryThicknessM() < FilmCaution.USUALLY_THINNEST_M - FilmCaution.ROUNDED_M,
      new Source("under 50 µm film tears easily: common practice, no source", Check.JUDGED)),
  /** The dry film is over 0.3 mm: slow, curling, cracking. */
  THICK_FILM(
      it -> it.dryThicknessM() > 0.3e-3,
      new Source(
          "over 300 µm dry film dries slowly, curls, cracks and moulds: judged", Check.JUDGED));

  /** The thinnest film that people cast at home (m); thinner film tears easily. */
  public static final double USUALLY_THINNEST_M = 50e-6;

  /** The thickest film that people cast at home (m); common practice, no source. */
  public static final double USUALLY_THICKEST_M = 250e-6;

  /** What is shown as the thinnest is no thinner (m). */
  private static final double ROUNDED_M = 0.5e-6;

  private static final double SEPARATES_ABOVE = 0.50;

  private final Predicate<FilmCautions> applies;
  private final Source source;

  FilmCaution(Predicate<FilmCautions> applies, Source source) {
    this.applies = applies;
    this.source = source;
  }

  boolean applies(FilmCautions to) {
    return applies.test(to);
  }

  /**
   * Returns the source of the caution's limit.
   *
   * @return where its limit comes from
   */
  public Source source() {
    return source;
  }

  private static Source phaseSeparation() {
    return new Source(
        "two glass transitions at 30 and 45 g glycerol per 100 g cassava starch, one at 15 g: Bergo"
            + " et al. 2008; barley: Forssell et al. 1997, Carbohydr. Polym. 34:275; firm limit of"
            + " 50 g judged",
        Check.READ);
  }
}
