package starchfilm.film;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import starchfilm.numerics.evidence.Estimate;

/**
 * Strips of one film, with their mean and spread.
 *
 * <p>Standard deviation between strips: {@code s = sqrt(sum (x - mean)^2/(n - 1))}; standard
 * uncertainty of the mean: {@code s/sqrt(n)}.
 *
 * <p>Source: ASTM D882 asks for mean and standard deviation of at least five specimens (recalled);
 * JCGM 100:2008 (GUM), 4.2.2 and 4.2.3 (recalled).
 *
 * @param strips the strips that broke between the clips; at least one
 */
public record StripTests(List<StripTest> strips) {
  /** How many strips the standard asks for. */
  public static final int ENOUGH = 5;

  /** Copies the list and checks that there is a strip. */
  public StripTests {
    strips = List.copyOf(strips);
    if (strips.isEmpty()) {
      throw new IllegalArgumentException(
          "strip test, strips: 0 given, allowed 1 or more; five give a fair mean");
    }
  }

  /**
   * Says whether there are as many strips as the standard asks for.
   *
   * @return true from five on
   */
  public boolean enough() {
    return strips.size() >= ENOUGH;
  }

  /**
   * Tensile strength.
   *
   * @return mean over the strips with the standard deviation between them (Pa); of one strip, 0
   */
  public Estimate strengthPa() {
    return spread(StripTest::strengthPa);
  }

  /**
   * Elongation at break.
   *
   * @return mean over the strips with the standard deviation between them (ratio); of one strip, 0
   */
  public Estimate elongation() {
    return spread(StripTest::elongation);
  }

  /**
   * Uncertainty of a mean over these strips.
   *
   * @param spread mean and standard deviation between strips
   * @return the mean with its standard uncertainty
   */
  public Estimate ofTheMean(Estimate spread) {
    return new Estimate(spread.value(), spread.sd() / Math.sqrt(strips.size()));
  }

  private Estimate spread(ToDoubleFunction<StripTest> figure) {
    SummaryStatistics statistics = new SummaryStatistics();
    strips.forEach(strip -> statistics.addValue(figure.applyAsDouble(strip)));
    return new Estimate(statistics.getMean(), statistics.getStandardDeviation());
  }
}
