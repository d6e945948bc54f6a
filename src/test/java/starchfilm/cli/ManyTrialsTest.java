package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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
    // A weighed plate takes four times as long to forecast, and the page shows it no differently.
    BigNotebook.write(folder, 101, 10);
    assertThat(Outcome.of(folder, "check", ".").out()).contains("101 trials sound");

    Outcome compare = Outcome.of(folder, "compare", ".", "--out", "-");

    assertThat(compare.exit()).isZero();
    Document page = Jsoup.parse(compare.out());
    assertThat(page.select("details.trial")).hasSize(50);
    assertThat(page.select(".ready-row")).hasSize(50);
    assertThat(page.select(".beside thead th:has(.name)")).hasSize(101);
    assertThat(page.select(".ready .hint").text())
        .isEqualTo(
            "Shown here one by one: the last 50 trials. The 51 before them are in the list, and"
                + " the last thousand of all in the table; compare fewer files to see more of"
                + " them.");
    assertThat(page.select("details.trial table.levers thead th:contains(starch)")).hasSize(50);
    assertListIsInOrder(page, "name", names(page.select(".roll li")).stream().sorted().toList());
    for (Element link : page.select("a[href^=#]")) {
      assertThat(page.getElementById(link.attr("href").substring(1))).as("%s", link).isNotNull();
    }
  }

  /** The style sheet lays the rows out by the places that each row carries. */
  private static void assertListIsInOrder(Document page, String order, List<String> names) {
    Element button = page.select(".every label:containsOwn(" + order + ")").first();
    int index = Integer.parseInt(button.attr("for").replace("in-order-", ""));
    assertThat(page.select("style").html())
        .contains("#in-order-" + index + ":checked ~ .roll li { order: var(--o" + index + "); }");
    List<Element> rows = new ArrayList<>(page.select(".roll li"));
    assertThat(rows).hasSize(101);
    rows.sort(Comparator.comparingInt(row -> place(row, index)));
    assertThat(names(rows)).isEqualTo(names);
  }

  private static int place(Element row, int order) {
    String places = row.attr("style");
    Matcher found = Pattern.compile("--o" + order + ":(\\d+);").matcher(places);
    assertThat(found.find()).as(places).isTrue();
    return Integer.parseInt(found.group(1));
  }

  private static List<String> names(List<Element> rows) {
    return rows.stream().map(row -> row.select("a").text()).toList();
  }
}
