package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Weighings typed beside a plate that is drying. */
@Timeout(300)
class WeighedSoFarTest {
  private static final double TARE_G = 598;

  @TempDir private Path folder;

  @BeforeEach
  void pour() throws IOException {
    VariedDemo.write(folder.resolve("a.json"), VariedDemo.unweighed("kitchen"));
  }

  private record DryThroughRange(double low, double middle, double high) {
    double width() {
      return Math.log(high / low);
    }
  }

  private DryThroughRange dryThrough(String... options) throws IOException {
    List<String> words = new ArrayList<>(List.of("dry", "a.json", "--json", "-"));
    words.addAll(List.of(options));
    Outcome dry = Outcome.of(folder, words.toArray(String[]::new));
    assertThat(dry.exit()).as(dry.err()).isZero();
    assertThat(dry.out()).doesNotContain("NaN", "Infinity");
    return new DryThroughRange(
        VariedDemo.hours(dry.out(), "dry_through", "low"),
        VariedDemo.hours(dry.out(), "dry_through", "middle"),
        VariedDemo.hours(dry.out(), "dry_through", "high"));
  }

  /** What the plate is forecast to weigh: low, middle and high (g, with the plate). */
  private double[] gramsAt(double hours) throws IOException {
    String table = Outcome.of(folder, "dry", "a.json", "--csv", "-").out();
    for (CSVRecord row :
        CSVFormat.DEFAULT
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .get()
            .parse(new StringReader(table))) {
      if (Double.parseDouble(row.get("time_h")) >= hours) {
        return new double[] {
          TARE_G + Double.parseDouble(row.get("film_g_low")),
          TARE_G + Double.parseDouble(row.get("film_g")),
          TARE_G + Double.parseDouble(row.get("film_g_high"))
        };
      }
    }
    throw new AssertionError("no row at " + hours + " h in " + table);
  }

  private static String weighed(double hours, double grams) {
    return String.format(Locale.ROOT, "--weighed=%.2fh=%.1fg", hours, grams);
  }

  @ParameterizedTest
  @ValueSource(doubles = {8, 24})
  void aWeighingNarrowsTheRangeAndMovesItItsOwnWay(double hours) throws IOException {
    double[] grams = gramsAt(hours);

    DryThroughRange before = dryThrough();
    DryThroughRange asForecast = dryThrough(weighed(hours, grams[1]));
    DryThroughRange heavy = dryThrough(weighed(hours, grams[2]));
    DryThroughRange light = dryThrough(weighed(hours, grams[0]));

    for (DryThroughRange after : List.of(asForecast, heavy, light)) {
      assertThat(after.width()).isLessThan(0.8 * before.width());
      assertThat(after.middle()).isBetween(after.low(), after.high());
    }
    assertThat(light.middle()).isLessThan(0.95 * asForecast.middle());
    assertThat(heavy.middle()).isGreaterThan(1.05 * asForecast.middle());
    assertThat(asForecast.middle()).isBetween(before.low(), before.high());
  }

  @Test
  void typedIsAsNotedInTheFile() throws IOException {
    DryThroughRange typed = dryThrough("--weighed", "6h=731g", "--weighed", "1d=680g");
    DryThroughRange otherOrder =
        dryThrough("--weighed", "+24h=0.68kg", "--weighed", "360 min = 731 g");
    DryThroughRange filmAlone =
        dryThrough("--weighed", "6h=133g", "--weighed", "24h=82g", "--film-only");
    ObjectNode trial = VariedDemo.unweighed("kitchen");
    trial.withArray("weighings").addObject().put("at", "+6h").put("mass_g", 731);
    VariedDemo.write(folder.resolve("a.json"), trial);
    DryThroughRange mixed = dryThrough("--weighed", "24h=680g");
    trial.withArray("weighings").addObject().put("at", "+24h").put("mass_g", 680);
    VariedDemo.write(folder.resolve("a.json"), trial);

    DryThroughRange noted = dryThrough();

    assertThat(List.of(typed, otherOrder, mixed)).allMatch(noted::equals);
    // Without the plate, its own half gram of doubt is not in it.
    assertThat(filmAlone.middle()).isCloseTo(noted.middle(), withinPercentage(1));
  }

  @Test
  void saysWhatWasTakenInAndWhatIsDoubted() {
    Outcome sound = Outcome.of(folder, "dry", "a.json", "--weighed", "6h=731g");
    Outcome wild =
        Outcome.of(
            folder,
            "dry",
            "a.json",
            "--weighed=6h=731g",
            "--weighed=12h=711g",
            "--weighed=18h=740g",
            "--weighed=24h=672g");

    assertThat(sound.out()).contains("With 1 weighing of this plate;");
    assertThat(wild.exit()).isZero();
    assertThat(wild.out().replaceAll("\\s+", " "))
        .contains("With 3 weighings of this plate;", "+18h", "--confirm 18h");
  }

  @Test
  void aRecipeThatIsTypedCanBeWeighedToo() {
    String[] recipe = {
      "dry",
      "--starch",
      "potato",
      "20 g",
      "--glycerol",
      "6 g",
      "--water",
      "360 g",
      "--wet",
      "3 mm",
      "--plate",
      "300x200mm glass",
      "--weighed"
    };
    assertThat(of(recipe, "6h=160g").out()).contains("With 1 weighing of this plate;");
    // More than was poured: it stands on its plate, and one such weighing shows no loss.
    Outcome heavy = of(recipe, "6h=760g");
    assertThat(heavy.exit()).isZero();
    assertThat(heavy.out().replaceAll("\\s+", " "))
        .contains("one weighing with the plate does not count yet");
  }

  private Outcome of(String[] words, String last) {
    String[] all = Arrays.copyOf(words, words.length + 1);
    all[words.length] = last;
    return Outcome.of(folder, all);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "-3h=700g | a plate cannot be weighed before the pour",
        "6h | join time and mass with one =",
        "6h=412g=3 | join time and mass with one =",
        "6h=700g 7h=690g | join time and mass with one =",
        "=700g | write one number with its unit",
        "6h= | write one number with its unit",
        "6=700g | add the unit",
        "6h=700 | add the unit",
        "6h=700lb | allowed more than 0, up to 200000 g",
        "NaN=700g | allowed a time such as +6h, now",
        "6h=NaN g | write one number with its unit",
        "1e400h=700g | allowed a time in min, h or d",
        "6h=1e400g | allowed a mass, such as 412 g or 8 oz",
        "6h=0g | write what the scale showed, above 0 g",
        "6h=-5g | write what the scale showed, above 0 g",
        "6h=9999g | at most the 150 g that were poured",
        "6h=300g | more than 0 g; check the mass, the plate's tare_g",
        "6h=600g | that cannot evaporate",
        "999999h=650g | at most two years after it",
        "friday=650g | write the hour, too",
        "\u0000=\u0000 | allowed a time in min, h or d"
      })
  void refusesWhatIsNoWeighing(String typed, String sentence) {
    Outcome dry = Outcome.of(folder, "dry", "a.json", "--weighed=" + typed);

    assertThat(dry.exit()).isEqualTo(2);
    assertThat(dry.err()).contains(sentence).doesNotContain("NaN,", "null");
    assertThat(dry.out()).isEmpty();
  }

  @Test
  void refusesTwoAtTheSameTimeTypedOrNoted() throws IOException {
    Outcome typed =
        Outcome.of(folder, "dry", "a.json", "--weighed=6h=731g", "--weighed=360min=730g");
    VariedDemo.write(folder.resolve("b.json"), VariedDemo.weighed("kitchen", 1));
    Outcome noted = Outcome.of(folder, "dry", "b.json", "--weighed=4h=734g");

    for (Outcome dry : List.of(typed, noted)) {
      assertThat(dry.exit()).isEqualTo(2);
      assertThat(dry.err()).contains("--weighed: a second weighing at the same time");
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"yesterday 16:00", "gestern 16 Uhr", "hier 16h", "20 hours ago", "6 hours"})
  void takesATimeInTheWordsThatANoteTakes(String time) throws IOException {
    assertThat(dryThrough("--poured=yesterday 10:00", "--weighed=" + time + "=731g"))
        .isEqualTo(dryThrough("--poured=yesterday 10:00", "--weighed=6h=731g"));
  }

  @Test
  void aPourByTheClockMakesWeighingsByTheClock() throws IOException {
    DryThroughRange since = dryThrough("--weighed=6h=731g");
    DryThroughRange byTheClock =
        dryThrough("--poured=2026-04-11 10:00", "--weighed=2026-04-11 16:00=731g");

    assertThat(byTheClock).isEqualTo(since);
    String alone =
        "dry --starch potato 20g --water 360g --plate 30x20cm --weighed 2026-04-11_16:00=170g";
    Outcome unknown =
        Outcome.of(
            folder,
            Stream.of(alone.split(" ")).map(word -> word.replace('_', ' ')).toArray(String[]::new));
    assertThat(unknown.exit()).isEqualTo(2);
    assertThat(unknown.err()).contains("--weighed:", "--poured").doesNotContain("poured_at");
  }

  @Test
  void refusesWhatHangsInTheAir() throws IOException {
    assertThat(Outcome.of(folder, "dry", "--weighed", "6h=700g").err())
        .contains("dry needs a trial file");
    assertThat(Outcome.of(folder, "dry", "a.json", "--weighed").err()).contains("TIME=MASS");
    Outcome alone = Outcome.of(folder, "dry", "a.json", "--film-only");
    assertThat(alone.exit()).isEqualTo(2);
    assertThat(alone.err())
        .isEqualToNormalizingNewlines(
            "starchfilm: --film-only: given without --weighed; add one, or leave it out\n");
    for (String noted : List.of("\"none yet\"", "null", "7", "[{}]")) {
      Files.writeString(
          folder.resolve("a.json"),
          VariedDemo.unweighed("kitchen")
              .toString()
              .replaceFirst("\\{", "{\"weighings\": " + noted + ","));
      Outcome faulty = Outcome.of(folder, "dry", "a.json", "--weighed=6h=731g");
      assertThat(faulty.exit()).as(noted).isEqualTo(2);
      assertThat(faulty.err()).as(noted).contains("a.json, line 1", "weighing");
    }
  }
}
