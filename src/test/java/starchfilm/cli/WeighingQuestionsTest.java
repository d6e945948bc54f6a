package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is odd about a plate's weighings is said in a sentence and kept out until answered. */
class WeighingQuestionsTest {
  @TempDir private Path folder;

  private ObjectNode plate() throws IOException {
    return VariedDemo.unweighed("kitchen").put("invented", false);
  }

  private static ObjectNode weighed(ObjectNode trial, String at, double massG) {
    trial.withArray("weighings").addObject().put("at", at).put("mass_g", massG);
    return trial;
  }

  private String dry(ObjectNode trial) throws IOException {
    VariedDemo.write(folder.resolve("plate.json"), trial);
    return dry();
  }

  private String dry() {
    Outcome dry = Outcome.of(folder, "dry", "plate.json");
    assertThat(dry.exit()).as(dry.err()).isZero();
    return dry.out().replaceAll("\\s+", " ");
  }

  /** The forecast as it is without any weighing. */
  private String untaught() throws IOException {
    return headline(dry(plate()));
  }

  private static String headline(String dry) {
    return dry.replaceFirst(".*?(Peelable .*?\\.) .*", "$1");
  }

  /** From 14 to 19 h it would lose 17 g as in the hours before; it lost 61. */
  private ObjectNode catOnThePlate() throws IOException {
    ObjectNode trial = plate();
    weighed(trial, "+4h", 735);
    weighed(trial, "+9h", 718);
    weighed(trial, "+14h", 701);
    weighed(trial, "+19h", 640);
    return weighed(trial, "+23h", 628);
  }

  @Test
  void aStepIsAskedAboutOnceAndKeptOut() throws IOException {
    String dry = dry(catOnThePlate());

    assertThat(dry)
        .containsPattern(
            "From the weighing at \\+19h on all are about 4[3-7] g lighter than those before")
        .contains("was paste lost, or was it another plate or tare?")
        .contains("With 3 weighings of this plate")
        .doesNotContain("The weighing at");
  }

  @Test
  void aFirstWeighingThatDoesNotFitIsAskedAboutAndTheForecastGoesWithoutIt() throws IOException {
    String dry = dry(weighed(plate(), "+0h", 725));

    assertThat(dry).contains("The weighing at +0h is").contains("left out of the forecast");
    assertThat(headline(dry)).isEqualTo(untaught());
  }

  @Test
  void aConfirmedStepGoesOnFromThereByItsLoss() throws IOException {
    dry(catOnThePlate());

    assertThat(Outcome.of(folder, "note", "plate.json", "--confirm", "19h").exit()).isZero();

    assertThat(dry())
        .contains("With 5 weighings of this plate")
        .doesNotContain("From the weighing at +19h");
    assertThat(Outcome.of(folder, "note", "plate.json", "--confirm", "30h").err())
        .contains("no weighing at +30h given, allowed one of +4h, +9h, +14h, +19h, +23h");
  }

  @Test
  void aPlateThatGetsHeavierIsNotForecastByThat() throws IOException {
    ObjectNode trial = weighed(plate(), "+4h", 735);
    weighed(trial, "+6h", 738);
    weighed(trial, "+8h", 741);

    String dry = dry(trial);

    assertThat(dry)
        .contains("The weighing at +6h is 3 g heavier than the one at +4h")
        .contains("was a lid on, or was it another plate?")
        .contains(
            "Most weighings of this plate look wrong, so the forecast uses none of" + " them.");
    assertThat(headline(dry)).isEqualTo(untaught());
  }

  @Test
  void lessThanTheSolidsIsAskedAbout() throws IOException {
    ObjectNode trial = weighed(plate(), "+4h", 735);
    weighed(trial, "+9h", 718);
    weighed(trial, "+12h", 598 + 6);

    assertThat(dry(trial))
        .containsPattern("at \\+12h shows a film of 6 g, less than the 8\\.\\d g of solids")
        .contains("With 2 weighings");
  }

  @Test
  void twoAtOnceThatDifferBothWait() throws IOException {
    ObjectNode trial = weighed(plate(), "+4h", 735);
    weighed(trial, "+9h", 718);
    weighed(trial, "+21h", 678);
    weighed(trial, "+21.01h", 650);

    assertThat(dry(trial))
        .contains("and another within two minutes differ by 28 g: which of them is right?")
        .contains("With 2 weighings");
  }

  @Test
  void theFutureDoesNotCount() throws IOException {
    ObjectNode trial = weighed(plate(), "+4h", 735);
    weighed(trial, "2026-05-25T10:00", 612);

    assertThat(dry(trial))
        .contains("One weighing lies in the future and is not counted: is its date right?")
        .contains("With 1 weighing of this plate");
  }

  @Test
  void aPourInTheFutureIsAskedAbout() throws IOException {
    String question =
        "The pour lies in the future: is its date right, and is the clock of this computer right?";
    assertThat(dry(plate())).doesNotContain(question);
    assertThat(dry(plate().put("poured_at", "2026-05-25T10:00"))).contains(question);
  }

  /** Two clocks differ, and a day without an hour is read as its noon. */
  @ParameterizedTest
  @CsvSource({"2026-04-20, false", "2026-04-20T09:08, false", "2026-04-20T15:00, true"})
  void aPourOfThisMinuteOrOfTodayIsNotAskedAbout(String pour, boolean isAsked) throws IOException {
    Terminal morning =
        new Terminal(folder, Clock.fixed(Instant.parse("2026-04-20T09:00:00Z"), ZoneOffset.UTC));
    VariedDemo.write(folder.resolve("plate.json"), plate().put("poured_at", pour));

    assertThat(morning.run("dry", "plate.json")).as(morning.err()).isZero();
    assertThat(morning.out().contains("The pour lies in the future")).isEqualTo(isAsked);
  }

  @Test
  void withoutTareTheLossCounts() throws IOException {
    ObjectNode tared = weighed(plate(), "+4h", 735);
    weighed(tared, "+9h", 718);
    weighed(tared, "+21h", 678);
    weighed(tared, "+28h", 655);
    ObjectNode bare = tared.deepCopy();
    ((ObjectNode) bare.path("pour").path("plate")).remove("tare_g");

    double withTare = peelableHours(tared);
    String without = dry(bare);

    assertThat(without)
        .contains("With 4 weighings of this plate")
        .contains("the loss since the first");
    assertThat(peelableHours(bare)).isBetween(0.9 * withTare, 1.1 * withTare);
    assertThat(headline(without)).isNotEqualTo(untaught());
  }

  private double peelableHours(ObjectNode trial) throws IOException {
    VariedDemo.write(folder.resolve("plate.json"), trial);
    return VariedDemo.hours(
        Outcome.of(folder, "dry", "plate.json", "--json", "-").out(), "peelable", "middle");
  }

  @Test
  void gramsOfAPlateOfUnknownSizeAreRefused() {
    Outcome dry =
        Outcome.of(
            folder,
            "dry",
            "--starch",
            "potato",
            "20g",
            "--water",
            "360g",
            "--wet",
            "3mm",
            "--weighed",
            "6h=170g");

    assertThat(dry.exit()).isEqualTo(2);
    assertThat(dry.err()).contains("a weighing of a plate of unknown size");
  }

  /** A scale that logs each five minutes for days. */
  @Test
  void aLoggingScaleIsThinned() throws IOException {
    ObjectNode trial = plate();
    for (int i = 1; i <= 7_199; i++) {
      double hours = i / 160.0;
      weighed(trial, "+" + hours + "h", Math.round(10 * (745 - 3.2 * Math.min(hours, 42))) / 10.0);
    }

    assertThat(dry(trial)).contains("Of the weighings one in 120 is used");
    Outcome learn = Outcome.of(folder, "learn", ".");
    assertThat(learn.out()).as(learn.err()).contains("kitchen");
  }
}
