package starchfilm.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thymeleaf.TemplateEngine;
import org.thymeleaf.context.Context;
import org.thymeleaf.standard.StandardDialect;
import org.thymeleaf.templateresolver.StringTemplateResolver;

/** Whatever a template says must come out as the library's own evaluator has it. */
class PathEvaluatorTest {
  private record Inner(String text, int number, boolean flag) {}

  private record Outer(Inner inner, List<String> list, Optional<String> some, Optional<String> no) {
    public String method() {
      return "called";
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
      value = {
        "${outer.inner.text} | a &lt;b&gt;",
        "${outer.inner().number()} | 3",
        "${outer.inner.flag} ? 'yes' : 'no' | yes",
        "${outer.method()} | called",
        "${outer.list.size()} | 2",
        "${outer.list.empty} | false",
        "${outer.list[1]} | y",
        "${outer.some.present} | true",
        "${outer.some.get()} | s",
        "${outer.no.present} | false",
        "${map.key} | value",
        "${text.length()} | 5",
        "${text.empty} | false",
        "${true} | true",
        "${1 + 2} | 3",
        "${outer.inner.number + 1} | 4"
      })
  void evaluatesAsTheLibraryDoes(String expression, String text) {
    String template = "<p th:text=\"" + expression + "\"></p>";
    assertThat(engine(true).process(template, new Context(Locale.ROOT, VALUES)))
        .isEqualTo("<p>" + text + "</p>")
        .isEqualTo(engine(false).process(template, new Context(Locale.ROOT, VALUES)));
  }

  @Test
  void countsAndEntriesOfALoopAreReadable() {
    String template =
        "<i th:each=\"e : ${entries}\" th:text=\"|${e.key}${e.value}${eStat.last}|\"></i>";
    assertThat(engine(true).process(template, new Context(Locale.ROOT, VALUES)))
        .isEqualTo("<i>kvtrue</i>");
  }

  @Test
  void aNameThatIsNotThereIsAFault() {
    assertThatThrownBy(
            () ->
                engine(true)
                    .process(
                        "<p th:text=\"${outer.inner.colour}\"></p>",
                        new Context(Locale.ROOT, VALUES)))
        .rootCause()
        .hasMessageStartingWith("Inner has no \"colour\"");
  }

  private static TemplateEngine engine(boolean ours) {
    TemplateEngine engine = new TemplateEngine();
    engine.setTemplateResolver(new StringTemplateResolver());
    if (ours) {
      StandardDialect dialect = new StandardDialect();
      dialect.setVariableExpressionEvaluator(new PathEvaluator());
      engine.setDialect(dialect);
    }
    return engine;
  }
}
