package starchfilm.files.amount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class TypedAmountTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "MASS | 412g | 0.412",
        "MASS | 412 g | 0.412",
        "MASS | 1,5 g | 0.0015",
        "MASS | 0,500 kg | 0.5",
        "MASS | 250 mg | 0.00025",
        "MASS | 2 KG | 2",
        "MASS | 12 Gramm | 0.012",
        "MASS | -4 g | -0.004",
        "MASS | 1 000 g | 1",
        "MASS | 8 oz | 0.226796185",
        "MASS | 1 lb 4 oz | 0.56699046",
        "MASS | 1/2 lb | 0.226796185",
        "MASS | 1 kg 200 g | 1.2",
        "VOLUME | 250 ml | 250e-6",
        "VOLUME | 0.5 l | 0.5e-3",
        "VOLUME | 2 dl | 0.2e-3",
        "VOLUME | 25 cl | 0.25e-3",
        "VOLUME | 1 tsp | 5e-6",
        "VOLUME | 2 EL | 30e-6",
        "VOLUME | 1 1/2 US cups | 354.882e-6",
        "VOLUME | 1-1/2 metric cups | 375e-6",
        "VOLUME | \u00BD metric cup | 125e-6",
        "VOLUME | 1\u00BD Metric Cups | 375e-6",
        "VOLUME | half a metric cup | 125e-6",
        "VOLUME | a tablespoon | 15e-6",
        "VOLUME | 2 c\u00E0c | 10e-6",
        "VOLUME | 1 cucharada | 15e-6",
        "VOLUME | 8 fl. oz. | 232e-6",
        "LENGTH | 110 \u00B5m | 110e-6",
        "LENGTH | 2,5 mm | 2.5e-3",
        "LENGTH | 30cm | 0.3",
        "LENGTH | 1/8 in | 3.175e-3",
        "LENGTH | 11.5\" | 0.2921",
        "LENGTH | 4 mil | 101.6e-6",
        "AREA | 600 cm2 | 0.06",
        "AREA | 0,06 m\u00B2 | 0.06",
        "TEMPERATURE | 20 \u00B0C | 293.15",
        "TEMPERATURE | \u221240 F | 233.15",
        "TEMPERATURE | 200\u00B0F | 366.4833",
        "TIME | 1d 6h 30min | 109800",
        "TIME | 1d6h | 108000",
        "TIME | 1w | 604800",
        "TIME | two days | 172800",
        "TIME | 90 m | 5400",
        "SHARE | 55 % | 0.55",
        "SPEED | 0.5 m/s | 0.5",
        "SPEED | 3,6 km/h | 1",
        "STRESS | 5MPa | 5e6",
        "CONCENTRATION | 0.1 mol/l | 100",
        "DENSITY | 1.23 g/ml | 1230",
        "FORCE | 12N | 12",
      })
  void isReadAsPeopleWriteIt(Dimension dimension, String typed, double si) {
    assertThat(TypedAmount.of(dimension, typed).si()).isCloseTo(si, within(1e-6 * Math.abs(si)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "40-50 g | 40 | 50",
        "40 g \u2013 50 g | 40 | 50",
        "40 to 50 g | 40 | 50",
        "between 40 and 50 g | 40 | 50",
        "1 to 2 g | 1 | 2",
        "0.5 - 1 kg | 500 | 1000",
        "3 \u00B1 0.5 g | 2.5 | 3.5",
        "3 g +- 0.5 g | 2.5 | 3.5",
        "40 g \u00B1 10 % | 36 | 44",
        "~40g | 36 | 44",
        "about 40 g | 36 | 44",
      })
  void aDoubtIsARange(String typed, double low, double high) {
    TypedAmount amount = TypedAmount.of(Dimension.MASS, typed);
    assertThat(amount.leastSi() * 1000).isCloseTo(low, within(1e-9));
    assertThat(amount.mostSi() * 1000).isCloseTo(high, within(1e-9));
  }

  /** A range between two ends was refused there, this one was taken for its middle. */
  @Test
  void aDoubtIsNotDroppedWhereARangeIsOfNoUse() {
    for (String typed : new String[] {"40-50 g", "19 \u00B1 3 g", "19+-3 g", "19 g +/- 10 %"}) {
      assertThatThrownBy(() -> TypedAmount.of(Dimension.MASS, typed).one())
          .as(typed)
          .hasMessageEndingWith("a range is of no use here; write one number");
    }
  }

  @Test
  void aSpoonHoldsBothKindsOfItselfAndMoreWhereItIsHeaped() {
    TypedAmount spoon = TypedAmount.of(Dimension.VOLUME, "1 tbsp");
    assertThat(spoon.leastSi()).isLessThan(14.787e-6);
    assertThat(spoon.mostSi()).isGreaterThan(15e-6);
    TypedAmount cup = TypedAmount.of(Dimension.VOLUME, "1 cup");
    assertThat(cup.leastSi()).isLessThan(236.588e-6);
    assertThat(cup.mostSi()).isGreaterThan(250e-6);
    assertThat(TypedAmount.of(Dimension.VOLUME, "1 heaped tbsp").leastSi())
        .isGreaterThan(spoon.mostSi());
    assertThat(TypedAmount.of(Dimension.VOLUME, "1 level tbsp").mostSi())
        .isLessThan(spoon.mostSi());
    assertThat(TypedAmount.of(Dimension.VOLUME, "2 geh\u00E4ufte TL").si())
        .isEqualTo(TypedAmount.of(Dimension.VOLUME, "2 heaped tsp").si());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "g | 412 | 412",
        "g | 412,0 g | 412.0",
        "g | 0.4120 kg | 412.0",
        "g | 2 kg | 2000",
        "g | 1500 mg | 1.500",
        "g | 8 oz | 227",
        "kg | 930 g | 0.930",
        "mm | 1 cm | 10",
        "mm | 30 cm | 300",
        "mm | 11 in | 279.4",
        "um | 0,11 mm | 110",
        "C | 92 \u00B0C | 92",
        "C | 68 F | 20",
        "% | 24 % | 24",
        "N | 9,4 N | 9.4",
        "min | 12 | 12",
        "min | 1h | 60",
        "min | 7.5 min | 7.5",
      })
  void keepsTheDigitsTyped(String unit, String text, String number) {
    assertThat(TypedAmount.number(unit, text)).hasToString(number);
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
        "2 pints | `the unit pints (of several sizes) is not known here`",
        "1 T | `t is a teaspoon for some and a tablespoon for others; write tsp or tbsp`",
        "412 mm | `mm is a unit of length; write a mass`",
        "2 tbsp | `tbsp is a unit of volume; write a mass`",
        "g 412 | `write one number with its unit`",
        "`` | `write one number with its unit`",
        "1e3 g | `the unit e is not known here`",
        "NaN g | `write one number with its unit`",
        "1h 3g | `write one amount, or parts that measure the same, such as 1d 6h`",
        "50-40 g | `turn its ends round`",
        "1/0 g | `nothing can be divided by 0`",
        "heaped 20 g | `only spoons and cups are heaped or level`",
        "\u0664\u0660 g | `write one number with its unit`",
        "\u202E40 g | `write one number with its unit`",
      })
  void whatIsNoMassIsRefusedWithWhatToDo(String text, String mend) {
    assertThatThrownBy(() -> TypedAmount.of(Dimension.MASS, text))
        .isInstanceOf(MistypedException.class)
        .hasMessageEndingWith(mend)
        .hasMessageNotContaining("\u202E");
  }

  @ParameterizedTest
  @ValueSource(strings = {"5 C", "5c", "1-2 C"})
  void cupsAreNotWrittenAsDegrees(String text) {
    assertThatThrownBy(() -> TypedAmount.of(Dimension.VOLUME, text))
        .hasMessageEndingWith(
            "; c is a cup for some and a degree Celsius for others; write cups or ml");
  }

  @Test
  void aRangeIsRefusedWhereOneNumberIsWanted() {
    assertThatThrownBy(() -> TypedAmount.of(Dimension.LENGTH, "20-30 mm").one())
        .hasMessage(
            "\"20-30 mm\" given, allowed a length, such as 2.5 mm or 1/8 in; a range is of no use"
                + " here; write one number");
  }

  static Stream<Arguments> everyQuantityWithEveryWrongUnit() {
    List<String> units =
        List.of("g", "ml", "mm", "cm2", "C", "h", "%", "N", "m/s", "MPa", "mol/l", "g/ml");
    return Arrays.stream(Dimension.values())
        .flatMap(dimension -> units.stream().map(unit -> Arguments.of(dimension, unit)))
        .filter(
            both ->
                // In a recipe 12 C may be cups, which its own sentence says.
                !both.get()[1].equals("C") || both.get()[0] != Dimension.VOLUME)
        .filter(
            both ->
                TypedAmount.read("1 " + both.get()[1], "", List.of()).unit().dimension()
                    != both.get()[0]);
  }

  @ParameterizedTest
  @MethodSource
  void everyQuantityWithEveryWrongUnit(Dimension dimension, String unit) {
    assertThatThrownBy(() -> TypedAmount.of(dimension, "12 " + unit))
        .isInstanceOf(MistypedException.class)
        .hasMessageContaining(" is a unit of ");
  }

  @ParameterizedTest
  @EnumSource(Dimension.class)
  void aMillionCharactersAreOneSentence(Dimension dimension) {
    assertThatThrownBy(() -> TypedAmount.of(dimension, "9".repeat(1_000_000) + " g"))
        .isInstanceOf(MistypedException.class)
        .satisfies(refused -> assertThat(refused.getMessage()).hasSizeLessThan(200));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void pointAndCommaAreTheSame(int seed) {
    new Random(seed)
        .doubles(200, 0, 5000)
        .forEach(
            grams ->
                assertThat(
                        TypedAmount.of(
                                Dimension.MASS, String.format(Locale.GERMANY, "%.2f g", grams))
                            .si())
                    .isEqualTo(
                        TypedAmount.of(Dimension.MASS, String.format(Locale.ROOT, "%.2f g", grams))
                            .si()));
  }
}
