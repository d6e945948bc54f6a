package starchfilm.proof;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;

/** Writes notebooks of any size, all invented: trials that differ, weighed 20 times or never. */
public final class BigNotebook {
  private static final int WEIGHINGS = 20;

  private BigNotebook() {}

  /**
   * Writes one.
   *
   * @param args the folder, and how many trials
   * @throws IOException where it cannot be written
   */
  public static void main(String[] args) throws IOException {
    int count = Integer.parseInt(args[1]);
    write(Path.of(args[0]), count, count);
  }

  /**
   * Writes one; the same for the same counts.
   *
   * @param folder where; made where it is missing
   * @param count how many trials
   * @param weighed how many of them, the last ones, were weighed
   * @throws IOException where it cannot be written
   */
  public static void write(Path folder, int count, int weighed) throws IOException {
    Files.createDirectories(folder);
    Random random = new Random(11);
    for (int i = 1; i <= count; i++) {
      Files.writeString(
          folder.resolve(String.format(Locale.ROOT, "%05d.json", i)),
          trial(i, i > count - weighed ? WEIGHINGS : 0, random));
    }
  }

  private static String trial(int number, int timesWeighed, Random random) {
    double starch = 15 + random.nextInt(16);
    double glycerol = Math.round(starch * (0.15 + 0.3 * random.nextDouble()) * 10) / 10.0;
    double water = 300 + 10 * random.nextInt(15);
    double poured = 120 + 5 * random.nextInt(13);
    int airC = 16 + random.nextInt(12);
    int humidity = 35 + random.nextInt(26);
    // What a plate keeps: its solids and a little water; what it loses, ever more slowly.
    double kept = poured * 1.1 * (starch + glycerol) / (starch + glycerol + water);
    StringBuilder weighings = new StringBuilder();
    for (int w = 1; w <= timesWeighed; w++) {
      double mass = 600 + kept + (poured - kept) * Math.exp(-w / 6.0);
      weighings.append(
          String.format(
              Locale.ROOT,
              "%s    {\"at\": \"+%dh\", \"mass_g\": %.0f}",
              w == 1 ? "" : ",\n",
              3 * w,
              mass));
    }
    return String.format(
        Locale.ROOT,
        """
        {
          "name": "Plate %d",
          "invented": true,
          "poured_at": "20%02d-%02d-%02dT10:00",
          "recipe": {
            "starch": [{"kind": "%s", "mass_g": %.1f, "moisture_pct": 15}],
            "glycerol": {"mass_g": %.1f, "purity_pct": 85},
            "water": {"mass_g": %.0f}
          },
          "cook": {"minutes": 10, "top_C": 90, "water_lost_g": 20},
          "pour": {
            "plate": {
              "material": "glass", "length_mm": 300, "width_mm": 200, "thickness_mm": 4, "rim_mm": 0,
              "tare_g": 600
            },
            "plates": 1, "poured_g": %.0f, "unevenness_pct": 15, "paste_C": 60
          },
          "room": {"name": "kitchen", "air_C": %d, "rh_pct": %d, "air_speed_m_per_s": 0.1},
          "weighings": [
        %s
          ],
          "rating": %d
        }
        """,
        number,
        10 + number % 16,
        1 + number % 12,
        1 + number % 28,
        random.nextBoolean() ? "potato" : "tapioca",
        starch,
        glycerol,
        water,
        poured,
        airC,
        humidity,
        weighings,
        1 + random.nextInt(5));
  }
}
