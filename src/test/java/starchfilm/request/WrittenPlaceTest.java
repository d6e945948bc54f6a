package starchfilm.request;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.Room;
import starchfilm.material.air.AirState;

class WrittenPlaceTest {
  private static final Clock NOON =
      Clock.fixed(Instant.parse("2026-04-20T12:00:00Z"), ZoneId.of("UTC"));

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"19.5C,55%", "19,5 C, 55 %", "55% 19.5°C", "19.5C;55%;0.1m/s"})
  void readsAConstantRoom(String typed) {
    AirState air = room(typed).at(0);

    assertThat(air.temperatureK()).isCloseTo(292.65, within(1e-9));
    assertThat(air.relativeHumidity()).isCloseTo(0.55, within(1e-12));
    assertThat(air.speedMPerS()).isEqualTo(0.1);
  }

  /** The second is written as the help of --room has it. */
  @ParameterizedTest
  @ValueSource(strings = {"8-18C,50-80%", "8-18C,50-80% by night and day"})
  void aSwingIsWarmestAndDriestAtThree(String typed) {
    // The pour is at noon.
    AirState warmest = room(typed).at(3 * 3600.0);

    assertThat(warmest.temperatureK()).isCloseTo(291.15, within(1e-9));
    assertThat(warmest.relativeHumidity()).isCloseTo(0.5, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(strings = {"68F,50%", "68 \u00B0F 50 %", "20C,50%RH"})
  void fahrenheitIsConverted(String typed) {
    assertThat(room(typed).at(0).temperatureK()).isCloseTo(293.15, within(1e-6));
  }

  @Test
  void aTemperatureAloneLeavesTheHumidityOpen() {
    DryingPlace place = place(Map.of("--room", "20C")).orElseThrow().place();

    assertThat(place.room().at(0).relativeHumidity()).isCloseTo(0.525, within(1e-9));
    assertThat(place.uncertainty().humiditySd()).isGreaterThan(0.1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          classroom 20C,45%             | classroom
          in the attic: 20 C, 45 %      | attic
          Küche 20C 45%                 | Küche
          20C,45%                       | room
          about 20C,45%                 | room
          """)
  void aRoomMayBeNamedBeforeItsAir(String typed, String name) {
    DryingPlace place = place(Map.of("--room", typed)).orElseThrow().place();

    assertThat(place.name()).isEqualTo(name);
    assertThat(place.room().at(0).relativeHumidity()).isCloseTo(0.45, within(1e-9));
  }

  @Test
  void aRoughTemperatureIsADoubtAndNoSwing() {
    DryingPlace place = place(Map.of("--room", "~20C,50%")).orElseThrow().place();

    assertThat(place.room().isConstant()).isTrue();
    assertThat(place.uncertainty().temperatureSdK()).isGreaterThan(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"cellar", "my window sill", "Outdoors in summer", "food dehydrator"})
  void placesThatAreNamedHaveWideAir(String typed) {
    DryingPlace place = place(Map.of("--room", typed)).orElseThrow().place();

    assertThat(place.uncertainty().temperatureSdK()).isGreaterThan(2);
    assertThat(place.uncertainty().humiditySd()).isGreaterThan(0.04);
  }

  @Test
  void overAnotherPlaceHoldsWhatIsNotWritten() {
    Optional<DryingPlace> cellar = place(Map.of("--room", "cellar")).map(WrittenPlace::place);
    DryingPlace rough = place(Map.of("--air", "~20C"), cellar).orElseThrow().place();
    DryingPlace swing = place(Map.of("--air", "8-18C"), cellar).orElseThrow().place();

    assertThat(rough.name()).isEqualTo("cellar");
    assertThat(rough.uncertainty().temperatureSdK()).isGreaterThan(1);
    assertThat(rough.uncertainty().humiditySd())
        .isCloseTo(cellar.orElseThrow().uncertainty().humiditySd(), within(1e-12));
    assertThat(rough.room().at(0).relativeHumidity()).isCloseTo(0.72, within(1e-9));
    assertThat(swing.room().warmestK()).isCloseTo(291.15, within(1e-9));
    assertThat(swing.room().range(AirState::temperatureK).low()).isCloseTo(281.15, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(strings = {"cellar", "20C,50%"})
  void aRangeOfSpeedIsItsMiddleAndADoubt(String room) {
    DryingPlace exact = place(Map.of("--room", room, "--speed", "1.5m/s")).orElseThrow().place();
    DryingPlace rough = place(Map.of("--room", room, "--speed", "1-2m/s")).orElseThrow().place();

    assertThat(exact.room().at(0).speedMPerS()).isEqualTo(1.5);
    assertThat(rough.room().at(0).speedMPerS()).isCloseTo(1.5, within(1e-9));
    assertThat(exact.uncertainty().speedRelativeSd()).isZero();
    // JCGM 100:2008, 4.3.7: a rectangle's half width over the square root of 3.
    assertThat(rough.uncertainty().speedRelativeSd())
        .isCloseTo(0.5 / Math.sqrt(3) / 1.5, within(1e-9));
  }

  @Test
  void aSecondFigureOfOneKindIsRefused() {
    EntryReader in = new EntryReader(Written.options(Map.of("--room", "20C,50%,30C")));

    WrittenPlace.read(in, Optional.empty(), folder, NOON);

    assertThatThrownBy(() -> in.finished(() -> "the last one"))
        .hasMessageContaining("30C is the second figure of its kind; leave one out");
  }

  private Room room(String typed) {
    return place(Map.of("--room", typed)).orElseThrow().place().room();
  }

  private Optional<WrittenPlace> place(Map<String, String> typed) {
    return place(typed, Optional.empty());
  }

  private Optional<WrittenPlace> place(Map<String, String> typed, Optional<DryingPlace> base) {
    return WrittenPlace.read(new EntryReader(Written.options(typed)), base, folder, NOON);
  }
}
