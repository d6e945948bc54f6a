package starchfilm.request;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import starchfilm.casting.trial.Trial;
import starchfilm.files.findings.Findings;
import starchfilm.files.notebook.NotebookReader;
import starchfilm.files.notebook.TrialReader;
import starchfilm.proof.Cases;
import starchfilm.proof.RoughJson;
import starchfilm.proof.RoughWords;
import starchfilm.request.Field.FieldSection;

/** Whatever is typed into the fields of a request is meant, or refused in sentences. */
class RoughRequestsTest {
  private static final Clock NOON =
      Clock.fixed(Instant.parse("2026-04-20T12:00:00Z"), ZoneId.of("UTC"));

  private static final Pattern EXAMPLE = Pattern.compile("such as ([^.;]+)");

  @TempDir private Path folder;
  private Optional<TrialQuestion.Base> base = Optional.empty();

  @BeforeEach
  void fill() throws IOException {
    Path file = folder.resolve("a.json");
    Files.copy(Path.of("formulations/garden/4-blend.json"), file);
    Files.copy(Path.of("formulations/garden/shed-april.csv"), folder.resolve("log.csv"));
    base = TrialQuestion.Base.of(NotebookReader.read(List.of(file)).trials().get(0));
  }

  @Test
  void aTypedTrialIsASoundFileOrRefused() {
    Cases.forEach(
        80,
        (random, number) -> {
          String line = RoughWords.spoken(random);
          Entries written = entries(Written.NEW, random.nextInt(3), random);
          Optional<TrialQuestion.Base> from = random.nextInt(4) == 0 ? base : Optional.empty();
          meantOrRefused(
              line,
              typed -> {
                NewTrial made = NewTrial.read(Written.cooked(typed, written), from, folder, NOON);
                Findings findings = new Findings("b.json");
                Optional<Trial> trial =
                    new TrialReader().read(made.text(), folder.resolve("b.json"), findings);
                assertThat(findings.faults()).isEmpty();
                assertThat(trial.orElseThrow().name()).isEqualTo(made.name());
              });
        });
  }

  @Test
  void whatIsAskedIsMeantOrRefused() {
    Map<List<FieldSection>, Consumer<Entries>> requests =
        Map.of(
            Written.PLAN, written -> PlanQuestion.read(written, folder, NOON),
            Written.DRY, written -> TrialQuestion.read(written, base, folder, NOON),
            Written.THICKNESS, written -> ThicknessQuestion.read(written, base, folder, NOON),
            Written.ASSAY, AssayRequest::read,
            Written.PH, PhRequest::read);
    List<List<FieldSection>> kinds =
        List.of(Written.PLAN, Written.DRY, Written.THICKNESS, Written.ASSAY, Written.PH);
    Cases.forEach(
        120,
        (random, number) -> {
          List<FieldSection> kind = RoughJson.any(kinds, random);
          Entries written = entries(kind, 1 + random.nextInt(8), random);
          meantOrRefused(written.toString(), typed -> requests.get(kind).accept(written));
        });
  }

  /** Some fields, often with what their own help gives as an example. */
  private static Entries entries(List<FieldSection> sections, int count, Random random) {
    List<Field> fields = sections.stream().flatMap(section -> section.fields().stream()).toList();
    Map<Field, List<String>> written = new HashMap<>();
    for (int n = 0; n < count; n++) {
      Field field = RoughJson.any(fields, random);
      int most = Math.min(field.most(), field.least() + 2);
      int words = Math.max(1, field.least() + random.nextInt(most - field.least() + 1));
      written.put(field, Stream.generate(() -> word(field, random)).limit(words).toList());
    }
    return new Entries() {
      @Override
      public List<String> words(Field field) {
        return written.getOrDefault(field, List.of());
      }

      @Override
      public String name(Field field) {
        return field.option();
      }

      @Override
      public String toString() {
        return written.toString();
      }
    };
  }

  private static String word(Field field, Random random) {
    Matcher example = EXAMPLE.matcher(field.help());
    return switch (random.nextInt(4)) {
      case 0, 1 -> example.find() ? example.group(1) : RoughWords.any(random);
      case 2 -> RoughWords.any(random);
      default -> RoughWords.spoken(random);
    };
  }

  private static void meantOrRefused(String typed, Consumer<String> reading) {
    try {
      reading.accept(typed);
    } catch (RefusedRequestException refused) {
      assertThat(refused.sentences())
          .as(typed)
          .isNotEmpty()
          .allSatisfy(
              sentence ->
                  assertThat(sentence)
                      .isNotBlank()
                      .hasSizeLessThan(1_500)
                      .doesNotContain("Exception", "java."));
    }
  }
}
