package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlanPageTest {
  private static final String FIRST = "starter+first-film";

  @Test
  void redrawsFilmAndDryingForASlider(@Served RunningSite site) {
    String thin = sketch(site, "1.5", "30").body();
    String thick = sketch(site, "6", "30").body();

    assertThat(thin).doesNotContain("<html").contains("Drying curve").contains("1.5</b> mm wet");
    assertThat(thick).contains("6.0</b> mm wet").isNotEqualTo(thin);
    assertThat(sketch(site, "1.5", "60").body()).contains("60</b> g glycerol");
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
