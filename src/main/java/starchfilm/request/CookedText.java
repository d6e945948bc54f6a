package starchfilm.request;

import java.time.Clock;
import java.util.ArrayList;
import java.util.Collections;
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
import java.util.stream.Stream;
import starchfilm.files.amount.KnownName;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.Moment;
import starchfilm.files.amount.MomentParser;
import starchfilm.files.json.PackedPatterns;
import starchfilm.files.json.PackedText;
import starchfilm.material.recipe.GlycerolOrigin;
import starchfilm.numerics.units.Named;
import starchfilm.request.WrittenPart.Said;

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

  /** A part that is longer needs its commas. */
  private static final int LONGEST_PART = 200;

  /** What is no starch, each by words that stand in its name; the first is glycerol. */
  private static final List<WrittenIngredient> INGREDIENTS =
      PackedText.rows(CookedText.class, "ingredients.patterns", 3).stream()
          .map(row -> new WrittenIngredient(row.get(0), row.get(1), Pattern.compile(row.get(2))))
          .toList();

  private static final WrittenIngredient GLYCEROL = INGREDIENTS.get(0);
  private static final String POURED_AT = "so far.poured";
  private static final PackedPatterns TYPED =
      PackedPatterns.of(CookedText.class, "cooked.patterns");
  private static final Pattern HOUR = TYPED.get("hour");

  private static final Pattern WORD = Pattern.compile("\\p{L}+");
  private static final List<String> ORIGINS =
      Named.all(new GlycerolOrigin[] {GlycerolOrigin.BOUGHT, GlycerolOrigin.RECOVERED});
  private static final Pattern APART = TYPED.get("apart");
  private static final WrittenPart CALLED = WrittenPart.beginningWith("new.name");
  private static final WrittenPart ROOM = WrittenPart.beginningWith("place.name");
  private static final List<WrittenPart> POURED =
      WrittenPart.ALL.stream()
          .filter(
              form ->
                  Set.of("trial.poured-mass", "trial.wet", POURED_AT)
                      .contains(form.fields().get(0)))
          .toList();
  private static final Pattern POURED_WORD = TYPED.get("poured");
  private static final Pattern ON_A_PLATE = TYPED.get("on a plate");
  private static final Pattern EACH = TYPED.get("each");
  private static final Pattern NONE_OF = TYPED.get("none of");
  private static final Pattern FROM_SHOP = TYPED.get("from shop");
  private static final Pattern FROM_JAR = TYPED.get("from jar");

  /** What else is said of where glycerol comes from: recovered from oil, bought in a shop. */
  private static final Pattern SOURCE = TYPED.get("source");

  /** A day in figures, which may be meant in two ways. */
  private static final Pattern DATE = TYPED.get("date");

  /** A rough number; written short, or "about" is taken for the name of what it measures. */
  private static final Pattern ABOUT = TYPED.get("about");

  private static final Pattern WARMTH = TYPED.get("warmth");

  /** 21 c 50 %, which is no cup of something. */
  private static final Pattern AIR = TYPED.get("air");

  /** A share alone, which may be the humidity or what the ingredient before it holds. */
  private static final Pattern BARE_SHARE = TYPED.get("bare share");

  private static final Pattern BRACKETED_SHARE = TYPED.get("bracketed share");

  private static final List<Pattern> AIR_UNITS =
      List.of(Pattern.compile("%"), Pattern.compile("(?i)[cf]\\b"), Pattern.compile("m/s"));

  /** What goes into the pot: the field of its amount, and of its share where it may have one. */
  private record WrittenIngredient(String amount, String share, Pattern words) {
    boolean isNamed(String what) {
      return words.matcher(what).find();
    }
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
    Map<String, List<String>> fields = new HashMap<>();
    Map<String, String> parts = new HashMap<>();
    List<String> strange = new ArrayList<>();
    List<String> understood = new ArrayList<>();
    List<String> refusals = new ArrayList<>();
    List<Said> told = new ArrayList<>();
    MomentParser moments = new MomentParser(clock);
    for (String apart : APART.split(BRACKETED_SHARE.matcher(text.strip()).replaceAll("$1"), 0)) {
      String part =
          ABOUT
              .matcher(apart.replaceAll("[\\p{Cntrl}\\s]+", " ").strip())
              .replaceAll("~")
              .replaceFirst("[.,]$", "");
      try {
        List<Said> said = said(part, moments);
        for (Said one : said) {
          told.stream().reduce((a, b) -> b).ifPresent(last -> refuseShareOfEither(last, one));
          told.add(one);
          put(fields, parts, one, part);
        }
        if (said.isEmpty() && DATE.matcher(part).matches()) {
          moments.noonOf(POURED_WORD.matcher(part).replaceAll(""));
        }
        if (!part.isEmpty()) {
          (said.isEmpty() ? strange : understood).add(part);
        }
        if (said.stream().anyMatch(one -> one.field().equals("trial.poured-mass"))
            && EACH.matcher(part).find()) {
          fields.put("line.each", List.of(part));
        }
      } catch (IllegalArgumentException why) {
        refusals.add(String.valueOf(why.getMessage()));
      }
    }
    if (!strange.isEmpty()) {
      refusals.add(
          """
          %s not understood%s; write parts such as 20 g potato, 6 g glycerol, \
          360 g water; 30x20cm glass, 3 mm; yesterday 18:30; kitchen 20C,55%%\
          """
              .formatted(
                  quoted(strange),
                  understood.isEmpty() ? "" : "; understood so far: " + quoted(understood)));
    }
    return new CookedText(
        Map.copyOf(fields),
        others,
        refusals.isEmpty() ? "" : "what you cooked: " + String.join("; ", refusals));
  }

  /** Notes what a part says; a thing is said once, but starches and plates may be several. */
  private static void put(
      Map<String, List<String>> fields, Map<String, String> parts, Said said, String part) {
    String field = said.field();
    List<String> before = fields.getOrDefault(field, List.of());
    String words = said.words().strip();
    if (!before.isEmpty() && goesOn(field, before.get(0), words)) {
      fields.put(field, List.of(before.get(0) + " " + words));
    } else if (before.isEmpty() || Field.of(field).isRepeatable()) {
      fields.put(field, Stream.concat(before.stream(), Stream.of(words)).toList());
    } else {
      throw new IllegalArgumentException(
          "%s given beside %s, which says the same thing; leave one out"
              .formatted(quoted(List.of(part)), quoted(List.of(parts.getOrDefault(field, "")))));
    }
    parts.put(field, part);
  }

  /** Refuses 6 g glycerol, 85 %: that may be the glycerol's share or the humidity of the room. */
  private static void refuseShareOfEither(Said last, Said said) {
    boolean mayHaveShare =
        last.field().equals("trial.starch")
            || INGREDIENTS.stream()
                .anyMatch(one -> one.amount().equals(last.field()) && !one.share().isEmpty());
    if (mayHaveShare
        && !last.words().endsWith("%")
        && said.field().equals(WrittenPlace.ROOM)
        && BARE_SHARE.matcher(said.words()).matches()) {
      throw new IllegalArgumentException(
          ("\"%s\" may be of the %s or the humidity of the room; write it directly behind the amount,"
                  + " such as 6 g glycerol 85%%, or as %s RH")
              .formatted(said.words(), last.field().replace("trial.", ""), said.words()));
    }
  }

  private static String quoted(List<String> parts) {
    return parts.stream()
        .limit(6)
        .map(part -> '"' + (part.length() > 40 ? part.substring(0, 40) + "..." : part) + '"')
        .collect(Collectors.joining(", "));
  }

  /** What a part says, which may be several parts without a comma between; nothing if unknown. */
  private static List<Said> said(String part, MomentParser moments) {
    List<Said> whole = alone(part, moments);
    if (part.length() > LONGEST_PART || isReadable(whole, moments)) {
      return whole;
    }
    List<String> words = List.of(part.split(" ", -1));
    // What the words say from each on to the end, the longest first part before shorter ones.
    List<List<Said>> from = new ArrayList<>(Collections.nCopies(words.size() + 1, List.of()));
    for (int start = words.size() - 1; start >= 0; start--) {
      for (int end = words.size(); end > start && from.get(start).isEmpty(); end--) {
        List<Said> first = alone(String.join(" ", words.subList(start, end)), moments);
        if (isReadable(first, moments)) {
          from.set(start, end == words.size() ? first : both(first, from.get(end)));
        }
      }
    }
    return from.get(0).isEmpty() ? whole : from.get(0);
  }

  /** Whether it is no more than a time, air or plates; the words for one may hold any others. */
  private static boolean isReadable(List<Said> part, MomentParser moments) {
    return !part.isEmpty()
        && part.stream()
            .allMatch(
                said ->
                    switch (said.field()) {
                      case POURED_AT -> isTime(said.words(), moments);
                      case WrittenPlace.ROOM ->
                          !Character.isDigit(said.words().charAt(0))
                              || WrittenAir.isAir(said.words());
                      case "trial.plate" -> WrittenPlates.isReadable(said.words());
                      default -> true;
                    });
  }

  private static boolean isTime(String words, MomentParser moments) {
    try {
      return moments.noonOf(words).isPresent() || moments.parse(words) instanceof Moment.ByTheClock;
    } catch (MistypedException noTime) {
      return false;
    }
  }

  /** Of parts that stand together, all are understood or none. */
  private static List<Said> both(List<Said> one, List<Said> other) {
    return one.isEmpty() || other.isEmpty()
        ? List.of()
        : Stream.concat(one.stream(), other.stream()).toList();
  }

  /** What one part says, such as a time in any words that a note takes, too. */
  private static List<Said> alone(String part, MomentParser moments) {
    List<Said> said = said(part);
    String time = POURED_WORD.matcher(part).replaceAll("");
    return said.isEmpty() && isTime(time, moments) ? List.of(new Said(POURED_AT, time)) : said;
  }

  private static List<Said> said(String part) {
    String low = part.toLowerCase(Locale.ROOT);
    List<Said> called = CALLED.said(part);
    if (!called.isEmpty()) {
      return called;
    }
    Optional<String> origin =
        WORD.matcher(low)
            .results()
            .map(MatchResult::group)
            .filter(word -> KnownName.among(word, ORIGINS).isPresent())
            .findFirst();
    if (origin.isPresent()) {
      List<Said> from = List.of(new Said("jar.origin", origin.get()));
      String rest = SOURCE.matcher(low.replace(origin.get(), " ")).replaceAll(" ").strip();
      return rest.isEmpty()
          ? from
          : GLYCEROL.isNamed(rest) ? both(said(rest.replaceAll(" +", " ")), from) : List.of();
    }
    Matcher none = NONE_OF.matcher(low);
    for (WrittenIngredient one : INGREDIENTS) {
      if (none.matches() && one.isNamed(none.group(1))) {
        return List.of(new Said(one.amount(), "0 g"));
      }
    }
    Matcher shop = FROM_SHOP.matcher(part);
    if (shop.matches() && GLYCEROL.isNamed(shop.group(1).toLowerCase(Locale.ROOT))) {
      Said bought = new Said("jar.origin", Named.of(GlycerolOrigin.BOUGHT));
      return both(said(shop.group(1)), List.of(bought, new Said("line.shop", shop.group(2))));
    }
    Matcher jar = FROM_JAR.matcher(part);
    if (jar.matches() && GLYCEROL.isNamed(jar.group(1).toLowerCase(Locale.ROOT))) {
      return both(said(jar.group(1)), List.of(new Said("jar.kept", jar.group(2))));
    }
    Matcher split = ON_A_PLATE.matcher(part);
    if (split.matches() && WrittenPlates.isLike(split.group(2))) {
      // On a plate lies what was poured, also where only its mass is written.
      String poured = "poured " + split.group(1);
      String what = isPour(poured) ? poured : split.group(1);
      if (isPour(what) || WrittenStarch.AMOUNT_FIRST.matcher(what).matches()) {
        return both(said(what), said(split.group(2)));
      }
    }
    if (WrittenPlates.isLike(low)) {
      return List.of(
          new Said("trial.plate", part.replaceFirst("^(?i)(?:poured )?(?:on|in|into|onto) ", "")));
    }
    if (UsualPlace.called(low).isPresent()) {
      return List.of(new Said(WrittenPlace.ROOM, low));
    }
    return WrittenPart.ALL.stream()
        .filter(form -> !form.equals(ROOM) || !isIngredient(low))
        .map(form -> form.said(part))
        .filter(said -> !said.isEmpty())
        .findFirst()
        .orElseGet(() -> ingredient(low));
  }

  /** Whether it says how much was poured, how thick or when. */
  private static boolean isPour(String what) {
    return POURED.stream().anyMatch(form -> !form.said(what).isEmpty());
  }

  private static boolean isIngredient(String low) {
    if (AIR.matcher(low).matches() || WARMTH.matcher(low).matches()) {
      return false;
    }
    Matcher word = WrittenStarch.WORD_FIRST.matcher(low);
    // "kitchen 20C 50%" is a room, "water 2 c" two cups.
    return WrittenStarch.AMOUNT_FIRST.matcher(low).matches()
        || (word.matches() && !WARMTH.matcher(word.group("amount")).matches());
  }

  private static List<Said> ingredient(String low) {
    Matcher first = WrittenStarch.AMOUNT_FIRST.matcher(low);
    Matcher last = WrittenStarch.WORD_FIRST.matcher(low);
    if (!first.matches() && !last.matches()) {
      return List.of();
    }
    Matcher read = first.matches() ? first : last;
    String amount = read.group("amount");
    String what = read.group("what").strip();
    String share = read.group("share").strip();
    for (WrittenIngredient one : INGREDIENTS) {
      if (one.isNamed(what)) {
        Said named = new Said(one.amount(), amount);
        return share.isEmpty() || one.share().isEmpty()
            ? List.of(named)
            : List.of(named, new Said(one.share(), share));
      }
    }
    // "rim 3 mm" and "2500 m" name no starch.
    if (!WrittenStarch.isKind(what) && !Quantities.isMassOrVolume(amount)) {
      return List.of();
    }
    return Stream.of(what, amount, share)
        .filter(words -> !words.isEmpty())
        .map(words -> new Said("trial.starch", words))
        .toList();
  }

  /**
   * Whether warmth and humidity stand apart, or day and hour: 21 \u00B0C, 50 %; yesterday, 18:30.
   */
  private static boolean goesOn(String field, String before, String part) {
    return switch (field) {
      case WrittenPlace.ROOM ->
          WrittenAir.isAir(before)
              && WrittenAir.isAir(part)
              && AIR_UNITS.stream()
                  .noneMatch(u -> u.matcher(before).find() && u.matcher(part).find());
      case POURED_AT -> !HOUR.matcher(before).find() && HOUR.matcher(part).find();
      default -> false;
    };
  }

  @Override
  public List<String> words(Field field) {
    List<String> written = others.words(field);
    return written.isEmpty() ? parts.getOrDefault(field.key(), List.of()) : written;
  }

  /** A part of the line is known by its words, for nobody wrote an option. */
  @Override
  public String name(Field field) {
    return isInLine(field) ? String.join(" ", parts.get(field.key())) : others.name(field);
  }

  @Override
  public String quoted(Field field) {
    return isInLine(field) ? "\u201C" + name(field) + "\u201D" : others.quoted(field);
  }

  private boolean isInLine(Field field) {
    return parts.containsKey(field.key()) && others.words(field).isEmpty();
  }
}
