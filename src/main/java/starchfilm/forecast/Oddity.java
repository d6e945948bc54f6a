package starchfilm.forecast;

import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import starchfilm.casting.Casting;
import starchfilm.casting.Room;
import starchfilm.casting.trial.Trial;
import starchfilm.film.PasteBody;
import starchfilm.material.air.AirState;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Recipe;
import starchfilm.numerics.evidence.Estimate;

/**
 * Something no sensible pour looks like, though a paste and a film of it could exist: said before
 * any figure, with a way out. All limits are judged, no source, unless they say otherwise.
 */
public sealed interface Oddity {
  /** A dough rather than a paste (kg dry starch per kg paste). */
  double NOT_STIRRED_ABOVE = 0.25;

  /** A syrup rather than a film (kg glycerol per kg dry starch). */
  double NOT_SET_ABOVE = 1;

  /** More other solids than the film's rules know, see InertSolids (kg per kg dry solids). */
  double FILLED_ABOVE = 0.3;

  /** Thinner nobody spreads a paste by hand or rod (m). */
  double SPREAD_FROM_M = 0.3e-3;

  /** Thinner no film is peeled whole (m). */
  double PEELED_FROM_M = 10e-6;

  /** No room is as warm and as damp as this (K, and ratio). */
  double WARMER_THAN_A_ROOM_K = 50 + ZERO_CELSIUS_K;

  /** Air of an oven is drier than this (ratio). */
  double DAMPER_THAN_AN_OVEN = 0.3;

  /** What figures rounded by hand may miss by (ratio). */
  double ROUNDED = 0.01;

  /** The plasticiser changes the film where it is known no better than this (ratio). */
  double COARSE = 0.3;

  /** A doubt about the plasticiser that no hand feels (kg glycerol per kg dry starch). */
  double UNFELT = 0.01;

  /**
   * The paste does not level by itself.
   *
   * @param starchInPaste dry starch (kg per kg paste)
   * @param levelsUpTo up to about this it does (kg per kg paste), see {@link PasteBody}
   * @param moreWaterKg water with which it would (kg)
   */
  record DoesNotLevel(double starchInPaste, double levelsUpTo, double moreWaterKg)
      implements Oddity {}

  /**
   * The paste is a dough that cannot be stirred.
   *
   * @param starchInPaste dry starch (kg per kg paste)
   * @param moreWaterKg water with which it would level (kg)
   */
  record CannotBeStirred(double starchInPaste, double moreWaterKg) implements Oddity {}

  /**
   * So much glycerol that it stays a syrup.
   *
   * @param glycerolPerStarch kg per kg dry starch
   */
  record DoesNotSet(double glycerolPerStarch) implements Oddity {}

  /**
   * Much of it is neither starch nor glycerol.
   *
   * @param shareOfDry of the dry solids (ratio)
   */
  record Filled(double shareOfDry) implements Oddity {}

  /**
   * Too thin to be spread or peeled.
   *
   * @param wetM wet thickness (m)
   * @param dryM dry thickness at no more than solids (m)
   */
  record TooThin(double wetM, double dryM) implements Oddity {}

  /**
   * Air as no room has it; the figure reads like degrees Fahrenheit.
   *
   * @param air the air
   */
  record Fahrenheit(AirState air) implements Oddity {}

  /**
   * More is poured than was cooked.
   *
   * @param casting what is poured
   * @param recipe what was cooked
   */
  record TooLittlePaste(Casting casting, Recipe recipe) implements Oddity {}

  /**
   * The balance is too coarse for the glycerol.
   *
   * @param glycerolKg as weighed, with what the balance leaves open (kg)
   * @param glycerolPerStarch kg per kg dry starch
   */
  record CoarseBalance(Estimate glycerolKg, double glycerolPerStarch) implements Oddity {
    /** Half the width of the rectangle it lies in, over its middle. */
    public double halfWidth() {
      return Math.sqrt(3) * glycerolKg.sd() / glycerolKg.value();
    }
  }

  /**
   * What is odd about a trial.
   *
   * @param trial the trial
   * @return in the order of the work; empty for an ordinary one
   */
  static List<Oddity> of(Trial trial) {
    boolean weighed =
        trial.notRecorded().stream().noneMatch(gap -> gap.field().equals("recipe.glycerol.mass_g"));
    return of(trial.casting(), trial.recipe(), weighed);
  }

  /**
   * What is odd about a casting.
   *
   * @param casting what is poured
   * @param recipe what goes into the pot
   * @param glycerolWeighed whether the glycerol was weighed, and not assumed
   * @return in the order of the work; empty for an ordinary one
   */
  static List<Oddity> of(Casting casting, Recipe recipe, boolean glycerolWeighed) {
    List<Oddity> odd = new ArrayList<>();
    paste(casting).ifPresent(odd::add);
    Composition composition = casting.composition();
    double glycerol = composition.glycerolPerDryStarch();
    if (glycerol > NOT_SET_ABOVE && composition.dryStarch() > 0) {
      odd.add(new DoesNotSet(glycerol));
    }
    if (composition.inertFractionOfDry() > FILLED_ABOVE) {
      odd.add(new Filled(composition.inertFractionOfDry()));
    }
    if (glycerolWeighed && casting.paste().plasticiserRelativeSd() > 0) {
      CoarseBalance balance = new CoarseBalance(recipe.glycerol().massKg(), glycerol);
      if (balance.halfWidth() > COARSE && balance.halfWidth() * glycerol > UNFELT) {
        odd.add(balance);
      }
    }
    if (casting.pouredOnAllKg() > casting.paste().massKg() * (1 + ROUNDED)) {
      odd.add(new TooLittlePaste(casting, recipe));
    }
    thin(casting).ifPresent(odd::add);
    air(casting.room()).ifPresent(odd::add);
    return odd;
  }

  /**
   * Whether the air looks like degrees Fahrenheit.
   *
   * @param room the air
   * @return the finding; empty for a room or an oven
   */
  static Optional<Oddity> air(Room room) {
    AirState air = room.at(0);
    return air.temperatureK() >= WARMER_THAN_A_ROOM_K
            && air.relativeHumidity() >= DAMPER_THAN_AN_OVEN
        ? Optional.of(new Fahrenheit(air))
        : Optional.empty();
  }

  private static Optional<Oddity> paste(Casting casting) {
    PasteBody body = PasteBody.of(casting.composition());
    if (!body.clearlyTooThickToLevel()) {
      return Optional.empty();
    }
    double moreWaterKg = casting.paste().massKg() * (body.starchInPaste() / body.levelsUpTo() - 1);
    return Optional.of(
        body.starchInPaste() > NOT_STIRRED_ABOVE
            ? new CannotBeStirred(body.starchInPaste(), moreWaterKg)
            : new DoesNotLevel(body.starchInPaste(), body.levelsUpTo(), moreWaterKg));
  }

  /**
   * Whether a pour is too thin.
   *
   * @param casting what is poured
   * @return the finding; empty where it can be spread and peeled
   */
  static Optional<Oddity> thin(Casting casting) {
    double wetM = casting.wetThicknessM();
    Composition composition = casting.composition();
    double dryM =
        wetM
            * composition.volumeM3PerKgDry(0)
            / composition.volumeM3PerKgDry(composition.waterKgPerKgDry());
    return wetM < SPREAD_FROM_M || dryM < PEELED_FROM_M
        ? Optional.of(new TooThin(wetM, dryM))
        : Optional.empty();
  }
}
