package starchfilm.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.drying.DryingForecaster;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.film.FilmForecaster;
import starchfilm.forecast.CastingForecaster;
import starchfilm.forecast.PlateParameters;

/** The change that would lower a risk most. */
class RemediesTest {
  private static final CastingForecaster TEXTBOOK =
      new CastingForecaster(
          new PlateParameters(ParameterDistribution.textbook(), false, 0, List.of()),
          new FilmForecaster(),
          DryingForecaster.FEWEST_DRAWS);

  private static final Casting BRITTLE =
      Castings.plate(10, Castings.paste(0.06, 0), Castings.room(20, 20, 0.1), 60);

  private static final Casting DAMP =
      Castings.plate(10, Castings.paste(0.06, 0.3), Castings.room(15, 65, 0.1), 60);

  @Test
  void promisesWhatTheChangedPlateDoes() {
    Remedy remedy = remedies(BRITTLE).crack().orElseThrow();
    Casting changed = remedy.change().setting().set(BRITTLE, remedy.to());
    assertThat(TEXTBOOK.risks(BRITTLE).crack().energyOverToughness())
        .isEqualTo(remedy.riskBefore());
    assertThat(TEXTBOOK.risks(changed).crack().energyOverToughness()).isEqualTo(remedy.riskAfter());
    assertThat(remedy.riskAfter()).isLessThan(remedy.riskBefore());
  }

  @Test
  void choosesTheChangeThatHelpsMostAgainstCracks() {
    double best = remedies(BRITTLE).crack().orElseThrow().riskAfter();
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
    double best = remedies(DAMP).mould().orElseThrow().riskAfter();
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
    Casting sound = Castings.plate(1, Castings.paste(0.06, 0.35), Castings.room(20, 50, 0.1), 60);
    assertThat(remedies(sound)).isEqualTo(Remedies.NONE);
  }

  private static Remedies remedies(Casting casting) {
    return Remedies.of(TEXTBOOK, casting, TEXTBOOK.risks(casting));
  }
}
