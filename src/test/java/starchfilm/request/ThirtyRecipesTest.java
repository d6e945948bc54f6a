package starchfilm.request;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import starchfilm.casting.trial.Trial;

/** Recipes as people write them are read right, or asked about in one sentence. */
class ThirtyRecipesTest {
  private static final Clock NOON =
      Clock.fixed(Instant.parse("2026-04-20T12:00:00Z"), ZoneId.of("UTC"));

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvFileSource(resources = "thirty-recipes.csv", delimiter = '|', quoteCharacter = '`')
  void areReadRightOrAskedAbout(
      String recipe,
      @Nullable String starches,
      @Nullable Double powderG,
      @Nullable Double glycerolG,
      @Nullable Double waterG,
      @Nullable String asked) {
    if (asked != null) {
      assertThatThrownBy(() -> read(recipe))
          .isInstanceOf(RefusedRequestException.class)
          .satisfies(
              refused ->
                  assertThat(((RefusedRequestException) refused).sentences())
                      .singleElement()
                      .asString()
                      .contains(asked));
      return;
    }
    Trial trial = read(recipe).trial();
    assertThat(
            trial.recipe().starches().stream()
                .map(portion -> portion.kind().tradeName())
                .collect(Collectors.joining(" ")))
        .isEqualTo(starches);
    assertThat(trial.recipe().starches().stream().mapToDouble(p -> p.massKg().value()).sum() * 1000)
        .isCloseTo(powderG, withinPercentage(4));
    assertThat(trial.recipe().glycerol().massKg().value() * 1000)
        .isCloseTo(glycerolG, withinPercentage(4));
    assertThat(trial.recipe().waterKg().value() * 1000).isCloseTo(waterG, withinPercentage(2));
  }

  private NewTrial read(String recipe) {
    return NewTrial.read(
        Optional.of(recipe), Written.options(Map.of()), Optional.empty(), folder, NOON);
  }
}
