package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import starchfilm.proof.BigNotebook;

/** A notebook of more trials than a page can show in full. */
class ManyTrialsTest {
  @TempDir private Path folder;

  @Test
  void theLastTrialsAreShownApartAndEveryLinkLeadsSomewhere() throws IOException {
    BigNotebook.write(folder, 101);
    assertThat(Outcome.of(folder, "check", ".").out()).startsWith("101 trials sound");

    Outcome compare = Outcome.of(folder, "compare", ".", "--out", "-");

    assertThat(compare.exit()).isZero();
    Document page = Jsoup.parse(compare.out());
    assertThat(page.select("details.trial")).hasSize(50);
    assertThat(page.select(".ready-row")).hasSize(50);
    assertThat(page.select(".beside thead th")).hasSize(101);
    assertThat(page.select(".ready .hint").text())
        .isEqualTo(
            "Here and one by one: the last 50 trials. The 51 before them stand in the table; compare"
                + " fewer files to see more of them.");
    assertThat(page.select(".remarks li").text())
        .contains("each forecast rests on 20 likely cases");
    for (Element link : page.select("a[href^=#]")) {
      assertThat(page.getElementById(link.attr("href").substring(1))).as("%s", link).isNotNull();
    }
  }
}
