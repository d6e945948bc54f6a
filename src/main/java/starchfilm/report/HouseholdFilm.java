package starchfilm.report;

import java.util.List;
import starchfilm.film.FilmProperty;

/**
 * Sheets that everybody has had in the hand, to hold a film's figures against. Middles of wide
 * ranges: they say "about like", no more.
 *
 * <p>Sources. Polyethylene: Callister and Rethwisch, Materials Science and Engineering, appendix B,
 * tables B.2 and B.4 (recalled): of low density, as in freezer bags, modulus 172 to 282 MPa,
 * strength 8.3 to 31 MPa, elongation 100 to 650 %; of high density, as in crackling carrier bags,
 * modulus 1.08 GPa, strength 22 to 31 MPa. Carrier bags are 15 to 50 micrometres thick by the words
 * of Directive (EU) 2015/720 ("lightweight", "very lightweight"). Cling film, freezer bag and
 * baking paper: common practice, no source.
 */
record HouseholdFilm(String thing, double value) {
  private static final String BAKING_PAPER = "baking paper";
  private static final String CARRIER_BAG = "carrier bag";
  private static final String CLING_FILM = "cling film";
  private static final String FREEZER_BAG = "freezer bag";

  /**
   * What is known of a property.
   *
   * @return things in order of their figures; empty where nobody knows it of anything
   */
  static List<HouseholdFilm> of(FilmProperty property) {
    return switch (property) {
      case DRY_THICKNESS ->
          List.of(
              new HouseholdFilm(CLING_FILM, 10e-6),
              new HouseholdFilm(CARRIER_BAG, 25e-6),
              new HouseholdFilm(BAKING_PAPER, 60e-6),
              new HouseholdFilm("postcard", 250e-6));
      case TENSILE_STRENGTH ->
          List.of(new HouseholdFilm(FREEZER_BAG, 16e6), new HouseholdFilm(BAKING_PAPER, 50e6));
      case ELONGATION ->
          List.of(new HouseholdFilm(BAKING_PAPER, 0.03), new HouseholdFilm(FREEZER_BAG, 2.5));
      case YOUNGS_MODULUS ->
          List.of(
              new HouseholdFilm(FREEZER_BAG, 220e6),
              new HouseholdFilm(CARRIER_BAG, 1080e6),
              new HouseholdFilm(BAKING_PAPER, 4000e6));
      default -> List.of();
    };
  }
}
