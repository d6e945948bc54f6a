package starchfilm.report.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import starchfilm.drying.Milestone;
import starchfilm.proof.GuidePart;

/** Each word is explained once, and the guide lists the words as the pages explain them. */
class GlossaryTest {
  @Test
  void explainsEachWordOnceInOneSentence() {
    assertThat(Glossary.entries())
        .hasSizeGreaterThan(20)
        .allMatch(entry -> entry.meaning().matches("[A-Z][^.]*(\\.[0-9][^.]*)*\\."))
        .extracting(Glossary.Entry::term)
        .doesNotHaveDuplicates();
  }

  @Test
  void theGuideListsTheWords() throws IOException {
    Map<String, List<String>> groups = new LinkedHashMap<>();
    for (Glossary.Entry entry : Glossary.entries()) {
      groups
          .computeIfAbsent(entry.group(), none -> new ArrayList<>())
          .add("- **" + entry.term() + "**: " + entry.meaning() + "\n");
    }
    String guide =
        groups.entrySet().stream()
            .map(group -> "### " + group.getKey() + "\n\n" + String.join("", group.getValue()))
            .collect(Collectors.joining("\n"));

    GuidePart.says("src/docs/guide.md", "words", guide);
  }

  @Test
  void knowsEveryMilestone() {
    for (Milestone milestone : Milestone.values()) {
      assertThat(PlainWords.meaning(milestone)).matches("[a-z].*[^.]");
    }
  }

  @Test
  void refusesAWordItDoesNotKnow() {
    assertThatThrownBy(() -> Glossary.entry("widget"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("widget");
  }
}
