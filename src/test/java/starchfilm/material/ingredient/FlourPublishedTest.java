package starchfilm.material.ingredient;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Protein, fibre, fat and ash per 100 g of flour, U.S. Department of Agriculture, FoodData Central,
 * SR Legacy (as {@link Flour} cites them); 0.7 to 1.5 times their sum is said, to the per cent.
 */
class FlourPublishedTest {
  @ParameterizedTest
  @CsvSource({
    "WHEAT, 10.3, 2.7, 1.0, 0.5",
    "RICE, 5.9, 2.4, 1.4, 0.6",
    "POTATO, 6.9, 5.9, 0.3, 3.1",
    "CORN, 6.9, 7.3, 3.9, 1.5",
  })
  void saysWhatIsNeitherStarchNorWater(
      StarchKind grain, double protein, double fibre, double fat, double ash) {
    double sum = protein + fibre + fat + ash;
    assertThat(Flour.range(grain))
        .isEqualTo(Math.round(0.7 * sum) + "-" + Math.round(1.5 * sum) + " %");
  }
}
