package starchfilm.web;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import starchfilm.web.Served.Content;

/** What holds for every page, whatever it is for. */
@ExtendWith(Chrome.class)
class EveryPageTest {
  private static final String WISHES =
      "glycerol=250&purity=82&salt=3&starch=potato&vinegar=5&plates=2&length=300&width=200"
          + "&material=glass&pot=2&scale=1&feel=flexible&air=20&rh=50";

  /** The pages; each is asked for as it stands here. */
  enum Page {
    NOTEBOOK("/trials"),
    TODAY("/today/all"),
    PLATES("/plates/all"),
    TRIAL_PLANNED("/trial/forecast?file=planned.json"),
    TRIAL_DRYING("/trial/forecast?file=" + DryingTrial.FILE),
    TRIAL_ENDED("/trial/forecast?file=4-blend.json"),
    TRIAL_BROKEN("/trial?file=broken.json"),
    ROOM("/trial/room?file=4-blend.json"),
    LABELS("/trial/labels?file=4-blend.json"),
    EDIT("/trial/edit?file=4-blend.json"),
    TEXT("/trial/text?file=4-blend.json"),
    JAR("/jar"),
    JAR_ANSWERED("/jar?amount=500&origin=unknown&reading=density&density=1.231+g/ml&at=20"),
    JAR_REFUSED("/jar?amount=lots&origin=recorded"),
    WISHES("/plan/wishes"),
    WISHES_ANSWERED("/plan/wishes?" + EveryPageTest.WISHES + "&by=5"),
    WISHES_UNMET("/plan/wishes?" + EveryPageTest.WISHES + "&by=0.2&thickness=200"),
    SHEETS("/plan/sheets?" + EveryPageTest.WISHES),
    PLAN("/plan"),
    HOW_THICK("/plan/thickness?by=3&base=4-blend.json&cooked=&room=20C,50%25"),
    COMPARE("/compare/choice"),
    COMPARED("/compare/page?trial=3-much-glycerol.json&trial=4-blend.json&trial=planned.json"),
    LEARNT("/learnt"),
    CARE("/care"),
    NOT_FOUND("/nowhere");

    final String path;

    Page(String path) {
      this.path = path;
    }
  }

  private static RunningSite site;

  @BeforeAll
  static void start(@Served({Content.GARDEN, Content.DRYING}) RunningSite served)
      throws IOException {
    site = served;
    Path folder = site.folder();
    Files.copy(Path.of("formulations/starter-soft-wrap.json"), folder.resolve("planned.json"));
    Files.writeString(folder.resolve("broken.json"), "{\"name\": \"x\", \"recipe\": 7}");
  }

  @ParameterizedTest
  @EnumSource(Page.class)
  void servesEverybody(Page page, Window window) {
    window.script(false);
    open(page, window);
    String withoutScript = window.text();
    window.script(true);
    open(page, window);
    PageChecks checks = window.checks();
    SoftAssertions all = new SoftAssertions();

    all.assertThat(withoutScript.replace("\nForecast it\n", "").replace("\nShow\n", ""))
        .as("the same words without script")
        .isEqualTo(window.text());
    window.picture(page.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    all.assertThat(checks.violations()).as("accessibility").isEmpty();
    window.inDark();
    all.assertThat(checks.illegible()).as("contrast in dark").isEmpty();
    all.assertThat(checks.notReachedByKey()).as("by key alone").isEmpty();
    window.onPhone();
    all.assertThat(checks.pixelsBeyond()).as("pixels beyond a phone").isZero();
    all.assertThat(checks.tooSmallForAThumb()).as("too small for a thumb").isEmpty();
    window.onDesk();
    all.assertThat(checks.pixelsBeyondAtDoubleText()).as("pixels beyond, text at 200 %").isZero();
    window.onPhone();
    all.assertThat(checks.pixelsBeyond()).as("pixels beyond a phone, text at 200 %").isZero();
    all.assertAll();
  }

  private static void open(Page page, Window window) {
    window.open(site, page.path);
    window.awaitGone("progress");
  }
}
