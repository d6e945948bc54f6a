package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every command that forecasts takes what was learnt of the trials beside, and says so. */
@Timeout(300)
class LearntInUseTest {
  private static final double SLOW = 1.5;
  private static final double FAST = 0.6;
  private static final String TRIAL = "/trial?file=next.json";
  @TempDir private Path folder;

  @Test
  void dryFollowsTheRoom() throws IOException {
    VariedDemo.write(folder.resolve("textbook/next.json"), VariedDemo.unweighed("shed"));
    VariedDemo.learnt(folder, "slow", "shed", SLOW);
    VariedDemo.learnt(folder, "fast", "shed", FAST);

    double textbook = VariedDemo.dryThroughH(folder, "textbook/next.json");

    assertThat(VariedDemo.dryThroughH(folder, "slow/next.json")).isGreaterThan(1.2 * textbook);
    assertThat(VariedDemo.dryThroughH(folder, "fast/next.json")).isLessThan(0.85 * textbook);
    assertThat(Outcome.of(folder, "dry", "slow/next.json").out().replaceAll("\\s+", " "))
        .containsPattern("Learnt from your trials: your room \"shed\" dries \\d+ % slower");
    assertThat(Outcome.of(folder, "dry", "textbook/next.json").out())
        .doesNotContain("Learnt from your trials");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "dry next.json",
        "dry next.json --json -",
        "dry next.json --csv -",
        "thickness next.json --by 2d",
        "thickness next.json --by 2d --json -",
        "plan --glycerol 30g --starch potato --room 22C,45% --room-name shed",
        "plan --glycerol 30g --starch potato --room 22C,45% --room-name shed --csv -",
        "today .",
        "today . --json -",
        "compare . --json -"
      })
  void everyAnswerSaysThatItFollowsTheRoom(String command) throws IOException {
    VariedDemo.learnt(folder, "", "shed", SLOW);
    Outcome.of(folder, "note", "next.json", "--poured", "now");

    assertThat(Outcome.of(folder, command.split(" ")).out().replaceAll("\\s+", " "))
        .containsPattern(
            "Learnt from your trials: your room [\\\\\"]*shed[\\\\\"]* dries \\d+ % slower");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/today/all",
        "/plan/thickness?by=2+days&base=next.json",
        "/plan/wishes?glycerol=30&room=22C,45%25&room_name=shed",
        "/plan/wishes?glycerol=30&room=22C,45%25&room_name=shed&by=0.1"
      })
  void everyPageSaysThatItFollowsTheRoom(String page) throws Exception {
    VariedDemo.learnt(folder, "slow", "shed", SLOW);
    Outcome.of(folder, "note", "slow/next.json", "--poured", "now");

    assertThat(Jsoup.parse(served("slow", page)).text())
        .containsPattern("Learnt from your trials: your room \"shed\" dries \\d+ % slower");
  }

  @Test
  void dryTakesTheNearestFolderAboveButItsOwnFirst() throws IOException {
    VariedDemo.learnt(folder, "all", "shed", SLOW);
    VariedDemo.write(folder.resolve("all/may/2/next.json"), VariedDemo.unweighed("shed"));
    double above = VariedDemo.dryThroughH(folder, "all/next.json");
    double own = VariedDemo.dryThroughH(folder, "all/may/2/next.json");
    assertThat(own).isEqualTo(above);

    VariedDemo.learnt(folder, "all/may", "shed", FAST);

    assertThat(VariedDemo.dryThroughH(folder, "all/may/2/next.json")).isLessThan(0.8 * above);
    assertThat(VariedDemo.dryThroughH(folder, "all/next.json")).isEqualTo(above);
  }

  @Test
  void thicknessPoursThinnerInASlowRoom() throws IOException {
    VariedDemo.write(folder.resolve("textbook/next.json"), VariedDemo.unweighed("shed"));
    VariedDemo.learnt(folder, "slow", "shed", SLOW);

    double textbook = millimetres("textbook/next.json");

    assertThat(millimetres("slow/next.json")).isLessThan(0.9 * textbook);
    // Another room than the file's has only a part of it.
    assertThat(millimetres("slow/next.json", "--room", "22C,45%"))
        .isBetween(millimetres("slow/next.json"), textbook);
  }

  private double millimetres(String file, String... room) {
    List<String> words = new ArrayList<>(List.of("thickness", file, "--by", "2d"));
    words.addAll(List.of(room));
    return figure(
        Outcome.of(folder, words.toArray(String[]::new)).out().replaceAll("\\s+", " "),
        "Pour ([0-9.]+) mm wet, \\d+ g per plate: it is dry through everywhere by [^.]*? in 5 of"
            + " 10");
  }

  @Test
  void planIsSlowerInARoomThatWasSlow() throws IOException {
    VariedDemo.learnt(folder, "slow", "shed", SLOW);

    double textbook = plannedHours();
    double there = plannedHours("--save", "slow", "--room-name", "shed");
    double elsewhere = plannedHours("--save", "slow");

    assertThat(there).isGreaterThan(1.15 * textbook);
    assertThat(elsewhere).isBetween(0.99 * textbook, there);
  }

  private double plannedHours(String... more) {
    List<String> words =
        new ArrayList<>(
            List.of(
                "plan",
                "--glycerol",
                "30g",
                "--purity",
                "85%",
                "--starch",
                "potato",
                "--plates",
                "1x300x200mm glass",
                "--room",
                "22C,45%"));
    words.addAll(List.of(more));
    Outcome plan = Outcome.of(folder, words.toArray(String[]::new));
    assertThat(plan.err()).isEmpty();
    // Recipes differ in how they are poured; the time each millimetre takes is the room's.
    String told = plan.out().replaceAll("\\s+", " ");
    return figure(told, "dry through, thick spot ([0-9.]+ (?:hours|days))")
        / figure(told, "on the scale: ([0-9.]+) mm wet");
  }

  @Test
  void compareForecastsAndAdvisesFromIt() throws IOException {
    VariedDemo.twoPlates(folder, "shed", SLOW);
    ObjectNode rated = VariedDemo.weighed("shed", SLOW);
    rated.put("rating", 5);
    VariedDemo.write(folder.resolve("taught-1.json"), rated);
    String textbook = page(".");
    assertThat(Outcome.of(folder, "learn", ".").exit()).isZero();

    String learnt = page(".");

    String forecast =
        "forecast at the pour: peelable after .{0,80}?, thick spot dry through after ([0-9.]+"
            + " (?:hours|days))";
    assertThat(figure(learnt, forecast)).isGreaterThan(1.15 * figure(textbook, forecast));
    String advice =
        "expected as it was with the change dry through ([0-9.]+" + " (?:hours|days)) \\(";
    assertThat(figure(learnt, advice)).isGreaterThan(1.2 * figure(textbook, advice));
  }

  private String page(String... files) {
    List<String> words = new ArrayList<>(List.of("compare", "--out", "-"));
    words.addAll(List.of(files));
    Outcome compare = Outcome.of(folder, words.toArray(String[]::new));
    assertThat(compare.exit()).as(compare.err()).isZero();
    return Jsoup.parse(compare.out()).body().text();
  }

  @Test
  void compareTakesEachTrialsOwnFolder() throws IOException {
    VariedDemo.learnt(folder, "a", "shed", SLOW);
    VariedDemo.learnt(folder, "b", "shed", FAST);

    String time = "([0-9.]+ (?:hours|days)) \\(";
    String row =
        page("a/next.json", "b/next.json")
            .replaceFirst(".*?dry through, thick spot (?=" + time + ")(.*?\\).*?\\)).*", "$2");
    List<Double> days = all(row, time);

    assertThat(days).hasSize(2);
    assertThat(Math.max(days.get(0), days.get(1)))
        .isGreaterThan(1.7 * Math.min(days.get(0), days.get(1)));
  }

  /** One plate of two measured: it is not over, and its weighings count wherever it is shown. */
  @Test
  void aWeighedPlateHasOneFigureAtEveryDoor() throws Exception {
    VariedDemo.learnt(folder, "slow", "shed", SLOW);
    ObjectNode measured = VariedDemo.weighed("shed", FAST);
    measured.withArray("dry_thickness_um").add(112);
    VariedDemo.write(folder.resolve("slow/next.json"), measured);

    String dry = Outcome.of(folder, "dry", "slow/next.json").out().replaceAll("\\s+", " ");

    String figures =
        dry.replaceFirst(".*?(Peelable .*?thick spot dry through after .*?\\)\\.) .*", "$1");
    assertThat(figures).contains("With 6 weighings of this plate; forecast at the pour: peelable");
    assertThat(page("slow/next.json")).contains(figures);
    assertThat(served("slow", TRIAL)).contains(figures.substring(0, figures.indexOf(" With 6")));
    assertThat(served("slow", "/plates/all")).contains("drying for");
  }

  @Test
  void filmIsForecastFromItsStrips() throws IOException {
    String asRuled = film(VariedDemo.unweighed("shed"), "textbook");
    VariedDemo.write(
        folder.resolve("strong/taught.json"),
        VariedDemo.pulled(VariedDemo.unweighed("shed"), 16, 17, 18, 17));
    assertThat(Outcome.of(folder, "learn", "strong").exit()).isZero();

    String learnt = film(VariedDemo.unweighed("shed"), "strong");

    String strength = "tensile strength, MPa ([0-9.]+)";
    assertThat(figure(learnt, strength)).isGreaterThan(1.4 * figure(asRuled, strength));
    String modulus = "stiffness \\(modulus\\), MPa ([0-9.]+)";
    assertThat(figure(learnt, modulus)).isEqualTo(figure(asRuled, modulus));
  }

  private String film(ObjectNode trial, String below) throws IOException {
    VariedDemo.write(folder.resolve(below + "/next.json"), trial);
    return page(below + "/next.json");
  }

  @Test
  void serveForecastsFromIt() throws Exception {
    VariedDemo.learnt(folder, "slow", "shed", SLOW);
    String told = "dry through.{0,200}?([0-9.]+ (?:hours|days)) \\(";
    double learnt = figure(served("slow", TRIAL), told);
    Files.writeString(folder.resolve("slow/workshop.json"), "{\"format\": 7}");

    assertThat(learnt).isGreaterThan(1.15 * figure(served("slow", TRIAL), told));
    assertThat(served("slow", "/learnt"))
        .contains(
            "workshop.json, line 1: another value of about given, allowed a file as learn writes"
                + " it; "
                + LearntOutdatedTest.MEND)
        .contains("Nothing yet");
  }

  private String served(String below, String page) throws Exception {
    Terminal terminal = new Terminal(folder);
    Thread serving =
        new Thread(() -> terminal.run("open", below, "--no-open", "--any-user"), "serving");
    serving.start();
    try {
      Matcher address = Pattern.compile("http://\\S+").matcher("");
      while (!address.reset(terminal.out()).find()) {
        assertThat(serving.isAlive()).as(terminal.err()).isTrue();
        Thread.sleep(20);
      }
      URI home = URI.create(address.group());
      HttpClient client =
          HttpClient.newBuilder()
              .cookieHandler(new CookieManager())
              .followRedirects(HttpClient.Redirect.NORMAL)
              .build();
      client.send(HttpRequest.newBuilder(home).build(), HttpResponse.BodyHandlers.ofString());
      HttpResponse<String> response;
      do {
        response =
            client.send(
                HttpRequest.newBuilder(home.resolve(page)).build(),
                HttpResponse.BodyHandlers.ofString());
        assertThat(response.statusCode()).as(response.body()).isEqualTo(200);
        Thread.sleep(100);
      } while (response.body().contains("The forecast is being made"));
      return Jsoup.parse(response.body()).body().text();
    } finally {
      serving.interrupt();
      serving.join();
    }
  }

  private static double figure(String text, String pattern) {
    List<Double> found = all(text, pattern);
    assertThat(found).as("%s in%n%s", pattern, text).isNotEmpty();
    return found.get(0);
  }

  /** Every figure that a pattern's group holds; days as hours. */
  private static List<Double> all(String text, String pattern) {
    return Stream.of(Pattern.compile(pattern).matcher(text))
        .flatMap(Matcher::results)
        .map(found -> found.group(1))
        .map(told -> Double.parseDouble(told.split(" ", 2)[0]) * (told.endsWith(" days") ? 24 : 1))
        .toList();
  }
}
