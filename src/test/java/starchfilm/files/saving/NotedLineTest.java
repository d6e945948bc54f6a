package starchfilm.files.saving;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NotedLineTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "weighings | `{\"at\": \"+6h\", \"mass_g\": 730}` | `weighed 730 g, +6h`",
        "weighings | `{\"plate\": 2, \"mass_g\": 80, \"with_plate\": false, \"same_plate\": false}` | `plate 2 weighed 80 g, film alone, another plate`",
        "weighings | `{\"mass_g\": 80, \"with_plate\": true, \"same_plate\": true}` | `weighed 80 g`",
        "weighings | `{\"at\": \"2026-11-27T09:08\"}` | `weighed, Fri 27 Nov, 9:08`",
        "dry_thickness_um | 112 | `dry thickness 112 \u00B5m`",
        "pulls | `{\"load_N\": 9, \"load_kg\": 1, \"width_mm\": 10}` | `strip of 10 mm broke at 9 N`",
        "pulls | `{\"plate\": 1, \"load_kg\": 0.93, \"stretch_pct\": 24}` | `plate 1 strip broke at 0.93 kg, stretched by 24 %`",
        "pulls | `{\"width_mm\": 10}` | `strip of 10 mm broke`",
        "faults | `{\"kind\": \"cracked\", \"where\": \"edge\", \"at\": \"+30h\"}` | `cracked, edge, +30h`",
        "faults | `{\"kind\": \"mould\"}` | `mould, all`",
        "moved | `{\"at\": \"+48h\", \"faces\": \"both\"}` | `open faces: both, +48h`",
        "plates | `{\"plate\": 2, \"tare_g\": 611}` | `plate 2 weighs 611 g empty`",
        "plates | `{\"plate\": 2, \"tare_g\": 611, \"off_at\": \"+50h\"}` | `plate 2 weighs 611 g empty, off the plate, +50h`",
        "plates | `{\"given_up\": \"the {cat} [$1]\", \"off_at\": \"+50h\"}` | `given up, the {cat} [$1], +50h`",
        "plates | `{\"off_at\": \"+50h\"}` | `off the plate, +50h`",
        "plates | `{\"plate\": 2, \"dry_thickness_um\": [110, 118]}` | `plate 2 dry thickness 110; 118 \u00B5m`",
        "rating | 4 | `rating 4`",
        "remarks | `\"clear\"` | `remark: clear`",
        "photos | `\"edge.jpg\"` | `photo edge.jpg`",
      })
  void isSaidInWords(String list, String json, String words) throws NotWrittenException {
    assertThat(NotedLine.of("{\"%s\": [%s]}".formatted(list, json)))
        .extracting(NotedLine::words)
        .containsExactly(words);
  }
}
