package starchfilm.jar.recovery;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import starchfilm.material.ingredient.MolarMass;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.evidence.Refusal;
import starchfilm.numerics.evidence.Source;
import starchfilm.numerics.figures.Figures;

/**
 * The content that the jar must have, going by what went into the batch.
 *
 * <p>{@code fat + 3 alcohol -> 3 ester + glycerol}: one mole of glycerol a mole of fat, limited by
 * a third of the alcohol. Of that, {@link #LEAST_RECOVERED} to {@link #MOST_RECOVERED} comes into
 * the jar; and no more than the jar weighs less its salt, soap and fatty acid.
 *
 * @param boundGlycerolKg glycerol bound in the oil of the share worked up (kg)
 * @param alcoholPerFat alcohol used (mol per mol fat); 3 is the least that can do, 6 is usual
 * @param neutralisation what acid and lye did
 * @param saltKg salt, drying salt and fines left in the jar (kg)
 * @param soapKg soap left in the jar (kg)
 * @param fattyAcidKg fatty acid left in the jar (kg)
 * @param leastRecovered least share of the bound glycerol in the jar (ratio)
 * @param mostRecovered most share of it (ratio)
 * @param glycerolOfCrude glycerol in the crude layer (kg per kg), if that was weighed
 * @param alcoholLeft what alcohol there may be in the jar
 * @param hygroscopicSalt true where a drying salt was left behind
 * @param finesLikely true where an adsorbent was used
 */
public record RecoveryBalance(
    Estimate boundGlycerolKg,
    double alcoholPerFat,
    Neutralisation neutralisation,
    Estimate saltKg,
    Estimate soapKg,
    Estimate fattyAcidKg,
    double leastRecovered,
    double mostRecovered,
    OptionalDouble glycerolOfCrude,
    AlcoholLeft alcoholLeft,
    boolean hygroscopicSalt,
    boolean finesLikely) {
  /** Least share of the bound glycerol that comes into the jar; judged, no source. */
  public static final double LEAST_RECOVERED = 0.7;

  /** Most of the bound glycerol that comes into the jar; judged, no source. */
  public static final double MOST_RECOVERED = 0.98;

  /** Alcohol that one mole of fat takes up (mol). */
  public static final double ALCOHOL_PER_FAT = 3;

  /** Fatty acid that stays dissolved once the layer was taken off (kg per kg jar); judged. */
  private static final double MOST_FATTY_ACID_LEFT = 0.02;

  /** Glycerol that a kilogram of adsorbent holds back (kg); judged, no source. */
  private static final double GLYCEROL_ON_ADSORBENT = 1;

  /** What two weighings of the same may differ by (ratio); judged. */
  private static final double WEIGHED_ALIKE = 1.05;

  /** Salt that was not quite dry weighs up to so many times as much; judged. */
  private static final double MOIST_SALT = 2;

  /** Salt that nobody asks about (kg); judged. */
  private static final double LEAST_SALT_KG = 2e-3;

  /** Where the sums come from. */
  public static final Source SOURCE =
      new Source(
          "stoichiometry by IUPAC atomic weights 2021; recovered share, dissolved fatty acid and"
              + " salt left behind are judged",
          Check.COMPUTED);

  /**
   * Does the sums.
   *
   * @param log what the maker did
   * @return what the jar must hold
   * @throws IllegalArgumentException if the jar weighs less than what must be in it
   */
  public static RecoveryBalance of(RecoveryLog log) {
    double alcoholMol = log.alcoholKg().value() / log.alcohol().kgPerMol();
    double alcoholPerFat = alcoholMol / log.oil().fatMol().value();
    Estimate bound = log.oil().fatMol().times(log.shareWorkedUp()).times(MolarMass.GLYCEROL);
    Neutralisation neutralisation = Neutralisation.of(log);
    requireNoMoreOutThanIn(log, neutralisation.saltKg());
    Estimate additionsLeft =
        log.additions().stream()
            .map(LaterAddition::solidsLeftKg)
            .reduce(Estimate.exact(0), Estimate::plus);
    Estimate salt =
        notNegative(neutralisation.saltKg().minus(log.saltTakenOutKg())).plus(additionsLeft);
    Estimate soap = neutralisation.soapKg(log);
    Estimate fatty = fattyAcidLeft(log, neutralisation);
    Estimate glycerol = glycerolKg(log, bound, alcoholPerFat, salt.plus(soap).plus(fatty));
    // Where the middles outweigh the jar the least known gives way first, the salt last.
    fatty = lowered(fatty, excess(log, glycerol, salt, soap, fatty));
    soap = lowered(soap, excess(log, glycerol, salt, soap, fatty));
    salt = lowered(salt, excess(log, glycerol, salt, soap, fatty));
    return new RecoveryBalance(
        bound,
        alcoholPerFat,
        neutralisation,
        salt,
        soap,
        fatty,
        leastRecovered(log, bound, alcoholPerFat),
        MOST_RECOVERED * reacted(alcoholPerFat),
        glycerolOfCrude(log, bound),
        alcoholLeft(log, glycerol, salt),
        log.additions().stream()
            .anyMatch(a -> a.agent().isHygroscopic() && a.solidsLeftKg().value() > 0),
        log.additions().stream().anyMatch(a -> a.agent() == LaterAddition.Agent.ADSORBENT));
  }

  /** More alcohol or salt out than in says that one of both was not weighed, and hides the rest. */
  private static void requireNoMoreOutThanIn(RecoveryLog log, Estimate saltMade) {
    double thinners =
        log.additions().stream()
            .filter(a -> a.agent().isAlcohol())
            .mapToDouble(a -> a.massKg().value())
            .sum();
    double alcohol = log.alcoholKg().value() * log.shareWorkedUp().value() + thinners;
    Refusal.unless(
        log.alcoholTakenOffKg().value() <= alcohol * WEIGHED_ALIKE,
        "alcohol caught",
        Figures.grams(log.alcoholTakenOffKg().value()) + " g",
        "at most the "
            + Figures.grams(alcohol)
            + " g that went in; what was caught beyond that is water, so write the alcohol alone");
    double added = log.additions().stream().mapToDouble(a -> a.massKg().value()).sum();
    double salt = saltMade.value() + Band.Z90 * saltMade.sd() + added;
    Refusal.unless(
        log.saltTakenOutKg().value() <= MOIST_SALT * salt + LEAST_SALT_KG,
        "salt filtered off",
        Figures.grams(log.saltTakenOutKg().value()) + " g",
        "about the "
            + Figures.grams(salt)
            + " g that acid, lye and additions can have made; dry it and weigh it again, or write"
            + " the acid that was used");
  }

  private static Estimate glycerolKg(
      RecoveryLog log, Estimate bound, double alcoholPerFat, Estimate others) {
    double least =
        leastRecovered(log, bound, alcoholPerFat) * (bound.value() - Band.Z90 * bound.sd());
    double most = MOST_RECOVERED * reacted(alcoholPerFat) * (bound.value() + Band.Z90 * bound.sd());
    double room =
        log.jarKg().value() - others.value() + Band.Z90 * Math.hypot(log.jarKg().sd(), others.sd());
    Refusal.unless(
        room >= least,
        "what the jar holds",
        Figures.grams(log.jarKg().value()) + " g",
        """
        %s g or more, since the batch must have given at least %s g glycerol beside %s g salt, soap \
        and fatty acid; weigh the jar's content again, or say how much of the crude layer went in\
        """
            .formatted(
                Figures.grams(least + others.value()),
                Figures.grams(least),
                Figures.grams(others.value())));
    return Estimate.between(least, Math.min(most, room));
  }

  private static double reacted(double alcoholPerFat) {
    return Math.min(1, alcoholPerFat / ALCOHOL_PER_FAT);
  }

  private static double leastRecovered(RecoveryLog log, Estimate bound, double alcoholPerFat) {
    double adsorbent =
        log.additions().stream()
            .filter(a -> a.agent() == LaterAddition.Agent.ADSORBENT)
            .mapToDouble(a -> a.massKg().value())
            .sum();
    return Math.max(
        0,
        LEAST_RECOVERED * reacted(alcoholPerFat)
            - GLYCEROL_ON_ADSORBENT * adsorbent / bound.value());
  }

  private static Estimate fattyAcidLeft(RecoveryLog log, Neutralisation neutralisation) {
    Estimate formed = neutralisation.fattyAcidKg(log);
    if (!log.fattyLayerTakenOff()) {
      return formed;
    }
    return Estimate.between(
        0, Math.min(formed.value(), MOST_FATTY_ACID_LEFT * log.jarKg().value()));
  }

  private static OptionalDouble glycerolOfCrude(RecoveryLog log, Estimate bound) {
    Optional<Estimate> crude = log.crudeLayerKg();
    if (crude.isEmpty()) {
      return OptionalDouble.empty();
    }
    double boundInAll = bound.value() / log.shareWorkedUp().value();
    Refusal.unless(
        LEAST_RECOVERED * boundInAll <= crude.get().value(),
        "crude layer",
        Figures.grams(crude.get().value()) + " g",
        Figures.grams(LEAST_RECOVERED * boundInAll)
            + " g or more, the glycerol that this oil must give; let it settle longer, or check the"
            + " oil's mass");
    double middle = (LEAST_RECOVERED + MOST_RECOVERED) / 2;
    return OptionalDouble.of(Math.min(1, middle * boundInAll / crude.get().value()));
  }

  private static AlcoholLeft alcoholLeft(RecoveryLog log, Estimate glycerol, Estimate salt) {
    double takenUp =
        Math.min(
            log.alcoholKg().value(),
            LEAST_RECOVERED
                * ALCOHOL_PER_FAT
                * log.oil().fatMol().value()
                * log.alcohol().kgPerMol());
    List<LaterAddition> thinners =
        log.additions().stream().filter(a -> a.agent().isAlcohol()).toList();
    double most =
        (log.alcoholKg().value() - takenUp) * log.shareWorkedUp().value()
            + thinners.stream().mapToDouble(a -> a.massKg().value()).sum()
            - log.alcoholTakenOffKg().value()
            - thinners.stream().mapToDouble(a -> a.takenOutKg().value()).sum();
    double room =
        log.jarKg().value()
            - (glycerol.value() - Band.Z90 * glycerol.sd())
            - (salt.value() - Band.Z90 * salt.sd());
    // Where both may be left, the jar is handled for the poisonous one.
    boolean methanol =
        log.alcohol() == Alcohol.METHANOL
            || thinners.stream().anyMatch(a -> a.agent() == LaterAddition.Agent.METHANOL);
    return new AlcoholLeft(
        methanol ? Alcohol.METHANOL : Alcohol.ETHANOL, Math.max(0, Math.min(most, room)));
  }

  private static double excess(
      RecoveryLog log, Estimate glycerol, Estimate salt, Estimate soap, Estimate fatty) {
    return glycerol.value() + salt.value() + soap.value() + fatty.value() - log.jarKg().value();
  }

  private static Estimate lowered(Estimate kg, double excess) {
    return excess > 0 ? new Estimate(Math.max(0, kg.value() - excess), kg.sd()) : kg;
  }

  private static Estimate notNegative(Estimate estimate) {
    return new Estimate(Math.max(0, estimate.value()), estimate.sd());
  }
}
