package starchfilm;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
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
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The arrows between packages, as DEVELOPERS.md draws them: a room knows only rooms below it. And
 * the names in them: one a type.
 */
class HouseArrowsTest {
  private static final JavaClasses HOUSE =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("starchfilm");

  private static final List<String> ANYWHERE = List.of("numerics.units", "numerics.evidence");

  /** A line per room, lower rooms first: what it may know besides itself and {@link #ANYWHERE}. */
  private static final Map<String, List<String>> MAY_KNOW =
      """
      numerics.units
      numerics.evidence
      numerics.figures
      numerics.diffusion
      material.ingredient
      material.air
      material.recipe      numerics.figures material.ingredient
      material.sorption    material.ingredient material.recipe
      material.wetfilm     material.recipe material.sorption numerics.diffusion
      casting              numerics.figures material.recipe material.air
      casting.trial        material.recipe casting
      drying.uncertainty
      drying               material.recipe material.sorption material.air material.wetfilm \
                           numerics.diffusion casting drying.uncertainty
      film                 material.ingredient material.recipe material.sorption casting
      film.risk            material.recipe material.sorption material.air film casting drying \
                           drying.uncertainty
      jar.reagent          numerics.figures material.ingredient
      jar.recovery         numerics.figures material.ingredient jar.reagent
      jar.assay            numerics.figures material.ingredient material.recipe jar.reagent \
                           jar.recovery
      files.json
      files.amount         casting.trial files.json
      files.findings       numerics.figures casting.trial files.json
      files.roomlog        casting casting.trial files.amount files.findings files.json
      files.notebook       material.ingredient material.recipe material.air casting casting.trial \
                           files.json files.amount files.findings files.roomlog
      files.saving         material.ingredient material.recipe material.air casting casting.trial \
                           files.json files.amount files.findings files.notebook files.roomlog
      forecast             material.recipe material.air film film.risk casting drying drying.uncertainty \
                           casting.trial
      learning.summary     material.ingredient film drying.uncertainty
      learning             numerics.figures numerics.diffusion material.ingredient material.recipe \
                           casting drying drying.uncertainty film casting.trial files.json \
                           files.findings files.notebook files.saving forecast learning.summary
      change               material.ingredient material.recipe casting casting.trial film film.risk \
                           forecast
      today                casting casting.trial change drying drying.uncertainty film.risk \
                           forecast learning
      planning             numerics.figures material.ingredient material.recipe casting drying \
                           drying.uncertainty film
      advice               numerics.figures material.ingredient material.recipe material.air \
                           casting drying film film.risk casting.trial forecast \
                           change files.json
      request              numerics.figures material.ingredient material.recipe material.air casting \
                           casting.trial jar.assay jar.reagent jar.recovery files.amount files.findings \
                           files.json files.notebook files.roomlog files.saving film change \
                           learning planning
      """
          .lines()
          .map(line -> List.of(line.split(" +")))
          .collect(
              Collectors.toMap(words -> words.get(0), words -> words.subList(1, words.size())));

  private static final List<String> ROOMS_WITH_THE_OUTSIDE =
      List.of("files", "casting.trial", "learning", "today", "request", "report", "cli", "web");

  static Stream<Arguments> rooms() {
    return MAY_KNOW.entrySet().stream().map(e -> Arguments.of(e.getKey(), e.getValue()));
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void knowsOnlyRoomsBelowIt(String room, List<String> below) {
    String[] forbidden =
        Stream.concat(MAY_KNOW.keySet().stream(), Stream.of("report..", "cli..", "web.."))
            .filter(other -> !other.equals(room) && !ANYWHERE.contains(other))
            .filter(other -> !below.contains(other))
            .map(other -> "starchfilm." + other)
            .toArray(String[]::new);
    noClasses()
        .that()
        .resideInAPackage("starchfilm." + room)
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
    try (Stream<Path> files = Files.list(Path.of("src/main/java/starchfilm", room.split("\\.")))) {
      StringBuilder text = new StringBuilder();
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        text.append(Files.readString(file));
      }
      return Pattern.compile("(?m)^import (?:static )?(starchfilm(?:\\.[a-z]+)+)\\.[A-Z]")
          .matcher(text)
          .results()
          .map(found -> found.group(1));
    }
  }

  @Test
  void everyRoomBelowThePagesIsListed() {
    Set<String> listed =
        MAY_KNOW.keySet().stream().map(room -> "starchfilm." + room).collect(Collectors.toSet());

    assertThat(HOUSE.stream().map(JavaClass::getPackageName).distinct())
        .filteredOn(name -> !name.matches("starchfilm\\.(report|cli|web)(\\..*)?"))
        .allMatch(listed::contains);
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

  @ParameterizedTest
  @ValueSource(strings = {"starchfilm.(*)..", "starchfilm.(**)"})
  void neitherWingsNorRoomsHaveACycle(String slices) {
    SlicesRuleDefinition.slices().matching(slices).should().beFreeOfCycles().check(HOUSE);
  }

  /** A reader who meets a name in a stack trace, an import or a search knows what it is. */
  @Test
  void noTwoTypesShareASimpleName() {
    Stream<String> names =
        HOUSE.stream()
            .filter(type -> !type.isAnonymousClass())
            .map(JavaClass::getSimpleName)
            .filter(name -> !name.equals("package-info"));

    assertThat(names).doesNotHaveDuplicates();
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
