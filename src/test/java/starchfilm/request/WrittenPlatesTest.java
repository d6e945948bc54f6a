package starchfilm.request;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.PlateMaterial;

class WrittenPlatesTest {
  @ParameterizedTest
  @CsvSource({
    "4x300x200mm glass, 4, 0.3, 0.2, 0.004, GLASS",
    "4 x 20 x 30 cm Glass, 4, 0.3, 0.2, 0.004, GLASS",
    "300x200mm, 1, 0.3, 0.2, 0.004, GLASS",
    "2x0.3mx20cm polypropylene, 2, 0.3, 0.2, 0.002, POLYPROPYLENE",
    "'2x 24,0cm round steel', 2, 0.212694, 0.212694, 0.001, STEEL",
    "3x300×200mm acrylic 3mm, 3, 0.3, 0.2, 0.003, ACRYLIC",
  })
  void readsPlates(
      String typed,
      int count,
      double lengthM,
      double widthM,
      double thicknessM,
      PlateMaterial material) {
    WrittenPlates plates = WrittenPlates.parse(typed);

    assertThat(plates.count()).isEqualTo(count);
    assertThat(plates.plate().lengthM()).isCloseTo(lengthM, within(1e-6));
    assertThat(plates.plate().widthM()).isCloseTo(widthM, within(1e-6));
    assertThat(plates.plate().thicknessM()).isCloseTo(thicknessM, within(1e-9));
    assertThat(plates.plate().material()).isEqualTo(material);
  }
}
