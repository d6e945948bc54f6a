package starchfilm.request;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import starchfilm.files.json.PackedText;

/**
 * A way in which people write something of what they cooked, from {@code cooked-parts.patterns}.
 *
 * @param pattern how it is written
 * @param fields the field that each group of the pattern is
 */
record WrittenPart(Pattern pattern, List<String> fields) {
  /** All of them, in the order in which they are tried. */
  static final List<WrittenPart> ALL =
      PackedText.rows(WrittenPart.class, "cooked-parts.patterns", 2).stream()
          .map(
              row ->
                  new WrittenPart(
                      Pattern.compile(row.get(1), Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE),
                      List.of(row.get(0).split(", ", -1))))
          .toList();

  /** A field and its words. */
  record Said(String field, String words) {}

  /** The first whose first group is a field. */
  static WrittenPart beginningWith(String field) {
    return ALL.stream()
        .filter(form -> form.fields().get(0).equals(field))
        .findFirst()
        .orElseThrow();
  }

  /** What a text written in this way says; nothing where it is not. */
  List<Said> said(String text) {
    Matcher matcher = pattern.matcher(text);
    List<Said> said = new ArrayList<>();
    for (int i = 1; matcher.matches() && i <= matcher.groupCount(); i++) {
      if (matcher.group(i) != null) {
        said.add(new Said(fields.get(i - 1), matcher.group(i)));
      }
    }
    return said;
  }
}
