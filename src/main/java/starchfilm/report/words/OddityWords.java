package starchfilm.report.words;

import static starchfilm.numerics.figures.ReaderUnit.CELSIUS;
import static starchfilm.numerics.figures.ReaderUnit.GRAM;
import static starchfilm.numerics.figures.ReaderUnit.MICROMETRE;
import static starchfilm.numerics.figures.ReaderUnit.MILLIMETRE;
import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

import java.util.List;
import java.util.Locale;
import starchfilm.casting.Casting;
import starchfilm.casting.trial.Trial;
import starchfilm.forecast.Oddity;
import starchfilm.material.air.AirState;
import starchfilm.material.recipe.Recipe;
import starchfilm.numerics.figures.Figures;
import starchfilm.numerics.units.Plural;

/** The oddities of a recipe, each a sentence with the way out. */
public final class OddityWords {
  /** Paste that stays in the pot, over what is poured; assumed, no source. */
  private static final double LEFT_IN_POT = 0.05;

  /** The film hardly changes where the plasticiser is known to this (ratio); judged, no source. */
  private static final double FINE = 0.1;

  /** Nobody cooks so many times as much. */
  private static final double MOST_TIMES = 100;

  private OddityWords() {}

  /**
   * The sentences.
   *
   * @param odd what is odd
   * @return one each, in their order
   */
  public static List<String> of(List<Oddity> odd) {
    return odd.stream().map(OddityWords::of).toList();
  }

  /**
   * The oddities of a trial.
   *
   * @param trial the trial
   * @return a sentence each
   */
  public static List<String> of(Trial trial) {
    return of(Oddity.of(trial));
  }

  /**
   * One sentence.
   *
   * @param odd what is odd
   * @return with the way out
   */
  public static String of(Oddity odd) {
    if (odd instanceof Oddity.DoesNotLevel thick) {
      return ("%s starch does not level by itself (this starch does up to about %s): spread it with"
              + " a rod between two rails, or cook it with %s more water.")
          .formatted(
              PERCENT.figure(thick.starchInPaste()),
              PERCENT.figure(thick.levelsUpTo()),
              grams(thick.moreWaterKg()));
    }
    if (odd instanceof Oddity.CannotBeStirred dough) {
      return ("%s starch is a dough that cannot be stirred or poured: is an amount mistyped? With"
              + " %s more water it levels; as it is, it can only be rolled or pressed.")
          .formatted(PERCENT.figure(dough.starchInPaste()), grams(dough.moreWaterKg()));
    }
    if (odd instanceof Oddity.DoesNotSet syrup) {
      return PERCENT.two(syrup.glycerolPerStarch())
          + " g glycerol per 100 g starch does not set to a film: it stays a sticky gel. Take 20 to"
          + " 40 g; is an amount mistyped?";
    }
    if (odd instanceof Oddity.Filled filled) {
      return PERCENT.whole(filled.shareOfDry())
          + " % of the dry film is neither starch nor glycerol. The forecast takes that as solids"
          + " without water and knows no such film: its times and figures are a guess. Is an amount"
          + " mistyped?";
    }
    if (odd instanceof Oddity.TooThin thin) {
      return ("%s wet cannot be spread evenly by hand or rod, and film of %s hardly peels in one"
              + " piece: pour at least %s.")
          .formatted(
              MILLIMETRE.figure(thin.wetM()),
              MICROMETRE.figure(thin.dryM()),
              MILLIMETRE.figure(
                  Math.max(
                      Oddity.SPREAD_FROM_M, thin.wetM() * Oddity.PEELED_FROM_M / thin.dryM())));
    }
    if (odd instanceof Oddity.Fahrenheit hot) {
      return fahrenheit(hot.air());
    }
    if (odd instanceof Oddity.TooLittlePaste little) {
      return tooLittle(little.casting(), little.recipe());
    }
    Oddity.CoarseBalance coarse = (Oddity.CoarseBalance) odd;
    double half = coarse.halfWidth();
    double times = Math.max(2, Math.ceil(half / FINE - 1e-6));
    return ("%s of glycerol is known to ± %s only: anything from %s to %s g per 100 g starch, so"
            + " the film may turn out brittle or sticky. %s on a finer balance.")
        .formatted(
            grams(coarse.glycerolKg().value()),
            grams(half * coarse.glycerolKg().value()),
            PERCENT.two(coarse.glycerolPerStarch() * Math.max(0, 1 - half)),
            PERCENT.two(coarse.glycerolPerStarch() * (1 + half)),
            times > MOST_TIMES
                ? "Weigh it"
                : "Cook %.0f times as much, or weigh it".formatted(times));
  }

  private static String fahrenheit(AirState air) {
    long read = Math.round(CELSIUS.of(air.temperatureK()));
    return String.format(
        Locale.ROOT,
        "Air of %d °C at %s RH is hotter and damper than any room: is it %d °F, which is %.0f °C?"
            + " Then write it in °C, or with its F.",
        read,
        PERCENT.figure(air.relativeHumidity()),
        read,
        (read - 32) / 1.8);
  }

  private static String tooLittle(Casting casting, Recipe recipe) {
    double needed = casting.pouredOnAllKg();
    double cooked = casting.paste().massKg();
    int plates = casting.pour().plates();
    double each = needed / plates;
    int filled = (int) Math.floor(cooked / each);
    int potfuls = (int) Math.ceil(needed * (1 + LEFT_IN_POT) / cooked - 1e-9);
    return ("Too little paste: %s %s %s, and these amounts make about %s, %s. Weigh out %s instead,"
            + " in one pot, or divided into %s; or pour thinner; if you have already poured it,"
            + " correct the notes.")
        .formatted(
            Plural.of(plates, "plate"),
            plates == 1 ? "takes" : "of " + grams(each) + " take",
            grams(needed),
            grams(cooked),
            filled == 0 ? "not enough for one plate" : "enough for " + Plural.of(filled, "plate"),
            amounts(recipe.times(needed * (1 + LEFT_IN_POT) / cooked)),
            Plural.of(potfuls, "potful"));
  }

  private static String amounts(Recipe recipe) {
    return PlainWords.list(
        PotLine.of(recipe, kg -> grams(kg.value())).stream()
            .map(line -> line.grams() + " " + line.name())
            .toList());
  }

  private static String grams(double kg) {
    double grams = GRAM.of(kg);
    return (grams < 10 ? Figures.two(grams) : Figures.whole(grams)) + " g";
  }
}
