package starchfilm.files.amount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class MeasureTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "412g | 0.412",
        "412 g | 0.412",
        "1,5 g | 0.0015",
        "1.5g | 0.0015",
        "0,500 kg | 0.5",
        "250 mg | 0.00025",
        "2 KG | 2",
        "12 grams | 0.012",
        "-4 g | -0.004",
        "1000 g | 1",
      })
  void masses(String text, double kg) {
    assertThat(Measure.mass(text).kg()).isCloseTo(kg, within(1e-15));
  }

  @Test
  void everyOtherUnit() {
    assertThat(Measure.parse("250 ml")).isEqualTo(new Measure.Volume(250 * 1e-6));
    assertThat(Measure.parse("0.5 l")).isEqualTo(new Measure.Volume(0.5 * 1e-3));
    assertThat(Measure.parse("110 um")).isEqualTo(new Measure.Length(110 * 1e-6));
    assertThat(Measure.parse("110 \u00B5m")).isEqualTo(new Measure.Length(110 * 1e-6));
    assertThat(Measure.parse("2,5 mm")).isEqualTo(new Measure.Length(2.5 * 1e-3));
    assertThat(Measure.parse("30 cm")).isEqualTo(new Measure.Length(30 * 1e-2));
    assertThat(Measure.parse("1 m")).isEqualTo(new Measure.Length(1));
    assertThat(Measure.parse("600 cm2")).isEqualTo(new Measure.Area(600 * 1e-4));
    assertThat(Measure.parse("0,06 m\u00B2")).isEqualTo(new Measure.Area(0.06));
    assertThat(Measure.parse("20 \u00B0C")).isEqualTo(new Measure.Temperature(293.15));
    assertThat(Measure.parse("-5C")).isEqualTo(new Measure.Temperature(268.15));
    assertThat(Measure.parse("90 min")).isEqualTo(new Measure.Span(5400));
    assertThat(Measure.parse("1d 6h 30min")).isEqualTo(new Measure.Span(109_800));
    assertThat(Measure.parse("1d6h")).isEqualTo(new Measure.Span(108_000));
    assertThat(Measure.parse("2 days")).isEqualTo(new Measure.Span(172_800));
    assertThat(Measure.parse("55 %")).isEqualTo(new Measure.Share(0.55));
    assertThat(Measure.parse("12N")).isEqualTo(new Measure.Force(12));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "1,500 g | `this could be 1.500 or 1500; write it with a point or without the comma`",
        "1.234,5 g | `write the number with one point or comma and no grouping`",
        "1'000 g | `write the number with one point or comma and no grouping`",
        "412 | `add the unit`",
        "412 stone | `the unit stone is not known here`",
        "412 mm | `write it with one of these units`",
        "g 412 | `write one number with its unit`",
        "`` | `write one number with its unit`",
        "1e3 g | `the unit e is not known here`",
        "NaN g | `write one number with its unit`",
        "1h 3g | `only times are written in several parts`",
      })
  void whatIsNoMass(String text, String mend) {
    assertThatThrownBy(() -> Measure.mass(text))
        .isInstanceOf(MistypedException.class)
        .hasMessage(
            "\"" + text + "\" given, allowed a mass in mg, g or kg, such as 412 g; " + mend);
  }

  static Stream<String> typedMasses() {
    Random random = new Random(42);
    return random
        .doubles(200, 0, 5000)
        .mapToObj(
            grams ->
                String.format(
                    random.nextBoolean() ? Locale.ROOT : Locale.GERMANY, "%.2f g", grams));
  }

  @ParameterizedTest
  @MethodSource("typedMasses")
  void pointAndCommaAreTheSame(String text) {
    double grams = Double.parseDouble(text.replace(',', '.').replace(" g", ""));
    assertThat(Measure.mass(text).kg()).isCloseTo(grams / 1000, within(1e-12));
  }

  @Test
  void weighedSoFar() {
    assertThat(WeighedSoFar.parse("6h=412g")).isEqualTo(new WeighedSoFar(21_600, 412 * 1e-3));
    assertThat(WeighedSoFar.parse("+1d 12h = 388,5 g"))
        .isEqualTo(new WeighedSoFar(129_600, 388.5 * 1e-3));
    assertThatThrownBy(() -> WeighedSoFar.parse("6h 412g"))
        .hasMessage(
            "\"6h 412g\" given, allowed time=mass, such as 6h=412g or 1d12h=388.5g; join time and"
                + " mass with one =");
    assertThatThrownBy(() -> WeighedSoFar.parse("-6h=412g"))
        .hasMessageEndingWith("a plate cannot be weighed before the pour");
    assertThatThrownBy(() -> WeighedSoFar.parse("6h=0g"))
        .hasMessageEndingWith("write what the scale showed, above 0 g");
  }
}
