package starchfilm.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import starchfilm.casting.Casting;
import starchfilm.casting.ConstantRoom;
import starchfilm.casting.DryingLimits;
import starchfilm.casting.trial.Trial;
import starchfilm.change.Change;
import starchfilm.change.Limits;
import starchfilm.forecast.SameForAll;
import starchfilm.forecast.TrialForecast;
import starchfilm.forecast.TrialForecaster;
import starchfilm.material.air.AirState;
import starchfilm.numerics.units.Named;

/** What holds of advice whatever was noted. */
class AdvicePropertiesTest {
  private static final int TRIALS = 24;
  private static final Adviser ADVISER = new Adviser(SameForAll.TEXTBOOK);
  private static final List<Trial> NOTEBOOK = MadeUpTrials.drawn(20260501, TRIALS);
  private static final List<TrialForecast> FORECASTS =
      NOTEBOOK.stream().map(new TrialForecaster(SameForAll.TEXTBOOK)::forecast).toList();
  private static final List<TrialAdvice> ADVICE =
      FORECASTS.stream().map(each -> ADVISER.after(each, NOTEBOOK)).toList();

  static Stream<Integer> trials() {
    return IntStream.range(0, TRIALS).boxed();
  }

  @ParameterizedTest
  @MethodSource("trials")
  void everyFaultIsDiagnosedWithCausesFromBestToLeast(int index) {
    TrialAdvice advice = ADVICE.get(index);
    assertThat(advice.diagnoses()).hasSameSizeAs(NOTEBOOK.get(index).seen().faults());
    for (Diagnosis diagnosis : advice.diagnoses()) {
      double before = 1;
      for (Suspicion suspicion : diagnosis.suspicions()) {
        assertThat(suspicion.support()).isBetween(Suspicion.NAMED_FROM, before);
        assertThat(suspicion.words()).doesNotContain("NaN").doesNotContain("null");
        before = suspicion.support();
      }
      assertThat(diagnosis.suspicions()).extracting(Suspicion::cause).doesNotHaveDuplicates();
    }
  }

  @ParameterizedTest
  @MethodSource("trials")
  void atMostTwoThingsAreChangedAndEachAnswersANamedCause(int index) {
    TrialAdvice advice = ADVICE.get(index);
    advice
        .next()
        .ifPresent(
            next -> {
              assertThat(next.changes()).hasSizeBetween(1, 2);
              assertThat(next.adjustments().stream().map(Change::thing)).doesNotHaveDuplicates();
              assertThat(next.against()).isNotEmpty();
              List<String> named =
                  advice.diagnoses().stream()
                      .flatMap(diagnosis -> diagnosis.suspicions().stream())
                      .map(suspicion -> Named.of(suspicion.cause()))
                      .toList();
              assertThat(named).containsAll(next.against());
            });
  }

  @ParameterizedTest
  @MethodSource("trials")
  void nothingIsAdvisedBeyondWhatIsSensible(int index) {
    Casting was = NOTEBOOK.get(index).casting();
    ADVICE
        .get(index)
        .next()
        .ifPresent(
            next -> {
              Casting is = next.setup();
              double glycerolWas = was.composition().glycerolPerDryStarch();
              double glycerol = is.composition().glycerolPerDryStarch();
              assertThat(glycerol).isBetween(0.0, Math.max(glycerolWas, 0.4) + 1e-12);
              if (Math.abs(is.wetThicknessM() - was.wetThicknessM()) > 1e-9) {
                assertThat(is.wetThicknessM())
                    .isBetween(Limits.THINNEST_WET_M - 1e-12, Limits.THICKEST_WET_M + 1e-12);
              }
              assertThat(is.pour().unevenness()).isBetween(0.0, was.pour().unevenness());
              assertThat(is.cook().topTemperatureK().value())
                  .isLessThanOrEqualTo(Math.max(was.cook().topTemperatureK().value(), 95 + 273.15));
              assertRoomIsSensible(is);
            });
  }

  private static void assertRoomIsSensible(Casting setup) {
    if (setup.place().room() instanceof ConstantRoom room) {
      AirState air = room.air();
      assertThat(DryingLimits.AIR_TEMPERATURE.contains(air.temperatureK())).isTrue();
      assertThat(air.relativeHumidity()).isBetween(0.0, 1.0);
    }
  }

  @ParameterizedTest
  @MethodSource("trials")
  void whatIsToldIsReadable(int index) {
    ADVICE
        .get(index)
        .next()
        .ifPresent(
            next ->
                assertThat(next.sentence())
                    .doesNotContain("NaN")
                    .doesNotContain("null")
                    .doesNotContain("endless")
                    .endsWith("."));
  }

  @ParameterizedTest
  @MethodSource("trials")
  void aContrastToldBackwardsHasTheSameDifferencesTurnedRound(int index) {
    TrialForecast one = FORECASTS.get(index);
    TrialForecast other = FORECASTS.get((index + 1) % TRIALS);
    Contrast there = ADVISER.contrast(one, other);
    Contrast back = ADVISER.contrast(other, one);
    assertThat(back.differences())
        .extracting(each -> each.what() + each.to() + each.from())
        .containsExactlyElementsOf(
            there.differences().stream()
                .map(each -> each.what() + each.from() + each.to())
                .toList());
    assertThat(there.outcomes())
        .allSatisfy(each -> assertThat(each.model()).doesNotContain("NaN").endsWith("."));
  }
}
