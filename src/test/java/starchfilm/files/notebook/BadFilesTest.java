package starchfilm.files.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.trial.Trial;
import starchfilm.files.json.LocatedReader;

/** Files that are no trial at all, and what is said of them, word for word. */
class BadFilesTest {
  @TempDir private Path folder;

  @Test
  void missingFile() {
    assertThat(read("nowhere.json"))
        .containsExactly("nowhere.json: there is no such file; check its name and folder");
  }

  @Test
  void folderWithoutTrials() throws IOException {
    Files.createDirectory(folder.resolve("empty"));
    assertThat(read("empty"))
        .containsExactly(
            "empty: a folder without trial files given, allowed at least one file *.json; name the"
                + " folder that holds your trials");
  }

  @Test
  void emptyFile() {
    assertThat(TrialText.faults(folder, ""))
        .containsExactly(
            "a.json: an empty file given, allowed one JSON object; write the trial into it or delete"
                + " it");
  }

  @Test
  void fiftyMegabytesAreRefusedByTheirSizeAlone() throws IOException {
    try (RandomAccessFile file = new RandomAccessFile(folder.resolve("big.json").toFile(), "rw")) {
      file.setLength(50_000_000);
    }
    assertThat(read("big.json"))
        .containsExactly(
            "big.json: 50 MB given, allowed at most 2 MB; check that this is the right file; photos"
                + " belong beside it, not in it");
  }

  @Test
  void utf16() {
    assertThat(faults(TrialText.SOUND.getBytes(StandardCharsets.UTF_16)))
        .containsExactly(
            "a.json: text in UTF-16 given, allowed text in UTF-8; save the file again with the"
                + " encoding UTF-8");
  }

  @Test
  void utf16WithoutByteOrderMark() {
    assertThat(faults(TrialText.SOUND.getBytes(StandardCharsets.UTF_16LE)))
        .containsExactly(
            "a.json: text in UTF-16 given, allowed text in UTF-8; save the file again with the"
                + " encoding UTF-8");
  }

  @Test
  void latin1() {
    String text = "{\n  \"name\": \"K\u00FCche\"\n}";
    assertThat(faults(text.getBytes(StandardCharsets.ISO_8859_1)))
        .containsExactly(
            "a.json, line 2, column 13: the byte FC (in Latin-1: \u00FC) given, allowed text in UTF-8;"
                + " save the file again with the encoding UTF-8");
  }

  @Test
  void byteOrderMarkOfUtf8IsTolerated() {
    Notebook notebook = TrialText.read(folder, "\uFEFF" + TrialText.SOUND);
    assertThat(notebook.faults()).isEmpty();
    assertThat(notebook.trials()).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "`{\"a\": 1,5}`            | `line 1, column 9: a decimal comma` | `write the number with a point, such as 1.5`",
        "`{\"a\": 1,}`             | `line 1, column 9: a comma before }` |"
            + " `delete the comma`",
        "`{\"a\": [1,]}`           | `line 1, column 10: a comma before ]` |"
            + " `delete the comma`",
        "`{\"a\": 1 \"b\": 2}`     | `line 1, column 9: a field without a comma before it` | `put a comma after the field before`",
        "`{'a': 1}`                | `line 1, column 2: the quotation mark '` | `write straight double quotes: \"`",
        "`{\u201Ca\u201D: 1}`      | `line 1, column 2: the quotation mark \u201C` | `write straight double quotes: \"`",
        "`{\"a\": potato}`         | `line 1, column 7: the word potato without quotes` | `put it in double quotes`",
        "`{name: 1}`               | `line 1, column 2: the word name without quotes` | `put it in double quotes`",
        "`{\"a\": 1 # grams}`      | `line 1, column 9: a comment` | `put it into the field remarks`",
        "`{\"a\": .5}`             | `line 1, column 7: a number that begins with .` | `begin the number with a digit`",
        "`{\"a\": @}`              | `line 1, column 7: the character @` | `look at this place and just before it for a missing quote, comma or bracket`",
      })
  void notQuiteJson(String text, String where, String mend) {
    assertThat(TrialText.faults(folder, text))
        .containsExactly("a.json, " + where + " given, allowed JSON as RFC 8259 has it; " + mend);
  }

  @Test
  void fileThatWasCutOff() {
    assertThat(TrialText.faults(folder, "{\"name\": \"A\",\n \"recipe\": {"))
        .containsExactly(
            "a.json, line 2, column 13: an end of the file in the middle of a value given, allowed"
                + " JSON as RFC 8259 has it; close every {, [ and \"; or fetch the file again if it"
                + " was cut off");
  }

  @Test
  void lineBreakInsideAText() {
    assertThat(TrialText.faults(folder, "{\"name\": \"A\nB\"}"))
        .singleElement()
        .asString()
        .contains("a line break or tab inside a text given");
  }

  @Test
  void moreThanOneValue() {
    assertThat(TrialText.faults(folder, "{}\n{}"))
        .containsExactly(
            "a.json, line 2, column 1: more text after the end of the JSON value"
                + " given, allowed one JSON object per file; move the rest into a file of"
                + " its own");
  }

  @Test
  void aListInsteadOfAnObject() {
    assertThat(TrialText.faults(folder, "[1, 2]"))
        .containsExactly(
            "a.json, line 1, column 1: a list given, allowed one JSON object in { }; write the trial"
                + " as {\"recipe\": {..}, ..}");
  }

  @Test
  void nestedTooDeep() {
    assertThat(TrialText.faults(folder, "{\"a\": " + "[".repeat(100_000)))
        .singleElement()
        .asString()
        .endsWith("fields nested too deep given, allowed at most 32 levels; shorten it");
  }

  @Test
  void numberTooLong() {
    assertThat(TrialText.faults(folder, "{\"a\": " + "9".repeat(5000) + "}"))
        .singleElement()
        .asString()
        .endsWith("a number that is too long given, allowed at most 40 digits; shorten it");
  }

  @Test
  void numberAsLongAsAllowedWithAnExponentBeyondAllMeasure() {
    String nought = TrialText.with("recipe.water.mass_g", "1").replace(": 1\n", ": X\n");
    for (String literal : List.of("0e99999999999", "0e-99999999999", "1e-99999999999")) {
      assertThat(TrialText.faults(folder, nought.replace("X", literal)))
          .allSatisfy(sentence -> assertThat(sentence).contains("water"));
    }
  }

  @Test
  void textTooLong() {
    String text = "{\"remarks\": \"" + "x".repeat(LocatedReader.MAX_TEXT_LENGTH + 1) + "\"}";
    assertThat(TrialText.faults(folder, text))
        .singleElement()
        .asString()
        .contains("at most 100000");
  }

  @Test
  void nameTooLong() {
    String text = "{\"" + "x".repeat(LocatedReader.MAX_NAME_LENGTH + 1) + "\": 1}";
    assertThat(TrialText.faults(folder, text)).singleElement().asString().contains("at most 200");
  }

  @Test
  void notATrial() {
    assertThat(TrialText.faults(folder, "{}"))
        .containsExactly(
            "a.json, line 1, column 1: a file without the field recipe given, allowed a trial with at"
                + " least recipe and, in it, starch; add the recipe, or move the file to another"
                + " folder if it is no trial");
  }

  @Test
  void theGoodFilesGoThroughAndAllFaultsOfTheOthersAreListed() throws IOException {
    Files.writeString(folder.resolve("good.json"), TrialText.SOUND);
    Files.writeString(folder.resolve("bad1.json"), TrialText.with("room.rh_pct", "130"));
    Files.writeString(folder.resolve("bad2.json"), "");
    Files.writeString(folder.resolve(".hidden.json"), "");
    Files.writeString(folder.resolve("workshop.json"), "{}");
    Files.writeString(folder.resolve("notes.txt"), "not a trial");
    Notebook notebook = NotebookReader.read(List.of(folder, folder.resolve("good.json")));
    assertThat(notebook.trials()).extracting(Trial::name).containsExactly("A");
    assertThat(notebook.faults()).hasSize(2);
    assertThat(notebook.faults())
        .extracting(f -> Path.of(f.file()).getFileName().toString())
        .containsExactly("bad1.json", "bad2.json");
  }

  private List<String> read(String name) {
    return TrialText.sentences(folder, NotebookReader.read(List.of(folder.resolve(name))));
  }

  private List<String> faults(byte[] bytes) {
    return TrialText.sentences(folder, TrialText.read(folder, bytes));
  }
}
