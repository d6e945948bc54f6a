package starchfilm.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import starchfilm.evidence.Estimate;

class StripTestsTest {
  /** 6.0 N on 15 mm by 0.1 mm is 4.0 N/mm2; 50 to 75 mm is a stretch of one half. By hand. */
  @Test
  void stressIsLoadOverTheSectionBeforeThePull() {
    StripTest strip = new StripTest(6.0, 15e-3, 0.1e-3, 50e-3, 25e-3);

    assertThat(strip.strengthPa()).isCloseTo(4.0e6, within(1e-6));
    assertThat(strip.elongation()).isCloseTo(0.5, within(1e-12));
  }

  /** 2, 4, 4, 4, 5, 5, 7, 9: mean 5, sum of squares 32, so s = sqrt(32/7). By hand. */
  @Test
  void meanAndSpreadAreThoseOfTheTextbook() {
    List<StripTest> strips =
        DoubleStream.of(2, 4, 4, 4, 5, 5, 7, 9)
            .mapToObj(load -> new StripTest(load, 10e-3, 0.1e-3, 50e-3, 0))
            .toList();

    Estimate strength = new StripTests(strips).strengthPa();

    assertThat(strength.value()).isCloseTo(5e6, within(1e-3));
    assertThat(strength.sd()).isCloseTo(Math.sqrt(32.0 / 7) * 1e6, within(1e-3));
    assertThat(new StripTests(strips).ofTheMean(strength).sd())
        .isCloseTo(Math.sqrt(32.0 / 7 / 8) * 1e6, within(1e-3));
  }

  @Test
  void asksForFiveStrips() {
    StripTest strip = new StripTest(6.0, 15e-3, 0.1e-3, 50e-3, 25e-3);

    assertThat(new StripTests(List.of(strip, strip, strip, strip)).enough()).isFalse();
    assertThat(new StripTests(List.of(strip, strip, strip, strip, strip)).enough()).isTrue();
    assertThat(new StripTests(List.of(strip)).strengthPa().sd()).isZero();
  }

  /** 1.37 g on 100 mm by 100 mm at 1.37 g/cm3 is a tenth of a millimetre. By hand. */
  @Test
  void aSheetsWeightGivesItsThickness() {
    assertThat(StripTest.thicknessFromWeightM(1.37e-3, 0.01, 1370))
        .isCloseTo(0.1e-3, within(1e-15));
  }

  @Test
  void refusesAStripWithoutWidth() {
    assertThatThrownBy(() -> new StripTest(6.0, 0, 0.1e-3, 50e-3, 25e-3))
        .hasMessage("strip test, strip width: 0.0 given, allowed above 0 m");
    assertThatThrownBy(() -> new StripTests(List.of()))
        .hasMessage("strip test, strips: 0 given, allowed 1 or more; five give a fair mean");
  }
}
