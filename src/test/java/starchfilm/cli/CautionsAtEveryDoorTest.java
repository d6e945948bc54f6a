package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import starchfilm.report.caution.Caution;

/**
 * Whoever has recovered glycerol is warned of it by every command and paper, whatever else they
 * know of the jar; whoever bought theirs is not.
 */
class CautionsAtEveryDoorTest {
  private static final List<Caution> FULL =
      List.of(Caution.RECOVERED_GLYCEROL, Caution.HEATING_RECOVERED, Caution.UTENSILS);

  @TempDir private Path folder;

  private enum Stated {
    BOUGHT("--origin", "bought"),
    RECOVERED("--origin", "recovered"),
    UNKNOWN("--origin", "unknown"),
    NOTHING();

    private final String[] words;

    Stated(String... words) {
      this.words = words;
    }

    /** The origin as a trial file has it. */
    String field() {
      return words.length == 0 ? "" : ", \"origin\": \"" + words[1] + "\"";
    }
  }

  @ParameterizedTest
  @EnumSource(Stated.class)
  void assay(Stated stated) {
    warns(stated, out(stated, "assay", "--mass", "500 g", "--density", "1.2", "--at", "20 C"));
  }

  @ParameterizedTest
  @EnumSource(Stated.class)
  void planItsSheetsAndItsFiles(Stated stated) throws IOException {
    String printed =
        out(
            stated,
            "plan",
            "--glycerol",
            "250g",
            "--purity",
            "82%",
            "--starch",
            "potato",
            "--plates",
            "2x300x200mm glass",
            "--room",
            "19C,55%",
            "--sheet",
            "sheets.html",
            "--save",
            "trials");
    warns(stated, printed);
    String sheets = Files.readString(folder.resolve("sheets.html"));
    assertThat(Jsoup.parse(sheets).select("article")).isNotEmpty();
    Jsoup.parse(sheets).select("article").forEach(sheet -> warns(stated, sheet.text()));
    try (var saved = Files.list(folder.resolve("trials"))) {
      for (Path file : saved.filter(one -> one.toString().endsWith(".json")).toList()) {
        Terminal terminal = new Terminal(folder);
        assertThat(terminal.run("dry", file.toString())).as(terminal.err()).isZero();
        warns(stated, terminal.out());
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Stated.class)
  void dryAndThicknessOfATypedRecipe(Stated stated) {
    String[] recipe = {
      "--starch", "potato", "20 g", "--glycerol", "6 g", "--purity", "85 %", "--water", "360 g"
    };
    warns(stated, out(stated, join(new String[] {"dry", "--wet", "3 mm"}, recipe)));
    warns(stated, out(stated, join(new String[] {"thickness", "--by", "5d"}, recipe)));
  }

  @ParameterizedTest
  @EnumSource(Stated.class)
  void dryThicknessAndComparePageOfAFile(Stated stated) throws IOException {
    Files.writeString(
        folder.resolve("trial.json"),
        "{\"name\": \"a\", \"recipe\": {\"starch\": {\"kind\": \"potato\", \"mass_g\": 20},"
            + " \"glycerol\": {\"mass_g\": 6, \"purity_pct\": 85"
            + stated.field()
            + "}, \"water\": {\"mass_g\": 360}}, \"pour\": {\"wet_thickness_mm\": 3}}");

    warns(stated, out(Stated.NOTHING, "dry", "trial.json"));
    warns(stated, out(Stated.NOTHING, "thickness", "trial.json", "--by", "5d"));
    out(Stated.NOTHING, "compare", "trial.json", "--out", "page.html");
    String page = Files.readString(folder.resolve("page.html"));
    warns(stated, Jsoup.parse(page).select(".closing").text());
    String named = Jsoup.parse(page).select("#trial-1 .safety").text();
    for (Caution caution : FULL) {
      assertThat(named.contains(caution.subject())).isEqualTo(stated == Stated.RECOVERED);
    }
    assertThat(named.contains(Caution.GLYCEROL_OF_UNKNOWN_ORIGIN.subject()))
        .isEqualTo(stated == Stated.UNKNOWN || stated == Stated.NOTHING);
  }

  private static void warns(Stated stated, String said) {
    String line = said.replaceAll("\\s+", " ");
    for (Caution caution : FULL) {
      assertThat(line.contains(caution.sentence())).isEqualTo(stated == Stated.RECOVERED);
    }
    assertThat(line.contains(Caution.GLYCEROL_OF_UNKNOWN_ORIGIN.sentence()))
        .isEqualTo(stated == Stated.UNKNOWN || stated == Stated.NOTHING);
  }

  private String out(Stated stated, String... words) {
    Terminal terminal = new Terminal(folder);
    assertThat(terminal.run(join(words, stated.words))).as(terminal.err()).isZero();
    return terminal.out();
  }

  private static String[] join(String[] first, String[] second) {
    String[] all = java.util.Arrays.copyOf(first, first.length + second.length);
    System.arraycopy(second, 0, all, first.length, second.length);
    return all;
  }
}
