package starchfilm.proof;

import java.util.List;
import java.util.Random;

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

  private RoughWords() {}

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
