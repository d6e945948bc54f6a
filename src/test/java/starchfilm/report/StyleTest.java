package starchfilm.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The style sheet's colours against WCAG 2.2, and what it promises for print and dark. */
class StyleTest {
  /** Success criterion 1.4.3: normal text. */
  private static final double TEXT = 4.5;

  /** Success criterion 1.4.11: marks that carry meaning. */
  private static final double MARK = 3;

  private static final String CSS = sheet();
  private static final Map<String, String> LIGHT = colours(between(":root {", "}"));
  private static final Map<String, String> DARK =
      colours(between("prefers-color-scheme: dark) {", "}\n}"));
  private static final Map<String, String> PRINT = colours(between("@media print {", "}"));

  static Stream<Arguments> pairs() {
    return Stream.of(Map.entry("light", LIGHT), Map.entry("dark", DARK), Map.entry("print", PRINT))
        .flatMap(
            theme ->
                Stream.of(
                        pair("ink", "paper", TEXT),
                        pair("soft", "paper", TEXT),
                        pair("water", "paper", TEXT),
                        pair("clay", "paper", TEXT),
                        pair("straw", "paper", TEXT),
                        pair("ink", "sheet", TEXT),
                        pair("ink", "clay-wash", TEXT),
                        pair("soft", "sheet", TEXT),
                        pair("ink", "water-wash", TEXT),
                        pair("water", "water-wash", MARK),
                        pair("clay", "water-wash", MARK),
                        pair("straw", "water-wash", MARK),
                        pair("plate", "paper", MARK))
                    .map(pair -> Arguments.of(theme.getKey(), theme.getValue(), pair)));
  }

  @ParameterizedTest(name = "{0}: {2}")
  @MethodSource("pairs")
  void everyPairHasEnoughContrast(String theme, Map<String, String> colours, Pair pair) {
    assertThat(contrast(colours.get(pair.front()), colours.get(pair.back())))
        .as("%s: %s on %s", theme, pair.front(), pair.back())
        .isGreaterThanOrEqualTo(pair.least());
  }

  /** Black on white is 21, and equal colours are 1, by the definition of WCAG 2. */
  @Test
  void contrastIsWcags() {
    assertThat(contrast("#000000", "#ffffff")).isEqualTo(21);
    assertThat(contrast("#777777", "#777777")).isEqualTo(1);
    // A worked value often quoted with the definition: #767676 is the lightest grey that passes.
    assertThat(contrast("#767676", "#ffffff")).isBetween(4.54, 4.55);
  }

  @Test
  void printsOnA4() {
    assertThat(CSS).contains("@page { size: A4;").contains("@media print");
  }

  @Test
  void everyColourIsNamedOnce() {
    String rules = CSS.replaceAll("(?s)--[a-z-]+:[^;]+;", "");
    assertThat(rules).doesNotContainPattern("#[0-9a-fA-F]{3,6}\\b");
    assertThat(DARK.keySet()).isEqualTo(LIGHT.keySet());
    assertThat(PRINT.keySet()).isEqualTo(LIGHT.keySet());
  }

  private record Pair(String front, String back, double least) {}

  private static Pair pair(String front, String back, double least) {
    return new Pair(front, back, least);
  }

  /** Contrast ratio by the definition of WCAG 2.2, "relative luminance" and "contrast ratio". */
  private static double contrast(String one, String other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(String hex) {
    int rgb = Integer.parseInt(hex.substring(1), 16);
    return 0.2126 * linear(rgb >> 16 & 255)
        + 0.7152 * linear(rgb >> 8 & 255)
        + 0.0722 * linear(rgb & 255);
  }

  private static double linear(int channel) {
    double share = channel / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }

  private static Map<String, String> colours(String block) {
    Map<String, String> colours = new HashMap<>();
    Matcher matcher = Pattern.compile("--([a-z-]+): (#[0-9a-f]{3,6});").matcher(block);
    while (matcher.find()) {
      String value = matcher.group(2);
      colours.put(
          matcher.group(1), value.length() == 7 ? value : value.replaceAll("([0-9a-f])", "$1$1"));
    }
    return colours;
  }

  private static String between(String start, String end) {
    int from = CSS.indexOf(start);
    return CSS.substring(from, CSS.indexOf(end, from));
  }

  private static String sheet() {
    try (InputStream in =
        StyleTest.class.getClassLoader().getResourceAsStream("templates/style.html")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException failure) {
      throw new IllegalStateException(failure);
    }
  }
}
