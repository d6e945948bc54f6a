package starchfilm.report.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ScaleTest {
  @Test
  void linearScaleKeepsProportions() {
    Scale scale = Scale.linear(0, 10, 100, 500);

    assertThat(scale.at(0)).isEqualTo(100);
    assertThat(scale.at(2.5)).isEqualTo(200);
    assertThat(scale.at(10)).isEqualTo(500);
  }

  @Test
  void logarithmicScaleKeepsRatios() {
    Scale scale = Scale.logarithmic(1, 100, 0, 2);

    assertThat(scale.at(10)).isCloseTo(1, within(1e-12));
    assertThat(scale.at(20) - scale.at(2)).isCloseTo(1, within(1e-12));
  }

  @Test
  void drawsAtTheEndWhatLiesBeyondIt() {
    Scale scale = Scale.linear(0, 10, 0, 100);

    assertThat(scale.place(Double.POSITIVE_INFINITY)).isEqualTo("100");
    assertThat(scale.place(-3)).isEqualTo("0");
    assertThat(Scale.logarithmic(1, 10, 0, 100).place(0)).isEqualTo("0");
  }

  @Test
  void writesShortPlaces() {
    assertThat(Scale.linear(0, 3, 0, 100).place(1)).isEqualTo("33.33");
    assertThat(Scale.linear(0, 3, 0, 3).place(1)).isEqualTo("1");
  }

  @Test
  void refusesAScaleWithoutLength() {
    assertThatThrownBy(() -> Scale.linear(2, 2, 0, 1))
        .hasMessage("a scale needs two finite ends, not 2.0, 2.0");
    assertThatThrownBy(() -> Scale.logarithmic(0, 2, 0, 1))
        .hasMessage("a logarithmic scale needs ends above 0, not 0.0, 2.0");
  }
}
