package starchfilm;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
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

  /** A line a room, lower rooms first: what it may know besides itself and {@code evidence}. */
  private static final Map<String, List<String>> MAY_KNOW =
      """
      evidence
      json
      amount
      diffusion
      ingredient
      air
      doubt
      recipe     ingredient
      reagent    ingredient
      recovery   ingredient reagent
      assay      ingredient reagent recovery recipe
      sorption   ingredient recipe
      film       ingredient recipe sorption air
      wetfilm    ingredient recipe sorption diffusion
      room       air
      plate      ingredient recipe air room
      drying     ingredient recipe sorption air diffusion doubt wetfilm room plate
      risk       ingredient recipe sorption film air doubt room plate drying
      trial      ingredient recipe film air doubt room plate
      findings   trial json
      roomlog    room findings json
      notebook   ingredient recipe air room plate trial json amount findings roomlog
      saving     ingredient recipe plate trial json amount findings notebook
      forecast   ingredient recipe film air doubt room plate drying risk trial
      learnt     ingredient film doubt
      learning   ingredient recipe sorption film air doubt room plate drying diffusion json amount \
                 trial findings notebook saving forecast learnt
      planning   ingredient recipe sorption film air doubt room plate drying trial learning amount \
                 reagent recovery assay
      advice     ingredient recipe sorption film air doubt room plate drying risk trial forecast \
                 learning amount reagent recovery assay planning json
      """
          .lines()
          .map(line -> List.of(line.split(" +")))
          .collect(
              Collectors.toMap(words -> words.get(0), words -> words.subList(1, words.size())));

  private static final List<String> ROOMS_WITH_THE_OUTSIDE =
      List.of(
          "json",
          "amount",
          "trial",
          "roomlog",
          "notebook",
          "saving",
          "learning",
          "report",
          "cli",
          "web");

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
