package starchfilm.jar.assay;

import starchfilm.jar.recovery.RecoveryBalance;
import starchfilm.numerics.evidence.Estimate;

/** What is known of a jar before it is read. */
sealed interface JarPrior {
  /** A likely case of what is in it beside glycerol and water. */
  Dissolved beside(double jarKg, Draws draws);

  /** A likely case of the glycerol in it (kg per kg jar). */
  double glycerol(double jarKg, Draws draws);

  /** How likely some glycerol is, up to a factor; 0 where there cannot be so much or so little. */
  double density(double glycerol, double jarKg, Draws draws);

  /**
   * A bought jar: closed, it holds what the label says; opened, it may have taken up water, at most
   * its own mass (judged: one in five has).
   *
   * @param label glycerol by the label, with its error as a rectangle (kg per kg)
   */
  record Label(Estimate label) implements JarPrior {
    private static final double OPENED = 0.2;
    private static final double MOST_DILUTED = 0.5;

    @Override
    public Dissolved beside(double jarKg, Draws draws) {
      return Dissolved.NOTHING;
    }

    @Override
    public double glycerol(double jarKg, Draws draws) {
      return draws.rectangle(label);
    }

    @Override
    public double density(double glycerol, double jarKg, Draws draws) {
      double half = Math.sqrt(3) * label.sd();
      double from = label.value() - half;
      double to = label.value() + half;
      double closed = glycerol >= from && glycerol <= to ? 1 / (to - from) : 0;
      double least = MOST_DILUTED * to;
      double opened = glycerol >= least && glycerol <= to ? 1 / (to - least) : 0;
      return (1 - OPENED) * closed + OPENED * opened;
    }
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
  record Reading(double chanceRecovered, Estimate stays, double mostSoap, double mostAlcohol)
      implements JarPrior {
    @Override
    public Dissolved beside(double jarKg, Draws draws) {
      if (draws.between(0, 1) >= chanceRecovered) {
        return Dissolved.NOTHING;
      }
      double all = draws.rectangle(stays);
      double soap = draws.between(0, mostSoap);
      return new Dissolved(all * (1 - soap), all * soap, draws.between(0, mostAlcohol));
    }

    @Override
    public double glycerol(double jarKg, Draws draws) {
      return draws.between(0, 1);
    }

    @Override
    public double density(double glycerol, double jarKg, Draws draws) {
      return 1;
    }
  }

  /**
   * A jar whose recovery was written down: between the least and the most of what the oil bound is
   * in it, each as likely, and never more than the oil's middle figure allows; alcohol from none to
   * the most the amounts allow.
   *
   * @param balance the sums over the batch
   * @param mostAlcoholKg the most alcohol there can be (kg)
   */
  record Recovered(RecoveryBalance balance, double mostAlcoholKg) implements JarPrior {
    @Override
    public Dissolved beside(double jarKg, Draws draws) {
      return new Dissolved(
          Math.max(0, draws.normal(balance.saltKg())) / jarKg,
          Math.max(0, draws.rectangle(balance.soapKg()) + draws.rectangle(balance.fattyAcidKg()))
              / jarKg,
          draws.between(0, mostAlcoholKg) / jarKg);
    }

    @Override
    public double glycerol(double jarKg, Draws draws) {
      double share = draws.between(balance.leastRecovered(), balance.mostRecovered());
      return share * boundKg(draws) / jarKg;
    }

    @Override
    public double density(double glycerol, double jarKg, Draws draws) {
      double share = glycerol * jarKg / boundKg(draws);
      return share >= balance.leastRecovered() && share <= balance.mostRecovered() ? 1 : 0;
    }

    /** As uncertain as the oil leaves it, but never more than its middle figure. */
    private double boundKg(Draws draws) {
      Estimate bound = balance.boundGlycerolKg();
      return Math.min(bound.value(), draws.normal(bound));
    }
  }

  /**
   * The same as if the glycerol were quite unknown, to show what a reading means by itself.
   *
   * @param of what is known
   */
  record ReadingAlone(JarPrior of) implements JarPrior {
    @Override
    public Dissolved beside(double jarKg, Draws draws) {
      return of.beside(jarKg, draws);
    }

    @Override
    public double glycerol(double jarKg, Draws draws) {
      return draws.between(0, 1);
    }

    @Override
    public double density(double glycerol, double jarKg, Draws draws) {
      return 1;
    }
  }

  /**
   * The same without alcohol.
   *
   * @param of what is known
   */
  record Sober(JarPrior of) implements JarPrior {
    @Override
    public Dissolved beside(double jarKg, Draws draws) {
      Dissolved all = of.beside(jarKg, draws);
      return new Dissolved(all.salt(), all.fatty(), 0);
    }

    @Override
    public double glycerol(double jarKg, Draws draws) {
      return of.glycerol(jarKg, draws);
    }

    @Override
    public double density(double glycerol, double jarKg, Draws draws) {
      return of.density(glycerol, jarKg, draws);
    }
  }
}
