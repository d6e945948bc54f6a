package starchfilm.report.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import starchfilm.advice.OutcomeDifference;
import starchfilm.casting.FaceChange;
import starchfilm.casting.Spot;
import starchfilm.casting.trial.ObservedFault.FaultKind;
import starchfilm.casting.trial.ObservedFault.FaultPlace;
import starchfilm.casting.trial.Stage;
import starchfilm.change.NoEffectReason;
import starchfilm.drying.Milestone;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.files.json.PackedText;
import starchfilm.film.Feel;
import starchfilm.film.FilmCaution;
import starchfilm.film.Withheld;
import starchfilm.film.risk.RiskLevel;
import starchfilm.material.recipe.Ingredient;
import starchfilm.numerics.evidence.Check;
import starchfilm.planning.Goal;
import starchfilm.planning.Limit;
import starchfilm.report.caution.Caution;

/** Every kind the program tells apart has its words, and no word is left of a kind that went. */
class PlainWordsTest {
  private static final List<Class<? extends Enum<?>>> KINDS =
      List.of(
          Feel.class,
          FilmCaution.class,
          Withheld.class,
          FaultKind.class,
          FaultPlace.class,
          Milestone.class,
          Spot.class,
          UncertainParameter.class,
          Ingredient.class,
          Check.class,
          Goal.class,
          RiskLevel.class,
          Caution.class,
          OutcomeDifference.Agreement.class,
          Limit.class,
          NoEffectReason.class,
          Stage.class);

  @Test
  void everyConstantHasWordsBelowEachHeadingOfItsKind() {
    Map<String, TreeSet<String>> told = new TreeMap<>();
    String heading = "";
    for (String line : PackedText.of(PlainWords.class, "kinds.txt").lines().toList()) {
      if (line.startsWith("## ")) {
        heading = line.substring(3);
        told.put(heading, new TreeSet<>());
      } else if (line.contains(" | ")) {
        assertThat(told.get(heading).add(line.substring(0, line.indexOf(" | ")))).as(line).isTrue();
      }
    }
    told.forEach(
        (where, constants) ->
            assertThat(constants).as(where).isEqualTo(constants(where.replaceFirst(",.*", ""))));
    assertThat(told.keySet())
        .containsAll(KINDS.stream().map(PlainWordsTest::name).toList())
        .contains("Feel, in the hand", "UncertainParameter, to know it better")
        .contains("UncertainParameter, as learnt");
  }

  @Test
  void aKindWithoutWordsIsNamed() {
    assertThatThrownBy(() -> PlainWords.word(FaceChange.OpenFaces.BOTH))
        .hasMessage("kinds.txt has no BOTH below OpenFaces");
  }

  private static TreeSet<String> constants(String name) {
    return KINDS.stream()
        .filter(kind -> name(kind).equals(name))
        .flatMap(kind -> Stream.of(kind.getEnumConstants()))
        .map(Enum::name)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static String name(Class<?> kind) {
    return kind.getSimpleName();
  }
}
