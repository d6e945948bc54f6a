package starchfilm.film;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import starchfilm.casting.Castings;
import starchfilm.material.ingredient.StarchKind;

/**
 * The glass transition against published points.
 *
 * <p>Source: glass-transitions.csv (Pyda and Wunderlich 2001 and Zeleznak and Hoseney 1987, read;
 * Kalichevsky et al. 1992 and Averous et al., recalled). Two heat-capacity steps were fitted to
 * these nine, so they calibrate the rule and do not validate it. Agreement reached: 12, -2, -8, 8,
 * 0, 0, 6, 3 and -4 K, root mean square 6 K.
 *
 * <p>A miss, not in the table: waxy-corn film of 70 parts starch with 30/0, 25/5 and 20/10 parts
 * glycerol and water, peaks of dynamic mechanical tests at 30, 23 and 40 °C (data set figshare
 * 5671402, read). Such peaks should lie 20 to 30 K above the rule; at the water of the recipe the
 * first two lie 37 and 18 K below it. The moisture at the test is not stated; ten per cent would
 * explain it.
 */
class GlassTransitionPublishedTest {
  private final FilmRule rule = new CouchmanKaraszTransition();

  @Test
  void ninePublishedPointsAreMetWithinHalfTheStatedBand() {
    double squares = 0;
    List<PublishedTable.PublishedRow> rows = PublishedTable.read("glass-transitions.csv");
    List<Double> residuals = new ArrayList<>();
    for (PublishedTable.PublishedRow row : rows) {
      double residual = rule.predict(film(row)) - row.number("tg_K");
      residuals.add(residual);
      squares += residual * residual;
    }

    assertThat(rows).hasSize(9);
    assertThat(Math.sqrt(squares / rows.size())).as("residuals %s", residuals).isLessThan(10);
    assertThat(residuals).allSatisfy(r -> assertThat(Math.abs(r)).isLessThan(20));
  }

  /**
   * The published elongations jump between 20 and 30 g glycerol per 100 g starch (fitted middle 26
   * g). The glass transition knows nothing of them, and crosses a room of 23 °C at the same place.
   */
  @Test
  void stretchComesWhereTheGlassTransitionCrossesTheRoom() {
    double plasticiser = 15;
    while (FilmState.atRest(
                Castings.paste(StarchKind.CORN, 0.04, plasticiser / 100), 0.5, Castings.ROOM_K)
            .temperatureK()
        < rule.predict(
            FilmState.atRest(
                Castings.paste(StarchKind.CORN, 0.04, plasticiser / 100), 0.5, Castings.ROOM_K))) {
      plasticiser += 0.1;
    }

    assertThat(plasticiser).isBetween(22.0, 30.0);
  }

  private static FilmState film(PublishedTable.PublishedRow row) {
    double plasticiser = row.number("glycerol_g_per_100g_starch");
    if (row.has("water_pct_of_all")) {
      double water = row.number("water_pct_of_all") / 100;
      return new FilmState(0, 0.25, 0, 0, water / (1 - water), 0.5, Castings.ROOM_K);
    }
    return FilmState.atRest(
        Castings.paste(StarchKind.WHEAT, 0.04, plasticiser / 100),
        row.number("rh_pct") / 100,
        Castings.ROOM_K);
  }
}
