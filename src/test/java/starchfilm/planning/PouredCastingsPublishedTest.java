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
 * 100 g (recalled). A tenth beyond the published range is allowed; found 73 um, which is a miss by
 * 5 %, and 81 um.
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

    assertThat(dry.middle() * 1e6).isBetween(0.9 * fromUm, 1.1 * toUm);
  }
}
