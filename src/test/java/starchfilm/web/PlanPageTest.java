package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlanPageTest {
  private static final String LOGGED = "5-blend-in-the-shed.json";
  private static final String FIRST = "starter+first-film";

  private static final Pattern POTFUL =
      Pattern.compile("(?:One potful|Each of ([0-9]+) potfuls)[^<]*, ([0-9.]+) g in all");

  /** Least share of a potful that is gone as steam: what is assumed where nobody weighed it. */
  private static final double STEAM = 0.02;

  @Test
  void redrawsFilmAndDryingForASlider(@Served RunningSite site) {
    String thin = sketch(site, "1.5", "30").body();
    String thick = sketch(site, "6", "30").body();

    assertThat(thin).doesNotContain("<html").contains("Drying curve").contains("1.5</b> mm wet");
    assertThat(thick).contains("6.0</b> mm wet").isNotEqualTo(thin);
    assertThat(sketch(site, "1.5", "60").body()).contains("60</b> g glycerol");
  }

  @Test
  void saysWhatItsForecastRestsOn(@TempDir Path folder) throws IOException {
    String logged;
    String again;
    try (RunningSite site = RunningSite.overGarden(folder)) {
      logged = Jsoup.parse(site.get("/plan?base=" + LOGGED).body()).text();
      site.post("/trial/again", "file", LOGGED, "name", "Again", "but", "");
      again = Jsoup.parse(site.get("/trial/forecast?file=again.json").body()).text();
    }
    Matcher headline = Pattern.compile("Peelable after [^.;]*").matcher(again);

    assertThat(headline.find()).as(again).isTrue();
    assertThat(logged)
        .contains("The log shed-april.csv is of the days of that pour and does not count here")
        .contains("Learnt from your trials: your room \"shed\" dries ")
        .containsPattern("Not recorded \\(\\d+\\).* air: assumed: 15 to 25 \u00B0C")
        .contains(headline.group());
  }

  @Test
  void saysThatAPasteDoesNotLevel(@Served RunningSite site) {
    String stiff = site.get("/plan?base=" + FIRST + "&was=" + FIRST + "&wet=3&starch=12").body();

    assertThat(Jsoup.parse(stiff).select(".refusal").text())
        .startsWith("12 % starch does not level");
  }

  @Test
  void putsTheMovedRecipeInTheNotebook(@Served RunningSite site) throws IOException {
    HttpResponse<String> answer =
        site.post(
            "/plan/keep",
            "base",
            "starter first-film",
            "was",
            "starter first-film",
            "wet",
            "3.2",
            "plasticiser",
            "45",
            "name",
            "Thick and soft");

    assertThat(answer.statusCode()).isEqualTo(303);
    assertThat(Files.readString(site.folder().resolve("thick-and-soft.json")))
        .contains("\"wet_thickness_mm\" : 3.2")
        .doesNotContain("poured_g");
    assertThat(site.get("/plan?base=thick-and-soft.json").body())
        .as("the plasticiser of the new trial")
        .contains("45</b> g glycerol");
  }

  @ParameterizedTest
  @ValueSource(strings = {"first-film", "soft-wrap", "stiff-window"})
  void poursNoMoreThanThePotfulsHoldWhereverTheSlidersStand(
      String starter, @Served RunningSite site) {
    for (double wet : new double[] {0.5, 1.7, 2.5, 4, 6, 9.3, 12}) {
      for (int plates : new int[] {1, 2, 7}) {
        for (double pot : new double[] {0.3, 0.8, 2, 10}) {
          String page = sketch(site, starter, wet, plates, pot);
          double pour = number("Pour ([0-9.]+) g of paste", page);
          double inPot = 0;
          Matcher potful = POTFUL.matcher(page);
          while (potful.find()) {
            int times = potful.group(1) == null ? 1 : Integer.parseInt(potful.group(1));
            double grams = Double.parseDouble(potful.group(2));
            assertThat(grams / 1000)
                .as("litres in a pot of %s l, filled to three quarters", pot)
                .isLessThanOrEqualTo(0.75 * pot * 1.03);
            inPot += times * grams;
          }
          assertThat(plates * pour)
              .as("%s at %s mm on %s plates, pot of %s l: grams poured", starter, wet, plates, pot)
              .isBetween(0.5 * inPot, inPot * (1 - STEAM));
        }
      }
    }
  }

  @Test
  void keepsTheRecipeAsItIsWrittenWhereNothingWasMoved(@Served RunningSite site)
      throws IOException {
    String shown = site.get("/plan?base=" + FIRST).body();
    site.post(
        "/plan/keep",
        "base",
        "starter first-film",
        "was",
        "starter first-film",
        "wet",
        RunningSite.hidden(shown, "wet"),
        "plasticiser",
        RunningSite.hidden(shown, "plasticiser"),
        "plates",
        "2",
        "pot",
        "2",
        "name",
        "Unmoved");

    assertThat(shown).contains(">20 g<", ">360 g<", ">5 g<", "Pour 150 g of paste");
    assertThat(Files.readString(site.folder().resolve("unmoved.json")))
        .contains("\"mass_g\" : 20", "\"mass_g\" : 360", "\"mass_g\" : 5.0", "\"poured_g\" : 150");
  }

  @Test
  void keepsWhatIsSeen(@Served RunningSite site) {
    String seen = sketch(site, "first-film", 6, 2, 2);
    site.post(
        "/plan/keep",
        "base",
        "starter first-film",
        "was",
        "starter first-film",
        "wet",
        "6",
        "plasticiser",
        "29",
        "plates",
        "2",
        "pot",
        "2",
        "name",
        "Six millimetres");

    String kept = site.getMade("/trial?file=six-millimetres.json").body();
    assertThat(kept).contains("6.0 mm wet").doesNotContain("Too little paste");
    Matcher grams = Pattern.compile("<td>([0-9.]+ g)</td>").matcher(seen);
    assertThat(grams.find()).isTrue();
    do {
      assertThat(kept).contains("<td>" + grams.group(1) + "</td>");
    } while (grams.find());
    assertThat(kept).contains(found("Pour [0-9.]+ g of paste on each of the 2 plates", seen));
  }

  @ParameterizedTest
  @CsvSource({"0.1,30", "99,30", "NaN,30", "2,500", "2,-1", "'',30"})
  void refusesWhatNoSliderSends(String wet, String plasticiser, @Served RunningSite site) {
    HttpResponse<String> answer = sketch(site, wet, plasticiser);

    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("given, allowed").contains("class=\"refusal\"");
  }

  @Test
  void needsAName(@Served RunningSite site) {
    HttpResponse<String> answer =
        site.post("/plan/keep", "base", "starter first-film", "wet", "3", "plasticiser", "30");

    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("The new trial needs a name");
  }

  private static String sketch(
      RunningSite site, String starter, double wet, int plates, double pot) {
    String key = "starter+" + starter;
    String level = starter.equals("first-film") ? "29" : "30";
    return site.get(
            String.format(
                Locale.ROOT,
                "/plan/sketch?base=%s&was=%s&wet=%s&plasticiser=%s&plates=%d&pot=%s&by=",
                key,
                key,
                wet,
                level,
                plates,
                pot),
            "HX-Request",
            "true")
        .body();
  }

  private static double number(String pattern, String page) {
    Matcher matcher = Pattern.compile(pattern).matcher(page);
    assertThat(matcher.find()).as(pattern + " in " + page).isTrue();
    return Double.parseDouble(matcher.group(1));
  }

  private static String found(String pattern, String page) {
    Matcher matcher = Pattern.compile(pattern).matcher(page);
    assertThat(matcher.find()).as(pattern).isTrue();
    return matcher.group();
  }

  private static HttpResponse<String> sketch(RunningSite site, String wet, String plasticiser) {
    return site.get(
        "/plan/sketch?base="
            + FIRST
            + "&was="
            + FIRST
            + "&wet="
            + wet
            + "&plasticiser="
            + plasticiser,
        "HX-Request",
        "true");
  }
}
