package starchfilm.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.util.List;
import java.util.function.BiFunction;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.util.Pair;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import starchfilm.casting.Castings;
import starchfilm.material.ingredient.StarchKind;

/**
 * The mechanical rules against the published films they were fitted to, each source also left out.
 *
 * <p>Source: published-tensile.csv, 97 figures of 26 publications, each named in its row. The
 * moisture of a film is not published and is the isotherm's. Most rows went into the fit of the
 * constants, so the rows within the bands check formulas and widths; what a rule is worth on new
 * film is said by the sources left out.
 *
 * <p>Agreement reached, rows within the 80 % band of laboratory film: strength 34 of 39, elongation
 * 25 of 28, modulus 13 of 14; a normal scatter would give 80 %.
 */
class TensilePublishedTest {
  private final FilmRules rules = FilmRules.published();

  /** A rule with its constants free, to be fitted again. */
  private enum Refit {
    STRENGTH(
        FilmProperty.TENSILE_STRENGTH,
        "tensile_strength",
        new double[] {42, -24.6, 17.2, 1.3, 0.80},
        (q, film) ->
            Math.log(q[0] * glassy(film, q[1], q[2]) + Math.abs(q[3]))
                + q[4] * (film.amyloseFraction() - 0.25)),
    STRETCH(
        FilmProperty.ELONGATION,
        "elongation_at_break",
        new double[] {5.2, 70, 12.8},
        (q, film) -> Math.log(Math.abs(q[0]) + Math.abs(q[1]) * (1 - glassy(film, q[2], 8)))),
    STIFFNESS(
        FilmProperty.YOUNGS_MODULUS,
        "youngs_modulus",
        new double[] {-19, 11.7, 9.9},
        (q, film) -> Math.log(2000 * glassy(film, q[0], q[1]) + Math.abs(q[2])));

    private final FilmProperty property;
    private final String published;
    private final double[] printed;
    private final BiFunction<double[], FilmState, Double> log;

    Refit(
        FilmProperty property,
        String published,
        double[] printed,
        BiFunction<double[], FilmState, Double> log) {
      this.property = property;
      this.published = published;
      this.printed = printed;
      this.log = log;
    }

    private static double glassy(FilmState film, double middleK, double widthK) {
      return 1 / (1 + Math.exp((film.aboveGlassK() - middleK) / widthK));
    }
  }

  /**
   * The fit repeated without one publication misses that publication by this factor. It is the
   * band's standard deviation, within its rounding; an 80 % band is 1.28 of it.
   */
  @ParameterizedTest
  @CsvSource({"STRENGTH, 2.1", "STRETCH, 2.3", "STIFFNESS, 3.0"})
  void bandIsWhatAPublicationLeftOutIsMissedBy(Refit refit, double noWorseThan) {
    List<PublishedTable.PublishedRow> all = rows(refit);
    double squares = 0;
    for (PublishedTable.PublishedRow row : all) {
      double[] others =
          fit(refit, all.stream().filter(o -> !o.text("source").equals(row.text("source"))));
      double miss = Math.log(row.number("value")) - refit.log.apply(others, film(row));
      squares += miss * miss;
    }

    double factor = Math.exp(Math.sqrt(squares / all.size()));
    assertThat(factor).isLessThan(noWorseThan);
    assertThat(rules.of(refit.property).scatter().oneSigma()).isCloseTo(factor, within(0.1));
  }

  /** The printed constants are as good as the best on these rows, within a twentieth. */
  @ParameterizedTest
  @EnumSource
  void printedConstantsAreAsGoodAsTheBestFit(Refit refit) {
    List<PublishedTable.PublishedRow> all = rows(refit);

    assertThat(scatter(refit, refit.printed, all))
        .isLessThan(1.05 * scatter(refit, fit(refit, all.stream()), all));
    assertThat(refit.log.apply(refit.printed, film(all.get(0))))
        .as("the formula here is the rule's")
        .isCloseTo(Math.log(predicted(all.get(0), refit.property)), within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"STRENGTH, 39, 34", "STRETCH, 28, 25", "STIFFNESS, 14, 13"})
  void eightyPercentBandsHoldTheShareStated(Refit refit, int rows, int held) {
    List<PublishedTable.PublishedRow> all = rows(refit);

    assertThat(all).hasSize(rows);
    assertThat(all.stream().filter(row -> Math.abs(sigmas(row, refit.property)) <= 1.2816).count())
        .isEqualTo(held);
  }

  @Test
  void rowsThatAreReadAndNotRecalledFareNoWorse() {
    List<PublishedTable.PublishedRow> read =
        rows(Refit.STRENGTH).stream().filter(row -> row.text("flag").startsWith("read")).toList();

    assertThat(read).hasSizeGreaterThanOrEqualTo(15);
    assertThat(
            read.stream().filter(row -> Math.abs(sigmas(row, FilmProperty.TENSILE_STRENGTH)) <= 2))
        .hasSizeGreaterThanOrEqualTo((int) Math.ceil(0.9 * read.size()));
  }

  /**
   * Corn and high-amylose ribbons without glycerol at 20, 50 and 80 % relative humidity: 25, 40, 15
   * and 65, 50, 35 MPa. The rule cannot give the weak film of the driest air, so the band reaches
   * further down there.
   */
  @ParameterizedTest
  @CsvSource({
    "CORN, 20, 25",
    "CORN, 50, 40",
    "CORN, 80, 15",
    "HIGH_AMYLOSE_CORN, 20, 65",
    "HIGH_AMYLOSE_CORN, 50, 50",
    "HIGH_AMYLOSE_CORN, 80, 35"
  })
  void ribbonsOfShogrenAndJasbergLieInTheBand(
      StarchKind kind, double humidity, double megapascals) {
    FilmForecast film =
        new FilmForecaster(Workmanship.LABORATORY, LearntFilm.NOTHING)
            .forecast(
                Castings.filmIn(humidity / 100, Castings.paste(kind, 0.04, 0))
                    .with(Castings.cook(15, 130)));

    assertThat(1e6 * megapascals)
        .isBetween(film.tensileStrengthPa().low(), film.tensileStrengthPa().high());
  }

  /**
   * Tapioca film without glycerol is strongest at 4 to 8 % water and weaker on either side (Chang,
   * Cheah and Seow 2000, J. Food Sci. 65:445, recalled). The rule has no such maximum, and says so
   * by its band: drier than that its middle stays the same, and the low end is half as high.
   */
  @Test
  void noTrendIsClaimedWhereTapiocaOfChangHasItsMaximum() {
    StrengthRule rule = new StrengthRule();
    double amylose = StarchKind.TAPIOCA.amyloseFraction();
    double dampest = rule.at(waterOnly(0.08, amylose).aboveGlassK(), amylose);
    for (double water = 0.01; water <= 0.08; water += 0.01) {
      FilmState film = waterOnly(water, amylose);

      assertThat(rule.at(film.aboveGlassK(), amylose) / dampest).isBetween(1.0, 1.02);
      assertThat(rule.lowEndDividedBy(film)).isEqualTo(2);
    }
  }

  private static FilmState waterOnly(double ofAll, double amylose) {
    return new FilmState(0, amylose, 0, 0, ofAll / (1 - ofAll), 0.3, Castings.ROOM_K);
  }

  @Test
  void tableIsWhole() {
    List<PublishedTable.PublishedRow> all = table();

    assertThat(all).hasSize(97);
    assertThat(all.stream().map(row -> row.text("source")).distinct()).hasSizeBetween(24, 30);
    assertThat(all.stream().mapToDouble(row -> row.number("value")).sum())
        .isCloseTo(6083.60, within(0.005));
  }

  private static double[] fit(
      Refit refit, java.util.stream.Stream<PublishedTable.PublishedRow> rows) {
    List<FilmState> films = new java.util.ArrayList<>();
    List<Double> logs = new java.util.ArrayList<>();
    rows.forEach(
        row -> {
          films.add(film(row));
          logs.add(Math.log(row.number("value")));
        });
    return new LevenbergMarquardtOptimizer()
        .optimize(
            new LeastSquaresBuilder()
                .start(refit.printed)
                .target(logs.stream().mapToDouble(Double::doubleValue).toArray())
                .model(point -> model(refit, point.toArray(), films))
                .maxEvaluations(10_000)
                .maxIterations(10_000)
                .build())
        .getPoint()
        .toArray();
  }

  private static Pair<
          org.apache.commons.math3.linear.RealVector, org.apache.commons.math3.linear.RealMatrix>
      model(Refit refit, double[] q, List<FilmState> films) {
    double[] values = new double[films.size()];
    double[][] slopes = new double[films.size()][q.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = refit.log.apply(q, films.get(i));
      for (int j = 0; j < q.length; j++) {
        double[] moved = q.clone();
        moved[j] += 1e-6 * Math.max(1, Math.abs(q[j]));
        slopes[i][j] = (refit.log.apply(moved, films.get(i)) - values[i]) / (moved[j] - q[j]);
      }
    }
    return Pair.create(new ArrayRealVector(values), new Array2DRowRealMatrix(slopes));
  }

  private static double scatter(Refit refit, double[] q, List<PublishedTable.PublishedRow> rows) {
    return Math.sqrt(
        rows.stream()
            .mapToDouble(
                row -> Math.pow(Math.log(row.number("value")) - refit.log.apply(q, film(row)), 2))
            .average()
            .orElseThrow());
  }

  private static List<PublishedTable.PublishedRow> rows(Refit refit) {
    return table().stream()
        .filter(row -> row.text("property").equals(refit.published))
        .filter(row -> row.text("left_out_because").isEmpty())
        .toList();
  }

  private double predicted(PublishedTable.PublishedRow row, FilmProperty property) {
    return rules.of(property).predict(film(row)) / (row.text("unit").equals("MPa") ? 1e6 : 0.01);
  }

  private double sigmas(PublishedTable.PublishedRow row, FilmProperty property) {
    return Math.log(row.number("value") / predicted(row, property))
        / Math.log(rules.of(property).scatter().oneSigma());
  }

  private static FilmState film(PublishedTable.PublishedRow row) {
    double amylose = row.number("amylose_pct") / 100;
    FilmState film =
        FilmState.atRest(
            Castings.paste(
                kind(row.text("starch"), amylose),
                0.04,
                (row.number("glycerol_g_per_100g_starch")) / 100),
            row.number("rh_pct") / 100,
            row.number("temperature_C") + ZERO_CELSIUS_K);
    return new FilmState(
        film.glycerolFraction(),
        amylose,
        0,
        0,
        film.waterKgPerKgDry(),
        film.relativeHumidity(),
        film.temperatureK());
  }

  /** The isotherm that stands for a starch; those the program does not know get the likest. */
  private static StarchKind kind(String starch, double amylose) {
    return switch (starch) {
      case "corn" -> StarchKind.CORN;
      case "potato" -> StarchKind.POTATO;
      case "tapioca", "arrowroot" -> StarchKind.TAPIOCA;
      case "rice" -> StarchKind.RICE;
      case "wheat", "wheat_or_corn", "barley" -> StarchKind.WHEAT;
      default -> amylose > 0.5 ? StarchKind.HIGH_AMYLOSE_CORN : StarchKind.WAXY_CORN;
    };
  }

  private static List<PublishedTable.PublishedRow> table() {
    return PublishedTable.read("published-tensile.csv");
  }
}
