package starchfilm.request;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import starchfilm.files.amount.Dimension;
import starchfilm.files.amount.KnownName;
import starchfilm.files.amount.TypedAmount;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.Located.Place;
import starchfilm.files.json.Located.TextValue;
import starchfilm.files.json.PackedPatterns;
import starchfilm.material.ingredient.Flour;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.numerics.units.Named;

/**
 * A starch as people write it, its amount and moisture perhaps left out: {@code potato 400g 12%},
 * {@code 2 tbsp of cornstarch}, {@code rice flour}.
 *
 * @param mass its amount as typed, a mass or a volume
 * @param moisture its moisture as typed
 */
record WrittenStarch(
    StarchKind kind, boolean isFlour, Optional<String> mass, Optional<String> moisture) {
  private static final List<StarchKind> KINDS = List.of(StarchKind.values());
  private static final List<String> NAMES = Named.all(StarchKind.values());
  private static final PackedPatterns TYPED =
      PackedPatterns.of(
          WrittenStarch.class, "starch.patterns", Map.of("within", TypedAmount.WITHIN));
  private static final Pattern FLOUR = TYPED.get("flour");
  private static final Pattern STARCH_BY_NAME = TYPED.get("starch by name");
  private static final Pattern IS_AMOUNT = TYPED.get("is amount");

  /** An ingredient behind its amount, and perhaps its share: 6 g glycerol 88 %. */
  static final Pattern AMOUNT_FIRST = TYPED.get("amount first");

  /** An ingredient in front of it: glycerol: 6 g 88 %. */
  static final Pattern WORD_FIRST = TYPED.get("word first");

  /**
   * A trial with it.
   *
   * @param portion where it stands there, with its dot; empty for the trial's own fields
   * @param amount how its mass is read
   * @param at the place of a field that it fills
   */
  ObjectValue into(
      ObjectValue trial,
      String portion,
      Function<String, TypedAmount> amount,
      Function<String, Place> at) {
    ObjectValue with =
        trial.with(portion + "kind", new TextValue(at.apply("kind"), kind.tradeName()));
    if (mass.isPresent()) {
      with =
          Quantities.into(with, portion + "mass_g", amount.apply(mass.get()), at.apply("mass_g"));
    }
    if (isFlour) {
      with = with(with, portion, "inert_pct", Flour.range(kind), at);
    }
    return moisture.isPresent() ? with(with, portion, "moisture_pct", moisture.get(), at) : with;
  }

  private static ObjectValue with(
      ObjectValue trial, String portion, String field, String share, Function<String, Place> at) {
    TypedAmount amount = TypedAmount.of(Dimension.SHARE, share);
    return trial.with(portion + field, amount.written("%", at.apply(field)));
  }

  String remark() {
    return """
    Flour is not starch: of %s flour %s counts as solids that are no starch (protein, fibre, \
    fat, ash), the rest as %s starch with its water.\
    """
        .formatted(kind, Flour.range(kind), kind);
  }

  /** Each kind is followed by what is known of it, so a word that is no amount begins a new one. */
  static List<WrittenStarch> all(List<String> typed) {
    // A whole entry may stand in one pair of quotes, as a plate does.
    List<String> words = new ArrayList<>();
    for (String entry : typed) {
      Matcher first = AMOUNT_FIRST.matcher(entry.strip());
      String word =
          isAmount(entry.strip()) && first.matches() && isNearlyKind(first.group("what"))
              ? first.group("what") + " " + first.group("amount") + first.group("share")
              : entry;
      int kind =
          isAmount(word)
              ? word.length()
              : word.replaceFirst("\\s+[~0-9\u00BC-\u00BE].*", "").length();
      words.add(word.substring(0, kind));
      if (kind < word.length()) {
        words.addAll(List.of(word.substring(kind).strip().split("\\s+(?=[0-9.,]+\\s*%)")));
      }
    }
    List<WrittenStarch> list = new ArrayList<>();
    int i = 0;
    while (i < words.size()) {
      String name = words.get(i++);
      Optional<String> grain = grain(name);
      StarchKind kind = starch(grain.orElse(name));
      Optional<String> mass = Optional.empty();
      Optional<String> moisture = Optional.empty();
      if (i < words.size() && isAmount(words.get(i)) && !isShare(words.get(i))) {
        mass = Optional.of(words.get(i++));
      }
      if (i < words.size() && isShare(words.get(i))) {
        moisture = Optional.of(words.get(i++));
      }
      list.add(new WrittenStarch(kind, grain.isPresent(), mass, moisture));
    }
    return list;
  }

  /** What a flour is made of; empty for what is no flour. */
  private static Optional<String> grain(String typed) {
    Matcher flour = FLOUR.matcher(typed.strip());
    if (!flour.matches() || STARCH_BY_NAME.matcher(typed).matches()) {
      return Optional.empty();
    }
    String grain = (flour.group(1) + flour.group(2)).strip();
    return Optional.of(grain.isEmpty() ? "wheat" : grain);
  }

  private static StarchKind starch(String typed) {
    return KnownName.find(typed, KINDS, kind -> List.of(kind.tradeName()));
  }

  /** Whether it names a starch or a flour. */
  static boolean isKind(String typed) {
    return grain(typed).isPresent() || KnownName.among(typed, NAMES).isPresent();
  }

  private static boolean isNearlyKind(String typed) {
    return isKind(typed) || KnownName.whatThen(typed, NAMES).isPresent();
  }

  private static boolean isAmount(String typed) {
    return IS_AMOUNT.matcher(typed).find();
  }

  private static boolean isShare(String typed) {
    return isAmount(typed) && typed.strip().endsWith("%");
  }
}
