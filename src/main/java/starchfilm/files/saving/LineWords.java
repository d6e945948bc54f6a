package starchfilm.files.saving;

import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.Moment;
import starchfilm.files.amount.MomentParser;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.TextValue;

/**
 * Says what stands in a line of a trial file.
 *
 * <p>In the words for it, {@code {mass_g}} is a field, {@code {}} the line itself, and {@code
 * {!with_plate}} stands for nothing where the field is false. A part in [ ] is left out where a
 * field of it does not stand in the line.
 */
final class LineWords {
  private static final Pattern PART = Pattern.compile("\\[([^]]*)]|\\{(!?)([\\w.]*)}");
  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("EEE d MMM, H:mm", Locale.ENGLISH);

  private LineWords() {}

  /** By the first of several wordings of which every field outside [ ] stands in the line. */
  static String of(Located line, String... wordings) {
    return Stream.of(wordings)
        .flatMap(wording -> filled(wording, line).stream())
        .findFirst()
        .orElse("");
  }

  private static Optional<String> filled(String wording, Located line) {
    StringBuilder words = new StringBuilder();
    Matcher part = PART.matcher(wording);
    while (part.find()) {
      Optional<String> here =
          part.group(1) == null
              ? field(line, part.group(3), !part.group(2).isEmpty())
              : filled(part.group(1), line).or(() -> Optional.of(""));
      if (here.isEmpty()) {
        return here;
      }
      part.appendReplacement(words, Matcher.quoteReplacement(here.get()));
    }
    return Optional.of(part.appendTail(words).toString());
  }

  private static Optional<String> field(Located line, String field, boolean mustBeFalse) {
    if (field.isEmpty()) {
      return Optional.of(shown(line));
    }
    Optional<String> there = line.at(field).map(LineWords::shown);
    return mustBeFalse ? there.filter("false"::equals).map(no -> "") : there;
  }

  /** What stands in a field: a clock's time as people say it, all else as it is typed. */
  static String shown(Located value) {
    String text = value.shown();
    try {
      return value instanceof TextValue
              && MomentParser.lasting(text) instanceof Moment.ByTheClock clock
          ? CLOCK.format(clock.time())
          : text;
    } catch (MistypedException noTime) {
      return text;
    }
  }
}
