package starchfilm.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers of points can be read, however the points crowd. */
class NumberPlacesTest {
  private static final double DIGIT_WIDTH = 8;
  private static final double DIGIT_HEIGHT = 12;

  @ParameterizedTest
  @ValueSource(ints = {3, 9, 18})
  void noNumberLiesOnAMarkOrOnAnotherNumber(int points) {
    Random random = new Random(7);
    for (int spread : new int[] {1, 10, 40, 140}) {
      List<double[]> marks = new ArrayList<>();
      for (int i = 0; i < points; i++) {
        marks.add(
            new double[] {
              200 + spread * random.nextDouble(), 100 + 0.5 * spread * random.nextDouble()
            });
      }
      NumberPlaces places = new NumberPlaces(marks);
      List<double[]> numbers = new ArrayList<>();
      for (int i = 0; i < points; i++) {
        int digits = i < 9 ? 1 : 2;
        NumberPlaces.Offset offset = places.next(marks.get(i), digits);
        numbers.add(
            new double[] {
              marks.get(i)[0] + Double.parseDouble(offset.dx()),
              marks.get(i)[1] + Double.parseDouble(offset.dy()),
              digits * DIGIT_WIDTH
            });
      }
      for (int i = 0; i < points; i++) {
        double[] number = numbers.get(i);
        for (double[] mark : marks) {
          assertThat(
                  Math.abs(number[0] - mark[0]) < number[2] / 2
                      && Math.abs(number[1] - mark[1]) < DIGIT_HEIGHT / 2)
              .isFalse();
        }
        for (double[] other : numbers.subList(0, i)) {
          assertThat(
                  Math.abs(number[0] - other[0]) < (number[2] + other[2]) / 2
                      && Math.abs(number[1] - other[1]) < DIGIT_HEIGHT)
              .isFalse();
        }
      }
    }
  }
}
