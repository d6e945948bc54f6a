package starchfilm.report.plan;

import static starchfilm.numerics.figures.ReaderUnit.LITRE;

import java.util.ArrayList;
import java.util.List;
import starchfilm.casting.trial.Trial;
import starchfilm.numerics.units.Plural;
import starchfilm.planning.PotShare;
import starchfilm.planning.Potful;

/**
 * The potfuls of trials that are cooked several times over.
 *
 * @param potfuls what is weighed out for each kind of potful
 * @param sentence why it is more than one; empty where one potful is enough
 */
public record SharedPotfuls(List<PotfulSheet> potfuls, String sentence) {
  /**
   * Potfuls in words.
   *
   * @param potM3 volume of the pot, brim-full (m3)
   * @param shares how the plates are shared out
   * @param trials for each share the trial that it cooks
   * @return the weigh-outs
   */
  public static SharedPotfuls of(double potM3, List<PotShare> shares, List<Trial> trials) {
    List<PotfulSheet> potfuls = new ArrayList<>();
    boolean alone = shares.size() == 1 && shares.get(0).times() * shares.get(0).parts() == 1;
    int count = 0;
    for (int i = 0; i < shares.size(); i++) {
      PotShare share = shares.get(i);
      Trial trial = trials.get(i);
      int times = share.times() * share.parts();
      count += times;
      Potful potful =
          new Potful(
              share.plates(),
              times,
              trial.recipe().times(1.0 / share.parts()),
              trial.casting().paste().massKg() / share.parts());
      String heading =
          share.parts() == 1
              ? PotfulSheet.heading(potful, alone)
              : "Each of " + times + " potfuls, " + share.parts() + " for each plate";
      potfuls.add(PotfulSheet.of(potful, heading));
    }
    return new SharedPotfuls(potfuls, count == 1 ? "" : sentence(potM3, count));
  }

  private static String sentence(double potM3, int count) {
    return ("The pot is too small for all of it: a pot of %s is filled three quarters full at most,"
            + " because paste rises and spits. Cook %s.")
        .formatted(LITRE.noted(potM3), Plural.of(count, "potful"));
  }
}
