package starchfilm.files.amount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TypedNumberTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "g | 412 g | 412",
        "g | 412 | 412",
        "g | 412,0 g | 412.0",
        "g | 0.4120 kg | 412.0",
        "g | 2 kg | 2000",
        "g | 1500 mg | 1.500",
        "kg | 930 g | 0.930",
        "mm | 1 cm | 10",
        "um | 0,11 mm | 110",
        "C | 92 \u00B0C | 92",
        "% | 24 % | 24",
        "N | 9,4 N | 9.4",
      })
  void keepsTheDigitsTyped(String unit, String text, String number) {
    assertThat(TypedNumber.in(unit, text)).hasToString(number);
  }

  @Test
  void refusesAnotherKindOfUnit() {
    assertThatThrownBy(() -> TypedNumber.in("g", "12 mm"))
        .isInstanceOf(MistypedException.class)
        .hasMessage("\"12 mm\" given, allowed a number in g, such as 12.5 g; write it in g");
  }

  @ParameterizedTest
  @CsvSource({"12, 12", "12 min, 12", "1h, 60", "90 min, 90", "7.5 min, 7.5"})
  void minutes(String text, String number) {
    assertThat(TypedNumber.minutes(text)).hasToString(number);
  }

  @Test
  void minutesBeyondAllMeasureStayWhatWasTyped() {
    assertThat(TypedNumber.minutes("99999999999999999999 min"))
        .isEqualByComparingTo("100000000000000000000");
  }
}
