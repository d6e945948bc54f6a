package starchfilm.request;

import static starchfilm.files.amount.Dimension.CONCENTRATION;
import static starchfilm.files.amount.Dimension.SHARE;
import static starchfilm.files.amount.Dimension.VOLUME;

import java.util.List;
import java.util.Optional;
import starchfilm.files.amount.KnownName;
import starchfilm.files.amount.MistypedException;
import starchfilm.jar.reagent.PhAdjustment;
import starchfilm.jar.reagent.Reagent;
import starchfilm.material.ingredient.MolarMass;
import starchfilm.numerics.figures.Figures;

/**
 * The question of how much dilute acid or lye takes a volume from one pH to another.
 *
 * @param bath what is adjusted
 * @param target the pH wanted
 * @param reagent what is added
 * @param molPerM3 its concentration (mol/m3)
 * @param strength its strength as written
 */
public record PhRequest(
    PhAdjustment.Bath bath, double target, Reagent reagent, double molPerM3, String strength) {

  private static final String PH = "a pH, 0 to 14";

  /** Sodium oleate stands for soap (kg/mol). */
  private static final double SOAP_KG_PER_MOL =
      MolarMass.OLEIC_ACID - MolarMass.HYDROGEN + MolarMass.SODIUM;

  /** Nothing stronger is dosed by the millilitre (kg per kg); judged, no source. */
  private static final double STRONGEST = 0.1;

  /**
   * Reads what was written.
   *
   * @param entries what was written
   * @return the request
   * @throws RefusedRequestException where it cannot be meant
   */
  public static PhRequest read(Entries entries) {
    EntryReader in = new EntryReader(entries);
    in.require("ph.volume", "the volume to adjust, such as 500ml");
    in.require("ph.from", "the pH now, such as 9.5");
    in.require("ph.to", "the pH wanted, such as 6.5");
    in.require("ph.with", "what is added, such as vinegar");
    in.require("ph.strength", "its strength, such as 5%");
    double m3 = in.one("ph.volume", VOLUME::si, Double.NaN);
    double from = in.one("ph.from", typed -> Quantities.number(typed, PH), Double.NaN);
    double to = in.one("ph.to", typed -> Quantities.number(typed, PH), Double.NaN);
    double soapKg = in.one("ph.soap", typed -> Quantities.massKg(typed).value(), 0.0);
    Optional<Reagent> reagent =
        in.one(
            "ph.with",
            typed ->
                KnownName.find(
                    typed,
                    List.of(Reagent.values()),
                    one -> List.of(one.formula(), one.tradeName())));
    Optional<Double> molPerM3 =
        reagent.flatMap(with -> in.one("ph.strength", typed -> molPerM3(with, typed)));
    return in.finished(
        () ->
            new PhRequest(
                new PhAdjustment.Bath(m3, from, soapKg / SOAP_KG_PER_MOL),
                to,
                reagent.orElseThrow(),
                molPerM3.orElseThrow(),
                in.word("ph.strength")));
  }

  private static double molPerM3(Reagent reagent, String strength) {
    boolean molar = Quantities.isConcentration(strength);
    double share = molar ? reagent.massShare(CONCENTRATION.si(strength)) : SHARE.si(strength);
    if (share > STRONGEST) {
      throw new MistypedException(
          "%s of %s%s"
              .formatted(
                  strength, reagent.tradeName(), molar ? ", " + Figures.percent(share) + " %" : ""),
          "up to 10 %",
          "dilute it first, acid or lye into water and never water into it, and ask again");
    }
    return molar
        ? CONCENTRATION.si(strength)
        : share * reagent.solutionKgPerM3(share) / reagent.kgPerMol();
  }

  /**
   * Tells whether soap was counted.
   *
   * @return false where none was named
   */
  public boolean countsSoap() {
    return bath.soapMol() > 0;
  }

  /**
   * Answers how much it takes.
   *
   * @return the step
   * @throws RefusedRequestException where the reagent cannot go there
   */
  public PhAdjustment answer() {
    return RefusedRequestException.orRefused(
        () -> PhAdjustment.to(bath, target, reagent, molPerM3));
  }
}
