package starchfilm.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thymeleaf.TemplateEngine;
import org.thymeleaf.context.Context;
import org.thymeleaf.standard.StandardDialect;
import org.thymeleaf.templateresolver.StringTemplateResolver;

/** What templates may say between braces, and what comes of it. */
class PathEvaluatorTest {
  private record Inner(String text, int number, boolean flag) {}

  private record Outer(Inner inner, List<String> list, Optional<String> some, Optional<String> no) {
    public String method() {
      return "called";
    }

    public String joined(String first, String second) {
      return first + " " + second;
    }
  }

  private static final Map<String, Object> VALUES =
      Map.of(
          "outer",
          new Outer(
              new Inner("a <b>", 3, true), List.of("x", "y"), Optional.of("s"), Optional.empty()),
          "map",
          Map.of("key", "value"),
          "entries",
          Map.of("k", "v").entrySet(),
          "text",
          "words");

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "${outer.inner.text} | a &lt;b&gt;",
        "${outer.inner().number()} | 3",
        "${outer.inner.flag} ? 'yes' : 'no' | yes",
        "${outer.method()} | called",
        "${outer.some.empty} ? 'none' : 'some' | some",
        "${outer.joined('a b', text)} | a b words",
        "${outer.list.size()} | 2",
        "${outer.list.empty} | false",
        "${outer.list[1]} | y",
        "${outer.some.present} | true",
        "${outer.some.get()} | s",
        "${outer.no.present} | false",
        "${map['key']} | value",
        "${map.getOrDefault(text, 'none')} | none",
        "${text.length()} | 5",
        "${text.empty} | false",
        "${#strings.toUpperCase(outer.inner().text)} | A &lt;B&gt;",
        "${#strings.substring(text, 1, 3)} | or",
        "${outer.inner.number} + 1 | 4",
        "${nowhere} == null | true"
      })
  void readsWhatATemplateNames(String expression, String text) {
    assertThat(filled("<p th:text=\"" + expression + "\"></p>")).isEqualTo("<p>" + text + "</p>");
  }

  @Test
  void countsAndEntriesOfALoopAreReadable() {
    assertThat(
            filled(
                "<i th:each=\"e : ${entries}\" th:text=\"|${e.key}${e.value}${eStat.last}|\"></i>"))
        .isEqualTo("<i>kvtrue</i>");
  }

  @Test
  void aNameThatIsNotThereIsAFault() {
    assertThatThrownBy(() -> filled("<p th:text=\"${outer.inner.colour}\"></p>"))
        .rootCause()
        .hasMessageStartingWith("Inner has no \"colour\"");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "text == 'b'",
        "!text",
        "text.",
        "text)",
        "f('x",
        "text.size(",
        "1",
        "a.b(c d)",
        ""
      })
  void anOperatorInsideTheBracesIsAFault(String expression) {
    assertThatThrownBy(() -> TemplatePath.of(expression))
        .hasMessageContaining("\"" + expression + "\" is no path");
  }

  @ParameterizedTest
  @MethodSource("templates")
  void everyTemplateKeepsToPaths(Path template) throws IOException {
    Matcher braces = Pattern.compile("\\$\\{([^}]*)}").matcher(Files.readString(template));
    while (braces.find()) {
      assertThat(TemplatePath.of(braces.group(1))).isNotNull();
    }
  }

  static List<Path> templates() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("templates"))) {
      return files.filter(file -> file.toString().endsWith(".html")).toList();
    }
  }

  private static String filled(String template) {
    TemplateEngine engine = new TemplateEngine();
    engine.setTemplateResolver(new StringTemplateResolver());
    StandardDialect dialect = new StandardDialect();
    dialect.setVariableExpressionEvaluator(new PathEvaluator());
    engine.setDialect(dialect);
    return engine.process(template, new Context(Locale.ROOT, VALUES));
  }
}
