package starchfilm.advice;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Of two figures of one cause the worse counts, and a missing one where the other does no harm. */
class CauseReadingTest {
  private static final CauseReading CLEAR = new CauseReading(0.9, "boiled", true);
  private static final CauseReading MILD = new CauseReading(0.2, "hot", true);
  private static final CauseReading FINE = new CauseReading(0, "as in the guide", true);
  private static final CauseReading MISSING = new CauseReading(0, "how long it cooked", false);

  @Test
  void theWorseOfTwoCounts() {
    assertThat(MILD.orWorse(CLEAR)).isSameAs(CLEAR);
    assertThat(CLEAR.orWorse(MILD)).isSameAs(CLEAR);
    assertThat(FINE.orWorse(FINE)).isEqualTo(FINE);
  }

  @Test
  void whatIsMissingCountsUnlessTheOtherDoesHarm() {
    assertThat(MILD.orWorse(MISSING)).isSameAs(MILD);
    assertThat(MISSING.orWorse(MILD)).isSameAs(MILD);
    assertThat(FINE.orWorse(MISSING)).isSameAs(MISSING);
    assertThat(MISSING.orWorse(FINE)).isSameAs(MISSING);
    assertThat(MISSING.orWorse(MISSING)).isEqualTo(MISSING);
  }
}
