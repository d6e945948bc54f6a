package starchfilm.jar.recovery;

import starchfilm.jar.reagent.Dose;
import starchfilm.material.ingredient.MolarMass;
import starchfilm.numerics.evidence.Estimate;

/**
 * The products of acid and lye with the alkali in the crude layer, by moles of charge.
 *
 * <p>Of the catalyst, at least the part that met free fatty acid became soap, at most all of it;
 * the rest is free lye. Acid meets the free lye first and then splits soap, because lye is the
 * stronger base. Lye added afterwards meets the acid in excess first and then makes soap again out
 * of what fatty acid is left. All of the catalyst is taken to be in the crude layer (assumed, no
 * source): a little stays in the ester, so the salt is a little overstated.
 *
 * @param saltKg salt formed (kg)
 * @param soapMol soap left (mol)
 * @param fattyAcidMol fatty acid set free (mol)
 * @param freeLyeMol free lye left (mol); the share of the alkali left that is not soap
 * @param netAcidMol acid less all alkali (mol of charge): above 0 the mixture is sour, below 0
 *     soapy or alkaline, and within twice its uncertainty of 0 only a pH reading can tell
 */
public record Neutralisation(
    Estimate saltKg,
    Estimate soapMol,
    Estimate fattyAcidMol,
    Estimate freeLyeMol,
    Estimate netAcidMol) {

  static Neutralisation of(RecoveryLog log) {
    double alkali = log.catalyst().chargeMol().value() * log.shareWorkedUp().value();
    double leastSoap =
        Math.min(alkali, log.oil().freeAcidMol().value() * log.shareWorkedUp().value());
    Ends few = new Ends(log, alkali, leastSoap);
    Ends many = new Ends(log, alkali, alkali);
    Estimate alkaliMol = log.catalyst().chargeMol().times(log.shareWorkedUp());
    Estimate acidMol = log.acid().map(Dose::chargeMol).orElse(Estimate.exact(0));
    Estimate lyeMol = log.lye().map(Dose::chargeMol).orElse(Estimate.exact(0));
    return new Neutralisation(
        saltKg(log, alkaliMol, acidMol, lyeMol),
        Estimate.between(few.soap, many.soap),
        Estimate.between(few.fattyAcid, many.fattyAcid),
        Estimate.between(few.freeLye, many.freeLye),
        acidMol.minus(alkaliMol).minus(lyeMol));
  }

  /** Whichever runs out first decides; its uncertainty is the salt's. */
  private static Estimate saltKg(
      RecoveryLog log, Estimate alkaliMol, Estimate acidMol, Estimate lyeMol) {
    if (log.acid().isEmpty()) {
      return Estimate.exact(0);
    }
    double rest = log.acid().get().reagent().ionKgPerMolOfCharge();
    double catalystMetal = log.catalyst().reagent().ionKgPerMolOfCharge();
    if (acidMol.value() <= alkaliMol.value()) {
      return acidMol.times(catalystMetal + rest);
    }
    Estimate salt = alkaliMol.times(catalystMetal + rest);
    if (log.lye().isEmpty()) {
      return salt;
    }
    double metal = log.lye().get().reagent().ionKgPerMolOfCharge();
    Estimate excess = acidMol.minus(alkaliMol);
    return salt.plus((lyeMol.value() < excess.value() ? lyeMol : excess).times(metal + rest));
  }

  /** Mass of the soap, as the soap of the catalyst's metal (kg). */
  Estimate soapKg(RecoveryLog log) {
    return soapMol.times(
        log.oil().fattyAcidKgPerMol()
            - MolarMass.HYDROGEN
            + log.catalyst().reagent().ionKgPerMolOfCharge());
  }

  /** Mass of the fatty acid set free (kg). */
  Estimate fattyAcidKg(RecoveryLog log) {
    return fattyAcidMol.times(log.oil().fattyAcidKgPerMol());
  }

  /** True where the sums cannot tell on which side of neutral the mixture is. */
  public boolean isNearBalance() {
    return Math.abs(netAcidMol.value()) <= 2 * netAcidMol.sd();
  }

  /** The order of the reactions, for one amount of soap. */
  private static final class Ends {
    private double soap;
    private double freeLye;
    private double acid;
    private double fattyAcid;

    Ends(RecoveryLog log, double alkali, double soapFormed) {
      soap = soapFormed;
      freeLye = alkali - soapFormed;
      acid = log.acid().map(dose -> dose.chargeMol().value()).orElse(0.0);
      double met = Math.min(acid, freeLye);
      acid -= met;
      freeLye -= met;
      double split = Math.min(acid, soap);
      acid -= split;
      soap -= split;
      fattyAcid = split;
      double lye = log.lye().map(dose -> dose.chargeMol().value()).orElse(0.0);
      met = Math.min(acid, lye);
      acid -= met;
      lye -= met;
      double backToSoap = log.fattyLayerTakenOff() ? 0 : Math.min(lye, fattyAcid);
      soap += backToSoap;
      fattyAcid -= backToSoap;
      freeLye += lye - backToSoap;
    }
  }
}
