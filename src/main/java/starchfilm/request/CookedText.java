package starchfilm.request;

import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import starchfilm.files.amount.KnownName;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.Moment;
import starchfilm.files.amount.MomentParser;
import starchfilm.files.json.PackedText;
import starchfilm.files.notebook.FileWord;
import starchfilm.material.recipe.GlycerolOrigin;

/**
 * What somebody cooked, in one line: {@code 20 g potato, 6 g glycerol 88%, 360 g water; 30x20cm
 * glass, 3 mm; yesterday 18:30; kitchen 20C,55%}. Parts stand apart by a comma with a blank, a
 * semicolon or a new line, in any order; what a part is shows from its words and units. What is
 * written field by field counts before the line.
 *
 * @param refusal why the line cannot be meant, a sentence; empty where it can
 */
record CookedText(Map<String, List<String>> parts, Entries others, String refusal)
    implements Entries {
  private static final int LONGEST = 2_000;

  /** What is no starch, each by words that stand in its name; the first is glycerol. */
  private static final List<WrittenIngredient> INGREDIENTS =
      PackedText.rows(CookedText.class, "ingredients.patterns", 3).stream()
          .map(row -> new WrittenIngredient(row.get(0), row.get(1), Pattern.compile(row.get(2))))
          .toList();

  private static final String POURED_AT = "so far.poured";
  private static final Pattern HOUR = Pattern.compile("[0-9][:h][0-9]|[0-9]\\s*(?:uhr|h|am|pm)\\b");

  private static final Pattern WORD = Pattern.compile("\\p{L}+");
  private static final List<String> ORIGINS =
      FileWord.all(new GlycerolOrigin[] {GlycerolOrigin.BOUGHT, GlycerolOrigin.RECOVERED});
  private static final Pattern APART =
      Pattern.compile(
          "\\s*(?:[;\\n]|,\\s)\\s*|\\s+(?:and|und|et|y|\\+)\\s+(?=[~0-9\u00BC-\u00BE])");
  private static final List<WrittenPart> FORMS =
      PackedText.rows(CookedText.class, "cooked-parts.patterns", 2).stream()
          .map(WrittenPart::of)
          .toList();

  private static final WrittenPart CALLED = form("new.name");
  private static final WrittenPart ROOM = form("place.name");
  private static final List<WrittenPart> POURED =
      FORMS.stream()
          .filter(
              form ->
                  Set.of("trial.poured-mass", "trial.wet", POURED_AT)
                      .contains(form.fields().get(0)))
          .toList();
  private static final Pattern POURED_WORD =
      Pattern.compile(
          "^(?:(?:poured|gegossen|coul\\u00E9e?|vers\\u00E9e?|vertid[oa])\\s+)?(?:(?:at|on|am|um|le|\\u00E0|el)\\s+)?"
              + "|\\s+(?:poured|gegossen)$",
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
  private static final Pattern ON_A_PLATE =
      Pattern.compile("(.+?)\\s+(?:on|onto|in|into)\\s+(?:each of\\s+)?(?:the\\s+)?(.+)");
  private static final Pattern EACH =
      Pattern.compile(
          "\\b(?:each|je|jeweils|chacune?|(?:a|per|one|every|pro|jede[rn]?|par|chaque|por|cada)"
              + " (?:plate|platte|plaque|placa))\\b",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern WARMTH = Pattern.compile("~?[0-9].*[0-9]\\s*\u00B0?[cf]");

  /** 21 c 50 %, which is no cup of something. */
  private static final Pattern AIR = Pattern.compile("~?[0-9][0-9.,-]*\\s*[cf],?\\s+[0-9].*%.*");

  private static final List<Pattern> AIR_UNITS =
      List.of(Pattern.compile("%"), Pattern.compile("(?i)[cf]\\b"), Pattern.compile("m/s"));

  /** What goes into the pot: the field of its amount, and of its share where it may have one. */
  private record WrittenIngredient(String amount, String share, Pattern words) {
    boolean isNamed(String what) {
      return words.matcher(what).find();
    }
  }

  /** How a part is written, and which field each of its groups is. */
  private record WrittenPart(Pattern pattern, List<String> fields) {
    static WrittenPart of(List<String> row) {
      return new WrittenPart(
          Pattern.compile(row.get(1), Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE),
          List.of(row.get(0).split(", ", -1)));
    }

    boolean isOf(String part) {
      return pattern.matcher(part).matches();
    }

    /** Whether it is such a part and the first of its kind; empty where it is none. */
    Optional<Boolean> taken(String part, Map<String, List<String>> parts) {
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

  private static WrittenPart form(String first) {
    return FORMS.stream()
        .filter(form -> form.fields().get(0).equals(first))
        .findFirst()
        .orElseThrow();
  }

  /** Takes a line apart; what is not understood is refused with what was. */
  static CookedText of(String text, Entries others, Clock clock) {
    if (text.length() > LONGEST) {
      return new CookedText(
          Map.of(),
          others,
          "what you cooked: %s characters given, allowed %s; write amounts, plate, when and where in one line"
              .formatted(text.length(), LONGEST));
    }
    Map<String, List<String>> parts = new HashMap<>();
    List<String> strange = new ArrayList<>();
    List<String> understood = new ArrayList<>();
    for (String part : APART.split(text.strip(), 0)) {
      String words = part.replaceAll("[\\p{Cntrl}\\s]+", " ").strip().replaceFirst("[.,]$", "");
      if (!words.isEmpty()) {
        boolean isFirstPour = !parts.containsKey("trial.poured-mass");
        (isTaken(words, parts) || isTime(words, parts, clock) ? understood : strange).add(words);
        if (isFirstPour && parts.containsKey("trial.poured-mass") && EACH.matcher(words).find()) {
          parts.put("line.each", List.of(words));
        }
      }
    }
    String refusal =
        strange.isEmpty()
            ? ""
            : """
              what you cooked: %s not understood%s; write parts such as 20 g potato, 6 g glycerol, \
              360 g water; 30x20cm glass, 3 mm; yesterday 18:30; kitchen 20C,55%%"""
                .formatted(
                    quoted(strange),
                    understood.isEmpty() ? "" : ", but " + quoted(understood) + " is");
    return new CookedText(Map.copyOf(parts), others, refusal);
  }

  /** A time in any words that a note takes, too. */
  private static boolean isTime(String part, Map<String, List<String>> parts, Clock clock) {
    String time = POURED_WORD.matcher(part).replaceAll("");
    try {
      return new MomentParser(clock).parse(time) instanceof Moment.ByTheClock
          && put(parts, POURED_AT, time);
    } catch (MistypedException noTime) {
      return false;
    }
  }

  private static String quoted(List<String> parts) {
    return parts.stream()
        .limit(6)
        .map(part -> '"' + (part.length() > 40 ? part.substring(0, 40) + "..." : part) + '"')
        .collect(Collectors.joining(", "));
  }

  private static boolean isTaken(String part, Map<String, List<String>> parts) {
    String low = part.toLowerCase(Locale.ROOT);
    Optional<Boolean> called = CALLED.taken(part, parts);
    if (called.isPresent()) {
      return called.get();
    }
    Optional<String> origin =
        WORD.matcher(low)
            .results()
            .map(MatchResult::group)
            .filter(word -> KnownName.among(word, ORIGINS).isPresent())
            .findFirst();
    if (origin.isPresent()) {
      String rest = low.replace(origin.get(), " ").replaceAll(" +", " ").strip();
      return (rest.isEmpty() || (INGREDIENTS.get(0).isNamed(rest) && isTaken(rest, parts)))
          && put(parts, "jar.origin", origin.get());
    }
    Matcher split = ON_A_PLATE.matcher(part);
    if (split.matches() && WrittenPlates.isLike(split.group(2))) {
      // On a plate lies what was poured, also where only its mass is written.
      String poured = "poured " + split.group(1);
      String what = isPour(poured) ? poured : split.group(1);
      if (isPour(what) || WrittenStarch.AMOUNT_FIRST.matcher(what).matches()) {
        return isTaken(what, parts) && isTaken(split.group(2), parts);
      }
    }
    if (WrittenPlates.isLike(low)) {
      return also("trial.plate", parts)
          .add(part.replaceFirst("^(?i)(?:poured )?(?:on|in|into|onto) ", ""));
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

  /** Whether it says how much was poured, how thick or when. */
  private static boolean isPour(String what) {
    return POURED.stream().anyMatch(form -> form.isOf(what));
  }

  private static boolean isIngredient(String low) {
    if (AIR.matcher(low).matches()) {
      return false;
    }
    Matcher word = WrittenStarch.WORD_FIRST.matcher(low);
    // "kitchen 20C 50%" is a room, "water 2 c" two cups.
    return WrittenStarch.AMOUNT_FIRST.matcher(low).matches()
        || (word.matches() && !WARMTH.matcher(word.group("amount")).matches());
  }

  private static boolean isIngredientTaken(String low, Map<String, List<String>> parts) {
    Matcher first = WrittenStarch.AMOUNT_FIRST.matcher(low);
    Matcher last = WrittenStarch.WORD_FIRST.matcher(low);
    if (!first.matches() && !last.matches()) {
      return false;
    }
    Matcher read = first.matches() ? first : last;
    String amount = read.group("amount");
    String what = read.group("what").strip();
    String share = read.group("share").strip();
    for (WrittenIngredient one : INGREDIENTS) {
      if (one.isNamed(what)) {
        return put(parts, one.amount(), amount)
            && (share.isEmpty() || one.share().isEmpty() || put(parts, one.share(), share));
      }
    }
    return also("trial.starch", parts)
        .addAll(share.isEmpty() ? List.of(what, amount) : List.of(what, amount, share));
  }

  /** The words of a field that may be written more than once. */
  private static List<String> also(String field, Map<String, List<String>> parts) {
    return parts.computeIfAbsent(field, none -> new ArrayList<>());
  }

  private static boolean put(Map<String, List<String>> parts, String field, String words) {
    String part = words.strip();
    List<String> before = parts.put(field, List.of(part));
    if (before == null) {
      return true;
    }
    String first = before.get(0);
    if (field.equals(WrittenPlace.ROOM) && isBeside(first, part)) {
      // Warmth and humidity may stand apart: 21 \u00B0C, 50 %.
      parts.put(field, List.of(first + ", " + part));
      return true;
    }
    if (field.equals(POURED_AT) && !HOUR.matcher(first).find() && HOUR.matcher(part).find()) {
      // Day and hour may stand apart: yesterday, 18:30.
      parts.put(field, List.of(first + " " + part));
      return true;
    }
    return false;
  }

  /** Whether both are figures of the air, and not of the same unit. */
  private static boolean isBeside(String before, String part) {
    return Character.isDigit(before.charAt(0))
        && Character.isDigit(part.charAt(0))
        && AIR_UNITS.stream().noneMatch(u -> u.matcher(before).find() && u.matcher(part).find());
  }

  @Override
  public List<String> words(Field field) {
    List<String> written = others.words(field);
    return written.isEmpty() ? parts.getOrDefault(field.key(), List.of()) : written;
  }

  /** A part of the line is known by its words, for nobody wrote an option. */
  @Override
  public String name(Field field) {
    return parts.containsKey(field.key()) && others.words(field).isEmpty()
        ? String.join(" ", parts.get(field.key()))
        : others.name(field);
  }

  @Override
  public String quoted(Field field) {
    return others.quoted(field);
  }
}
