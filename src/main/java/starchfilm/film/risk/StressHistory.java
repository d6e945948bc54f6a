package starchfilm.film.risk;

import java.util.List;
import java.util.OptionalDouble;
import starchfilm.casting.Casting;
import starchfilm.casting.FaceChange;
import starchfilm.casting.FaceChange.OpenFaces;
import starchfilm.casting.Spot;
import starchfilm.drying.Milestone;
import starchfilm.drying.PlateCourse;
import starchfilm.drying.SpotMoment;
import starchfilm.film.DryingMechanics;
import starchfilm.material.recipe.Composition;
import starchfilm.material.sorption.FilmIsotherm;

/**
 * The stress of thin edge and thick spot over the course of a plate: whether it cracks, lets go,
 * and how far it then shrinks and bends.
 *
 * <p>An uneven sheet cracks or lifts at its worse spot: the thick one holds more energy, the thin
 * one is stiff before. The plate carries what they do not share in their plane.
 */
final class StressHistory {
  /** Shrinking that nobody sees (ratio; judged). */
  private static final double UNSEEN = 0.01;

  /** Air in which no moisture of a film is stated; it holds at least that much. */
  private static final double DAMPEST = 0.9;

  private final Casting drying;
  private final boolean rim;
  private final double plateM;
  private final double adhesionJPerM2;
  private final double peeledS;
  private final StressedSpot edge;
  private final StressedSpot thick;
  private double stuckRatio;
  private double crackRatio;
  private double heldRatio;
  private double endVolume;
  private double endThicknessM;

  private StressHistory(Casting drying) {
    this.drying = drying;
    this.rim = drying.plate().rimHeightM() > 0;
    this.plateM = Math.max(drying.plate().lengthM(), drying.plate().widthM());
    this.adhesionJPerM2 = Adhesion.jPerM2(drying.plate().material());
    this.peeledS =
        drying.faces().stream()
            .filter(change -> change.open() != OpenFaces.UPPER)
            .mapToDouble(FaceChange::timeS)
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    DryingMechanics mechanics = DryingMechanics.of(drying.composition());
    this.edge = new StressedSpot(mechanics, Spot.THIN_EDGE);
    this.thick = new StressedSpot(mechanics, Spot.THICK_SPOT);
  }

  static StressHistory of(Casting drying, PlateCourse course) {
    StressHistory history = new StressHistory(drying);
    history.follow(course.edge(), course.thick());
    return history;
  }

  /** One spot: its stress, and when and how wet it comes loose. */
  private final class StressedSpot {
    private final FilmStress stress;
    private double pullOverAdhesion;
    private double looseFromS = Double.POSITIVE_INFINITY;
    private double looseVolume;
    private double lateLooseVolume;
    private double bendPerM;

    StressedSpot(DryingMechanics mechanics, Spot spot) {
      Composition paste = drying.composition();
      double wetM = drying.wetThicknessM() * spot.thicknessRatio(drying.pour().unevenness());
      stress =
          new FilmStress(mechanics, paste, wetM * paste.pasteDensityKgPerM3() * paste.drySolids());
    }

    void follow(SpotMoment moment) {
      stress.follow(moment);
      boolean peeled = moment.timeS() >= peeledS;
      if (!peeled) {
        pullOverAdhesion = Math.max(pullOverAdhesion, stress.liftingJPerM2() / adhesionJPerM2);
      }
      if (looseFromS == Double.POSITIVE_INFINITY && (pullOverAdhesion > 1 || peeled)) {
        looseFromS = Math.min(moment.timeS(), peeledS);
        looseVolume = stress.meanVolume();
        bendPerM = Math.max(0, stress.unevenShrinking() / (3 * stress.thicknessM()));
      }
      if (lateLooseVolume == 0 && (pullOverAdhesion > Adhesion.BAND || peeled)) {
        lateLooseVolume = stress.meanVolume();
      }
    }

    boolean loose() {
      return looseFromS < Double.POSITIVE_INFINITY;
    }
  }

  private void follow(List<SpotMoment> thin, List<SpotMoment> deep) {
    edge.stress.start(thin.get(0));
    thick.stress.start(deep.get(0));
    for (int i = 1; i < deep.size(); i++) {
      // The adhesion may be higher than its middle, and the film then bears stress for longer.
      boolean sticks = pullOverAdhesion() < Adhesion.BAND;
      edge.follow(thin.get(i));
      thick.follow(deep.get(i));
      double now = deep.get(i).timeS();
      double ratio = Math.max(edge.stress.crackRatio(), thick.stress.crackRatio());
      stuckRatio = Math.max(stuckRatio, ratio);
      if (now <= peeledS && sticks) {
        crackRatio = Math.max(crackRatio, ratio);
      }
      if (thick.loose() && now <= peeledS) {
        heldRatio = Math.max(heldRatio, thick.stress.heldCrackRatio(plateM));
      }
    }
    // A plate that is not dry when its course ends still comes to rest with its room.
    SpotMoment end = deep.get(deep.size() - 1);
    endVolume = drying.composition().volumeM3PerKgDry(Math.min(end.meanMoisture(), rest(end)));
    endThicknessM = thick.stress.thicknessM() * endVolume / thick.stress.meanVolume();
  }

  private double rest(SpotMoment end) {
    double humidity = drying.room().at(end.timeS()).relativeHumidity();
    return FilmIsotherm.of(drying.composition())
        .moisture(Math.min(DAMPEST, humidity), end.temperatureK());
  }

  private double pullOverAdhesion() {
    return Math.max(edge.pullOverAdhesion, thick.pullOverAdhesion);
  }

  CrackRisk crack() {
    // It may let go, be held at its rim, and tear there.
    boolean mayTearAtRim = rim && CrackRisk.level(heldRatio) != RiskLevel.LOW;
    RiskLevel level = CrackRisk.level(crackRatio);
    return new CrackRisk(
        mayTearAtRim && level == RiskLevel.LOW ? RiskLevel.WATCH : level,
        crackRatio,
        endThicknessM / stuckRatio,
        endThicknessM,
        mayTearAtRim);
  }

  CurlRisk curl() {
    boolean loose = edge.loose() || thick.loose();
    double firm = drying.composition().volumeM3PerKgDry(Milestone.FIRM_MOISTURE);
    double most =
        loose ? (shrinking(edge.looseVolume) + shrinking(thick.looseVolume)) / 2 : shrinking(firm);
    double least = (shrinking(edge.lateLooseVolume) + shrinking(thick.lateLooseVolume)) / 2;
    double lift = plateM * plateM * Math.max(edge.bendPerM, thick.bendPerM) / 8;
    boolean peeledWet = loose && pullOverAdhesion() < 1 && most > UNSEEN;
    return new CurlRisk(
        peeledWet ? RiskLevel.LIKELY : CurlRisk.level(pullOverAdhesion()),
        pullOverAdhesion(),
        loose
            ? OptionalDouble.of(Math.min(edge.looseFromS, thick.looseFromS))
            : OptionalDouble.empty(),
        least,
        most,
        Math.min(lift, plateM / 4));
  }

  /** How much shorter each side becomes from a volume on (ratio); 0 where it stays stuck. */
  private double shrinking(double volume) {
    return volume > endVolume ? 1 - Math.cbrt(endVolume / volume) : 0;
  }
}
