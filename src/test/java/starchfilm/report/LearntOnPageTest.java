package starchfilm.report;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import starchfilm.casting.trial.Trial;
import starchfilm.change.TrialAnalysis;
import starchfilm.files.json.UnreadableFileException;
import starchfilm.files.notebook.NotebookReader;
import starchfilm.forecast.SameForAll;
import starchfilm.forecast.TrialForecast;
import starchfilm.forecast.TrialForecaster;
import starchfilm.learning.Hindsight;
import starchfilm.learning.Workshop;
import starchfilm.learning.summary.DoubtedReading;
import starchfilm.learning.summary.RoomLearnt;
import starchfilm.proof.GuidePart;

/** What the invented garden taught, and how the comparison page tells it. */
class LearntOnPageTest {
  private static final Path GARDEN = Path.of("formulations/garden");
  private static final List<Trial> TRIALS = NotebookReader.read(List.of(GARDEN)).trials();
  private static final Workshop TAUGHT = Workshop.taughtBy(GARDEN, TRIALS);
  private static final List<TrialForecast> FORECASTS =
      TRIALS.stream().map(new TrialForecaster(SameForAll.TEXTBOOK)::forecast).toList();

  private static Document page(List<TrialForecast> trials, Workshop... workshops) {
    return Jsoup.parse(
        new ComparisonReport(new PageRenderer())
            .html(
                new Comparison(
                        trials.stream().map(TrialAnalysis::alone).toList(), List.of(), List.of())
                    .taughtBy(List.of(workshops))));
  }

  @Test
  void theWorkshopFileOfTheGardenIsWhatItsTrialsTeach() throws UnreadableFileException {
    Workshop kept = Workshop.read(GARDEN);

    assertThat(kept.outdated(TRIALS)).isEmpty();
    assertThat(kept.learnt().rooms())
        .extracting(RoomLearnt::sentence)
        .isEqualTo(TAUGHT.learnt().rooms().stream().map(RoomLearnt::sentence).toList());
    assertThat(kept.learnt().doubted())
        .extracting(DoubtedReading::sentence)
        .isEqualTo(TAUGHT.learnt().doubted().stream().map(DoubtedReading::sentence).toList());
    for (Trial trial : TRIALS) {
      double[][] was = kept.atThePour(trial).factors().covariance();
      double[][] is = TAUGHT.atThePour(trial).factors().covariance();
      for (int i = 0; i < is.length; i++) {
        assertThat(was[i])
            .as("%s, factor %d", trial.name(), i)
            .containsExactly(is[i], within(1e-7));
      }
    }
  }

  @Test
  void eachRoomHasItsPaceAndEachTrialItsRow() {
    Document page = page(FORECASTS, TAUGHT);

    assertThat(page.select(".learnt .rooms li b").eachText())
        .allMatch(
            sentence -> sentence.matches("Your room \"(workroom|shed)\" dries .* \\(±\\d+ %\\)\\."))
        .hasSize(2);
    List<Element> rows = page.select(".looks tbody tr");
    assertThat(rows).hasSize(TRIALS.size());
    assertThat(rows.get(0).select("td").eachText()).startsWith("0").contains("–");
    assertThat(page.select(".looks a").eachAttr("href"))
        .allMatch(link -> page.getElementById(link.substring(1)) != null);
    assertThat(page.select(".doubted li").text()).contains("counted at");
    assertThat(page.select(".factors li").text())
        .contains("evaporation", "tensile strength of potato film");
  }

  /** The guide shows the garden's table as the page does, but for the verdicts. */
  @Test
  void theGuideShowsTheSameTable() throws IOException {
    Element table = page(FORECASTS, TAUGHT).selectFirst(".looks");
    List<String> lines = new ArrayList<>();
    lines.add(
        "| trial | plates weighed before | weighings off by (median), textbook | learnt"
            + " | thick spot dry after, textbook | learnt |");
    lines.add("|---|---|---|---|---|---|");
    for (Element row : table.select("tbody tr")) {
      List<String> cells = row.select("th, td").stream().map(Element::text).toList();
      lines.add(Stream.of(0, 1, 2, 3, 5, 6).map(cells::get).collect(joining(" | ", "| ", " |")));
    }
    GuidePart.says("src/docs/guide.md", "before and after learning", String.join("\n", lines));
  }

  @Test
  void whatWasNotLearntYetIsOffered() {
    Document page = page(FORECASTS, Workshop.untaught(GARDEN));

    assertThat(page.select(".learnt").text()).contains("Nothing yet").contains("learn");
    assertThat(page.select(".learnt table")).isEmpty();
  }

  @Test
  void withoutWeighingsAndStripsNothingIsSaid() {
    List<Trial> bare =
        NotebookReader.read(List.of(Path.of("formulations/starter-first-film.json"))).trials();
    List<TrialForecast> forecasts =
        bare.stream().map(new TrialForecaster(SameForAll.TEXTBOOK)::forecast).toList();

    assertThat(page(forecasts).select(".learnt")).isEmpty();
  }

  @Test
  void twoFoldersThatTaughtHaveASectionEach() {
    Document page = page(FORECASTS, TAUGHT, Workshop.taughtBy(Path.of("elsewhere"), TRIALS));

    assertThat(page.select(".learnt h2").eachText())
        .containsExactly(
            "What the weighings in garden have taught",
            "What the weighings in elsewhere have taught");
    assertThat(page.select("[id]").eachAttr("id")).doesNotHaveDuplicates();
  }

  @Test
  void hindsightKnowsOnlyPlatesPouredBefore() {
    List<Hindsight> looks = TAUGHT.hindsight(TRIALS, TRIALS);

    assertThat(looks).extracting(Hindsight::platesBefore).containsExactly(0, 1, 2, 3, 4, 5);
    assertThat(looks.get(0).learnt()).isEqualTo(looks.get(0).textbook());
    List<Trial> firstTwo = TRIALS.subList(0, 2);
    Hindsight second = Workshop.taughtBy(GARDEN, firstTwo).hindsight(firstTwo, firstTwo).get(1);
    assertThat(second.learnt().missKg())
        .isCloseTo(looks.get(1).learnt().missKg(), within(0.2 * second.textbook().missKg()));
  }

  /** A page of few trials looks back as the page of all does. */
  @Test
  void hindsightKnowsPlatesThatAreNotShownToo() {
    assertThat(TAUGHT.hindsight(TRIALS, TRIALS.subList(3, 4)))
        .isEqualTo(TAUGHT.hindsight(TRIALS, TRIALS).subList(3, 4));
  }

  @Test
  void everyWeighedPlateOfAPourCounts(@TempDir Path folder) throws IOException {
    for (Trial trial : TRIALS.subList(1, 4)) {
      Files.copy(trial.file(), folder.resolve(trial.fileName()));
    }
    Path second = folder.resolve(TRIALS.get(2).fileName());
    String text = Files.readString(second);
    Files.writeString(second, text.replaceFirst("(\\{\"at\": [^}]*)\\}", "$1, \"plate\": 2}"));
    List<Trial> trials = NotebookReader.read(List.of(folder)).trials();

    assertThat(trials.get(1).weighedPlates()).hasSize(2);
    assertThat(Workshop.taughtBy(folder, trials).hindsight(trials, trials))
        .extracting(Hindsight::platesBefore)
        .containsExactly(0, 1, 3);
  }

  @Test
  void hindsightGoesByThePourAndNotByTheFile() {
    List<Trial> backwards = new ArrayList<>(TRIALS);
    Collections.reverse(backwards);

    assertThat(TAUGHT.hindsight(backwards, backwards))
        .extracting(look -> look.trial().name())
        .isEqualTo(TRIALS.stream().map(Trial::name).toList());
  }
}
