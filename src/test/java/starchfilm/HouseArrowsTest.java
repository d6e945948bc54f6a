package starchfilm;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The arrows between packages, as DEVELOPERS.md draws them: a room knows only rooms below it. */
class HouseArrowsTest {
  private static final JavaClasses HOUSE =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("starchfilm");

  /** What each room may know, besides itself and {@code evidence}. */
  private static final Map<String, List<String>> MAY_KNOW =
      Map.ofEntries(
          Map.entry("evidence", List.of()),
          Map.entry("diffusion", List.of()),
          Map.entry("ingredient", List.of()),
          Map.entry("air", List.of()),
          Map.entry("recipe", List.of("ingredient")),
          Map.entry("reagent", List.of("ingredient")),
          Map.entry("recovery", List.of("reagent", "ingredient")),
          Map.entry("assay", List.of("recovery", "reagent", "recipe", "ingredient")),
          Map.entry("sorption", List.of("recipe", "ingredient")),
          Map.entry("film", List.of("sorption", "recipe", "ingredient", "air")),
          Map.entry(
              "drying", List.of("film", "sorption", "recipe", "ingredient", "air", "diffusion")),
          Map.entry("json", List.of()),
          Map.entry("amount", List.of()),
          Map.entry(
              "trial",
              List.of(
                  "drying", "film", "sorption", "recipe", "ingredient", "air", "json", "amount")),
          Map.entry(
              "learning",
              List.of(
                  "trial",
                  "drying",
                  "film",
                  "sorption",
                  "recipe",
                  "ingredient",
                  "air",
                  "diffusion",
                  "json",
                  "amount")),
          Map.entry(
              "planning",
              List.of(
                  "learning",
                  "trial",
                  "drying",
                  "film",
                  "sorption",
                  "assay",
                  "recovery",
                  "reagent",
                  "recipe",
                  "ingredient",
                  "air",
                  "amount")),
          Map.entry(
              "advice",
              List.of(
                  "planning",
                  "learning",
                  "trial",
                  "drying",
                  "film",
                  "sorption",
                  "assay",
                  "recovery",
                  "reagent",
                  "recipe",
                  "ingredient",
                  "air",
                  "amount",
                  "json")));

  private static final List<String> ROOMS_WITH_THE_OUTSIDE =
      List.of("json", "amount", "trial", "learning", "report", "cli", "web");

  static Stream<Arguments> rooms() {
    return MAY_KNOW.entrySet().stream().map(e -> Arguments.of(e.getKey(), e.getValue()));
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void knowsOnlyRoomsBelowIt(String room, List<String> below) {
    String[] forbidden =
        Stream.concat(MAY_KNOW.keySet().stream(), Stream.of("report", "cli", "web"))
            .filter(other -> !other.equals(room) && !other.equals("evidence"))
            .filter(other -> !below.contains(other))
            .map(other -> "starchfilm." + other + "..")
            .toArray(String[]::new);
    noClasses()
        .that()
        .resideInAPackage("starchfilm." + room + "..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(forbidden)
        .allowEmptyShould(true)
        .check(HOUSE);
  }

  @Test
  void nothingBelowKnowsThePagesOrTheCommands() {
    noClasses()
        .that()
        .resideInAPackage("starchfilm.report..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("starchfilm.cli..", "starchfilm.web..")
        .allowEmptyShould(true)
        .check(HOUSE);
  }

  @Test
  void packagesHaveNoCycle() {
    SlicesRuleDefinition.slices()
        .matching("starchfilm.(*)..")
        .should()
        .beFreeOfCycles()
        .check(HOUSE);
  }

  @Test
  void onlyTheOuterRoomsTouchFilesClocksAndFrameworks() {
    noClasses()
        .that()
        .resideOutsideOfPackages(
            ROOMS_WITH_THE_OUTSIDE.stream()
                .map(room -> "starchfilm." + room + "..")
                .toArray(String[]::new))
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "java.io..",
            "java.nio..",
            "java.time..",
            "com.fasterxml..",
            "org.thymeleaf..",
            "picocli..",
            "org.apache.commons.csv..")
        .allowEmptyShould(true)
        .check(HOUSE);
  }
}
