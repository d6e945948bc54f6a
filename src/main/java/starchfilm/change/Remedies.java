package starchfilm.change;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import starchfilm.casting.Casting;
import starchfilm.casting.FaceChange;
import starchfilm.casting.FaceChange.OpenFaces;
import starchfilm.film.risk.PlateRisks;
import starchfilm.film.risk.RiskLevel;
import starchfilm.forecast.CastingForecaster;

/**
 * The change that would lower each risk of a plate most; empty at a low risk, or where none lowers
 * it. Every change is made by a step that shows, and the plate solved again.
 *
 * @param crack against cracking
 * @param mould against mould
 */
public record Remedies(Optional<Rerun> crack, Optional<Rerun> mould) {
  /** None was looked for. */
  public static final Remedies NONE = new Remedies(Optional.empty(), Optional.empty());

  /** What may lower a risk; each of them may lower that of mould. */
  private static final List<Change> TRIED =
      List.of(
          Change.POUR_THINNER,
          Change.LEVEL_THE_PLATE,
          Change.MORE_GLYCEROL,
          Change.COVER_THE_PLATE,
          Change.FAN,
          Change.DRIER_ROOM,
          Change.WARMER_ROOM);

  /** Quicker drying cracks a film rather than saves it: not solved where only cracks count. */
  private static final Set<Change> QUICKER =
      EnumSet.of(Change.FAN, Change.DRIER_ROOM, Change.WARMER_ROOM);

  /** The best changes. */
  static Remedies of(CastingForecaster forecaster, Casting casting, PlateRisks now) {
    boolean cracks = now.crack().level() != RiskLevel.LOW;
    boolean moulds = now.mould().level() != RiskLevel.LOW;
    List<Rerun> reruns =
        TRIED.stream()
            .filter(change -> moulds || (cracks && !QUICKER.contains(change)))
            .flatMap(change -> change.clearStep(casting).stream())
            .map(step -> new Rerun(step, forecaster.risks(step.after())))
            .toList();
    return new Remedies(
        cracks ? Rerun.best(reruns.stream(), now, Remedies::cracking) : Optional.empty(),
        moulds ? Rerun.best(reruns.stream(), now, Remedies::moulding) : Optional.empty());
  }

  /** The measure of cracking: energy over toughness. */
  public static double cracking(PlateRisks risks) {
    return risks.crack().energyOverToughness();
  }

  /** The measure of mould: weighted hours. */
  public static double moulding(PlateRisks risks) {
    return risks.mould().weightedHours();
  }

  /**
   * Finds the change that helps a plate most that will mould before it is dry. A rack takes the
   * film from when it is peelable; other air is taken as if it had been there from the pour on,
   * which tells more than it still does for a plate that has stood for days.
   *
   * @param casting the plate
   * @param now its risks
   * @param peelableS when it is peelable (s since the pour); infinite for never
   * @param risks solves the middle case of a casting
   * @return the change; empty where mould is not likely, or nothing lessens it
   */
  public static Optional<Rerun> underWay(
      Casting casting, PlateRisks now, double peelableS, Function<Casting, PlateRisks> risks) {
    if (now.mould().level().compareTo(RiskLevel.LIKELY) < 0) {
      return Optional.empty();
    }
    Stream<ChangeStep> air = QUICKER.stream().flatMap(change -> change.clearStep(casting).stream());
    Stream<ChangeStep> rack =
        casting.faces().isEmpty() && Double.isFinite(peelableS)
            ? Stream.of(
                new ChangeStep(
                    Change.ONTO_A_RACK,
                    casting,
                    casting.with(List.of(new FaceChange(peelableS, OpenFaces.BOTH)))))
            : Stream.empty();
    return Rerun.best(
        Stream.concat(air, rack).map(step -> new Rerun(step, risks.apply(step.after()))),
        now,
        Remedies::moulding);
  }
}
