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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;
import starchfilm.casting.Casting;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.trial.Trial;
import starchfilm.material.recipe.Composition;

/** Recipes as people write them are read right, or asked about in one sentence. */
class ThirtyRecipesTest {
  private static final Clock NOON =
      Clock.fixed(Instant.parse("2026-04-20T12:00:00Z"), ZoneId.of("UTC"));

  private static final String PASTE = "20 g potato, 6 g glycerol, 400 g water; 3 mm; ";

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

  @Test
  void flourHoldsSolidsThatAreNoStarch() {
    Trial flour = read("100 g wheat flour, 25 g glycerol 100 %, 1800 g water").trial();
    Trial starch = read("100 g wheat, 25 g glycerol 100 %, 1800 g water").trial();
    Composition paste = flour.casting().composition();

    assertThat(paste.inert() / (paste.inert() + paste.dryStarch())).isBetween(0.16, 0.2);
    assertThat(paste.drySolids())
        .isCloseTo(starch.casting().composition().drySolids(), withinPercentage(0.1));
  }

  @Test
  void citricAcidCountsAsOtherSolids() {
    Trial trial = read("20 g potato, 6 g glycerol, 400 g water, 2 g citric acid").trial();

    assertThat(trial.recipe().inertKg().value() * 1000).isCloseTo(2, withinPercentage(0.1));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"21 \u00B0C, 50 %", "kitchen, 21\u00B0C, 50% RH", "21 C 50 %", "at 21 C, 50 %"})
  void readsTheAirHoweverItsFiguresStand(String air) {
    Casting casting = read(PASTE + air).trial().casting();

    assertThat(casting.place().name()).isIn("kitchen", DryingPlace.UNNAMED);
    assertThat(Handle.AIR.of(casting)).isEqualTo(21);
    assertThat(Handle.RH.of(casting)).isEqualTo(50);
  }

  @Test
  void asksWhichOfTwoHumiditiesIsMeant() {
    assertThatThrownBy(() -> read(PASTE + "21 C, 50 %, 30 %"))
        .hasMessageContaining("\"30 %\" given beside");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "5-6 g glycerol 82-90% bought",
        "glycerol 5-6 g 82 to 90 %",
        "5-6 g bought glycerol (82-90 %)"
      })
  void aRangeBehindGlycerolIsItsPurityAndNotTheRoomsHumidity(String glycerol) {
    Trial trial = read("20 g potato, " + glycerol + ", 400 g water; 3 mm; 20C,50%").trial();

    assertThat(trial.recipe().glycerol().stock().glycerolFraction().value())
        .isCloseTo(0.86, withinPercentage(0.1));
    assertThat(Handle.RH.of(trial.casting())).isEqualTo(50);
  }

  @ParameterizedTest
  @ValueSource(strings = {", 85 %", " 85 \u00B1 4 %", ", 82-90%"})
  void asksWhetherAShareIsOfTheGlycerolOrTheRoom(String share) {
    assertThatThrownBy(() -> read("20 g potato, 6 g glycerol" + share + ", 400 g water; 20 C"))
        .hasMessageContaining(
            "\""
                + share.replaceFirst("^,? ", "")
                + "\" may be of the glycerol or the humidity of the room; write it directly behind"
                + " the amount, such as 6 g glycerol 85%, or as ");
    assertThat(
            Handle.RH.of(
                read("20 g potato, 400 g water, 6 g glycerol, 85 % RH; 3 mm").trial().casting()))
        .isEqualTo(85);
  }

  private NewTrial read(String recipe) {
    return NewTrial.read(
        Written.cooked(recipe, Written.options(Map.of())), Optional.empty(), folder, NOON);
  }
}
