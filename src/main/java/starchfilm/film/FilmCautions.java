package starchfilm.film;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import starchfilm.casting.Casting;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Cook;

/** Which cautions a film and its paste deserve. */
final class FilmCautions {
  /** Least glycerol that can antiplasticise (kg per kg dry starch; Chang et al. 2006: 2.5 %). */
  private static final double ANTIPLASTICISES_FROM = 0.025;

  private static final double ANTIPLASTICISES_UP_TO = 0.15;
  private static final double ANTIPLASTICISES_BELOW_ACTIVITY = 0.58;
  private static final double MAY_SEPARATE_FROM = 0.30;
  private static final double SEPARATES_ABOVE = 0.50;
  private static final double MAY_SWEAT_ABOVE = 0.50;
  private static final double MOULDS_ABOVE = 0.75;
  private static final double THICK_M = 0.3e-3;
  private static final double THINS_BELOW_LENGTH_LEFT = 0.1;

  /** Share of a starch in a blend below which its cook does not matter (judged). */
  private static final double TRACE = 0.02;

  /** Gelatinisation ends higher by this much per unit of glycerol in the liquid (K; recalled). */
  private static final double SHIFT_K_PER_GLYCEROL_FRACTION = 0.5 * 100;

  private FilmCautions() {}

  /**
   * The cautions of a forecast, in the order of the enum.
   *
   * @param casting what was asked
   * @param film the film at rest with its air
   * @param glassTransitionK middle of its glass transition (K)
   * @param acid what the vinegar did
   * @param dryThicknessM middle of the dry thickness (m)
   * @return the cautions that apply
   */
  static List<FilmCaution> of(
      Casting casting,
      FilmState film,
      double glassTransitionK,
      AcidEffect acid,
      double dryThicknessM) {
    Set<FilmCaution> cautions = EnumSet.noneOf(FilmCaution.class);
    if (casting.composition().dryStarch() == 0) {
      cautions.add(FilmCaution.NO_FILM);
    }
    addForPlasticiser(cautions, film, film.temperatureK() < glassTransitionK);
    if (film.aboveGlassK() < StrengthRule.FLAWS_FROM_K) {
      cautions.add(FilmCaution.BREAKS_AT_FLAWS);
    }
    addForSalt(cautions, film.saltFractionOfDry());
    if (film.inertFractionOfDry() > InertSolids.SHOWS) {
      cautions.add(FilmCaution.INERT_SOLIDS);
    }
    addForCook(cautions, casting.composition(), casting.cook());
    PasteBody body = PasteBody.of(casting.composition());
    if (body.tooThickToLevel()) {
      cautions.add(FilmCaution.TOO_THICK_TO_LEVEL);
    }
    if (body.settles()) {
      cautions.add(FilmCaution.MAY_SETTLE);
    }
    if (acid.amylopectinLengthLeft() < THINS_BELOW_LENGTH_LEFT) {
      cautions.add(FilmCaution.PASTE_THINS);
    }
    if (film.relativeHumidity() > MOULDS_ABOVE) {
      cautions.add(FilmCaution.MOULDS_IN_USE);
    }
    if (dryThicknessM > THICK_M) {
      cautions.add(FilmCaution.THICK_FILM);
    }
    return List.copyOf(cautions);
  }

  private static void addForPlasticiser(Set<FilmCaution> cautions, FilmState film, boolean glass) {
    double plasticiser = film.glycerolPerDryStarch();
    double humidity = film.relativeHumidity();
    // The limit was seen at 50 % and in drier air; damp air softens a film as glycerol does.
    if (glass && plasticiser < PlasticiserWindow.cracksBelow(humidity)) {
      cautions.add(FilmCaution.MAY_CRACK_OFF);
    }
    if (plasticiser >= ANTIPLASTICISES_FROM
        && plasticiser <= ANTIPLASTICISES_UP_TO
        && humidity <= ANTIPLASTICISES_BELOW_ACTIVITY) {
      cautions.add(FilmCaution.ANTIPLASTICISED);
    }
    if (plasticiser > SEPARATES_ABOVE) {
      cautions.add(FilmCaution.SEPARATES);
    } else if (plasticiser >= MAY_SEPARATE_FROM) {
      cautions.add(FilmCaution.MAY_SEPARATE);
    }
    if (plasticiser > MAY_SWEAT_ABOVE) {
      cautions.add(FilmCaution.MAY_SWEAT);
    }
    if (plasticiser > PlasticiserWindow.tackyAbove(humidity)) {
      cautions.add(FilmCaution.TACKY);
    }
  }

  private static void addForSalt(Set<FilmCaution> cautions, double salt) {
    if (salt > Salt.HIGH) {
      cautions.add(FilmCaution.SALT_HIGH);
    } else if (salt > Salt.IGNORED) {
      cautions.add(FilmCaution.SALT_NOTICEABLE);
    }
  }

  private static void addForCook(Set<FilmCaution> cautions, Composition composition, Cook cook) {
    for (Map.Entry<StarchKind, Double> share : composition.starchShares().entrySet()) {
      StarchKind kind = share.getKey();
      if (share.getValue() > TRACE && uncooked(kind, composition, cook) > 0) {
        cautions.add(
            kind.cookGuide().openPanWorks()
                ? FilmCaution.UNDERCOOKED
                : FilmCaution.NEEDS_PRESSURE_COOK);
      }
    }
  }

  /**
   * How much of the starch has not gelatinised.
   *
   * @param composition the paste; a trace of a starch does not count
   * @param cook its top temperature
   * @return mass fraction, 0 to 1: 0 from the end of gelatinisation on, 1 up to its peak, straight
   *     between (judged)
   */
  static double uncooked(Composition composition, Cook cook) {
    double uncooked = 0;
    for (Map.Entry<StarchKind, Double> share : composition.starchShares().entrySet()) {
      if (share.getValue() > TRACE) {
        uncooked += share.getValue() * uncooked(share.getKey(), composition, cook);
      }
    }
    return uncooked;
  }

  private static double uncooked(StarchKind kind, Composition composition, Cook cook) {
    double liquid = composition.water() + composition.aceticAcid() + composition.glycerol();
    double shiftK =
        liquid > 0 ? SHIFT_K_PER_GLYCEROL_FRACTION * composition.glycerol() / liquid : 0;
    double belowEndK = kind.gelatinisationEndK() + shiftK - cook.topTemperatureK().value();
    double range = kind.gelatinisationEndK() - kind.gelatinisationPeakK();
    return Math.min(1, Math.max(0, belowEndK / range));
  }
}
