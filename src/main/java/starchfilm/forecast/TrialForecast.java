package starchfilm.forecast;

import java.util.List;
import java.util.Optional;
import starchfilm.casting.Casting;
import starchfilm.casting.trial.Observations;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.DryingForecast;
import starchfilm.film.FilmForecast;
import starchfilm.film.risk.PlateRisks;
import starchfilm.material.recipe.Composition;

/**
 * A trial and what the program makes of it.
 *
 * @param trial the trial as noted
 * @param film what the dry film will be like
 * @param drying how a plate of it dries
 * @param risks how a plate of it may crack or mould
 * @param weighed what the drying forecast has from the weighings of the pour
 */
public record TrialForecast(
    Trial trial, FilmForecast film, DryingForecast drying, PlateRisks risks, OwnWeighings weighed) {
  /**
   * The gain of a forecast from the weighings of its plate and of the others of its pour.
   *
   * @param known what is known of the plate with them
   * @param atThePour the forecast without them, which they are held against; empty where there are
   *     none
   */
  public record OwnWeighings(PlateParameters known, Optional<DryingForecast> atThePour) {
    /** How many weighings it rests on. */
    public int takenIn() {
      return known.weighings();
    }

    /** Returns the questions about what is odd in them. */
    public List<WeighingQuestion> questions() {
      return known.questions();
    }
  }

  /**
   * The drying as forecast at the pour, whatever was weighed since.
   *
   * @return the forecast that weighings are held against
   */
  public DryingForecast dryingAtThePour() {
    return weighed.atThePour().orElse(drying);
  }

  /** Returns what was poured. */
  public Casting casting() {
    return trial.casting();
  }

  /** The paste per kilogram. */
  public Composition composition() {
    return casting().composition();
  }

  /** Returns what was seen of it since. */
  public Observations seen() {
    return trial.seen();
  }

  /**
   * Paste on one plate.
   *
   * @return kg; as weighed, or else from wet thickness, area and the paste's density
   */
  public double pouredKgPerPlate() {
    return trial.casting().pouredKg();
  }

  /**
   * Dry solids on one plate.
   *
   * @return kg
   */
  public double drySolidsKgPerPlate() {
    return pouredKgPerPlate() * composition().drySolids();
  }
}
