package starchfilm.film.risk;

import starchfilm.drying.SpotMoment;
import starchfilm.film.DryingMechanics;
import starchfilm.material.recipe.Composition;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * The stress that builds up in one spot of a film that is stuck to its plate, moment by moment.
 *
 * <p>Stuck to a rigid plate a film cannot shrink in its plane, so each loss of volume stretches it:
 * {@code d sigma = r E/(1 - nu) d(-ln v)/3}, from the cooled paste on, never below 0. v: volume per
 * dry solids; E: its modulus at that moment; nu = 0.35; r = 0.2, the share that does not relax
 * (judged, times or divided by 1.7). Skin, middle and core each have their own moisture, straight
 * weights of Simpson's rule, and their own stress.
 *
 * <p>It cracks where {@code 1.13 (1 - nu^2) h mean(sigma^2/E)} passes its toughness (channel crack
 * in a film on a rigid support: 1.13 by our own finite elements; Beuth 1992, Int. J. Solids Struct.
 * 29:1657, recalled), and lets go of its plate where {@code (1 - nu^2) h mean(sigma^2/E)/2} passes
 * the adhesion. h: thickness at that moment (m).
 *
 * <p>r puts corn and potato without glycerol at 33 to 50 % relative humidity at 21 to 33 MPa;
 * gelatin coatings at room temperature reached 10 to 40 MPa ("Stress development in aqueous gelatin
 * coatings", Proc. IS&amp;T 49th Annual Conference, Minneapolis 1996, abstract read).
 */
final class FilmStress {
  /** Where the rule comes from. */
  static final Source SOURCE =
      new Source(
          "stress of a film stuck to its plate, a fifth of which does not relax: judged, after"
              + " gelatin coatings (Proc. IS&T 49th Annual Conference, Minneapolis 1996); energy of"
              + " a channel crack 1.13 sigma^2 h (1 - nu^2)/E: our finite elements, Beuth 1992, Int."
              + " J. Solids Struct. 29:1657",
          Check.JUDGED);

  private static final double UNRELAXED = 0.2;
  private static final double POISSON = 0.35;
  private static final double PLANE_STRAIN = 1 - POISSON * POISSON;
  private static final double CHANNEL = 1.13;
  private static final double[] WEIGHTS = {1.0 / 6, 4.0 / 6, 1.0 / 6};

  /** A bone-dry skin still has a logarithm (kg/kg). */
  private static final double LEAST_MOISTURE = 1e-4;

  /** Longest step in the state, so that the steep modulus is followed (K). */
  private static final double STEP_K = 4;

  private final DryingMechanics mechanics;
  private final Composition composition;
  private final double solidsKgPerM2;
  private final double[] stressPa = new double[WEIGHTS.length];
  private final double[] moisture = new double[WEIGHTS.length];
  private double temperatureK;
  private double energyJPerM3;
  private double toughnessJPerM2;

  FilmStress(DryingMechanics mechanics, Composition composition, double solidsKgPerM2) {
    this.mechanics = mechanics;
    this.composition = composition;
    this.solidsKgPerM2 = solidsKgPerM2;
  }

  /** Starts with the paste as poured: a gel without stress. */
  void start(SpotMoment moment) {
    for (int layer = 0; layer < WEIGHTS.length; layer++) {
      moisture[layer] = moisture(moment, layer);
    }
    temperatureK = moment.temperatureK();
  }

  /** Goes on to the next moment. */
  void follow(SpotMoment next) {
    energyJPerM3 = 0;
    toughnessJPerM2 = 0;
    for (int layer = 0; layer < WEIGHTS.length; layer++) {
      double to = moisture(next, layer);
      stressPa[layer] = stressed(stressPa[layer], moisture[layer], to, next.temperatureK());
      moisture[layer] = to;
      double modulus = mechanics.modulusPa(to, next.temperatureK());
      energyJPerM3 += WEIGHTS[layer] * stressPa[layer] * stressPa[layer] / modulus;
      toughnessJPerM2 += WEIGHTS[layer] * mechanics.toughnessJPerM2(to, next.temperatureK());
    }
    temperatureK = next.temperatureK();
  }

  private double stressed(double before, double from, double to, double toK) {
    double states =
        Math.abs(mechanics.aboveGlassK(to, toK) - mechanics.aboveGlassK(from, temperatureK));
    int steps = (int) Math.ceil(states / STEP_K) + 1;
    double stress = before;
    double ratio = Math.pow(to / from, 1.0 / steps);
    double here = from;
    for (int i = 0; i < steps; i++) {
      double there = here * ratio;
      double middleK = temperatureK + (toK - temperatureK) * (i + 0.5) / steps;
      double modulus = mechanics.modulusPa(Math.sqrt(here * there), middleK);
      double shrinking =
          Math.log(composition.volumeM3PerKgDry(here) / composition.volumeM3PerKgDry(there)) / 3;
      stress = Math.max(0, stress + UNRELAXED * modulus / (1 - POISSON) * shrinking);
      here = there;
    }
    return stress;
  }

  /** Skin, middle and core, so that their mean is the moment's. */
  private static double moisture(SpotMoment moment, int layer) {
    double skin = Math.max(LEAST_MOISTURE, moment.skinMoisture());
    double core = Math.max(skin, moment.coreMoisture());
    return switch (layer) {
      case 0 -> skin;
      case 1 -> Math.min(core, Math.max(skin, (6 * moment.meanMoisture() - skin - core) / 4));
      default -> core;
    };
  }

  /** Energy of a crack over the toughness, at this moment, were the film as thick as it is. */
  double crackRatio() {
    return CHANNEL * PLANE_STRAIN * thicknessM() * energyJPerM3 / toughnessJPerM2;
  }

  /** The stress of a loose film that is held at its rim. */
  double heldCrackRatio(double heldM) {
    return PLANE_STRAIN * heldM / 2 * energyJPerM3 / toughnessJPerM2;
  }

  /** Energy that pulls the film off its plate (J/m2). */
  double liftingJPerM2() {
    return PLANE_STRAIN * thicknessM() * energyJPerM3 / 2;
  }

  /** Stress averaged over the thickness (Pa). */
  double stressPa() {
    double mean = 0;
    for (int layer = 0; layer < WEIGHTS.length; layer++) {
      mean += WEIGHTS[layer] * stressPa[layer];
    }
    return mean;
  }

  double thicknessM() {
    return solidsKgPerM2 * meanVolume();
  }

  /** Volume per dry solids, averaged over the thickness (m3/kg). */
  double meanVolume() {
    double volume = 0;
    for (int layer = 0; layer < WEIGHTS.length; layer++) {
      volume += WEIGHTS[layer] * composition.volumeM3PerKgDry(moisture[layer]);
    }
    return volume;
  }

  /** Volume of core over skin, its logarithm: what a loose film still has to shrink unevenly. */
  double unevenShrinking() {
    return Math.log(
        composition.volumeM3PerKgDry(moisture[WEIGHTS.length - 1])
            / composition.volumeM3PerKgDry(moisture[0]));
  }
}
