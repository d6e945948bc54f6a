package starchfilm.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.Plate;
import starchfilm.casting.PlateMaterial;
import starchfilm.casting.Pour;
import starchfilm.casting.Spot;
import starchfilm.drying.DryingForecast;
import starchfilm.drying.DryingForecaster;
import starchfilm.drying.Milestone;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Paste;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.planning.PourThickness.DateReach;

class ThicknessFinderTest {
  private final ThicknessFinder finder = new ThicknessFinder(ParameterDistribution.textbook());

  @Test
  void theForecastOfTheThicknessFoundMeetsTheDate() {
    ThicknessRequest request = request(4 * Requests.DAY_S, 0.5);

    List<PourThickness> pours = finder.find(request, List.of(0.5, 0.9)).pours();

    assertThat(dryThrough(request, pours.get(0)).middle())
        .isCloseTo(request.byS(), within(0.02 * request.byS()));
    assertThat(dryThrough(request, pours.get(1)).high())
        .isCloseTo(request.byS(), within(0.03 * request.byS()));
  }

  @Test
  void surerMeansThinnerAndLaterMeansThicker() {
    double before = 0;
    for (double days : new double[] {1, 2, 4, 8}) {
      List<PourThickness> pours =
          finder.find(request(days * Requests.DAY_S, 0.5), List.of(0.5, 0.9)).pours();
      assertThat(pours.get(1).wetThicknessM()).isLessThan(pours.get(0).wetThicknessM());
      assertThat(pours.get(1).wetThicknessM()).isGreaterThan(before);
      before = pours.get(1).wetThicknessM();
    }
  }

  @Test
  void gramsAndThicknessBelongTogether() {
    ThicknessRequest request = request(4 * Requests.DAY_S, 0.5);
    PourThickness pour = finder.find(request, List.of(0.5)).pours().get(0);

    double density = request.casting().composition().pasteDensityKgPerM3();
    assertThat(pour.pourKg()).isCloseTo(0.06 * pour.wetThicknessM() * density, within(1e-9));
    assertThat(pour.dryThicknessM().middle()).isBetween(0.03 * pour.wetThicknessM(), 1e-3);
  }

  @Test
  void saysWhereNoPourIsReadyAndWhereAnyIs() {
    assertThat(reach(request(600, 0.5))).isEqualTo(DateReach.TOO_SOON);
    assertThat(reach(request(59 * Requests.DAY_S, 0.1))).isEqualTo(DateReach.ANY);
    assertThat(reach(request(5 * Requests.DAY_S, 0.97))).isEqualTo(DateReach.TOO_SOON);
  }

  private DateReach reach(ThicknessRequest request) {
    return finder.find(request, List.of(0.5)).pours().get(0).reach();
  }

  private static Band dryThrough(ThicknessRequest request, PourThickness pour) {
    DryingForecast forecast =
        new DryingForecaster(ParameterDistribution.textbook(), 400)
            .forecast(request.pouredTo(pour.wetThicknessM()));
    return forecast.at(Spot.THICK_SPOT).at(Milestone.DRY_THROUGH).timeS();
  }

  private static ThicknessRequest request(double byS, double humidity) {
    double airC = humidity < 0.2 ? 35 : 20;
    Casting casting =
        new Casting(
            new Paste(Castings.paste(StarchKind.CORN, 0.04, 0.3), 1, 0.01, 0),
            CookSteps.of(Map.of(StarchKind.CORN, 1.0)).cook(Estimate.exact(0)),
            new Plate(PlateMaterial.GLASS, 0.3, 0.2, 0.004, 0),
            new Pour(Estimate.exact(1), 0.25, PotRules.POURED_AT_K),
            List.of(),
            new DryingPlace(
                Castings.room(airC, 100 * humidity, humidity < 0.2 ? 1 : 0.1), Requests.NONE),
            Castings.use(0.5, 23, 0));
    return new ThicknessRequest(casting, 0.03, byS);
  }
}
