package starchfilm.request;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import starchfilm.jar.recovery.LaterAddition;

class RecoveryRecordTest {
  @Test
  void whatWasAddedAndTakenOutInPartsCountsInAll() {
    Map<String, List<String>> written =
        Map.of(
            "assay.mass", List.of("200 g"),
            "record.oil", List.of("sunflower", "1 l"),
            "record.alcohol", List.of("methanol", "200 ml"),
            "record.catalyst", List.of("NaOH", "3.5 g"),
            "record.added",
                List.of("magnesium-sulfate", "10 g", "water", "5 g", "magnesium-sulfate", "10 g"),
            "record.taken-out", List.of("magnesium-sulfate", "8 g", "magnesium-sulfate", "7 g"));

    List<LaterAddition> additions = read(written).record().orElseThrow().additions();

    assertThat(additions).hasSize(2);
    assertThat(additions.get(0).agent()).isEqualTo(LaterAddition.Agent.MAGNESIUM_SULFATE);
    assertThat(additions.get(0).massKg().value()).isCloseTo(0.020, within(1e-12));
    assertThat(additions.get(0).takenOutKg().value()).isCloseTo(0.015, within(1e-12));
    assertThat(additions.get(1).takenOutKg().value()).isZero();
  }

  private static AssayRequest read(Map<String, List<String>> written) {
    return AssayRequest.read(
        new Entries() {
          @Override
          public List<String> words(Field field) {
            return written.getOrDefault(field.key(), List.of());
          }

          @Override
          public String name(Field field) {
            return field.option();
          }
        });
  }
}
