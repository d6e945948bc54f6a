package starchfilm.request;

import static starchfilm.files.amount.Dimension.TEMPERATURE;
import static starchfilm.files.amount.Dimension.VOLUME;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import starchfilm.files.amount.Dimension;
import starchfilm.files.amount.TypedAmount;
import starchfilm.jar.assay.DensityReading;
import starchfilm.jar.assay.JarReading;
import starchfilm.jar.assay.RefractometerReading;
import starchfilm.numerics.evidence.Estimate;

/** A reading of a jar: hydrometer, weighed bottle, weighed volume or refractometer. */
final class JarReadings {

  private static final String[] KINDS = {
    "reading.density", "reading.bottle", "reading.sample", "reading.index"
  };

  /** A stand-in, so that other mistakes are found beside a missing temperature. */
  private static final double ROOM_K = 293.15;

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

  private static final String DENSITIES =
      "a density in g/ml or kg/m3, or a specific gravity without unit, such as 1.231 g/ml";

  private JarReadings() {}

  /** The reading; empty where none was given, or none that can be read. */
  static Optional<JarReading> read(EntryReader in) {
    List<String> given = Stream.of(KINDS).filter(in::has).toList();
    if (given.isEmpty()) {
      if (in.has("reading.at")) {
        in.refuse("reading.at", "a temperature alone given; add one of " + in.quoted(KINDS));
      }
      return Optional.empty();
    }
    if (given.size() > 1) {
      in.refuse(
          "more than one reading given, allowed one of %s; use the one you trust most"
              .formatted(in.quoted(KINDS)));
    }
    in.require("reading.at", "the temperature of the jar when it was read, such as 20C");
    double kelvin = in.one("reading.at", TEMPERATURE::si, ROOM_K);
    String kind = given.get(0);
    return in.all(kind, words -> reading(kind, words, new Estimate(kelvin, TEMPERATURE_SD)));
  }

  private static JarReading reading(String kind, List<String> words, Estimate temperatureK) {
    return switch (kind) {
      case "reading.density" ->
          new DensityReading(
              new Estimate(densityKgPerM3(words.get(0)), HYDROMETER_SD_KG_PER_M3), temperatureK);
      case "reading.bottle" ->
          DensityReading.bottle(
              Quantities.massKg(words.get(0)),
              Quantities.massKg(words.get(1)),
              Quantities.massKg(words.get(2)),
              temperatureK);
      case "reading.sample" -> {
        int volume = Quantities.isVolume(words.get(0)) ? 0 : 1;
        double m3 = VOLUME.si(words.get(volume));
        yield DensityReading.weighedVolume(
            Quantities.massKg(words.get(1 - volume)),
            new Estimate(m3, CYLINDER_RELATIVE_SD * m3),
            temperatureK);
      }
      default -> {
        double index = Quantities.number(words.get(0), "a refractive index, 1.333 to 1.474");
        yield new RefractometerReading(new Estimate(index, REFRACTOMETER_SD), temperatureK);
      }
    };
  }

  private static double densityKgPerM3(String text) {
    if (!text.strip().matches("[0-9]+(?:[.,][0-9]+)?")) {
      return TypedAmount.read(text, DENSITIES, List.of(Dimension.DENSITY)).one();
    }
    // Above 10 a bare number can only be in kg/m3.
    double number = Quantities.number(text, DENSITIES);
    return number < 10 ? number * WATER_AT_20C : number;
  }
}
