package starchfilm.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;

/** Words as somebody might type them for an amount, a time or a file, and far worse ones. */
public final class RoughWords {
  private static final List<String> NUMBERS =
      List.of(
          "0",
          "1",
          "2",
          "3",
          "12",
          "150",
          "712",
          "0.5",
          "1,5",
          "1.234,5",
          "1,234.5",
          "-1",
          "+3",
          "1e3",
          "1e308",
          "1e309",
          "1e999999999",
          "1e-999999999",
          "NaN",
          "Infinity",
          "٣",
          "½",
          "007",
          "1 000",
          "1'000",
          "2147483648",
          "99999999999999999999",
          ".5",
          "5.",
          "1/2",
          "0x1F",
          "",
          "1..2",
          "1-2",
          "20-30",
          "12\u00b13",
          "1e-320",
          "\uff11\uff12",
          "24/7");
  private static final List<String> UNITS =
      List.of(
          "g", "kg", "mg", "ml", "l", "mm", "um", "µm", "μm", "m", "cm", "%", "C", "°C", "F", "K",
          "h", "d", "days", "min", "s", "N", "MPa", "m/s", "mol/l", "oz", "g ", " g", "ggg", "G",
          "", "percent", "h30", "weeks");
  private static final List<String> WORDS =
      List.of(
          "now",
          "today",
          "yesterday",
          "yesterday 18:30",
          "friday 7:15",
          "20 min ago",
          "18:30",
          "25:61",
          "2.4.2026 18:30",
          "31.2.2026",
          "29.2.",
          "0001-01-01 00:00",
          "9999-12-31 23:59",
          "2026-04-02T18:30Z",
          "2026-04-02T18:30+19:00",
          "yesterday 24:00",
          "+999999999999999999d",
          "2026-04-02 18:30",
          "2026-13-45",
          "+6h",
          "-6h",
          "+999999999h",
          "6h=712g",
          "=",
          "=712g",
          "now=",
          "now=now",
          "potato",
          "tapioca",
          "wheat",
          "glass",
          "upper",
          "both",
          "cracked",
          "still wet",
          "middle",
          "soft",
          "stiff",
          "sunflower",
          "a.json",
          "faulty.json",
          "missing.json",
          "letter.txt",
          "letter.html",
          "log.csv",
          ".",
          "..",
          "/",
          "",
          " ",
          "-",
          "--",
          "---",
          "@letter.txt",
          "@",
          "\u0000",
          "a\u0000b",
          "a/b/c",
          "~",
          "new.html",
          "new.json",
          "page.html",
          "/dev/null",
          "/proc/self/mem",
          "no/page.html",
          "<script>",
          "${sys:user.home}",
          "%s%n%d",
          "{0}",
          "\\",
          "\"",
          "'",
          "\n",
          "\u202E",
          "🧪",
          "\uD800",
          "I",
          "ı",
          "potato:20g",
          "potato=20g",
          "potato 20g",
          "20x30cm",
          "300x200mm",
          "20C,50%",
          "18-26C",
          "40-60%",
          "1,2,3",
          "true",
          "null",
          "99999",
          "*",
          "?");

  /** What people do write, to be spoilt. */
  private static final List<String> SPOKEN =
      List.of(
          "20 g potato, 6 g glycerol, 360 g water; 30x20cm glass, 3 mm; yesterday 18:30; kitchen"
              + " 20C,55%",
          "2 heaped tbsp potato starch; 1 tbsp glycerol; 1 1/2 cups water, poured yesterday"
              + " evening on 2 glass plates 20x30 cm at 60 C",
          "½ cup tapioca flour, 2 tbsp glycerin 88 %, 360 ml water in a 24cm round glass dish",
          "1 EL Speisestärke, 1 TL Glycerin, 1/4 l Wasser, gestern Abend",
          "2 cuillères à soupe de fécule, 25 cl d'eau, avant-hier à 7 h",
          "about 20 g cassava starch, ~6 g glycerol, 350-400 g water",
          "baking tray, three enamel trays, 2 of 20x30cm glass tare 600g rim 5mm",
          "12 in round, 8x8in glass, A4",
          "19-23 C by day, 15 C at night, 50-60 % RH, 0.2 m/s",
          "airing cupboard with a fan",
          "vor 20 Minuten, heute früh, letzten Freitag um halb acht",
          "the day before yesterday at noon, next tuesday 7:30 pm, in 3 1/2 days, friday",
          "40 of 60x90 mm",
          "glycerol 15,20,25 % of the starch",
          "6h=712g, +2d 4h=609 g, now=600g",
          "soft, 20 MPa, 30 %, 23 C 50 % for 2 weeks",
          "1.26 g/ml at 20 C, 100g 150g 160g, 88 % by label, 5 ml of 0.1 mol/l");

  private RoughWords() {}

  /**
   * What people write, spoilt at a few places: words left out, said twice, or put in place of
   * others, or a letter changed.
   *
   * @param random decides which
   * @return a line, now and then a sound one
   */
  public static String spoken(Random random) {
    List<String> words =
        new ArrayList<>(List.of(RoughJson.any(SPOKEN, random).split("(?<=[ ,;])", -1)));
    for (int n = random.nextInt(5); n > 0 && !words.isEmpty(); n--) {
      int at = random.nextInt(words.size());
      String word = words.get(at);
      switch (random.nextInt(7)) {
        case 0 -> words.remove(at);
        case 1 -> words.add(at, word);
        case 2 -> words.set(at, any(random));
        case 3 -> words.add(random.nextInt(words.size()), words.remove(at));
        case 4 -> words.set(at, RoughJson.any(SPOKEN, random));
        case 5 ->
            words.set(
                at,
                word.replaceFirst(
                    "[0-9]+", Matcher.quoteReplacement(RoughJson.any(NUMBERS, random))));
        default ->
            words.set(at, noise(random) + (word.isEmpty() ? "" : word.substring(1)) + any(random));
      }
    }
    return String.join("", words);
  }

  /**
   * One word.
   *
   * @param random decides which
   * @return what a hand might type
   */
  public static String any(Random random) {
    return switch (random.nextInt(12)) {
      case 0, 1, 2, 3 -> RoughJson.any(NUMBERS, random) + RoughJson.any(UNITS, random);
      case 4 -> random.nextInt(1_000) + RoughJson.any(UNITS, random);
      case 5 -> RoughJson.any(NUMBERS, random) + " " + RoughJson.any(UNITS, random);
      case 6 ->
          RoughJson.any(WORDS, random)
              + RoughJson.any(List.of(" ", "=", ",", ""), random)
              + RoughJson.any(NUMBERS, random);
      case 7 -> noise(random);
      case 8 -> spoken(random);
      default -> RoughJson.any(WORDS, random);
    };
  }

  private static String noise(Random random) {
    StringBuilder noise = new StringBuilder();
    int length = random.nextInt(random.nextInt(20) == 0 ? 2_000 : 20);
    for (int i = 0; i < length; i++) {
      noise.appendCodePoint(random.nextInt(random.nextBoolean() ? 128 : 0x11000));
    }
    return noise.toString();
  }
}
