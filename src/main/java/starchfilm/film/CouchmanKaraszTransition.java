package starchfilm.film;

import java.util.List;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * Glass transition of the starch-rich phase of starch, glycerol and sorbed water.
 *
 * <p>{@code Tg = sum(w_i dCp_i Tg_i) / sum(w_i dCp_i)}
 *
 * <p>w: mass fraction in starch, glycerol and water; dCp: step of the heat capacity at the glass
 * transition (J/(g K)); Tg: glass transition of the pure part (K).
 *
 * <table>
 * <caption>Constants</caption>
 * <tr><th>part</th><th>Tg (K)</th><th>dCp (J/(g K))</th><th>source</th></tr>
 * <tr><td>starch</td><td>605</td><td>0.27</td><td>605: Bizot et al. 1997, Carbohydr. Polym. 32:33,
 * amylose, extrapolated (recalled); 0.27: fitted by us</td></tr>
 * <tr><td>glycerol</td><td>193</td><td>1.61</td><td>Tg 191 to 199 K (read); step fitted by us: the
 * calorimetric 0.88 to 0.97 (recalled) misses the plasticised films</td></tr>
 * <tr><td>water</td><td>135</td><td>1.94</td><td>Tg: Inaba and Andersson 2007, Thermochim. Acta
 * 461:44 (read); dCp recalled</td></tr>
 * </table>
 *
 * <p>Valid for: up to 55 g glycerol per 100 g dry starch, 20 to 75 % relative humidity. Outside:
 * extrapolated and flagged. Salt lowers the glass transition by an amount not published for films;
 * it is left out here and warned of.
 *
 * <p>Source: Couchman and Karasz 1978, Macromolecules 11:117, equation for the entropy route with
 * constant dCp Tg (recalled). The two fitted constants meet nine published points of four sources
 * within 6 K root mean square, so those calibrate it and do not validate it; one corn film at 45 %
 * humidity, 56 °C, was left out and lies 60 K above the rule. Band: 20 K. Peaks of dynamic
 * mechanical tests lie 20 to 30 K higher.
 */
final class CouchmanKaraszTransition extends FilmRule {
  private static final double STARCH_K = 605;
  private static final double STARCH_STEP = 0.27;
  private static final double GLYCEROL_K = 193;
  private static final double GLYCEROL_STEP = 1.61;
  private static final double WATER_K = 135;
  private static final double WATER_STEP = 1.94;
  private static final double BAND_K = 20;

  private static final List<Source> SOURCES =
      List.of(
          new Source(
              "Couchman and Karasz 1978, Macromolecules 11:117, equation for Tg of mixtures",
              Check.RECALLED),
          new Source(
              "heat-capacity steps of dry starch, 0.27 J/(g K), and of glycerol in it, 1.61, fitted"
                  + " to nine glass transitions: Pyda and Wunderlich 2001, J. Polym. Sci. B 39:3038"
                  + " and Zeleznak and Hoseney 1987, Cereal Chem. 64:121 (read); Kalichevsky et al."
                  + " 1992, Carbohydr. Polym. 18:77 and Averous et al. 2000 to 2004, wheat starch"
                  + " with 13.5, 26, 36 and 54 g glycerol per 100 g (recalled)",
              Check.COMPUTED),
          new Source(
              "Bizot et al. 1997, Carbohydr. Polym. 32:33, dry starch 605 K; glycerol 193 K and"
                  + " heat-capacity step of water",
              Check.RECALLED),
          new Source("Inaba and Andersson 2007, Thermochim. Acta 461:44, water 135 K", Check.READ));

  CouchmanKaraszTransition() {
    super(
        FilmProperty.GLASS_TRANSITION,
        RuleScatter.plusMinus(BAND_K),
        List.of(FilmState.plasticiser(0, 55), FilmState.humidity(20, 75)),
        SOURCES);
  }

  @Override
  double predict(FilmState film) {
    return kelvin(film);
  }

  /** The glass transition (K) of a film. */
  static double kelvin(FilmState film) {
    return kelvin(film.glycerolFraction(), film.saltFractionOfDry(), film.waterKgPerKgDry());
  }

  /** The glass transition (K); glycerol in starch and glycerol, salt and water per dry solids. */
  static double kelvin(double glycerolFraction, double salt, double waterKgPerKgDry) {
    double starch = (1 - salt) * (1 - glycerolFraction) * STARCH_STEP;
    double glycerol = (1 - salt) * glycerolFraction * GLYCEROL_STEP;
    double water = waterKgPerKgDry * WATER_STEP;
    // The common divisor that turns masses into mass fractions cancels.
    return (starch * STARCH_K + glycerol * GLYCEROL_K + water * WATER_K)
        / (starch + glycerol + water);
  }
}
