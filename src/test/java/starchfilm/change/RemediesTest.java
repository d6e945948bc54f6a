package starchfilm.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.FaceChange;
import starchfilm.casting.FaceChange.OpenFaces;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.film.FilmForecaster;
import starchfilm.film.risk.MouldRisk;
import starchfilm.film.risk.PlateRisks;
import starchfilm.film.risk.RiskLevel;
import starchfilm.forecast.CastingForecaster;
import starchfilm.forecast.PlateParameters;

/** The change that would lower a risk most. */
class RemediesTest {
  private static final CastingForecaster TEXTBOOK =
      new CastingForecaster(
          new PlateParameters(ParameterDistribution.textbook(), false, 0, List.of()),
          new FilmForecaster());

  private static final Casting BRITTLE =
      Castings.plate(10, Castings.paste(0.06, 0), Castings.room(20, 20, 0.1), 60);

  private static final Casting DAMP =
      Castings.plate(10, Castings.paste(0.06, 0.3), Castings.room(15, 65, 0.1), 60);

  private static final Casting SOUND =
      Castings.plate(1, Castings.paste(0.06, 0.35), Castings.room(20, 50, 0.1), 60);

  @Test
  void promisesWhatTheChangedPlateDoes() {
    Rerun best = remedies(BRITTLE).crack().orElseThrow();
    Casting changed = best.step().change().setting().set(BRITTLE, best.step().to());
    double then = TEXTBOOK.risks(changed).crack().energyOverToughness();
    assertThat(Remedies.cracking(best.risks())).isEqualTo(then);
    assertThat(then).isLessThan(TEXTBOOK.risks(BRITTLE).crack().energyOverToughness());
  }

  @Test
  void choosesTheChangeThatHelpsMostAgainstCracks() {
    double best = Remedies.cracking(remedies(BRITTLE).crack().orElseThrow().risks());
    for (Change change :
        List.of(
            Change.POUR_THINNER,
            Change.MORE_GLYCEROL,
            Change.COVER_THE_PLATE,
            Change.LEVEL_THE_PLATE)) {
      change
          .clearStep(BRITTLE)
          .ifPresent(
              step ->
                  assertThat(TEXTBOOK.risks(step.after()).crack().energyOverToughness())
                      .as("%s", change)
                      .isGreaterThanOrEqualTo(best));
    }
  }

  @Test
  void choosesTheChangeThatHelpsMostAgainstMould() {
    double best = Remedies.moulding(remedies(DAMP).mould().orElseThrow().risks());
    for (Change change :
        List.of(Change.POUR_THINNER, Change.FAN, Change.DRIER_ROOM, Change.WARMER_ROOM)) {
      change
          .clearStep(DAMP)
          .ifPresent(
              step ->
                  assertThat(TEXTBOOK.risks(step.after()).mould().weightedHours())
                      .as("%s", change)
                      .isGreaterThanOrEqualTo(best));
    }
  }

  @Test
  void aSoundPlateNeedsNone() {
    assertThat(remedies(SOUND)).isEqualTo(Remedies.NONE);
  }

  /** Mould is looked at from when it is likely, at 48 weighted hours. */
  @Test
  void aPlateUnderWayIsLeftAloneUntilMouldIsLikely() {
    assertThat(underWay(DAMP, 47.9, 7200, casting -> 0.0)).isEmpty();
    assertThat(underWay(DAMP, 48, 7200, casting -> 0.0)).isPresent();
  }

  /** The change that leaves the fewest hours; none that leaves as many as there are. */
  @Test
  void aPlateUnderWayGetsWhatLessensItsMouldMost() {
    ToDoubleFunction<Casting> rackHelps = casting -> casting.faces().isEmpty() ? 60.0 : 30.0;
    ChangeStep rack = underWay(DAMP, 100, 7200, rackHelps).orElseThrow().step();
    assertThat(rack.change()).isEqualTo(Change.ONTO_A_RACK);
    assertThat(rack.after().faces()).containsExactly(new FaceChange(7200, OpenFaces.BOTH));

    ToDoubleFunction<Casting> fanHelps =
        casting ->
            casting.faces().isEmpty() && casting.room().at(0).speedMPerS() > 0.2 ? 30.0 : 60.0;
    assertThat(underWay(DAMP, 100, 7200, fanHelps).orElseThrow().step().change())
        .isEqualTo(Change.FAN);
    assertThat(underWay(DAMP, 100, 7200, casting -> 100.0)).isEmpty();
  }

  @Test
  void aPlateThatIsNeverPeelableOrOnARackAlreadyGetsOtherAir() {
    assertThat(underWay(DAMP, 100, Double.POSITIVE_INFINITY, casting -> 60.0))
        .hasValueSatisfying(
            found -> assertThat(found.step().change()).isNotEqualTo(Change.ONTO_A_RACK));
    Casting racked = DAMP.with(List.of(new FaceChange(3600, OpenFaces.BOTH)));
    assertThat(underWay(racked, 100, 7200, casting -> 60.0))
        .hasValueSatisfying(
            found -> assertThat(found.step().change()).isNotEqualTo(Change.ONTO_A_RACK));
  }

  private static Optional<Rerun> underWay(
      Casting casting, double hoursNow, double peelableS, ToDoubleFunction<Casting> hoursThen) {
    return Remedies.underWay(
        casting,
        moulding(hoursNow),
        peelableS,
        changed -> moulding(hoursThen.applyAsDouble(changed)));
  }

  /** The risks of a plate that amounts to so many weighted hours; 48 to 96 are likely. */
  private static PlateRisks moulding(double hours) {
    PlateRisks sound = TEXTBOOK.risks(SOUND);
    RiskLevel level =
        hours < 48 ? RiskLevel.WATCH : hours < 96 ? RiskLevel.LIKELY : RiskLevel.EXPECTED;
    return new PlateRisks(sound.crack(), sound.curl(), new MouldRisk(level, hours, 3600));
  }

  private static Remedies remedies(Casting casting) {
    return Remedies.of(TEXTBOOK, casting, TEXTBOOK.risks(casting));
  }
}
