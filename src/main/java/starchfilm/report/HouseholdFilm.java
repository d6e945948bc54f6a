package starchfilm.report;

import java.util.List;
import starchfilm.files.json.PackedText;
import starchfilm.film.FilmProperty;

/**
 * Sheets that everybody has had in the hand, to hold a film's figures against. Middles of wide
 * ranges: they say "about like", no more. They stand in {@code household-film.txt}, in SI.
 *
 * <p>Sources. Polyethylene: Callister and Rethwisch, Materials Science and Engineering, appendix B,
 * tables B.2 and B.4 (recalled): of low density, as in freezer bags, modulus 172 to 282 MPa,
 * strength 8.3 to 31 MPa, elongation 100 to 650 %; of high density, as in crackling carrier bags,
 * modulus 1.08 GPa, strength 22 to 31 MPa. Carrier bags are 15 to 50 micrometres thick by the words
 * of Directive (EU) 2015/720 ("lightweight", "very lightweight"). Cling film, freezer bag and
 * baking paper: common practice, no source.
 */
record HouseholdFilm(String thing, double value) {
  private static final List<List<String>> ROWS =
      PackedText.rows(HouseholdFilm.class, "household-film.txt", 3);

  /**
   * The household films with a known value of a property.
   *
   * @return things in order of their figures; empty where nobody knows it of anything
   */
  static List<HouseholdFilm> of(FilmProperty property) {
    return ROWS.stream()
        .filter(row -> row.get(0).equals(property.name()))
        .map(row -> new HouseholdFilm(row.get(1), Double.parseDouble(row.get(2))))
        .toList();
  }
}
