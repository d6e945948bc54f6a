package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;

class ExampleInFolderTest {
  private static final Path GARDEN = Path.of("formulations/garden");

  @Test
  void anEmptyFolderShowsTheFullExampleSaidToBeInvented(@Served RunningSite site)
      throws IOException {
    assertThat(site.get("/trials").body()).contains("Show a full example");

    assertThat(said(site, "/trials/example")).contains("They are invented");

    String page = site.get("/trials").body();
    assertThat(Jsoup.parse(page).select(".trials .name").eachText())
        .hasSize(6)
        .allMatch(name -> name.contains("invented"));
    try (Stream<Path> garden = Files.list(GARDEN)) {
      for (Path file : garden.filter(file -> !Files.isDirectory(file)).toList()) {
        assertThat(site.folder().resolve("example").resolve(file.getFileName()))
            .hasSameBinaryContentAs(file);
      }
    }
    assertThat(site.post("/trials/example").body()).contains("is there already");
  }

  @Test
  void whatWasChangedInTheExampleStaysWhenItIsTakenAway(@Served RunningSite site)
      throws IOException {
    site.post("/trials/example");
    Path changed = site.folder().resolve("example/4-blend.json");
    Files.writeString(changed, Files.readString(changed).replace("Potato and tapioca", "Mine"));

    assertThat(said(site, "/trials/example/away")).contains("what was changed or added stays");

    assertThat(Files.list(site.folder().resolve("example"))).containsExactly(changed);
    Files.delete(changed);
    assertThat(site.get("/trials").body())
        .contains("Show a full example")
        .doesNotContain("Take the example away");
  }

  private static String said(RunningSite site, String form) {
    return site.get(site.post(form).headers().firstValue("Location").orElseThrow()).body();
  }
}
