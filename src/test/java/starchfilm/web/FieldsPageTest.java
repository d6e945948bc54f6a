package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import starchfilm.web.Served.Content;

class FieldsPageTest {
  private Path file;
  private RunningSite site;

  @BeforeEach
  void start(@Served(Content.DRYING) RunningSite served) {
    site = served;
    file = site.folder().resolve(DryingTrial.FILE);
  }

  @Test
  void changesOnlyWhatWasTyped() throws IOException {
    String before = Files.readString(file);

    HttpResponse<String> answer =
        save("recipe.glycerol.mass_g", "5,40", "cook.minutes", "10 to 15", "pour.plate.tare_g", "");

    assertThat(answer.statusCode()).isEqualTo(303);
    assertThat(Files.readString(file))
        .isEqualTo(
            before
                .replace("\"mass_g\": 4.2", "\"mass_g\": 5.40")
                .replace("\"minutes\": 10", "\"minutes\": {\"from\": 10, \"to\": 15}")
                .replace("\"tare_g\": 598", "\"tare_g\": \"unknown\""));
  }

  @Test
  void savesTheUntouchedFormWithoutChangingALetter() throws IOException {
    String before = Files.readString(file);

    assertThat(save().statusCode()).isEqualTo(303);
    assertThat(Files.readString(file)).isEqualTo(before);
  }

  @Test
  void addsASecondStarchAndARoomsAir() throws IOException {
    HttpResponse<String> answer =
        save(
            "recipe.starch.1.kind",
            "tapioca",
            "recipe.starch.1.mass_g",
            "6",
            "room.air_speed_m_per_s",
            "0.3",
            "room.air_C",
            "2 to 8");

    assertThat(answer.body()).doesNotContain("class=\"why\"").doesNotContain("class=\"refusal\"");

    assertThat(Files.readString(file))
        .contains("{\"kind\": \"potato\", \"mass_g\": 12.0, \"moisture_pct\": 17}")
        .contains("{\"kind\": \"tapioca\", \"mass_g\": 6}")
        .contains("\"air_speed_m_per_s\": 0.3")
        .contains("\"air_C\": {\"from\": 2, \"to\": 8}");
  }

  @Test
  void saysAtTheFieldWhatIsWrongAndKeepsWhatWasTyped() throws IOException {
    String before = Files.readString(file);

    HttpResponse<String> mistyped = save("recipe.water.mass_g", "a jug");
    HttpResponse<String> impossible = save("recipe.starch.0.mass_g", "-5");

    assertThat(mistyped.statusCode()).isEqualTo(422);
    assertThat(mistyped.body())
        .contains("id=\"recipe.water.mass_g-why\"", "autofocus=\"autofocus\"")
        .contains("value=\"a jug\"")
        .contains("allowed a number in g");
    assertThat(impossible.statusCode()).isEqualTo(422);
    assertThat(impossible.body())
        .contains("value=\"-5\"")
        .contains("id=\"recipe.starch.0.mass_g-why\"")
        .doesNotContain("id=\"recipe.starch.1.mass_g-why\"");
    assertThat(save("room.air_C", "-2 to 4").body()).contains("id=\"room.air_C-why\"");
    assertThat(Files.readString(file)).isEqualTo(before);
  }

  @Test
  void ofTwoWhoEditAtOnceTheSecondSeesBoth() throws IOException {
    String version = version();
    assertThat(save(version, "room.name", "attic").statusCode()).isEqualTo(303);

    HttpResponse<String> second = save(version, "room.name", "cellar");

    assertThat(second.statusCode()).isEqualTo(409);
    assertThat(second.body())
        .contains("Somebody else changed this trial meanwhile")
        .contains("value=\"cellar\"")
        .contains("In the file now: attic");
    assertThat(Files.readString(file)).contains("attic");
    assertThat(
            save(RunningSite.hidden(second.body(), "version"), "room.name", "cellar").statusCode())
        .isEqualTo(303);
    assertThat(Files.readString(file)).contains("cellar");
  }

  private HttpResponse<String> save(String... pathsAndTexts) {
    return save(version(), pathsAndTexts);
  }

  private HttpResponse<String> save(String version, String[] pathsAndTexts) {
    List<String> fields = new ArrayList<>(List.of("file", DryingTrial.FILE, "version", version));
    for (int i = 0; i < pathsAndTexts.length; i += 2) {
      fields.add("f." + pathsAndTexts[i]);
      fields.add(pathsAndTexts[i + 1]);
    }
    return site.post("/trial/edit", fields.toArray(String[]::new));
  }

  private HttpResponse<String> save(String version, String path, String text) {
    return save(version, new String[] {path, text});
  }

  private String version() {
    return RunningSite.hidden(site.get("/trial/edit?file=" + DryingTrial.FILE).body(), "version");
  }
}
