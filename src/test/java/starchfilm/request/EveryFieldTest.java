package starchfilm.request;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import starchfilm.request.Field.FieldSection;

/** Whatever stands in a field, it is taken or refused in a sentence that names the field. */
class EveryFieldTest {
  private static final Clock NOON =
      Clock.fixed(Instant.parse("2026-04-02T12:00:00Z"), ZoneOffset.UTC);
  private static final int LONGEST_SENTENCE = 700;

  private static final List<String> ROUGH =
      List.of(
          "",
          " ",
          "-",
          "20 furlongs",
          "20 g",
          "20 ml",
          "3 mm",
          "3 mm 2",
          "20 C",
          "68 F",
          "20 %",
          "-20 g",
          "-5 C",
          "1,234.5,6 g",
          "1.234.567,8 g",
          "1e400 g",
          "1e-320 g",
          "999999999999 kg",
          "0.0000000001 mm",
          "5-3 g",
          "3 \u00B1 9 g",
          "1/0 cup",
          "\u0662\u0660 g",
          "\u05E2\u05E9\u05E8\u05D9\u05DD \u05D2\u05E8\u05DD",
          "\u202E20 g\u202C",
          "20 g\u0007\u001B[31m",
          "NaN g",
          "Infinity",
          "banana",
          "4 x 30 y 20",
          "99999x99999x99999mm unobtainium",
          "next year",
          "31.02.2026",
          "yesterday 25:00",
          "9".repeat(20_000) + " g",
          "potato ".repeat(3_000));

  /** A request: how it is read, and what it needs beside the field that is tried. */
  private record Door(List<FieldSection> sections, Map<String, String> usual, Reader reader) {}

  private interface Reader {
    void read(Entries entries, Path folder);
  }

  private static final Map<String, String> COOKED =
      Map.of("--starch", "potato 20g", "--water", "360g", "--wet", "3mm");

  static Stream<Door> doors() {
    Map<String, String> byFriday = new HashMap<>(COOKED);
    byFriday.put("--by", "3d");
    return Stream.of(
        new Door(
            Written.DRY,
            COOKED,
            (entries, folder) -> TrialQuestion.read(entries, Optional.empty(), folder, NOON)),
        new Door(
            Written.THICKNESS,
            byFriday,
            (entries, folder) -> ThicknessQuestion.read(entries, Optional.empty(), folder, NOON)),
        new Door(
            Written.NEW,
            COOKED,
            (entries, folder) -> NewTrial.read(entries, Optional.empty(), folder, NOON)),
        new Door(
            Written.PLAN,
            Map.of("--starch", "potato", "--glycerol", "250g", "--room", "20C,50%"),
            (entries, folder) -> PlanQuestion.read(entries, folder, NOON)),
        new Door(
            Written.ASSAY,
            Map.of("--mass", "500g", "--label", "99%"),
            (entries, folder) -> AssayRequest.read(entries).answer()));
  }

  @TempDir private Path folder;

  @ParameterizedTest
  @MethodSource("doors")
  void whateverStandsInAFieldIsTakenOrRefusedInASentence(Door door) {
    for (FieldSection section : door.sections()) {
      for (Field field : section.fields()) {
        for (String rough : ROUGH) {
          try {
            door.reader().read(written(door.usual(), field, rough), folder);
          } catch (RefusedRequestException refused) {
            List<String> sentences = refused.sentences();
            assertThat(sentences)
                .as("%s %s", field.name(), shown(rough))
                .isNotEmpty()
                .hasSizeLessThan(6)
                .allMatch(one -> one.length() < LONGEST_SENTENCE)
                .noneMatch(one -> one.matches("(?s).*(?:null|Exception).*"))
                .allMatch(one -> one.contains(": "));
          } catch (RuntimeException | StackOverflowError broken) {
            throw new AssertionError(field.name() + " " + shown(rough), broken);
          }
        }
      }
    }
  }

  private static String shown(String rough) {
    return rough.length() > 30 ? rough.substring(0, 30) + "..." : rough;
  }

  private static Entries written(Map<String, String> usual, Field tried, String rough) {
    return new Entries() {
      @Override
      public List<String> words(Field field) {
        if (field.name().equals(tried.name())) {
          return new ArrayList<>(Collections.nCopies(Math.max(1, tried.least()), rough));
        }
        String word = usual.get(field.name());
        return word == null ? List.of() : List.of(word);
      }

      @Override
      public String name(Field field) {
        return field.name();
      }
    };
  }
}
