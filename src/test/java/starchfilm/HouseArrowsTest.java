package starchfilm;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
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
      film       ingredient recipe sorption
      wetfilm    recipe sorption diffusion
      room       air
      plate      recipe air room
      drying     recipe sorption air diffusion doubt wetfilm room plate
      risk       recipe sorption film air doubt room plate drying
      trial      recipe film doubt room plate
      findings   trial json
      roomlog    room findings json
      notebook   ingredient recipe air room plate trial json amount findings roomlog
      saving     recipe plate trial json amount findings notebook
      forecast   recipe film doubt plate drying risk trial
      learnt     ingredient film doubt
      learning   ingredient recipe film air doubt room plate drying diffusion json trial findings \
                 notebook saving forecast learnt
      planning   ingredient recipe film doubt room plate drying
      advice     ingredient recipe sorption film air doubt room plate drying risk trial forecast json
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

  /** An arrow that nothing uses would let a room grow towards another unseen. */
  @ParameterizedTest
  @MethodSource("rooms")
  void usesEveryArrowItHas(String room, List<String> below) throws IOException {
    Stream<String> compiled =
        HOUSE.stream()
            .filter(one -> one.getPackageName().equals("starchfilm." + room))
            .flatMap(one -> one.getDirectDependenciesFromSelf().stream())
            .map(dependency -> dependency.getTargetClass().getPackageName());
    Set<String> used = Stream.concat(compiled, imported(room)).collect(Collectors.toSet());

    assertThat(used).containsAll(below.stream().map(other -> "starchfilm." + other).toList());
  }

  /** Of a class that lends only a constant, the compiled class knows nothing more. */
  private static Stream<String> imported(String room) throws IOException {
    try (Stream<Path> files = Files.list(Path.of("src/main/java/starchfilm", room))) {
      StringBuilder text = new StringBuilder();
      for (Path file : files.toList()) {
        text.append(Files.readString(file));
      }
      return Pattern.compile("(?m)^import (?:static )?(starchfilm\\.\\w+)\\.")
          .matcher(text)
          .results()
          .map(found -> found.group(1));
    }
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
