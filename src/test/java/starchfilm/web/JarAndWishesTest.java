package starchfilm.web;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class JarAndWishesTest {
  private static final String WISHES =
      "glycerol=250&purity=82&salt=3&starch=potato&vinegar=5&plates=2&length=300&width=200"
          + "&material=glass&pot=2&scale=1&feel=flexible&air=20&rh=50&by=5";

  private RunningSite site;

  @BeforeEach
  void start(@Served RunningSite served) {
    site = served;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "amount=500&origin=bought&label=99.5",
        "amount=500&origin=unknown&reading=density&density=1.231+g/ml&at=20",
        "amount=500&origin=bought&label=90&reading=bottle&bottle_empty=52&bottle_water=258"
            + "&bottle_sample=303&at=20",
        "amount=500&origin=unknown&salt=2&reading=index&index=1.4429&at=20",
        "amount=500&origin=unknown&reading=sample&sample_mass=124&sample_volume=100&at=20",
        "amount=125&origin=recorded&oil=sunflower&oil_amount=1000&alcohol=methanol"
            + "&alcohol_amount=220&catalyst=NaOH&catalyst_mass=3.5&acid=hydrochloric+acid&acid_amount=30"
            + "&acid_strength=10"
      })
  void saysWhatIsInAJar(String query) {
    HttpResponse<String> answer = site.get("/jar?" + query);

    assertThat(answer.body())
        .contains("In the jar")
        .contains("pure glycerol")
        .contains("Take care");
    assertThat(answer.statusCode()).isEqualTo(200);
  }

  @Test
  void plansTraysOfSeveralSizesPiecesAndASeries() {
    assertThat(
            site.get("/plan/wishes?" + WISHES + "&trays=2x+24cm+round+steel;+30x20cm+glass").body())
        .contains("Plates of several sizes")
        .contains("What can be made");
    assertThat(site.get("/plan/wishes?" + WISHES + "&pieces=40+of+60x90+mm").body())
        .contains("40 pieces of 60 × 90 mm", "To buy: nothing", "Each pour");
    String series = WISHES.replace("&plates=2", "&plates=3").replace("&by=5", "");
    assertThat(site.get("/plan/wishes?" + series + "&vary=glycerol+20,30,40").body())
        .contains("3 groups of 1 plate each", "Order of the pots", "C: ");
    HttpResponse<String> few = site.get("/plan/wishes?" + WISHES + "&vary=glycerol+20,30,40");
    assertThat(few.statusCode()).isEqualTo(422);
    assertThat(few.body()).contains("2 plates given for 3 groups");
  }

  /** Who leaves the question alone reads the line for a jar of unknown origin. */
  @ParameterizedTest
  @ValueSource(strings = {"/jar", "/plan/wishes"})
  void takesGlycerolForBoughtOnlyWhereThatIsChosen(String page) {
    Document form = Jsoup.parse(site.get(page).body());

    Element preset = form.select("#origin option[selected]").first();
    assertThat((preset == null ? form.select("#origin option").first() : preset).val())
        .isEqualTo("unknown");
  }

  @Test
  void keepsTheJarAndPlansWithIt() {
    String jar = "amount=500&origin=bought&label=99.5";

    HttpResponse<String> kept = site.post("/jar/keep", (jar + "&name=spring").split("[=&]"));

    assertThat(kept.statusCode()).isEqualTo(303);
    assertThat(site.get(kept.headers().firstValue("Location").orElseThrow()).body())
        .contains("The jar is kept as spring.");
    assertThat(site.get("/jar").body()).contains("Jar spring: 500 g left");
    String wishes = WISHES.replace("glycerol=250&purity=82&salt=3", "kept=spring&glycerol=");
    assertThat(site.get("/plan/wishes?" + wishes).body())
        .contains("the low end of what is left, 500 g")
        .contains("What can be made");
    HttpResponse<String> refused = site.post("/jar/keep", (jar + "&name=a/b").split("[=&]"));
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(Jsoup.parse(refused.body()).select(".keep .faulty input[autofocus]").val())
        .isEqualTo("a/b");
    HttpResponse<String> again =
        site.post("/jar/keep", (jar + "&name=spring").replace("500", "400").split("[=&]"));
    assertThat(site.get(again.headers().firstValue("Location").orElseThrow()).body())
        .contains("kept as spring, and the jar before in spring.jar.json.before.");
    assertThat(site.get("/plan/wishes?" + wishes.replace("spring", "autumn")).statusCode())
        .isEqualTo(422);
  }

  /** Neither what was assumed nor what is not used is said by a field that the page lacks. */
  @Test
  void howThickNamesNoFieldThatIsNotOnItsPage() {
    Document answer =
        Jsoup.parse(
            site.get("/plan/thickness?by=3+days&cooked=20+g+potato,+3+mm;+30x20cm+glass").body());

    assertThat(answer.select("section[aria-labelledby=answer]").text())
        .contains("in 9 of 10 likely cases")
        .contains("\u201C3 mm\u201D is not used")
        .doesNotContain("\u201CThe room")
        .doesNotContain("\u201CRelative humidity");
  }

  /** The example that the form begins with is of no trial. */
  @Test
  void howThickTakesAChosenTrialAsItIs(@TempDir Path folder) throws IOException {
    try (RunningSite garden = RunningSite.overGarden(folder)) {
      String asked = "/plan/thickness?by=3+days&base=4-blend.json&cooked=";
      String example = Jsoup.parse(garden.get("/plan/thickness").body()).select("#cooked").text();

      String answer = answer(garden.get(asked + URLEncoder.encode(example, UTF_8)));
      assertThat(answer).isEqualTo(answer(garden.get(asked))).contains("in 9 of 10 likely cases");
      assertThat(answer(garden.get(asked + "500+g+water"))).isNotEqualTo(answer);
    }
  }

  private static String answer(HttpResponse<String> page) {
    return Jsoup.parse(page.body()).select("section[aria-labelledby=answer]").text();
  }

  @Test
  void howThickTakesNoOtherTrialForOneThatIsGone() {
    HttpResponse<String> answer = site.get("/plan/thickness?by=3+days&base=gone.json");

    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body())
        .contains("The trial gone.json is not among the sound ones of this folder any more")
        .doesNotContain("likely cases");
  }

  /** Plates and starches have no input of their own here: they stand in what was cooked. */
  @ParameterizedTest
  @CsvSource({
    "'20 g potato, 360 g water; 0x20cm glass', cooked",
    "'6 g glycerol, 360 g water; 30x20cm glass', cooked",
    "'20 g potato, 360 g water, 7 of something', cooked",
    "'20 g potato, 360 g water; 30x20cm glass', by"
  })
  void aRefusalOfHowThickStandsWhereItWasWritten(String cooked, String input) {
    String day = input.equals("by") ? "someday" : "3+days";
    HttpResponse<String> answer =
        site.get("/plan/thickness?by=" + day + "&cooked=" + cooked.replace(' ', '+'));

    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(Jsoup.parse(answer.body()).select("small.refusal").eachAttr("id"))
        .containsExactly(input + "-why");
  }

  /** What is folded is said in the line of the fold, and the jar's page fills it in. */
  @Test
  void theFoldOfThePlanSaysWhatItHolds() {
    Document first =
        Jsoup.parse(site.get("/plan/wishes?jar=350&share=71-86%25&origin=recovered").body());

    assertThat(first.select("#glycerol").val()).isEqualTo("350");
    assertThat(first.select("details:not([open]) > summary small").text())
        .startsWith("71-86% glycerol of recovered origin; plates: 2 of 300 × 200 mm, of glass;")
        .contains("pot 2 l", "balance 1 g", "20 °C, 50 % RH", "vinegar 5 %");
    assertThat(site.get("/plan/wishes?glycerol=250&purity=99.5&origin=bought").body())
        .contains("What can be made");
  }

  @Test
  void saysWhatIsWrongInTheWordsOfTheForm() {
    HttpResponse<String> answer = site.get("/jar?amount=lots&origin=bought&label=99");

    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("What the jar holds").doesNotContain("--mass");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/jar?amount=500&origin=bought",
        "/jar?amount=500&origin=bought&label=90&salt=3&reading=density",
        "/jar?amount=500&origin=unknown",
        "/jar?amount=lots&origin=recorded",
        "/jar?amount=500&origin=recorded&oil=sunflower&oil_amount=1000",
        "/jar?amount=500&origin=bought&label=90&reading=index&index=1.9",
        "/plan/wishes?" + WISHES + "&speed=-1",
        "/plan/wishes?glycerol=250&starch=potato&plates=2&length=300&width=200&material=glass"
            + "&air=20&rh=50",
        "/plan/wishes?glycerol=250&starch=potato&plates=2&length=300&width=200&feel=soft"
      })
  void neverSpeaksOfOptionsOfTheCommand(String path) {
    String said =
        Jsoup.parse(site.get(path).body()).select(".refusal, .recipes .hint, .answer").text();

    assertThat(said).isNotEmpty().doesNotContain("--").doesNotContain("starchfilm assay");
  }

  @Test
  void plansRecipesAndPutsOneInTheNotebook() throws IOException {
    HttpResponse<String> answer = site.get("/plan/wishes?" + WISHES);

    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(answer.body()).contains("What can be made").contains("Save recipe 1");

    String[] fields =
        Stream.of((WISHES + "&number=0&name=Seed window").split("[&=]")).toArray(String[]::new);
    HttpResponse<String> taken = site.post("/plan/take", fields);
    assertThat(taken.statusCode()).isEqualTo(303);
    assertThat(Files.readString(site.folder().resolve("seed-window.json")))
        .contains("\"Seed window\"");
    try (Stream<Path> files = Files.list(site.folder())) {
      assertThat(files.filter(file -> file.toString().endsWith(".json"))).hasSize(1);
    }
    assertThat(site.get("/plan/sheets?" + WISHES).body()).contains("Weigh out");
  }

  @Test
  void theJarGoesIntoThePlanWithItsRangeAndItsOrigin() {
    String jar = "/jar?amount=500&origin=recovered&reading=density&density=1.21+g/ml&at=20";
    String onward = Jsoup.parse(site.get(jar).body()).select(".answer a.button").attr("href");
    Document form = Jsoup.parse(site.get(onward).body());

    String range = form.select("#purity").val();
    assertThat(range).matches("[0-9.]+-[0-9.]+%");
    assertThat(form.select("#origin option[selected]").val()).isEqualTo("recovered");
    String wishes =
        WISHES.replace("purity=82&salt=3", "origin=recovered&purity=" + range.replace("%", "%25"));
    HttpResponse<String> answer = site.get("/plan/wishes?" + wishes);
    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(answer.body()).contains("What can be made", "Recovered glycerol");
  }

  @Test
  void theInstrumentIsTheOneThatWasTypedInto() {
    Document answer =
        Jsoup.parse(
            site.get("/jar?amount=350&origin=recovered&density=&index=1.4429&at=20").body());

    assertThat(answer.select(".answer .headline").text())
        .matches("About [0-9]+ % is glycerol \\([0-9]+–[0-9]+\\): [0-9]+ g of it in the jar .*");
    assertThat(answer.select(".asked > summary").text())
        .contains("350 g, about")
        .contains("read with a refractometer")
        .doesNotContain("hydrometer");
    assertThat(site.get("/jar?amount=350&origin=unknown&density=1.19&index=1.44&at=20").body())
        .contains("More than one reading given");
  }

  @Test
  void aMilkyJarIsNotReadOnThePageEither() {
    HttpResponse<String> answer =
        site.get("/jar?amount=500&origin=unknown&reading=density&density=1.2&at=20&looks=milky");

    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("It looks: milky given beside a reading");
  }

  @ParameterizedTest
  @ValueSource(strings = {"air=../../secret.csv", "air=@secret", "rh=-5", "plates=", "pot=--save"})
  void takesPlainAmountsOnly(String changed) {
    String field = changed.substring(0, changed.indexOf('=') + 1);
    String query = WISHES.replaceAll("(^|&)" + field + "[^&]*", "$1" + changed);

    HttpResponse<String> answer = site.get("/plan/wishes?" + query);

    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("given");
  }
}
