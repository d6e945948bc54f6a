package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Every command says where what was learnt cannot be read, or no longer fits its trials. */
@Timeout(300)
class LearntOutdatedTest {
  static final String MEND =
      "run the command learn again on this folder; until then the forecasts are the textbook's";

  @TempDir private Path folder;

  @Test
  void aDamagedFileIsToldByEveryCommandAndTheTextbookStandsIn() throws IOException {
    VariedDemo.learnt(folder, "slow", "shed", 1.5);
    VariedDemo.write(folder.resolve("textbook/next.json"), VariedDemo.unweighed("shed"));
    double textbook = VariedDemo.dryThroughH(folder, "textbook/next.json");
    Files.writeString(folder.resolve("slow/workshop.json"), "{\"format\": 7}");

    for (String[] words :
        List.of(
            new String[] {"dry", "slow/next.json"},
            new String[] {"compare", "slow", "--out", "page.html"},
            new String[] {"thickness", "slow/next.json", "--by", "5d"},
            new String[] {
              "plan",
              "--glycerol=30g",
              "--starch=potato",
              "--plates=1x300x200mm glass",
              "--room=22C,45%",
              "--save=slow"
            })) {
      Outcome outcome = Outcome.of(folder, words);
      assertThat(outcome.exit()).as(words[0]).isZero();
      assertThat(outcome.err().lines().toList()).as(words[0]).hasSize(1);
      assertThat(outcome.err())
          .as(words[0])
          .contains(
              "slow/workshop.json, line 1: another value of about given, allowed a file as learn"
                  + " writes it; "
                  + MEND);
    }
    assertThat(VariedDemo.dryThroughH(folder, "slow/next.json"))
        .isCloseTo(textbook, within(1e-6 * textbook));
  }

  /** What is gone still teaches until the next learning; what came since does not yet: told. */
  @Test
  void whatChangedSinceLearningIsTold() throws IOException {
    VariedDemo.learnt(folder, "slow", "shed", 1.5);
    double before = VariedDemo.dryThroughH(folder, "slow/next.json");
    assertThat(Outcome.of(folder, "compare", "slow", "--out", "page.html").err()).isEmpty();
    Files.move(folder.resolve("slow/taught-2.json"), folder.resolve("slow/renamed.json"));
    VariedDemo.write(
        folder.resolve("slow/next.json"), VariedDemo.pulled(VariedDemo.unweighed("shed"), 9));

    String compare = Outcome.of(folder, "compare", "slow", "--out", "page.html").err();
    Outcome dry = Outcome.of(folder, "dry", "slow/next.json");

    assertThat(compare.strip())
        .endsWith(
            "slow/workshop.json: gone or renamed since it was learnt:"
                + " taught-2.json; noted in since it was learnt: next.json, renamed.json;"
                + " run the command learn again to include that");
    assertThat(dry.exit()).isZero();
    assertThat(dry.err()).contains("gone or renamed").doesNotContain("noted in");
    assertThat(VariedDemo.dryThroughH(folder, "slow/next.json")).isEqualTo(before);
    assertThat(Outcome.of(folder, "learn", "slow").exit()).isZero();
    assertThat(Outcome.of(folder, "compare", "slow", "--out", "page.html").err()).isEmpty();
  }

  /** With as many readings as before; words about them are not learnt from, so not told. */
  @Test
  void whatWasEditedSinceLearningIsTold() throws IOException {
    VariedDemo.learnt(folder, "slow", "shed", 1.5);
    Path taught = folder.resolve("slow/taught-1.json");
    String asLearnt = Files.readString(taught);
    Files.writeString(
        taught, asLearnt.replaceFirst("\"name\" : \"[^\"]+\"", "\"name\" : \"Another\""));
    assertThat(Outcome.of(folder, "compare", "slow", "--out", "page.html").err()).isEmpty();

    Files.writeString(taught, asLearnt.replaceFirst("\"rh_pct\" : 45", "\"rh_pct\" : 46"));

    assertThat(Outcome.of(folder, "compare", "slow", "--out", "page.html").err().strip())
        .endsWith(
            "slow/workshop.json: edited since it was learnt: taught-1.json; run"
                + " the command learn again to include that");
    assertThat(Outcome.of(folder, "learn", "slow").exit()).isZero();
    assertThat(Outcome.of(folder, "compare", "slow", "--out", "page.html").err()).isEmpty();
  }
}
