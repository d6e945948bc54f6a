package starchfilm.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A part of a guide that the program's own answers fill: between {@code <!-- its name -->} and
 * {@code <!-- end -->}. With {@code -Dguides.rewrite=true} it is written anew.
 */
public final class GuidePart {
  private static final String END = "<!-- end -->";

  private GuidePart() {}

  /**
   * Holds a part of a guide to what it should say.
   *
   * @param guide file, such as {@code src/docs/files.md}
   * @param name of the part
   * @param text what it should say
   * @throws IOException where the guide cannot be read
   */
  public static void says(String guide, String name, String text) throws IOException {
    Path file = Path.of(guide);
    String whole = Files.readString(file);
    String mark = "<!-- " + name + " -->\n";
    int from = whole.indexOf(mark);
    assertThat(from).as("%s has a part \"%s\"", guide, name).isNotNegative();
    int start = from + mark.length();
    int end = whole.indexOf(END, start);
    String said = "\n" + text.strip() + "\n\n";
    if (Boolean.getBoolean("guides.rewrite")) {
      Files.writeString(file, whole.substring(0, start) + said + whole.substring(end));
      return;
    }
    assertThat(whole.substring(start, end))
        .as("%s, part \"%s\"; -Dguides.rewrite=true writes it anew", guide, name)
        .isEqualTo(said);
  }
}
