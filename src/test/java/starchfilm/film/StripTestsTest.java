package starchfilm.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import starchfilm.numerics.evidence.Estimate;

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

  /**
   * The worked example of JCGM 100:2008 (GUM), 4.4.3 and table 1: twenty readings with mean
   * 100.145, standard deviation 1.489 and standard uncertainty of the mean 0.333. Recalled; the
   * figures fit one another to the last digit. Loads are chosen so that the strength in MPa is the
   * reading.
   */
  @Test
  void meanAndSpreadAreThoseOfTheGuidesExample() {
    List<StripTest> strips =
        DoubleStream.of(
                96.90, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33,
                100.42, 100.68, 100.95, 101.11, 101.20, 101.57, 101.84, 102.36, 102.72)
            .mapToObj(reading -> new StripTest(reading, 10e-3, 0.1e-3, 50e-3, 0))
            .toList();
    StripTests tests = new StripTests(strips);

    Estimate strength = tests.strengthPa();

    assertThat(strength.value() / 1e6).isCloseTo(100.145, within(0.0005));
    assertThat(strength.sd() / 1e6).isCloseTo(1.489, within(0.0005));
    assertThat(tests.ofTheMean(strength).sd() / 1e6).isCloseTo(0.333, within(0.0005));
  }

  @Test
  void asksForFiveStrips() {
    StripTest strip = new StripTest(6.0, 15e-3, 0.1e-3, 50e-3, 25e-3);

    assertThat(new StripTests(List.of(strip, strip, strip, strip)).enough()).isFalse();
    assertThat(new StripTests(List.of(strip, strip, strip, strip, strip)).enough()).isTrue();
    assertThat(new StripTests(List.of(strip)).strengthPa().sd()).isZero();
  }

  @Test
  void refusesAStripWithoutWidth() {
    assertThatThrownBy(() -> new StripTest(6.0, 0, 0.1e-3, 50e-3, 25e-3))
        .hasMessage("strip test, strip width: 0.0 given, allowed above 0 m");
    assertThatThrownBy(() -> new StripTests(List.of()))
        .hasMessage("strip test, strips: 0 given, allowed 1 or more; five give a fair mean");
  }
}
