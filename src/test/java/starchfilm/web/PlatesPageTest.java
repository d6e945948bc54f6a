package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import starchfilm.web.Served.Content;

class PlatesPageTest {
  @Test
  void showsWhatIsDryingAndWhatIsNot(@Served({Content.GARDEN, Content.DRYING}) RunningSite site)
      throws IOException {
    HttpResponse<String> answer = site.get("/plates/all");

    assertThat(answer.body())
        .contains("On the shelf")
        .contains("drying for 26 hours")
        .contains("% of its water is left")
        .contains("peelable")
        .doesNotContain("Thick tray");
    assertThat(site.get("/").headers().firstValue("Location")).hasValue("/today");
  }

  @Test
  void takesAWeighingAndComesBack(@Served(Content.DRYING) RunningSite site) throws IOException {
    Path file = site.folder().resolve(DryingTrial.FILE);
    HttpResponse<String> answer =
        site.post("/plates/weigh", "file", DryingTrial.FILE, "kind", "weighed", "mass", "690.5");

    assertThat(answer.headers().firstValue("Location").orElse(""))
        .startsWith("/plates?file=drying.json&plate=1&said=");
    assertThat(Files.readString(file)).contains("690.5");
    assertThat(site.get("/plates/all").body()).contains("Last weighed");
  }

  @Test
  void saysAtThePlateWhatIsWrongWithAWeight(@Served(Content.DRYING) RunningSite site) {
    HttpResponse<String> answer =
        site.post("/plates/weigh", "file", DryingTrial.FILE, "kind", "weighed", "mass", "12 mm");

    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body())
        .contains("value=\"12 mm\"")
        .contains("id=\"why-mass-trial-drying-json\"")
        .contains("weight: &quot;12 mm&quot; given, allowed a number in g");
  }

  @Test
  void writesDatesInOneWay(@Served(Content.DRYING) RunningSite site) {
    for (String wish : new String[] {"de-DE,de;q=0.9", "en-US", "%%%"}) {
      assertThat(site.get("/trials", "Accept-Language", wish).body())
          .contains("Sun 19 Apr 2026, 10:00");
    }
  }
}
