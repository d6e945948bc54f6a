package starchfilm.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import starchfilm.advice.Adviser;
import starchfilm.advice.Contrast;
import starchfilm.advice.NextTrial;
import starchfilm.advice.TrialAdvice;
import starchfilm.casting.trial.Trial;
import starchfilm.change.TrialAnalysis;
import starchfilm.files.notebook.Notebook;
import starchfilm.files.notebook.NotebookReader;
import starchfilm.forecast.SameForAll;
import starchfilm.forecast.TrialForecast;
import starchfilm.forecast.TrialForecaster;

/** What the notebook advises stands on the comparison page as the adviser says it. */
class AdviceOnPageTest {
  private static final Adviser ADVISER = new Adviser(SameForAll.TEXTBOOK);
  private static final List<TrialForecast> GARDEN = garden();
  private static final List<Trial> NOTEBOOK = GARDEN.stream().map(TrialForecast::trial).toList();
  private static String html = "";
  private static Document page = new Document("");

  private static List<TrialForecast> garden() {
    Notebook notebook = NotebookReader.read(List.of(Path.of("formulations/garden")));
    TrialForecaster forecaster = new TrialForecaster(SameForAll.TEXTBOOK);
    return notebook.trials().stream().map(forecaster::forecast).toList();
  }

  @BeforeAll
  static void render() {
    html = html(GARDEN);
    page = Jsoup.parse(html);
  }

  private static List<TrialAnalysis> alone(List<TrialForecast> trials) {
    return trials.stream().map(TrialAnalysis::alone).toList();
  }

  private static String html(List<TrialForecast> trials) {
    return new ComparisonReport(new PageRenderer())
        .html(new Comparison(alone(trials), List.of(), List.of()).with(ADVISER, List.of()));
  }

  @Test
  void theTopOfThePageSaysWhereToGoOnFrom() {
    assertThat(page.select(".compared > section").get(0).className()).isEqualTo("advice");
    assertThat(page.select(".advice .from a").attr("href")).isEqualTo("#trial-4");
    assertThat(page.select(".advice .taught li")).isEmpty();
    assertThat(page.select(".advice .try ol li")).hasSize(1);
  }

  @Test
  void everyTrialSaysWhatToTryNextAndWhatIsExpectedOfIt() {
    for (int i = 0; i < GARDEN.size(); i++) {
      TrialAdvice advice = ADVISER.after(GARDEN.get(i), NOTEBOOK);
      Element part = after(i + 1);
      assertThat(part.text()).contains(advice.verdict());
      assertThat(part.select(".fault")).hasSameSizeAs(advice.diagnoses());
      if (advice.next().isPresent()) {
        NextTrial next = advice.next().get();
        assertThat(part.select(".try ol li")).hasSameSizeAs(next.changes());
        assertThat(part.select(".try .effects tbody tr").eachText())
            .containsExactlyElementsOf(
                next.effects().stream()
                    .map(each -> each.what() + " " + each.before() + " " + each.after())
                    .toList());
      } else {
        assertThat(part.select(".try")).isEmpty();
      }
    }
  }

  @Test
  void everyTrialButTheFirstIsHeldAgainstTheOneBefore() {
    assertThat(after(1).select(".contrast")).hasSize(1);
    for (int i = 1; i < GARDEN.size(); i++) {
      Contrast contrast = ADVISER.contrast(GARDEN.get(i - 1), GARDEN.get(i));
      Element first = after(i + 1).select(".contrast").get(0);
      assertThat(first.parent().select("h3").text()).endsWith("What changed from trial " + i);
      assertThat(first.text()).contains(contrast.verdict());
      assertThat(first.select("tbody tr")).hasSameSizeAs(contrast.differences());
      assertThat(first.select(".came li")).hasSameSizeAs(contrast.outcomes());
    }
  }

  @Test
  void theRulesThatWereUsedAreAmongTheSources() {
    String sources = page.select(".sources").text();
    GARDEN.stream()
        .flatMap(each -> ADVISER.after(each, NOTEBOOK).diagnoses().stream())
        .flatMap(diagnosis -> diagnosis.suspicions().stream())
        .forEach(suspicion -> assertThat(sources).contains(suspicion.rule().source().citation()));
  }

  @Test
  void thePageStaysSoundAndItsCautionsInPlace() {
    Parser parser = Parser.htmlParser().setTrackErrors(50);
    parser.parseInput(html, "");
    assertThat(parser.getErrors()).isEmpty();
    assertThat(html)
        .doesNotContainPattern("\\sth:|xmlns:th|\\$\\{|<th:block|NaN|Infinity|Optional");
    List<String> ids = page.select("[id]").eachAttr("id");
    assertThat(ids).doesNotHaveDuplicates();
    assertThat(page.select("a[href]").eachAttr("href"))
        .allMatch(href -> ids.contains(href.substring(1)));
    assertThat(page.select("[style], script")).isEmpty();
    assertThat(page.select("#trial-1 .doubts .safety").text()).contains("Wet film can mould");
    assertThat(page.select(".closing .safety").text())
        .contains("peel mouldy film off, bag it")
        .contains("compostable or food-safe");
  }

  @Test
  void theSameNotebookGivesTheSamePage() {
    assertThat(html(GARDEN)).isEqualTo(html);
  }

  @Test
  void withoutAdviceThePageHasNoPlaceForIt() {
    Document bare =
        Jsoup.parse(
            new ComparisonReport(new PageRenderer())
                .html(new Comparison(alone(GARDEN), List.of(), List.of())));
    assertThat(bare.select(".advice, .advice-after")).isEmpty();
  }

  private static Element after(int number) {
    return page.select("#trial-" + number + " .advice-after").get(0);
  }
}
