package starchfilm.film.risk;

/**
 * One change of a plate and what the model, rerun with it, makes of the risk.
 *
 * @param change what is changed
 * @param from its figure now, in the SI unit of the change
 * @param to its figure then
 * @param riskBefore the risk's figure now, in its own measure
 * @param riskAfter the risk's figure then
 */
public record Remedy(Change change, double from, double to, double riskBefore, double riskAfter) {
  /** What can be changed. */
  public enum Change {
    /** Wet thickness (m), less. */
    POUR_THINNER,
    /** Glycerol per dry starch (kg/kg), more. */
    MORE_GLYCEROL,
    /** Unevenness (ratio), less: level the plate. */
    LEVEL_BETTER,
    /** Relative humidity of the room (ratio), more, or air speed less: a cover, no fan. */
    DRY_SLOWER,
    /** Air speed (m/s), more: a fan. */
    MORE_AIR,
    /** Relative humidity of the room (ratio), less. */
    DRIER_ROOM,
    /** Air temperature (K), more, with the same moisture in the air. */
    WARMER_ROOM
  }
}
