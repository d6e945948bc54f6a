package starchfilm.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import starchfilm.drying.DryingVerdict;
import starchfilm.film.FilmProperty;
import starchfilm.film.Withheld;

class ComparisonReportTest {
  private final ComparisonReport report = new ComparisonReport(new PageRenderer());

  @Test
  void sameTrialsGiveTheSameBytesInAnyLocale() {
    Locale usual = Locale.getDefault();
    String html = report.html(page(sample(), sample()));
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(new ComparisonReport(new PageRenderer()).html(page(sample(), sample())))
          .isEqualTo(html);
    } finally {
      Locale.setDefault(usual);
    }
  }

  @Test
  void needsNothingFromTheNetwork() {
    Document page = Jsoup.parse(report.html(page(sample(), sample())));

    assertThat(page.select("script, link, iframe, object, embed, base")).isEmpty();
    assertThat(page.select("[src], [srcset], [style], [onclick], [onload]")).isEmpty();
    assertThat(page.select("[href]").eachAttr("href")).allMatch(href -> href.startsWith("#"));
    assertThat(page.select("style").html()).doesNotContain("url(", "@import", "http");
    assertThat(page.select("meta[http-equiv=Content-Security-Policy]").attr("content"))
        .startsWith("default-src 'none'");
  }

  @Test
  void everyLinkLeadsSomewhereAndNoIdIsUsedTwice() {
    Document page = Jsoup.parse(report.html(page(sample(), sample(), sample())));

    List<String> ids = page.select("[id]").eachAttr("id");
    assertThat(ids).doesNotHaveDuplicates();
    assertThat(page.select("a[href]").eachAttr("href"))
        .allMatch(href -> ids.contains(href.substring(1)));
    assertThat(page.select("[aria-labelledby]").eachAttr("aria-labelledby"))
        .allSatisfy(names -> assertThat(ids).contains(names.split(" ")));
  }

  @Test
  void parsesWithoutAnError() {
    Parser parser = Parser.htmlParser().setTrackErrors(50);
    parser.parseInput(report.html(page(sample(), sample())), "");

    assertThat(parser.getErrors()).isEmpty();
  }

  @Test
  void leavesNoTemplateWordInThePage() {
    assertThat(report.html(page(sample(), sample())))
        .doesNotContainPattern("\\sth:|xmlns:th|\\$\\{|<th:block|NaN|Infinity|Optional");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "\"><img src=x onerror=alert(1)>",
        "</title></style><b>bold</b>",
        "${7*7} [[${7*7}]] #{x} ~{style}",
        "' onmouseover='alert(1)",
        "&lt;already&gt; & raw"
      })
  void showsHostileTextAsText(String hostile) {
    SampleTrial trial = sample();
    trial.name = hostile;
    trial.remark = hostile;

    Document page =
        Jsoup.parse(
            report.html(
                new Comparison(
                    List.of(trial.analysis(), sample().analysis()),
                    List.of(hostile),
                    List.of(hostile))));

    assertThat(page.select("script, img, [onerror], [onmouseover]")).isEmpty();
    assertThat(page.select("#trial-1-name").text()).isEqualTo(hostile);
    assertThat(page.select("blockquote").get(0).text()).isEqualTo(hostile);
    assertThat(page.select(".troubles li").text()).isEqualTo(hostile);
  }

  @Test
  void setsOffWhatDiffersFromWhatIsTheSame() {
    SampleTrial thick = sample();
    thick.wetMm = 6;
    Document page = Jsoup.parse(report.html(page(sample(), thick)));

    assertThat(rowLabels(page, "done")).startsWith("wet thickness", "paste on a plate");
    assertThat(page.select(".done .changed .value").eachText()).first().isEqualTo("6 mm");
    assertThat(page.select("th.base .name").text()).isEqualTo("Potato, first pour");
    assertThat(page.select(".same dt").eachText()).contains("starch", "plate", "room");
    assertThat(page.select("#trial-2 .changes").text())
        .isEqualTo("Changed from trial 1: wet thickness 3 mm → 6 mm");
  }

  @Test
  void holdsTheOthersAgainstTheTrialThatWasChosen() {
    SampleTrial thick = sample();
    thick.wetMm = 6;
    Document page = Jsoup.parse(report.html(page(sample(), thick), 1));

    assertThat(page.select(".done .changed .value").eachText()).first().isEqualTo("3 mm");
    assertThat(page.select("th.base .numeral").text()).isEqualTo("2");
  }

  @Test
  void drawsEveryTrialOnOneAxisAndWhatCameOfIt() {
    SampleTrial thick = sample();
    thick.wetMm = 6;
    Document page = Jsoup.parse(report.html(page(sample(), thick, sample())));

    assertThat(page.select(".pictures polyline.line")).hasSize(3);
    assertThat(page.select(".pictures .lane text").eachText()).containsExactly("1", "2", "3");
    assertThat(page.select(".pictures figcaption > .key").get(0).children().eachText())
        .allMatch(named -> named.matches("[123] .+"));
    assertThat(page.select(".scatter").first().select(".number").eachText())
        .containsExactly("1", "2", "3");
  }

  @Test
  void tellsTheLinesOfTwelveTrialsApart() {
    SampleTrial[] twelve = Stream.generate(() -> sample()).limit(12).toArray(SampleTrial[]::new);
    Document page = Jsoup.parse(report.html(page(twelve)));

    List<String> looks =
        page.select(".pictures .key line.line").stream()
            .map(Element::className)
            .map(name -> name.replaceFirst("line ", ""))
            .toList();
    assertThat(looks).hasSize(12);
    String style = page.select("style").html();
    assertThat(
            looks.stream()
                .map(
                    look ->
                        style.replaceFirst(
                            "(?s).*?\\.line\\." + look + ",[^{]*(\\{[^}]*}).*", "$1")))
        .doesNotHaveDuplicates()
        .allMatch(rule -> rule.matches("\\{\\s*stroke:[^{}]*}"));
  }

  @Test
  void oneTrialHasNothingToDifferFrom() {
    Document page = Jsoup.parse(report.html(page(sample())));

    assertThat(page.title()).isEqualTo("One trial – starchfilm");
    assertThat(page.select("th.base, .pictures .curve")).isEmpty();
    assertThat(page.select(".changes")).isEmpty();
  }

  @Test
  void datesAreCountedFromThePour() {
    Document page = Jsoup.parse(report.html(page(sample())));

    assertThat(page.select(".headline").text())
        .isEqualTo(
            "Peelable Sat 18 Apr (Fri 17 Apr to Sun 19 Apr); dry through in the thick spot Mon 20 Apr"
                + " (Sat 18 Apr to Wed 22 Apr).");
  }

  @Test
  void anUndatedPourCountsDays() {
    SampleTrial undated = sample();
    undated.pouredAt = Optional.empty();
    undated.tried = false;
    Document page = Jsoup.parse(report.html(page(undated)));

    assertThat(page.select(".headline").text()).startsWith("Peelable after 4.4 days (3.3–5.9);");
    assertThat(page.select(".happened .none").text()).startsWith("Nothing noted yet.");
  }

  @ParameterizedTest
  @EnumSource(
      value = DryingVerdict.class,
      names = {"NEVER_PEELABLE", "TOO_DAMP"})
  void saysWhenTheRoomNeverDriesTheFilm(DryingVerdict verdict) {
    SampleTrial damp = sample();
    damp.verdict = verdict;
    Document page = Jsoup.parse(report.html(page(damp, sample())));

    assertThat(page.select("#trial-1 .headline").text())
        .contains("16 g water per 100 g dry solids")
        .containsAnyOf("Never peelable in this room", "too damp to dry");
    assertThat(page.select("#trial-1 .milestones td").eachText())
        .allMatch(t -> t.contains("never"));
  }

  @Test
  void holdsWeighingsAgainstTheCurve() {
    Document page = Jsoup.parse(report.html(page(sample())));

    assertThat(page.select("#trial-1 .weighings tbody tr")).hasSize(3);
    assertThat(page.select("#trial-1 .curve .weighed title").get(0).text())
        .isEqualTo("weighed 157.9 g after 0.5 days");
    assertThat(page.select("#trial-1 .weighings .missed").text()).contains("wetter than forecast");
  }

  @Test
  void holdsMeasuredFilmAgainstTheForecast() {
    Document page = Jsoup.parse(report.html(page(sample())));

    // 9.5 N on 15 mm by 110 um is 5.76 MPa.
    assertThat(page.select("#trial-1 .measurements tbody tr").eachText())
        .containsExactly(
            "thickness 110, 125 µm 120 µm (110–140) as forecast",
            "tensile strength 5.76 MPa 6.2 MPa (2.7–14) as forecast",
            "elongation at break 40 % 45 % (19–110) as forecast");
    assertThat(page.select("#trial-1 .happened .hint").text()).startsWith("From 1 strip;");
    assertThat(page.select(".beside .mark.measured")).hasSize(3);
  }

  @Test
  void breaksNoLineBetweenAFigureAndItsUnit() {
    assertThat(report.html(page(sample())))
        .contains("3.0\u00A0mm wet")
        .doesNotContain("3.0 mm wet")
        .contains("30\u00A0×\u00A020\u00A0cm")
        .doesNotContain("30 ×")
        .contains("font: 11px");
  }

  @Test
  void saysNothingOfAFigureThatIsNotStated() {
    SampleTrial damp = sample();
    damp.withheld = Map.of(FilmProperty.TENSILE_STRENGTH, Withheld.LIMP_IN_DAMP_AIR);
    Document page = Jsoup.parse(report.html(page(damp)));

    assertThat(page.select("#trial-1 .measurements tr:contains(strength)").text())
        .startsWith("tensile strength 5.76 MPa not stated: ")
        .doesNotContain("forecast", "range");
    assertThat(page.select("#trial-1 .levers th[scope=row]").eachText())
        .contains("elongation at break")
        .doesNotContain("tensile strength");
    assertThat(page.select("#trial-1 .next details").text())
        .contains("Not stated of this film, nor what changes it: tensile strength.");
  }

  @Test
  void foldsManyTrialsAndKeepsTheTableInPieces() {
    SampleTrial[] many = Stream.generate(() -> sample()).limit(20).toArray(SampleTrial[]::new);
    Document page = Jsoup.parse(report.html(page(many)));

    assertThat(page.select("details.trial")).hasSize(20);
    assertThat(page.select("details.trial[open]")).isEmpty();
    assertThat(page.select("table.beside tbody.expected")).hasSize(4);
    assertThat(page.select(".ready-row")).hasSize(20);
    assertThat(page.select(".pictures .lane")).isEmpty();
  }

  @Test
  void showsEveryCautionAndNamesTheOnesThatApply() {
    Document page = Jsoup.parse(report.html(page(sample())));

    assertThat(page.select("#trial-1 .safety b").eachText())
        .startsWith("Recovered glycerol")
        .contains("Wet film can mould");
    assertThat(page.select(".cautions > ul b").eachText())
        .containsAll(page.select("#trial-1 .safety b").eachText())
        .contains("Hot paste and hot glycerol");
    assertThat(page.select(".cautions details:not([open])").text())
        .startsWith("2 more for any film Vinegar")
        .contains("Claims that the film is compostable or food-safe");
    assertThat(page.select(".sources details:not([open]) > summary").text())
        .isEqualTo(page.select(".sources li").size() + " publications, fits and judgements");
  }

  @Test
  void everyFigureHasATitleAndWords() {
    Document page = Jsoup.parse(report.html(page(sample(), sample())));

    for (Element figure : page.select("svg[role=img]")) {
      assertThat(figure.children().first()).isNotNull();
      assertThat(figure.child(0).tagName()).isEqualTo("title");
      assertThat(figure.child(0).text()).isNotBlank();
      assertThat(figure.child(1).tagName()).isEqualTo("desc");
      assertThat(figure.child(1).text()).isNotBlank();
    }
    assertThat(page.select("svg:not([role=img]):not([aria-hidden=true]):not(.at)")).isEmpty();
  }

  @Test
  void aPhotoTravelsInsideThePage(@TempDir Path folder) throws IOException {
    SampleTrial photographed = sample();
    Path file = folder.resolve("a\"onerror='x'.png");
    ImageIO.write(new BufferedImage(4, 4, BufferedImage.TYPE_INT_RGB), "png", file.toFile());
    photographed.photos = List.of(file, folder.resolve("gone.jpg"));
    Document page = Jsoup.parse(report.html(page(photographed, sample())));

    assertThat(page.select("img")).hasSize(1);
    assertThat(page.select("img").attr("src")).startsWith("data:image/jpeg;base64,");
    assertThat(page.select("[onerror]")).isEmpty();
    assertThat(page.select(".prints figcaption").eachText())
        .containsExactly(
            "1 Potato, first pour a\"onerror='x'.png",
            "1 Potato, first pour gone.jpg is damaged, or its permissions do not"
                + " allow reading it.");
  }

  @Test
  void drawsOnlyPlainNumbers() {
    Document page = Jsoup.parse(report.html(page(sample(), sample())));
    Pattern numbers = Pattern.compile("(-?\\d+(\\.\\d+)?,-?\\d+(\\.\\d+)? ?)+");

    assertThat(page.select("[points]").eachAttr("points"))
        .allMatch(p -> numbers.matcher(p).matches());
    assertThat(page.select("line").eachAttr("x1")).allMatch(x -> x.matches("-?\\d+(\\.\\d+)?%?"));
  }

  private static List<String> rowLabels(Document page, String group) {
    return page.select("." + group + " th[scope=row]").eachText();
  }

  private static SampleTrial sample() {
    return new SampleTrial();
  }

  private static Comparison page(SampleTrial... samples) {
    return new Comparison(
        Stream.of(samples).map(SampleTrial::analysis).toList(), List.of(), List.of());
  }
}
