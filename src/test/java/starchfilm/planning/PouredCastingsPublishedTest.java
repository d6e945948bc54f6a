package starchfilm.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.Plate;
import starchfilm.casting.PlateMaterial;
import starchfilm.casting.Pour;
import starchfilm.film.FilmForecaster;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Paste;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;

/**
 * Castings whose wet amount and dry thickness were published; from grams on a plate to wet
 * thickness to dry thickness.
 *
 * <p>Sources (all recalled, protocols of method sections): Garcia, Martino and Zaritzky 2000,
 * Starch/Staerke 52:118, corn 2 %, 20 g on a dish of 9 cm, 50 to 70 um; Mali, Grossmann et al.,
 * cassava 3 %, 0.25 to 0.3 g/cm2 (its middle taken), 70 to 100 um. Plasticiser 40 g and 20 g per
 * 100 g (recalled). A published range counts as met where the 10 to 90 % band reaches into it;
 * middles found: 54 um and 77 um.
 */
class PouredCastingsPublishedTest {
  @ParameterizedTest
  @CsvSource({
    "CORN, 0.02, 0.4, 20, 63.6, 50, 70",
    "TAPIOCA, 0.03, 0.2, 27.5, 100, 70, 100",
  })
  void gramsOnAPlateDryToThePublishedThickness(
      StarchKind kind,
      double starch,
      double plasticiser,
      double pouredG,
      double areaCm2,
      double fromUm,
      double toUm) {
    double side = Math.sqrt(areaCm2) / 100;
    Casting casting =
        new Casting(
            new Paste(Castings.paste(kind, starch, plasticiser), 1, 0.03, 0),
            CookSteps.of(Map.of(kind, 1.0)).cook(Estimate.exact(0)),
            new Plate(PlateMaterial.ACRYLIC, side, side, 0.002, 0),
            new Pour(Estimate.exact(1), 0, 333.15),
            List.of(),
            new DryingPlace(Castings.room(40, 30, 0.5), Requests.NONE),
            Castings.use(0.5, 23, 0));

    double wetM = pouredG / 1000 / casting.pastePerPlateKg();
    Casting poured = new ThicknessRequest(casting, 0, Requests.DAY_S).pouredTo(wetM);
    Band dry = new FilmForecaster().forecast(poured).dryThicknessM();

    assertThat(dry.high() * 1e6).isGreaterThan(fromUm);
    assertThat(dry.low() * 1e6).isLessThan(1.01 * toUm);
    assertThat(dry.middle() * 1e6).isBetween(0.85 * fromUm, 1.15 * toUm);
  }

  /** Concentrations people cast at: Swinkels 1985 and others, see {@link StarchKind#SOURCE}. */
  @ParameterizedTest
  @CsvSource({"CORN, 4, 7", "POTATO, 2, 4", "TAPIOCA, 3, 5", "WHEAT, 5, 8", "RICE, 4, 6"})
  void aPlanStaysWithinTheConcentrationsPeopleCastAt(
      StarchKind kind, double fromPercent, double toPercent) {
    PlanRequest request =
        Requests.garden()
            .with(Requests.kitchen(0.002, 0.0001, 4))
            .with(new Supplies(Requests.recovered(), 0.25, List.of(Requests.plenty(kind)), 0));

    for (PlannedRecipe recipe :
        new Planner(starchfilm.drying.uncertainty.ParameterDistribution.textbook())
            .plan(request)
            .recipes()) {
      // The balance shows tenths of a gram of about 10 g starch.
      assertThat(100 * recipe.casting().composition().dryStarch())
          .isBetween(fromPercent * 0.98, toPercent * 1.02);
    }
  }
}
