package starchfilm.jar.assay;

import starchfilm.jar.recovery.RecoveryBalance;
import starchfilm.numerics.evidence.Estimate;

/**
 * What is known of a jar before it is read.
 *
 * @param beside likely cases of what is in it beside glycerol and water
 * @param glycerol likely cases of the glycerol in it (kg per kg jar)
 * @param density how likely some glycerol is
 */
record JarPrior(Beside beside, Glycerol glycerol, Density density) {
  private static final double OPENED = 0.2;
  private static final double MOST_DILUTED = 0.5;

  /** Draws what is in a jar of a mass (kg) beside glycerol and water. */
  interface Beside {
    Dissolved draw(double jarKg, Draws draws);
  }

  /** Draws the glycerol in a jar of a mass (kg): kg per kg. */
  interface Glycerol {
    double draw(double jarKg, Draws draws);
  }

  /** How likely some glycerol is, up to a factor; 0 where there cannot be so much or so little. */
  interface Density {
    double of(double glycerol, double jarKg, Draws draws);
  }

  /**
   * A bought jar: closed, it holds what the label says; opened, it may have taken up water, at most
   * its own mass (judged: one in five has).
   *
   * @param label glycerol by the label, with its error as a rectangle (kg per kg)
   */
  static JarPrior label(Estimate label) {
    double half = Math.sqrt(3) * label.sd();
    double to = label.value() + half;
    return new JarPrior(
        (jarKg, draws) -> Dissolved.NOTHING,
        (jarKg, draws) -> draws.rectangle(label),
        (glycerol, jarKg, draws) ->
            (1 - OPENED) * rectangle(label.value() - half, to, glycerol)
                + OPENED * rectangle(MOST_DILUTED * to, to, glycerol));
  }

  private static double rectangle(double from, double to, double glycerol) {
    return glycerol >= from && glycerol <= to ? 1 / (to - from) : 0;
  }

  /**
   * A jar of which only a reading tells: nothing but glycerol and water where it was bought, salt,
   * soap and alcohol too where it was recovered; where nobody knows, either is as likely.
   *
   * @param chanceRecovered how likely it was recovered (0 to 1)
   * @param stays salt and soap, as a rectangle (kg per kg)
   * @param mostSoap the largest share of soap in them (kg per kg)
   * @param mostAlcohol the most alcohol (kg per kg)
   */
  static JarPrior reading(
      double chanceRecovered, Estimate stays, double mostSoap, double mostAlcohol) {
    return unknown(
        (jarKg, draws) -> {
          if (draws.between(0, 1) >= chanceRecovered) {
            return Dissolved.NOTHING;
          }
          double all = draws.rectangle(stays);
          double soap = draws.between(0, mostSoap);
          return new Dissolved(all * (1 - soap), all * soap, draws.between(0, mostAlcohol));
        });
  }

  /** Any share of glycerol is as likely. */
  private static JarPrior unknown(Beside beside) {
    return new JarPrior(
        beside, (jarKg, draws) -> draws.between(0, 1), (glycerol, jarKg, draws) -> 1);
  }

  /**
   * A jar whose recovery was written down: between the least and the most of what the oil bound is
   * in it, each as likely, and never more than the oil's middle figure allows; alcohol from none to
   * the most the amounts allow.
   *
   * @param balance the sums over the batch
   * @param mostAlcoholKg the most alcohol there can be (kg)
   */
  static JarPrior recovered(RecoveryBalance balance, double mostAlcoholKg) {
    double least = balance.leastRecovered();
    double most = balance.mostRecovered();
    return new JarPrior(
        (jarKg, draws) ->
            new Dissolved(
                Math.max(0, draws.normal(balance.saltKg())) / jarKg,
                Math.max(
                        0,
                        draws.rectangle(balance.soapKg()) + draws.rectangle(balance.fattyAcidKg()))
                    / jarKg,
                draws.between(0, mostAlcoholKg) / jarKg),
        (jarKg, draws) -> draws.between(least, most) * boundKg(balance, draws) / jarKg,
        (glycerol, jarKg, draws) -> {
          double share = glycerol * jarKg / boundKg(balance, draws);
          return share >= least && share <= most ? 1 : 0;
        });
  }

  /** Bound glycerol, as uncertain as the oil leaves it, but never more than its middle figure. */
  private static double boundKg(RecoveryBalance balance, Draws draws) {
    Estimate bound = balance.boundGlycerolKg();
    return Math.min(bound.value(), draws.normal(bound));
  }

  /** The jar as if its glycerol were unknown, to show what a reading means by itself. */
  JarPrior readingAlone() {
    return unknown(beside);
  }

  /** The same jar without alcohol. */
  JarPrior sober() {
    return new JarPrior(
        (jarKg, draws) -> {
          Dissolved all = beside.draw(jarKg, draws);
          return new Dissolved(all.salt(), all.fatty(), 0);
        },
        glycerol,
        density);
  }
}
