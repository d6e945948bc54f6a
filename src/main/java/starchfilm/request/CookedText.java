package starchfilm.request;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import starchfilm.files.amount.TypedAmount;
import starchfilm.files.json.PackedText;

/**
 * What somebody cooked, in one line: {@code 20 g potato, 6 g glycerol 88%, 360 g water; 30x20cm
 * glass, 3 mm; yesterday 18:30; kitchen 20C,55%}. Parts stand apart by a comma with a blank, a
 * semicolon or a new line, in any order; what a part is shows from its words and units. What is
 * written field by field counts before the line.
 *
 * @param refusal why the line cannot be meant, a sentence; empty where it can
 */
record CookedText(Map<Field, List<String>> parts, Entries others, String refusal)
    implements Entries {
  private static final int LONGEST = 2_000;
  private static final String AMOUNT = TypedAmount.WITHIN;
  private static final Pattern GLYCEROL = Pattern.compile("gl[yi][cz][e\u00E9]r");
  private static final Pattern ORIGIN =
      Pattern.compile(
          "\\b(?:(bought|gekauft|achet\u00E9|comprad)|recovered|r[e\u00E9]cup[e\u00E9]r|zur\u00FCckgewonn)\\p{L}*");
  private static final Pattern VINEGAR = Pattern.compile("vinegar|essig|vinaigre|vinagre");
  private static final Pattern INERT =
      Pattern.compile(
          "citri[cq]|c\u00EDtric|zitron|chalk|kreide|craie|tiza|cellulose|^fib(?:re|er)s?$|filler");
  private static final Pattern WATER = Pattern.compile("water$|wasser$|^eau|^agua");
  private static final Pattern APART =
      Pattern.compile(
          "\\s*(?:[;\\n]|,\\s)\\s*|\\s+(?:and|und|et|y|\\+)\\s+(?=[~0-9\u00BC-\u00BE])");
  private static final Pattern AMOUNT_FIRST =
      Pattern.compile(
          "(" + AMOUNT + ")\\s+(?:of\\s+|de\\s+|d')?([\\p{L}][\\p{L} '-]*?)((?:\\s+[0-9.,]+ ?%)?)");
  private static final Pattern WORD_FIRST =
      Pattern.compile("([\\p{L}][\\p{L} '-]*?):?\\s+(" + AMOUNT + ")((?:\\s+[0-9.,]+ ?%)?)");
  private static final List<Form> FORMS =
      PackedText.of(CookedText.class, "cooked-parts.patterns")
          .lines()
          .filter(line -> !line.startsWith("#"))
          .map(Form::of)
          .toList();

  private static final Form CALLED = form(NewTrial.CALLED);
  private static final Form WHEN = form(TrialQuestion.POURED);
  private static final Form ROOM = form(WrittenPlace.NAME);
  private static final Pattern ON_A_PLATE = Pattern.compile("(.+?)\\s+(?:on|onto|in|into)\\s+(.+)");
  private static final Pattern WARMTH = Pattern.compile("~?[0-9].*[0-9]\\s*\u00B0?[cf]");

  /** How a part is written, and which field each of its groups is. */
  private record Form(Pattern pattern, List<Field> fields) {
    static Form of(String line) {
      String[] both = line.split(" [|] ", 2);
      return new Form(
          Pattern.compile(both[1], Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE),
          Stream.of(both[0].split(", ", -1)).map(Field::of).toList());
    }

    boolean isOf(String part) {
      return pattern.matcher(part).matches();
    }

    /** Whether it is such a part and the first of its kind; empty where it is none. */
    Optional<Boolean> taken(String part, Map<Field, List<String>> parts) {
      Matcher matcher = pattern.matcher(part);
      if (!matcher.matches()) {
        return Optional.empty();
      }
      boolean once = true;
      for (int i = 1; i <= matcher.groupCount(); i++) {
        if (matcher.group(i) != null) {
          once &= put(parts, fields.get(i - 1), matcher.group(i));
        }
      }
      return Optional.of(once);
    }
  }

  private static Form form(Field first) {
    return FORMS.stream()
        .filter(form -> form.fields().get(0).equals(first))
        .findFirst()
        .orElseThrow();
  }

  /** Takes a line apart; what is not understood is refused with what was. */
  static CookedText of(String text, Entries others) {
    if (text.length() > LONGEST) {
      return new CookedText(
          Map.of(),
          others,
          "what you cooked: "
              + text.length()
              + " characters given, allowed "
              + LONGEST
              + "; write amounts, plate, when and where in one line");
    }
    Map<Field, List<String>> parts = new HashMap<>();
    List<String> strange = new ArrayList<>();
    List<String> understood = new ArrayList<>();
    for (String part : APART.split(text.strip(), 0)) {
      String words = part.replaceAll("[\\p{Cntrl}\\s]+", " ").strip().replaceFirst("[.,]$", "");
      if (!words.isEmpty()) {
        (isTaken(words, parts) ? understood : strange).add(words);
      }
    }
    String refusal =
        strange.isEmpty()
            ? ""
            : "what you cooked: "
                + quoted(strange)
                + " not understood"
                + (understood.isEmpty() ? "" : ", but " + quoted(understood) + " is")
                + "; write parts such as 20 g potato, 6 g glycerol, 360 g water; 30x20cm glass,"
                + " 3 mm; yesterday 18:30; kitchen 20C,55%";
    return new CookedText(Map.copyOf(parts), others, refusal);
  }

  private static String quoted(List<String> parts) {
    return parts.stream()
        .limit(6)
        .map(part -> '"' + (part.length() > 40 ? part.substring(0, 40) + "..." : part) + '"')
        .reduce((a, b) -> a + ", " + b)
        .orElse("");
  }

  private static boolean isTaken(String part, Map<Field, List<String>> parts) {
    String low = part.toLowerCase(Locale.ROOT);
    Optional<Boolean> called = CALLED.taken(part, parts);
    if (called.isPresent()) {
      return called.get();
    }
    Matcher origin = ORIGIN.matcher(low);
    if (origin.find()) {
      String rest = origin.replaceFirst(" ").replaceAll(" +", " ").strip();
      return (rest.isEmpty() || (GLYCEROL.matcher(rest).find() && isTaken(rest, parts)))
          && put(parts, JarOrigin.ORIGIN, origin.group(1) == null ? "recovered" : "bought");
    }
    Matcher split = ON_A_PLATE.matcher(part);
    if (split.matches()
        && isTimeOrIngredient(split.group(1).toLowerCase(Locale.ROOT))
        && WrittenPlates.isLike(split.group(2))) {
      return isTaken(split.group(1), parts) && isTaken(split.group(2), parts);
    }
    if (WrittenPlates.isLike(low)) {
      List<String> sizes = new ArrayList<>(parts.getOrDefault(TrialQuestion.PLATE, List.of()));
      sizes.add(part.replaceFirst("^(?i)(?:poured )?(?:on|in|into|onto) ", ""));
      parts.put(TrialQuestion.PLATE, sizes);
      return true;
    }
    if (UsualPlace.called(low).isPresent()) {
      return put(parts, WrittenPlace.ROOM, low);
    }
    return FORMS.stream()
        .filter(form -> !form.equals(ROOM) || !isIngredient(low))
        .flatMap(form -> form.taken(part, parts).stream())
        .findFirst()
        .orElseGet(() -> isIngredientTaken(low, parts));
  }

  private static boolean isTimeOrIngredient(String low) {
    return WHEN.isOf(low) || AMOUNT_FIRST.matcher(low).matches();
  }

  private static boolean isIngredient(String low) {
    Matcher word = WORD_FIRST.matcher(low);
    // "kitchen 20C 50%" is a room, "water 2 c" two cups.
    return AMOUNT_FIRST.matcher(low).matches()
        || (word.matches() && !WARMTH.matcher(word.group(2)).matches());
  }

  private static boolean isIngredientTaken(String low, Map<Field, List<String>> parts) {
    Matcher first = AMOUNT_FIRST.matcher(low);
    Matcher last = WORD_FIRST.matcher(low);
    boolean amountFirst = first.matches();
    if (!amountFirst && !last.matches()) {
      return false;
    }
    String amount = amountFirst ? first.group(1) : last.group(2);
    String what = (amountFirst ? first.group(2) : last.group(1)).strip();
    String share = (amountFirst ? first.group(3) : last.group(3)).strip();
    if (GLYCEROL.matcher(what).find()) {
      return put(parts, TrialQuestion.GLYCEROL, amount)
          && (share.isEmpty() || put(parts, TrialQuestion.PURITY, share));
    }
    if (VINEGAR.matcher(what).find()) {
      return put(parts, TrialQuestion.VINEGAR, amount)
          && (share.isEmpty() || put(parts, TrialQuestion.ACIDITY, share));
    }
    if (INERT.matcher(what).find()) {
      return put(parts, TrialQuestion.INERT, amount);
    }
    if (WATER.matcher(what).find()) {
      return put(parts, TrialQuestion.WATER, amount);
    }
    List<String> starches = new ArrayList<>(parts.getOrDefault(TrialQuestion.STARCH, List.of()));
    starches.addAll(share.isEmpty() ? List.of(what, amount) : List.of(what, amount, share));
    parts.put(TrialQuestion.STARCH, starches);
    return true;
  }

  private static boolean put(Map<Field, List<String>> parts, Field field, String words) {
    return parts.put(field, List.of(words.strip())) == null;
  }

  @Override
  public List<String> words(Field field) {
    List<String> written = others.words(field);
    return written.isEmpty() ? parts.getOrDefault(field, List.of()) : written;
  }

  /** A part of the line is known by its words, for nobody wrote an option. */
  @Override
  public String name(Field field) {
    return parts.containsKey(field) && others.words(field).isEmpty()
        ? String.join(" ", parts.get(field))
        : others.name(field);
  }

  @Override
  public String quoted(Field field) {
    return others.quoted(field);
  }
}
