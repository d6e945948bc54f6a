package starchfilm.web.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class OneTimeKeyTest {
  private Instant now = Instant.EPOCH;
  private final List<String> printed = new ArrayList<>();
  private final OneTimeKey keys = new OneTimeKey(printed::add, () -> now);

  private String come() {
    keys.print();
    return keys.redeem(printed.get(printed.size() - 1), "a phone").orElseThrow();
  }

  @Test
  void whoWasSilentForTwoWeeksNeedsANewKey() {
    String browser = come();
    now = now.plus(Duration.ofDays(13));
    assertThat(keys.knows(browser)).isTrue();
    now = now.plus(Duration.ofDays(13));
    assertThat(keys.knows(browser)).as("seen meanwhile").isTrue();
    now = now.plus(Duration.ofDays(15));
    assertThat(keys.knows(browser)).isFalse();
  }

  @Test
  void theSilentMakeRoomForOthers() {
    for (int i = 0; i < 20; i++) {
      come();
    }
    now = now.plus(Duration.ofDays(15));
    assertThat(keys.knows(come())).isTrue();
  }
}
