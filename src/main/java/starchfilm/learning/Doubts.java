package starchfilm.learning;

import static starchfilm.numerics.units.Units.G_PER_KG;
import static starchfilm.numerics.units.Units.HOUR_S;

import java.util.List;
import java.util.Locale;
import starchfilm.learning.summary.DoubtedReading;

/** Says which weighings of a plate hardly count. */
final class Doubts {

  private Doubts() {}

  static List<DoubtedReading> of(String file, PlateReadings readings, PlateFit fit) {
    return fit.doubted().stream()
        .map(
            i ->
                new DoubtedReading(
                    file,
                    "weighing at +" + hours(readings.timeS(i)),
                    "a film of " + grams(readings.massKg(i)),
                    grams(readings.massKg(i) - fit.residualsKg().getEntry(i)),
                    fit.weights().getEntry(i)))
        .toList();
  }

  private static String hours(double timeS) {
    return String.format(Locale.ROOT, "%.1fh", timeS / HOUR_S).replace(".0h", "h");
  }

  private static String grams(double kg) {
    return String.format(Locale.ROOT, "%.1f g", kg * G_PER_KG);
  }
}
