package starchfilm.advice;

import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sentences of the table of rules, in which {names} stand for figures. */
final class Sentence {
  private static final Pattern NAME = Pattern.compile("\\{(?:(old|new|more) )?([a-z ]+)\\}");

  private Sentence() {}

  /** A sentence with the figures of a plate in place of their {names}. */
  static String in(String sentence, FaultContext scene) {
    return filled(sentence, (side, figure) -> figure.words(scene));
  }

  /**
   * A sentence of a change: {new name} and {old name} stand for one side, {more name} for what lies
   * between them, and {name} alone for the way from one to the other.
   */
  static String in(String sentence, FaultContext before, FaultContext after) {
    return filled(
        sentence,
        (side, figure) ->
            switch (side) {
              case "old" -> figure.words(before);
              case "new" -> figure.words(after);
              case "more" -> AdviceFigure.grams(Math.abs(figure.of(after) - figure.of(before)));
              default -> way(figure.words(before), figure.words(after));
            });
  }

  private static String filled(String sentence, BiFunction<String, AdviceFigure, String> told) {
    return NAME.matcher(sentence)
        .replaceAll(
            match ->
                Matcher.quoteReplacement(
                    told.apply(
                        match.group(1) == null ? "" : match.group(1),
                        AdviceFigure.called(match.group(2)))));
  }

  /** The unit stands once. */
  private static String way(String from, String to) {
    int unit = from.lastIndexOf(' ');
    return (unit > 0 && to.endsWith(from.substring(unit)) ? from.substring(0, unit) : from)
        + " → "
        + to;
  }
}
