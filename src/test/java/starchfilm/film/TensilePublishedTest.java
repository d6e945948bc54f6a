package starchfilm.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The mechanical rules against the published films they were fitted to and some they were not.
 *
 * <p>Source: published-tensile.csv, 97 figures of 26 publications, each named in its row. Nothing
 * is tuned here; the rules come with their constants. Most rows went into the fit of the constants,
 * so this checks the formulas and the width of the bands, not the rules' worth on new film; the
 * bands were stated for a publication left out of the fit.
 *
 * <p>Agreement reached: strength 38 of 39 rows within two standard deviations, elongation 21 of 22,
 * modulus 14 of 14; a normal scatter would give 95 %.
 */
class TensilePublishedTest {
  private final FilmRules rules = FilmRules.published();

  @ParameterizedTest
  @CsvSource({
    "tensile_strength, TENSILE_STRENGTH, 39, 1",
    "elongation_at_break, ELONGATION, 22, 1",
    "youngs_modulus, YOUNGS_MODULUS, 14, 0"
  })
  void publishedFilmsLieInTheBands(
      String published, FilmProperty property, int rows, int missesStated) {
    List<PublishedTable.Row> held = heldAgainst(published, property);

    assertThat(held).hasSize(rows);
    assertThat(held.stream().filter(row -> Math.abs(sigmas(row, property)) > 2))
        .as("rows outside two standard deviations")
        .hasSize(missesStated);
    assertThat(held.stream().filter(row -> Math.abs(sigmas(row, property)) <= 1).count())
        .as("rows within one standard deviation; a normal scatter gives 68 %")
        .isGreaterThanOrEqualTo(Math.round(0.60 * rows));
  }

  /**
   * Ordinary least squares on the logarithms of the table, humidity term fixed: 36.3 MPa, 6.23 and
   * 1.12, which the rule rounds.
   */
  @Test
  void leastSquaresOnTheTableGiveTheStrengthRuleBack() {
    double[] fitted = fit(heldAgainst("tensile_strength", FilmProperty.TENSILE_STRENGTH));

    assertThat(Math.exp(fitted[0])).isCloseTo(37, within(1.0));
    assertThat(fitted[1]).isCloseTo(-6.3, within(0.1));
    assertThat(fitted[2]).isCloseTo(1.1, within(0.05));
  }

  /** The fit repeated without one publication misses that publication by a factor of 1.92. */
  @Test
  void strengthBandIsWhatAPublicationLeftOutIsMissedBy() {
    List<PublishedTable.Row> all = heldAgainst("tensile_strength", FilmProperty.TENSILE_STRENGTH);
    double squares = 0;
    for (PublishedTable.Row row : all) {
      double[] others =
          fit(all.stream().filter(o -> !o.text("source").equals(row.text("source"))).toList());
      double[] terms = terms(row);
      double miss =
          logStrengthAt50Percent(row) - others[0] - others[1] * terms[0] - others[2] * terms[1];
      squares += miss * miss;
    }

    double factor = Math.exp(Math.sqrt(squares / all.size()));
    assertThat(rules.of(FilmProperty.TENSILE_STRENGTH).scatter().oneSigma())
        .isCloseTo(factor, within(0.05));
  }

  @ParameterizedTest
  @CsvSource({
    "tensile_strength, TENSILE_STRENGTH",
    "elongation_at_break, ELONGATION",
    "youngs_modulus, YOUNGS_MODULUS"
  })
  void scatterOfTheTableIsNoWiderThanTheBand(String published, FilmProperty property) {
    double meanSquare =
        heldAgainst(published, property).stream()
            .mapToDouble(row -> Math.pow(sigmas(row, property), 2))
            .average()
            .orElseThrow();

    assertThat(Math.sqrt(meanSquare)).isBetween(0.5, 1.1);
  }

  @Test
  void missesAreTheTwoThatAreStated() {
    assertThat(misses("tensile_strength", FilmProperty.TENSILE_STRENGTH))
        .containsExactly("Shapii et al. NanotechnolRev");
    assertThat(misses("elongation_at_break", FilmProperty.ELONGATION))
        .containsExactly("Dias et al. JCerealSci51:213");
  }

  @Test
  void rowsThatAreReadAndNotRecalledFareNoWorse() {
    List<PublishedTable.Row> read =
        heldAgainst("tensile_strength", FilmProperty.TENSILE_STRENGTH).stream()
            .filter(row -> row.text("flag").startsWith("read"))
            .toList();

    assertThat(read).hasSizeGreaterThanOrEqualTo(15);
    assertThat(
            read.stream().filter(row -> Math.abs(sigmas(row, FilmProperty.TENSILE_STRENGTH)) <= 2))
        .hasSizeGreaterThanOrEqualTo((int) Math.ceil(0.9 * read.size()));
  }

  @Test
  void tableIsWhole() {
    List<PublishedTable.Row> all = table();

    assertThat(all).hasSize(97);
    assertThat(all.stream().map(row -> row.text("source")).distinct()).hasSizeBetween(24, 30);
    assertThat(all.stream().mapToDouble(row -> row.number("value")).sum())
        .isCloseTo(6083.60, within(0.005));
  }

  private static double[] fit(List<PublishedTable.Row> rows) {
    OLSMultipleLinearRegression regression = new OLSMultipleLinearRegression();
    regression.newSampleData(
        rows.stream().mapToDouble(TensilePublishedTest::logStrengthAt50Percent).toArray(),
        rows.stream().map(TensilePublishedTest::terms).toArray(double[][]::new));
    return regression.estimateRegressionParameters();
  }

  private static double[] terms(PublishedTable.Row row) {
    return new double[] {
      row.number("glycerol_g_per_100g_starch") / 100, row.number("amylose_pct") / 100 - 0.25
    };
  }

  private static double logStrengthAt50Percent(PublishedTable.Row row) {
    return Math.log(row.number("value")) + 0.010 * Math.max(row.number("rh_pct") - 50, 0);
  }

  private List<String> misses(String published, FilmProperty property) {
    return heldAgainst(published, property).stream()
        .filter(row -> Math.abs(sigmas(row, property)) > 2)
        .map(row -> row.text("source"))
        .toList();
  }

  /** The rows that are not left out and lie in the rule's own range. */
  private List<PublishedTable.Row> heldAgainst(String published, FilmProperty property) {
    List<Limit> limits = rules.of(property).limits();
    return table().stream()
        .filter(row -> row.text("property").equals(published))
        .filter(row -> row.text("left_out_because").isEmpty())
        .filter(row -> Limit.outside("", limits, film(row)).findAny().isEmpty())
        .toList();
  }

  private double sigmas(PublishedTable.Row row, FilmProperty property) {
    FilmRule rule = rules.of(property);
    FilmState film = film(row);
    double toSi = row.text("unit").equals("MPa") ? 1e6 : 0.01;
    double value = row.number("value") * toSi;
    return Math.log(value / rule.predict(film)) / Math.log(rule.scatter().oneSigma());
  }

  private static FilmState film(PublishedTable.Row row) {
    double plasticiser = row.number("glycerol_g_per_100g_starch") / 100;
    return new FilmState(
        plasticiser / (1 + plasticiser),
        row.number("amylose_pct") / 100,
        0,
        0.12,
        row.number("rh_pct") / 100,
        row.number("temperature_C") + Pastes.ZERO_CELSIUS_K);
  }

  private static List<PublishedTable.Row> table() {
    return PublishedTable.read("published-tensile.csv");
  }
}
