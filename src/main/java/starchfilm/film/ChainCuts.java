package starchfilm.film;

import static starchfilm.numerics.units.Nature.GAS_CONSTANT_J_PER_MOL_K;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.util.List;
import starchfilm.material.ingredient.AceticAcid;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Cook;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;
import starchfilm.numerics.evidence.ValidRange;

/**
 * Hot acid cuts the starch chains while the paste cooks, and shorter amylose makes weaker film.
 *
 * <p>{@code s = k [H+] t, k = 2e-5 exp(-(Ea/R)(1/T - 1/353.15)) L/(mol s)}
 *
 * <p>{@code 1/DPn = 1/DP0 + s; factor = 1 - 0.5 (1 - DPn/DP0)}
 *
 * <p>s: cuts per bond; [H+]: mol/L, from the acetic acid in the paste's volume; t: time at the top
 * temperature T (s, K); Ea: 130 kJ/mol; DP0: 1000, number-average chain length of amylose; DPn: the
 * same after the cook.
 *
 * <p>Valid for: a paste of pH 2.4 or more, and a top temperature of 60 to 130 °C. Outside:
 * extrapolated and flagged. Limits: heating up and cooling down do not count; the pH is that of
 * acetic acid in pure water at 25 °C; acetic acid does not cross-link and most of it leaves with
 * the water.
 *
 * <p>Source: acid hydrolysis of starch, rate 2e-5 L/(mol s) at 80 °C and 130 kJ/mol, recalled,
 * times or divided by 3 (one standard deviation); chain length 1000 recalled; share of 0.5 judged.
 * Rice film cast from 0.5 mol/L acetic acid was no weaker than from water once it held 50 g
 * glycerol (read).
 */
final class ChainCuts extends FilmInfluence {
  private static final double RATE_L_PER_MOL_S = 2e-5;
  private static final double RATE_AT_K = 353.15;
  private static final double RATE_FACTOR = 3;
  private static final double ACTIVATION_J_PER_MOL = 130_000;
  private static final double AMYLOSE_LENGTH = 1000;
  private static final double STRENGTH_SHARE = 0.5;

  private static final List<Source> SOURCES =
      List.of(
          AceticAcid.SOURCE,
          new Source(
              "acid hydrolysis of starch: 2e-5 L/(mol s) at 80 °C, 130 kJ/mol, times or divided by 3;"
                  + " amylose of 1000 units",
              Check.RECALLED),
          new Source("strength falls by half the share of chain length lost", Check.JUDGED));

  private final double ph;
  private final double cutsPerBond;
  private final double cutsLogSd;

  /**
   * The cuts of one cook.
   *
   * @param composition the paste with its acetic acid
   * @param cook its time and top temperature; their uncertainty widens the band
   */
  ChainCuts(Composition composition, Cook cook) {
    this(
        composition.aceticAcid() > 0,
        AceticAcid.ph(
            AceticAcid.molPerM3(composition.aceticAcid(), 1 / composition.pasteDensityKgPerM3())),
        cook);
  }

  private ChainCuts(boolean acid, double ph, Cook cook) {
    super(
        "chain cuts by the acid",
        List.of(
            new RuleLimit(new ValidRange("paste pH", 2.4, 7, ""), film -> ph),
            new RuleLimit(
                new ValidRange("top temperature of the cook", 60, 130, "°C"),
                film -> cook.topTemperatureK().value() - ZERO_CELSIUS_K)),
        SOURCES);
    this.ph = ph;
    double topTemperatureK = cook.topTemperatureK().value();
    double perK = ACTIVATION_J_PER_MOL / GAS_CONSTANT_J_PER_MOL_K;
    double rate = RATE_L_PER_MOL_S * Math.exp(perK * (1 / RATE_AT_K - 1 / topTemperatureK));
    double hydrogenMolPerL = Math.pow(10, -ph);
    double timeS = cook.durationS().value();
    cutsPerBond = acid ? rate * hydrogenMolPerL * timeS : 0;
    double fromTemperature =
        perK * cook.topTemperatureK().sd() / (topTemperatureK * topTemperatureK);
    double fromTime = timeS > 0 ? cook.durationS().sd() / timeS : 0;
    cutsLogSd = Math.hypot(Math.log(RATE_FACTOR), Math.hypot(fromTemperature, fromTime));
  }

  /** What the vinegar did, for the page. */
  AcidEffect acidEffect() {
    Band cuts =
        cutsPerBond > 0 ? Band.logNormal(cutsPerBond, Math.exp(cutsLogSd)) : new Band(0, 0, 0);
    return new AcidEffect(
        ph,
        cuts,
        new Band(
            strengthFactor(cuts.high()),
            strengthFactor(cuts.middle()),
            strengthFactor(cuts.low())));
  }

  @Override
  Effect on(FilmProperty property, FilmState film) {
    if (property != FilmProperty.TENSILE_STRENGTH || cutsPerBond == 0) {
      return Effect.NONE;
    }
    double few = strengthFactor(cutsPerBond * Math.exp(-cutsLogSd));
    double many = strengthFactor(cutsPerBond * Math.exp(cutsLogSd));
    return new Effect(strengthFactor(cutsPerBond), Math.log(few / many) / 2);
  }

  private static double strengthFactor(double cutsPerBond) {
    double lengthLeft = 1 / (1 + AMYLOSE_LENGTH * cutsPerBond);
    return 1 - STRENGTH_SHARE * (1 - lengthLeft);
  }
}
