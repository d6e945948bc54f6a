package starchfilm.proof;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Spoils JSON by its grammar: tokens are exchanged, left out, doubled and replaced, values are
 * nested and stretched, and the text is put into other encodings.
 *
 * <p>Most results still look like a trial file, so that they get past the first check and try the
 * later ones.
 */
public final class RoughJson {
  private static final Pattern TOKEN =
      Pattern.compile("\"(?:[^\"\\\\]|\\\\.)*\"|[-+0-9.eE]+|[A-Za-z]+|[{}\\[\\]:,]|\\s+|.");
  private static final List<Charset> ENCODINGS =
      List.of(
          StandardCharsets.UTF_16,
          StandardCharsets.UTF_16LE,
          StandardCharsets.UTF_16BE,
          StandardCharsets.ISO_8859_1,
          Charset.forName("UTF-32"),
          Charset.forName("windows-1252"),
          Charset.forName("IBM037"));
  private static final List<String> SIZES =
      List.of(
          "0",
          "-0",
          "0.0",
          "-1",
          "1",
          "0.5",
          "0.001",
          "1e-9",
          "5",
          "50",
          "100",
          "100.01",
          "1e3",
          "1e5",
          "100000",
          "1e308",
          "-1e308",
          "1e309",
          "5e-324",
          "1e-400",
          "0e999999999",
          "0e-999999999",
          "1e999999999",
          "1e-999999999",
          "1e-9999999999",
          "0e99999999999",
          "2147483648",
          "9223372036854775808",
          "0.30000000000000004",
          "NaN",
          "Infinity",
          "-Infinity",
          "007",
          ".5",
          "5.",
          "+5",
          "1,5",
          "0x10",
          "1_000",
          "1e",
          "--1",
          "10000e-4");
  private static final List<String> VALUES =
      List.of(
          "null",
          "true",
          "false",
          "\"\"",
          "\" \"",
          "\"unknown\"",
          "\"Unknown\"",
          "{}",
          "[]",
          "[[]]",
          "[null]",
          "[{}]",
          "{\"from\": 1}",
          "{\"from\": 5, \"to\": 1}",
          "{\"from\": 1, \"to\": 1}",
          "{\"from\": 0, \"to\": 0}",
          "{\"from\": 0, \"to\": 100}",
          "{\"from\": 1, \"to\": 1e300}",
          "{\"from\": \"unknown\", \"to\": 2}",
          "{\"from\": {\"from\": 1, \"to\": 2}, \"to\": 3}",
          "\"+6h\"",
          "\"+0h\"",
          "\"-6h\"",
          "\"+999999999h\"",
          "\"+99999999999999999999h\"",
          "\"+1e9h\"",
          "\"2026-04-03T10:00\"",
          "\"2026-02-30T10:00\"",
          "\"9999-12-31T23:59\"",
          "\"-9999-12-31T23:59\"",
          "\"+999999999-12-31T23:59\"",
          "\"0000-00-00T00:00\"",
          "\"2026-04-03T24:00\"",
          "\"2026-04-03\"",
          "\"20 g\"",
          "\"1,5\"",
          "\"x\"",
          "\"\\u0000\"",
          "\"\\ud800\"",
          "\"<script>alert(1)</script>\"",
          "\"${7*7}\"",
          "\"[[${#dates.now()}]]\"",
          "\"../../../etc/passwd\"",
          "\"/dev/zero\"",
          "\"/dev/stdin\"",
          "\".\"",
          "\"\\u0000.csv\"",
          "\"a.json\"",
          "\"log.csv\"",
          "\"\u202Eabc\"",
          "\"\uD83E\uDDEA\"",
          "\"I\u0307\"",
          "\"potato\"",
          "\"tapioca\"",
          "\"glass\"",
          "\"wood\"",
          "\"both\"");
  private static final List<String> NAMES =
      List.of(
          "name",
          "recipe",
          "starch",
          "kind",
          "mass_g",
          "moisture_pct",
          "glycerol",
          "purity_pct",
          "water",
          "vinegar",
          "acidity_pct",
          "cook",
          "minutes",
          "top_C",
          "water_lost_g",
          "pour",
          "plate",
          "length_mm",
          "width_mm",
          "tare_g",
          "poured_g",
          "wet_thickness_mm",
          "room",
          "air_C",
          "rh_pct",
          "air_speed_m_per_s",
          "log_csv",
          "use",
          "after_days",
          "weighings",
          "at",
          "faults",
          "pulls",
          "rating",
          "remarks",
          "photos",
          "poured_at",
          "scale_g",
          "plates",
          "mass_kg",
          "glycerine",
          "rh",
          "_mine",
          "$schema",
          "",
          " ",
          "__proto__",
          "recipe.starch");

  private RoughJson() {}

  /**
   * Spoils a text.
   *
   * @param sound a trial file
   * @param random decides how
   * @return what could stand in a file
   */
  public static byte[] spoilt(String sound, Random random) {
    List<String> tokens = tokens(sound);
    for (int n = random.nextInt(4) + (random.nextInt(4) == 0 ? 4 : 1); n > 0; n--) {
      spoil(tokens, random);
    }
    String text = String.join("", tokens);
    return random.nextInt(5) == 0
        ? spoiltBytes(text, random)
        : text.getBytes(StandardCharsets.UTF_8);
  }

  private static List<String> tokens(String text) {
    List<String> tokens = new ArrayList<>();
    Matcher matcher = TOKEN.matcher(text);
    while (matcher.find()) {
      tokens.add(matcher.group());
    }
    return tokens;
  }

  private static void spoil(List<String> tokens, Random random) {
    if (tokens.isEmpty()) {
      tokens.add("{}");
    }
    int at = random.nextInt(tokens.size());
    switch (random.nextInt(12)) {
      case 0 -> tokens.set(at, tokens.set(random.nextInt(tokens.size()), tokens.get(at)));
      case 1 -> tokens.remove(at);
      case 2 -> tokens.add(at, tokens.get(random.nextInt(tokens.size())));
      case 3 -> tokens.subList(at, Math.min(tokens.size(), at + random.nextInt(40))).clear();
      case 4 -> {
        List<String> part =
            List.copyOf(tokens.subList(at, Math.min(tokens.size(), at + random.nextInt(60))));
        tokens.addAll(random.nextInt(tokens.size()), part);
      }
      case 5 -> rename(tokens, at, random);
      case 6 -> tokens.set(at, value(random, 0));
      default -> replaceValue(tokens, at, random);
    }
  }

  /** Puts another name in the place of the next one. */
  private static void rename(List<String> tokens, int from, Random random) {
    for (int i = from; i < tokens.size() - 1; i++) {
      if (tokens.get(i + 1).equals(":")) {
        tokens.set(i, '"' + any(NAMES, random) + '"');
        return;
      }
    }
  }

  /** Puts another value in the place of the next one; its size stays likely half of the time. */
  private static void replaceValue(List<String> tokens, int from, Random random) {
    for (int i = Math.max(2, from); i < tokens.size(); i++) {
      String token = tokens.get(i);
      boolean follows = tokens.get(i - 1).isBlank() && tokens.get(i - 2).equals(":");
      if (follows && !token.equals("{") && !token.equals("[")) {
        boolean number = token.matches("-?[0-9.]+");
        tokens.set(i, number && random.nextBoolean() ? scaled(token, random) : value(random, 0));
        return;
      }
    }
  }

  private static String scaled(String number, Random random) {
    double factor = Math.pow(10, random.nextGaussian());
    return String.valueOf(Double.parseDouble(number) * factor);
  }

  /** Any value of the grammar, often one that means something elsewhere in the file. */
  private static String value(Random random, int depth) {
    return switch (random.nextInt(depth > 3 ? 6 : 12)) {
      case 0, 1, 2 -> any(SIZES, random);
      case 3, 4, 5 -> any(VALUES, random);
      case 6 -> "9".repeat(1 + random.nextInt(random.nextBoolean() ? 40 : 5_000));
      case 7 -> {
        int deep = 1 + random.nextInt(random.nextBoolean() ? 40 : 20_000);
        yield "[".repeat(deep) + (random.nextBoolean() ? "]".repeat(deep) : "");
      }
      case 8 -> '"' + "x".repeat(random.nextInt(random.nextBoolean() ? 300 : 150_000)) + '"';
      case 9 -> "[" + value(random, depth + 1) + ", " + value(random, depth + 1) + "]";
      case 10 -> "{\"a\":".repeat(1 + random.nextInt(60)) + "1";
      default ->
          "{\""
              + any(NAMES, random)
              + "\": "
              + value(random, depth + 1)
              + ", \""
              + any(NAMES, random)
              + "\": "
              + value(random, depth + 1)
              + "}";
    };
  }

  /**
   * Spoils a text byte by byte.
   *
   * @param text any text
   * @param random decides how
   * @return its bytes: cut off, with some exchanged, or in another encoding
   */
  public static byte[] spoiltBytes(String text, Random random) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return switch (random.nextInt(6)) {
      case 0 -> text.getBytes(any(ENCODINGS, random));
      case 1 -> joined(new byte[] {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF}, bytes);
      case 2 -> java.util.Arrays.copyOf(bytes, random.nextInt(bytes.length + 1));
      case 3 -> joined(bytes, new byte[random.nextInt(4_096)]);
      case 4 ->
          text.replace("\n", any(List.of("\r", "\r\n", "\u2028", "\u0085"), random))
              .getBytes(StandardCharsets.UTF_8);
      default -> {
        for (int n = 1 + random.nextInt(8); n > 0 && bytes.length > 0; n--) {
          bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        yield bytes;
      }
    };
  }

  private static byte[] joined(byte[] head, byte[] tail) {
    ByteArrayOutputStream whole = new ByteArrayOutputStream();
    whole.writeBytes(head);
    whole.writeBytes(tail);
    return whole.toByteArray();
  }

  /**
   * One of several.
   *
   * @param <T> of what
   * @param all the choice
   * @param random decides
   * @return one
   */
  public static <T> T any(List<T> all, Random random) {
    return all.get(random.nextInt(all.size()));
  }
}
