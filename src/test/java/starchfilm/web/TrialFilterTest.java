package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import starchfilm.web.Served.Content;

class TrialFilterTest {
  private RunningSite site;

  @BeforeEach
  void start(@Served({Content.GARDEN, Content.DRYING}) RunningSite served) {
    site = served;
  }

  @Test
  void whatIsDryingStandsFirstAndThenTheLatestPour() {
    List<String> names = names("/trials");

    assertThat(names).hasSize(7);
    assertThat(names.get(1)).startsWith("Thin, by the fan");
    assertThat(Jsoup.parse(site.get("/trials").body()).select(".stage").first().text())
        .startsWith("drying");
  }

  @Test
  void theAddressHoldsWhatIsShownAndInWhatOrder() {
    assertThat(names("/trials?q=GLYCEROL")).hasSize(2);
    assertThat(names("/trials?room=shed&order=name"))
        .hasSize(2)
        .first()
        .asString()
        .startsWith("The same in the shed");
    assertThat(names("/trials?rating=5+of+5")).hasSize(1);
    assertThat(names("/trials?order=rating").get(0)).startsWith("Potato and tapioca");
    assertThat(names("/trials?state=nowhere")).isEmpty();
    assertThat(site.get("/trials?state=nowhere").body()).contains("0 of 7 trials");
  }

  private List<String> names(String path) {
    return Jsoup.parse(site.get(path).body()).select(".trials .name").eachText();
  }
}
