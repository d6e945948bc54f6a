package starchfilm.material.recipe;

import static starchfilm.numerics.figures.ReaderUnit.GRAM;

import java.util.EnumMap;
import java.util.Map;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.evidence.Refusal;
import starchfilm.numerics.figures.Figures;

/**
 * The sums over one recipe: what went in, what stays, and how sure both are.
 *
 * <p>Uncertainty is carried to first order, all figures of the recipe taken as independent:
 *
 * <p>{@code u^2(y) = sum (dy/dx_i)^2 u^2(x_i)}
 *
 * <p>for {@code y = ln(solids/mass)} and {@code y = ln(glycerol/dry starch)}. Source: JCGM 100:2008
 * (GUM), 5.1.2, equation 10 (recalled). Limits: two portions out of one bag share their moisture,
 * which this treats as two independent figures; the sum is then a little too sure of itself.
 */
final class MassBalance {
  /** Less than this no balance shows, and it changes no film; its doubt is not carried on (kg). */
  private static final double TRACE_KG = 1e-9;

  private final Recipe recipe;
  private final Map<StarchKind, Double> dryStarchKg = new EnumMap<>(StarchKind.class);
  private final double dryStarch;
  private final double glycerol;
  private final double salt;
  private final double inert;
  private final double aceticAcid;
  private final double water;

  MassBalance(Recipe recipe) {
    this.recipe = recipe;
    double moisture = 0;
    double inPowders = 0;
    for (StarchPortion portion : recipe.starches()) {
      dryStarchKg.merge(portion.kind(), portion.dryKg(), Double::sum);
      moisture += portion.massKg().value() * portion.moistureFraction().value();
      inPowders += portion.massKg().value() * portion.inertFraction().value();
    }
    dryStarch = dryStarchKg.values().stream().mapToDouble(Double::doubleValue).sum();
    GRAM.requireSome("starch", dryStarch, "write the grams of powder weighed");
    double jarKg = recipe.glycerol().massKg().value();
    GlycerolStock stock = recipe.glycerol().stock();
    glycerol = jarKg * stock.glycerolFraction().value();
    double jarSalt = jarKg * stock.saltFraction().value();
    salt = recipe.saltKg().value() + jarSalt;
    inert = recipe.inertKg().value() + inPowders;
    double vinegarKg = recipe.vinegar().massKg().value();
    aceticAcid = vinegarKg * recipe.vinegar().acidityFraction().value();
    double waterBefore =
        recipe.waterKg().value()
            + moisture
            + Math.max(0, jarKg - glycerol - jarSalt)
            + (vinegarKg - aceticAcid);
    double lost = recipe.cook().waterLostKg().value();
    Refusal.unless(
        lost <= waterBefore,
        "water lost in the pot",
        Figures.grams(lost) + " g",
        "0 to "
            + Figures.grams(waterBefore)
            + " g, all the water there is; weigh the pot before and after the cook");
    water = waterBefore - lost;
  }

  Paste paste() {
    Map<StarchKind, Double> shares = new EnumMap<>(StarchKind.class);
    dryStarchKg.forEach((kind, kg) -> shares.put(kind, kg / dryStarch));
    return new Paste(
        Composition.of(shares, dryStarch, glycerol, salt, aceticAcid, water, inert),
        dryStarch + glycerol + salt + aceticAcid + water + inert,
        solidsRelativeSd(),
        plasticiserRelativeSd());
  }

  private double solidsRelativeSd() {
    double solids = dryStarch + glycerol + salt + inert;
    double mass = solids + aceticAcid + water;
    double variance = 0;
    for (StarchPortion portion : recipe.starches()) {
      Estimate moisture = portion.moistureFraction();
      variance += square(portion.massKg().sd() * ((1 - moisture.value()) / solids - 1 / mass));
      variance += square(moisture.sd() * portion.massKg().value() / solids);
    }
    Estimate jar = recipe.glycerol().massKg();
    Estimate glycerolFraction = recipe.glycerol().stock().glycerolFraction();
    Estimate saltFraction = recipe.glycerol().stock().saltFraction();
    double stays = glycerolFraction.value() + saltFraction.value();
    variance += square(jar.sd() * (stays / solids - 1 / mass));
    variance += square(jar.value() * glycerolFraction.sd() / solids);
    variance += square(jar.value() * saltFraction.sd() / solids);
    variance += square(recipe.saltKg().sd() * (1 / solids - 1 / mass));
    variance += square(recipe.inertKg().sd() * (1 / solids - 1 / mass));
    variance += square(recipe.vinegar().massKg().sd() / mass);
    variance += square(recipe.waterKg().sd() / mass);
    variance += square(recipe.cook().waterLostKg().sd() / mass);
    return Math.sqrt(variance);
  }

  private double plasticiserRelativeSd() {
    if (glycerol < TRACE_KG) {
      return 0;
    }
    double variance = 0;
    for (StarchPortion portion : recipe.starches()) {
      Estimate moisture = portion.moistureFraction();
      Estimate inPowder = portion.inertFraction();
      double starch = 1 - moisture.value() - inPowder.value();
      variance += square(portion.massKg().sd() * starch / dryStarch);
      variance += square(portion.massKg().value() * moisture.sd() / dryStarch);
      variance += square(portion.massKg().value() * inPowder.sd() / dryStarch);
    }
    variance += square(relative(recipe.glycerol().massKg()));
    variance += square(relative(recipe.glycerol().stock().glycerolFraction()));
    return Math.sqrt(variance);
  }

  private static double relative(Estimate estimate) {
    return estimate.sd() / estimate.value();
  }

  private static double square(double x) {
    return x * x;
  }
}
