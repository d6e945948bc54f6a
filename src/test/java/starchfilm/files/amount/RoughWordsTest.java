package starchfilm.files.amount;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import starchfilm.proof.Cases;
import starchfilm.proof.RoughJson;
import starchfilm.proof.RoughWords;

/** Whatever is typed for an amount or a time is read, or refused with a sentence. */
class RoughWordsTest {
  private static final Clock NOON =
      Clock.fixed(Instant.parse("2026-04-20T12:00:00Z"), ZoneOffset.UTC);
  private static final Optional<LocalDateTime> POURED =
      Optional.of(LocalDateTime.of(2026, 4, 19, 9, 0));

  @Test
  void amounts() {
    List<String> units = List.of("g", "mm", "um", "%", "C", "N", "kg");
    Cases.forEach(
        50,
        (random, number) -> {
          String typed = RoughWords.any(random);
          readOrRefused(typed, () -> TypedAmount.read(typed, "an amount", List.of()));
          readOrRefused(typed, () -> TypedAmount.number(RoughJson.any(units, random), typed));
          readOrRefused(typed, () -> TypedAmount.number("min", typed));
        });
  }

  @Test
  void times() {
    MomentParser moments = new MomentParser(NOON);
    Cases.forEach(
        50,
        (random, number) -> {
          String typed = random.nextBoolean() ? RoughWords.any(random) : RoughWords.spoken(random);
          readOrRefused(typed, () -> MomentParser.lasting(typed));
          readOrRefused(typed, () -> moments.lastingText(moments.parse(typed), POURED));
        });
  }

  private static void readOrRefused(String typed, Runnable reading) {
    try {
      reading.run();
    } catch (MistypedException refused) {
      assertThat(refused.getMessage())
          .as(typed)
          .isNotBlank()
          .hasSizeLessThan(1_000)
          .doesNotContain("Exception", "java.");
    }
  }
}
