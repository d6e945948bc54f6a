package starchfilm.jar.recovery;

import static starchfilm.numerics.figures.ReaderUnit.GRAM;

import starchfilm.material.ingredient.MolarMass;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.evidence.Refusal;

/**
 * The oil of one batch.
 *
 * <p>{@code n_fat = m (SV - AV)/(3 M_KOH)}, {@code n_free = m AV/M_KOH}
 *
 * <p>m: oil (kg); SV, AV: saponification and acid value (kg KOH/kg); M_KOH: molar mass (kg/mol).
 * Source: the definitions of both values in ISO 3657 and ISO 660 (recalled).
 *
 * @param massKg oil (kg)
 * @param saponificationMgPerG saponification value (mg KOH/g)
 * @param acidMgPerG acid value: what free fatty acid takes up (mg KOH/g); about twice the per cent
 *     of free acid
 */
public record OilBatch(Estimate massKg, Estimate saponificationMgPerG, Estimate acidMgPerG) {
  /**
   * Acid value of fresh refined oil, at most 0.6 mg KOH/g. Source: Codex Alimentarius CXS 210-1999
   * (recalled).
   */
  public static final Estimate FRESH_ACID_MG_PER_G = Estimate.between(0, 0.6);

  /** Acid value of used frying oil; judged, no source. */
  public static final Estimate USED_ACID_MG_PER_G = Estimate.between(1, 8);

  private static final double MG_PER_G = 1000;
  private static final double ACIDS_PER_FAT = 3;

  /** Carbon and hydrogen that a fat has beyond its three fatty acids: C3H2 (kg/mol). */
  private static final double FAT_BEYOND_ACIDS =
      MolarMass.TRIOLEIN - ACIDS_PER_FAT * MolarMass.OLEIC_ACID;

  /** Checks the figures. */
  public OilBatch {
    GRAM.requireSome("oil", massKg.value(), "write what went into the batch");
    double saponification = saponificationMgPerG.value();
    Refusal.unless(
        saponification >= 100 && saponification <= 400,
        "saponification value",
        saponification,
        "100 to 400 mg KOH/g; common oils have 180 to 265");
    Refusal.unless(
        acidMgPerG.value() >= 0 && acidMgPerG.value() < saponification,
        "acid value",
        acidMgPerG.value(),
        "0 to "
            + saponification
            + " mg KOH/g, the saponification value; used frying oil has 1 to 8");
  }

  /**
   * Oil of a named kind.
   *
   * @param kind the kind
   * @param massKg oil (kg)
   * @return the batch, the standard's range read as a rectangle
   */
  public static OilBatch of(OilKind kind, Estimate massKg) {
    return new OilBatch(
        massKg,
        Estimate.between(kind.saponificationMgPerG().min(), kind.saponificationMgPerG().max()),
        kind == OilKind.USED_FRYING_OIL ? USED_ACID_MG_PER_G : FRESH_ACID_MG_PER_G);
  }

  /**
   * Fat, which is also the glycerol bound in it.
   *
   * @return mol
   */
  public Estimate fatMol() {
    return massKg
        .times(saponificationMgPerG.minus(acidMgPerG))
        .times(1 / (MG_PER_G * ACIDS_PER_FAT * MolarMass.POTASSIUM_HYDROXIDE));
  }

  /**
   * Oil that holds so much glycerol, all of it bound.
   *
   * @param kind the kind of oil
   * @param glycerolKg the glycerol (kg)
   * @return kg of oil, the standard's range read as a rectangle
   */
  public static Estimate holding(OilKind kind, double glycerolKg) {
    Estimate fromOne = of(kind, Estimate.exact(1)).fatMol().times(MolarMass.GLYCEROL);
    return Estimate.exact(glycerolKg).over(fromOne);
  }

  /**
   * Free fatty acid in the oil before anything was done to it.
   *
   * @return mol
   */
  public Estimate freeAcidMol() {
    return massKg.times(acidMgPerG).times(1 / (MG_PER_G * MolarMass.POTASSIUM_HYDROXIDE));
  }

  /**
   * Mean molar mass of the fatty acids.
   *
   * @return kg/mol
   */
  public double fattyAcidKgPerMol() {
    double fat =
        ACIDS_PER_FAT * MolarMass.POTASSIUM_HYDROXIDE * MG_PER_G / saponificationMgPerG.value();
    return (fat - FAT_BEYOND_ACIDS) / ACIDS_PER_FAT;
  }
}
