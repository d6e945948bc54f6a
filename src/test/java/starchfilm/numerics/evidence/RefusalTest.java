package starchfilm.numerics.evidence;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** What a refused figure is told: what it is, what was given, what is allowed. */
class RefusalTest {
  @Test
  void namesTheFigureItsUnitAndWhatIsAllowed() {
    assertThatThrownBy(() -> Refusal.unless(false, "glycerol", -3, " g", "0 g or more"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("glycerol: -3.0 g given, allowed 0 g or more");
    assertThatThrownBy(() -> Refusal.unless(false, "pH", 15, "0 to 14"))
        .hasMessage("pH: 15.0 given, allowed 0 to 14");
    assertThatThrownBy(() -> Refusal.unless(false, "cover", "a lid", "none or case"))
        .hasMessage("cover: a lid given, allowed none or case");
  }

  @Test
  void saysNothingOfWhatIsAllowed() {
    assertThatCode(
            () -> {
              Refusal.unless(true, "glycerol", 3, " g", "0 g or more");
              Refusal.unless(true, "pH", 7, "0 to 14");
              Refusal.unless(true, "cover", "none", "none or case");
            })
        .doesNotThrowAnyException();
  }
}
