package starchfilm.film;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import starchfilm.casting.Casting;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Cook;

/**
 * The facts that a film and its paste are cautioned by.
 *
 * @param casting what was asked
 * @param film the film at rest with its air
 * @param glassTransitionK middle of its glass transition (K)
 * @param acid what the vinegar did
 * @param dryThicknessM middle of the dry thickness (m)
 */
record FilmCautions(
    Casting casting,
    FilmState film,
    double glassTransitionK,
    AcidEffect acid,
    double dryThicknessM) {
  /** Least glycerol that can antiplasticise (kg per kg dry starch; Chang et al. 2006: 2.5 %). */
  private static final double ANTIPLASTICISES_FROM = 0.025;

  private static final double ANTIPLASTICISES_UP_TO = 0.15;
  private static final double ANTIPLASTICISES_BELOW_ACTIVITY = 0.58;

  /** Gelatinisation ends higher by this much per unit of glycerol in the liquid (K; recalled). */
  private static final double SHIFT_K_PER_GLYCEROL_FRACTION = 0.5 * 100;

  /**
   * The cautions of a forecast.
   *
   * @return the cautions that apply, in the order of the enum
   */
  List<FilmCaution> all() {
    return Arrays.stream(FilmCaution.values()).filter(each -> each.applies(this)).toList();
  }

  double plasticiser() {
    return film.glycerolPerDryStarch();
  }

  /** The limit was seen at 50 % and in drier air; damp air softens a film as glycerol does. */
  boolean mayCrackOff() {
    return film.temperatureK() < glassTransitionK
        && plasticiser() < PlasticiserWindow.cracksBelow(film.relativeHumidity());
  }

  boolean isAntiplasticised() {
    return plasticiser() >= ANTIPLASTICISES_FROM
        && plasticiser() <= ANTIPLASTICISES_UP_TO
        && film.relativeHumidity() <= ANTIPLASTICISES_BELOW_ACTIVITY;
  }

  PasteBody body() {
    return PasteBody.of(casting.composition());
  }

  /** Whether a starch is not done that an open pan cooks, or one that it does not. */
  boolean leavesUncooked(boolean ofOpenPan) {
    return casting.composition().kinds().stream()
        .filter(kind -> kind.cookGuide().openPanWorks() == ofOpenPan)
        .anyMatch(kind -> uncooked(kind, casting.composition(), casting.cook()) > 0);
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
    Map<StarchKind, Double> shares = composition.starchShares();
    return composition.kinds().stream()
        .mapToDouble(kind -> shares.getOrDefault(kind, 0.0) * uncooked(kind, composition, cook))
        .sum();
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
