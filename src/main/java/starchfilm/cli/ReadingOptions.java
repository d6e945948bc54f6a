package starchfilm.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import starchfilm.jar.assay.DensityReading;
import starchfilm.jar.assay.JarReading;
import starchfilm.jar.assay.RefractometerReading;
import starchfilm.numerics.evidence.Estimate;

/** A reading of the jar, as options. */
final class ReadingOptions {
  /** A thermometer read to 1 C. */
  private static final double TEMPERATURE_SD = 1 / Math.sqrt(12);

  /** A hydrometer with a scale mark every 0.002 g/ml, read to a mark. */
  private static final double HYDROMETER_SD_KG_PER_M3 = 1;

  /** A hand refractometer with a mark every 0.0005. */
  private static final double REFRACTOMETER_SD = 0.0003;

  /** A measuring cylinder: about one per cent; judged. */
  private static final double CYLINDER_RELATIVE_SD = 0.01;

  /** Water at 20 C, what specific gravity 20/20 is counted from (kg/m3). */
  private static final double WATER_AT_20C = 998.2;

  private static final Pattern DENSITY =
      Pattern.compile("([0-9]+(?:[.,][0-9]+)?)\\s*(g/ml|g/cm3|kg/l|kg/m3|)");

  @Option(
      names = "--density",
      paramLabel = "DENSITY",
      description =
          "Hydrometer reading: 1.231 g/ml, 1231 kg/m3, or 1.231 alone for specific gravity 20/20.")
  private @Nullable String density;

  @Option(
      names = "--bottle",
      arity = "3",
      paramLabel = "MASS",
      description =
          "One small bottle weighed empty, brimful of water, and brimful of the jar's content, all"
              + " at the same temperature. The best way with a kitchen scale.")
  private @Nullable List<String> bottle;

  @Option(
      names = "--sample",
      arity = "2",
      paramLabel = "AMOUNT",
      description = "Mass and volume of a sample in a measuring cylinder (good to about 1 %%).")
  private @Nullable List<String> sample;

  @Option(
      names = "--index",
      paramLabel = "INDEX",
      description = "Refractive index, such as 1.4429.")
  private @Nullable String index;

  @Option(
      names = "--at",
      paramLabel = "TEMPERATURE",
      description = "Temperature of the jar when it was read, 15 to 30 C.")
  private @Nullable String at;

  /**
   * The reading.
   *
   * @return empty where none was given
   */
  Optional<JarReading> reading() {
    int given = 0;
    for (Object one : new @Nullable Object[] {density, bottle, sample, index}) {
      given += one == null ? 0 : 1;
    }
    if (given == 0) {
      if (at != null) {
        throw CommandFailure.wrongInput(
            "--at: a temperature alone given; add --density, --bottle, --sample or --index");
      }
      return Optional.empty();
    }
    if (given > 1) {
      throw CommandFailure.wrongInput(
          "more than one reading given, allowed one of --density, --bottle, --sample, --index; take"
              + " the one you trust most");
    }
    if (at == null) {
      throw CommandFailure.wrongInput(
          "--at: not given; write the temperature of the jar when it was read, such as --at \"20"
              + " C\"");
    }
    return Optional.of(
        reading(new Estimate(TypedAmounts.temperatureK("--at", at), TEMPERATURE_SD)));
  }

  private JarReading reading(Estimate temperatureK) {
    if (density != null) {
      return new DensityReading(
          new Estimate(densityKgPerM3(density), HYDROMETER_SD_KG_PER_M3), temperatureK);
    }
    if (bottle != null) {
      return DensityReading.bottle(
          TypedAmounts.massKg("--bottle", bottle.get(0)),
          TypedAmounts.massKg("--bottle", bottle.get(1)),
          TypedAmounts.massKg("--bottle", bottle.get(2)),
          temperatureK);
    }
    if (sample != null) {
      boolean volumeFirst = TypedAmounts.isVolume("--sample", sample.get(0));
      double m3 = TypedAmounts.volumeM3("--sample", sample.get(volumeFirst ? 0 : 1));
      return DensityReading.weighedVolume(
          TypedAmounts.massKg("--sample", sample.get(volumeFirst ? 1 : 0)),
          new Estimate(m3, CYLINDER_RELATIVE_SD * m3),
          temperatureK);
    }
    double read =
        TypedAmounts.number(
            "--index", index == null ? "" : index, "a refractive index, 1.333 to 1.474");
    return new RefractometerReading(new Estimate(read, REFRACTOMETER_SD), temperatureK);
  }

  private static double densityKgPerM3(String text) {
    Matcher matcher = DENSITY.matcher(text.strip().toLowerCase(Locale.ROOT));
    if (!matcher.matches()) {
      throw CommandFailure.wrongInput(
          "--density: \""
              + text
              + "\" given, allowed a density in g/ml or kg/m3, or a specific gravity without unit;"
              + " write it like 1.231 g/ml");
    }
    double number = Double.parseDouble(matcher.group(1).replace(',', '.'));
    return switch (matcher.group(2)) {
      case "kg/m3" -> number;
      // Above 10 a bare number can only be in kg/m3.
      case "" -> number < 10 ? number * WATER_AT_20C : number;
      default -> number * 1000;
    };
  }
}
