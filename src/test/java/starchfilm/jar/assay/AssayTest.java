package starchfilm.jar.assay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.material.recipe.GlycerolOrigin;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;

/** What an assay says of the contents it found. */
class AssayTest {
  /** The 10 and 90 % points are 2 x 1.2816 standard deviations apart. */
  @Test
  void aRecipeTakesItsJarFromTheBands() {
    JarContent content = content(0.75, 0.80, 0.85);
    assertThat(content.stock(GlycerolOrigin.BOUGHT).glycerolFraction().value()).isEqualTo(0.80);
    assertThat(content.stock(GlycerolOrigin.BOUGHT).glycerolFraction().sd())
        .isCloseTo(0.1 / 2.5631, within(1e-5));
  }

  /**
   * Record and reading that do not meet: the outer ends of both; glycerol up to the most that the
   * oil held, 84 g, and the share of the jar as much less as 84 is than 90.
   */
  @Test
  void twoContentsAreCoveredByTheOuterEnds() {
    JarContent record = content(0.60, 0.70, 0.80);
    JarContent reading = content(0.82, 0.86, 0.90);
    JarContent both = record.covering(reading, 0.084);
    assertThat(both.pureGlycerolKg().low()).isCloseTo(0.060, within(1e-12));
    assertThat(both.pureGlycerolKg().middle()).isCloseTo(0.070, within(1e-12));
    assertThat(both.pureGlycerolKg().high()).isCloseTo(0.084, within(1e-12));
    assertThat(both.glycerol().high()).isCloseTo(0.84, within(1e-12));
    assertThat(both.stays()).isEqualTo(record.stays());
    JarContent unbounded = record.covering(reading, Double.POSITIVE_INFINITY);
    assertThat(unbounded.pureGlycerolKg().high()).isCloseTo(0.090, within(1e-12));
    assertThat(unbounded.glycerol()).isEqualTo(new Band(0.60, 0.70, 0.90));
    assertThat(reading.covering(record, 1).glycerol()).isEqualTo(new Band(0.60, 0.86, 0.90));
  }

  /** 70 g of glycerol make 87.5 g of 80 %, more than the 80 g in the jar, or less than 100 g. */
  @ParameterizedTest
  @CsvSource({
    "0.080, at 80 %: add water up to that weight.",
    "'0.100', 'at 80 %, less than the jar holds now: it is weaker than that already.'"
  })
  void anAssaySaysWhatItsGlycerolWeighsAtAnotherStrength(double massKg, String end) {
    Assay assay = assay(massKg, Optional.of(content(0.60, 0.70, 0.80)));
    assertThat(assay.at(0.8).remarks())
        .containsExactly("first", "Its glycerol weighs 87.5 g (75 to 100) " + end);
    assertThat(assay(massKg, Optional.empty()).at(0.8).remarks()).containsExactly("first");
  }

  /** k p/(1 + p + k p) at p = 0.3: 5 % salt beside 80 % glycerol is 1.42 % of the dry solids. */
  @ParameterizedTest
  @CsvSource({
    "0.80, 0.05, 0.06, 0.014218",
    "0.80, 0, 0.05, 0.014218",
    "0.80, 0, 0, 0",
    "0, 0.05, 0.06, 0"
  })
  void saltIsAdvisedOnByItsMiddleOrElseItsMost(
      double glycerol, double salt, double mostSalt, double ofDry) {
    JarContent content =
        new JarContent(
            Band.exact(glycerol), new Band(0, salt, mostSalt), Band.exact(0), Band.exact(0));
    SaltAdvice advice = assay(1, Optional.of(content)).saltAdvice().orElseThrow();
    assertThat(advice.ofDrySolidsAtUsual()).isCloseTo(ofDry, within(1e-6));
    assertThat(assay(1, Optional.empty()).saltAdvice()).isEmpty();
  }

  /**
   * At a salt of 2/98 of the glycerol no level reaches 2 % of the dry solids, beyond it one does.
   */
  @Test
  void littleSaltNeverShows() {
    assertThat(SaltAdvice.of(0.0204).mostUnnoticed()).isEmpty();
    assertThat(SaltAdvice.of(0.0205).mostUnnoticed()).isPresent();
    assertThat(SaltAdvice.of(0.1).mostUsable().getAsDouble()).isCloseTo(0.05 / 0.045, within(1e-9));
    assertThat(SaltAdvice.of(0.1).mostUnnoticed().getAsDouble())
        .isCloseTo(0.02 / 0.078, within(1e-9));
  }

  @Test
  void whatStaysIsSaltAndSoapNotAlcohol() {
    Dissolved some = new Dissolved(0.03, 0.02, 0.01);
    assertThat(some.stays()).isCloseTo(0.05, within(1e-12));
    assertThat(some.all()).isCloseTo(0.06, within(1e-12));
  }

  private static Assay assay(double massKg, Optional<JarContent> content) {
    return new Assay(
        Estimate.exact(massKg),
        GlycerolOrigin.BOUGHT,
        content,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of("first"),
        List.of());
  }

  /** 100 g of a jar, of which so much is glycerol and the rest water. */
  private static JarContent content(double low, double middle, double high) {
    return new JarContent(
        new Band(low, middle, high),
        Band.exact(0.01),
        new Band(0.99 - high, 0.99 - middle, 0.99 - low),
        new Band(low, middle, high).times(0.1));
  }
}
