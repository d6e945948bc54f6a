package starchfilm.request;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.Plate.Outline;
import starchfilm.casting.PlateMaterial;

class WrittenPlatesTest {
  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      value = {
        "4x300x200mm glass, 4, 300, 200, 4, GLASS, RECTANGLE",
        "4 x 20 x 30 cm Glass, 4, 300, 200, 4, GLASS, RECTANGLE",
        "300x200mm, 1, 300, 200, 4, GLASS, RECTANGLE",
        "2x0.3mx20cm polypropylene, 2, 300, 200, 2, POLYPROPYLENE, RECTANGLE",
        "`2x 24,0cm round steel`, 2, 240, 240, 1, STEEL, ELLIPSE",
        "3x300×200mm acrylic 3mm, 3, 300, 200, 3, ACRYLIC, RECTANGLE",
        "8x8in glass, 1, 203.2, 203.2, 4, GLASS, RECTANGLE",
        "9 x 13 inch aluminum pan, 1, 330.2, 228.6, 1, ALUMINIUM, RECTANGLE",
        "8 by 8\" glass dish, 1, 203.2, 203.2, 4, GLASS, RECTANGLE",
        "2 glass plates 30x20 cm, 2, 300, 200, 4, GLASS, RECTANGLE",
        "two round glass dishes 6 cm, 2, 60, 60, 4, GLASS, ELLIPSE",
        "6cm round, 1, 60, 60, 4, GLASS, ELLIPSE",
        "1x 5x5cm glass, 1, 50, 50, 4, GLASS, RECTANGLE",
        "square silicone 20cm, 1, 200, 200, 2, SILICONE, RECTANGLE",
        "20x20cm square, 1, 200, 200, 4, GLASS, RECTANGLE",
        "2x 24x24cm round steel, 2, 240, 240, 1, STEEL, ELLIPSE",
        "24x24cm round steel, 1, 240, 240, 1, STEEL, ELLIPSE",
        "two, 2, 300, 200, 4, GLASS, RECTANGLE",
        "30x20cm oval enamel, 1, 300, 200, 1, ENAMEL, ELLIPSE",
        "30x20cm ovale Schale, 1, 300, 200, 4, OTHER, ELLIPSE",
        "20x30cm Backpapier, 1, 300, 200, 0.2, BAKING_PAPER, RECTANGLE",
        "20x30cm Glas, 1, 300, 200, 4, GLASS, RECTANGLE",
        "20x30cm slate, 1, 300, 200, 4, OTHER, RECTANGLE",
        "400 cm2 wood, 1, 200, 200, 15, WOOD, FREE",
        "199.6 g water 5 mm deep, 1, 200, 200, 4, GLASS, FREE",
        "2, 2, 300, 200, 4, GLASS, RECTANGLE",
        "4x glass, 4, 300, 200, 4, GLASS, RECTANGLE",
        "three enamel trays, 3, 300, 200, 1, ENAMEL, RECTANGLE",
        // ISO 216:2007, table 1.
        "A4 glass, 1, 297, 210, 4, GLASS, RECTANGLE",
        "2x A4 polypropylene, 2, 297, 210, 2, POLYPROPYLENE, RECTANGLE",
        "4xA4 glass, 4, 297, 210, 4, GLASS, RECTANGLE",
        "3 DIN A5 glass plates, 3, 210, 148, 4, GLASS, RECTANGLE",
        "a3 steel tray, 1, 420, 297, 1, STEEL, RECTANGLE",
        "baking tray, 1, 300, 200, 1, STEEL, RECTANGLE",
        "30x40cm Backblech, 1, 400, 300, 1, STEEL, RECTANGLE",
      })
  void readsPlates(
      String typed,
      int count,
      double longMm,
      double shortMm,
      double thickMm,
      PlateMaterial material,
      Outline outline) {
    WrittenPlates plates = WrittenPlates.parse(typed);

    assertThat(plates.count()).isEqualTo(count);
    assertThat(plates.plate().longestM()).isCloseTo(longMm / 1e3, within(1e-6));
    assertThat(plates.plate().shortestM()).isCloseTo(shortMm / 1e3, within(1e-6));
    assertThat(plates.plate().thicknessM()).isCloseTo(thickMm / 1e3, within(1e-9));
    assertThat(plates.plate().material()).isEqualTo(material);
    assertThat(plates.plate().outline()).isEqualTo(outline);
  }

  @Test
  void anOvalHasTheAreaOfItsEllipse() {
    assertThat(WrittenPlates.parse("30x20cm oval").plate().areaM2())
        .isCloseTo(Math.PI * 0.15 * 0.10, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "2x 30cm glass | round or square? write 2x 30cm round, or 2x 30x30cm for a square",
        "30x20x3cm glass | is the first number how many there are? write 1x"
            + " 20x3cm or the number, a blank and two sides; give the height of a rim"
            + " by itself",
        "30cm glass | round or square? write 30cm round, or 30x30cm for a square",
        "4x granite | write it like one of these",
        "round plate | write it like one of these",
        "0x200mm | a plate has no side of 0; write both sides, such as 300x200mm",
        "0x30x20cm | 1 to 1000 plates can be poured; check the number",
        "30x20cm glasß | did you mean glass?",
        "30x20cm glss | did you mean glass?",
      })
  void whatIsNotClearIsAsked(String typed, String mend) {
    assertThatThrownBy(() -> WrittenPlates.parse(typed)).hasMessageEndingWith(mend);
  }

  @Test
  void severalSizesShareTheirMeanArea() {
    WrittenPlates mean =
        WrittenPlates.mean(
            List.of(WrittenPlates.parse("2x 30x20cm"), WrittenPlates.parse("10x10cm")));

    assertThat(mean.count()).isEqualTo(3);
    assertThat(mean.plate().areaM2() * 3).isCloseTo(0.13, within(1e-9));
  }
}
