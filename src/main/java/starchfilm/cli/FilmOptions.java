package starchfilm.cli;

import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import starchfilm.casting.Use;
import starchfilm.files.amount.Measure;
import starchfilm.files.amount.MistypedException;
import starchfilm.film.Feel;
import starchfilm.planning.Wish;

/** The film wanted, and where it will be used, as options. */
final class FilmOptions {
  private static final Pattern MEGAPASCALS =
      Pattern.compile("([0-9]+(?:[.,][0-9]+)?)\\s*MPa", Pattern.CASE_INSENSITIVE);
  private static final double PA_PER_MPA = 1e6;

  /** The standard atmosphere of ISO 291, a week on. */
  private static final String USUAL_USE = "50%,23C";

  private static final String USUAL_AGE = "7d";

  @Option(
      names = "--feel",
      paramLabel = "WORD",
      description = "stiff, flexible or stretchy. Default: flexible, if no number is asked for.")
  private @Nullable String feel;

  @Option(
      names = "--strength",
      paramLabel = "MPA",
      description = "Tensile strength of at least, such as 5MPa.")
  private @Nullable String strength;

  @Option(
      names = "--stretch",
      paramLabel = "SHARE",
      description = "Stretch at break of at least, such as 40%%.")
  private @Nullable String stretch;

  @Option(
      names = "--thickness",
      paramLabel = "LENGTH",
      description = "Thickness of the dry film, such as 0.12mm. Default: 0.05 to 0.25 mm.")
  private @Nullable String thickness;

  @Option(
      names = "--use",
      paramLabel = "AIR",
      description = "Air the film is used in. Default: 50%%,23C.")
  private String use = USUAL_USE;

  @Option(
      names = "--after",
      paramLabel = "TIME",
      description = "Time from drying to use. Default: 7d.")
  private String after = USUAL_AGE;

  Wish wish() {
    return new Wish(
        Optional.ofNullable(feel).map(FilmOptions::feel),
        strength == null ? OptionalDouble.empty() : OptionalDouble.of(pascals(strength)),
        stretch == null
            ? OptionalDouble.empty()
            : OptionalDouble.of(TypedAmounts.share("--stretch", stretch)),
        thickness == null
            ? OptionalDouble.empty()
            : OptionalDouble.of(metres("--thickness", thickness)));
  }

  /** The air of use; the same words as for a room, humidity first or last. */
  Use use() {
    try {
      String[] parts = use.split("[,;\\s]+(?=[-0-9])", -1);
      double humidity = Double.NaN;
      double kelvin = 23 + ZERO_CELSIUS_K;
      for (String part : parts) {
        Measure measure = Measure.parse(part);
        if (measure instanceof Measure.Share share) {
          humidity = share.fraction();
        } else if (measure instanceof Measure.Temperature temperature) {
          kelvin = temperature.k();
        } else {
          throw new MistypedException(use, "humidity and temperature", "");
        }
      }
      if (Double.isNaN(humidity)) {
        throw new MistypedException(use, "humidity and temperature", "");
      }
      return new Use(humidity, kelvin, Measure.span(after).s());
    } catch (MistypedException e) {
      throw CommandFailure.wrongInput(
          "--use or --after: "
              + e.given()
              + " given, allowed air such as 50%,23C and a time such as 7d; write it like these");
    }
  }

  private static Feel feel(String typed) {
    return NearName.find(
        "--feel",
        typed,
        List.of(Feel.STIFF, Feel.FLEXIBLE, Feel.STRETCHY),
        known -> known.name().toLowerCase(Locale.ROOT));
  }

  private static double pascals(String typed) {
    Matcher matcher = MEGAPASCALS.matcher(typed.strip());
    if (!matcher.matches()) {
      throw CommandFailure.wrongInput(
          "--strength: \""
              + typed
              + "\" given, allowed a strength in MPa, such as 5MPa; add the"
              + " unit");
    }
    return Double.parseDouble(matcher.group(1).replace(',', '.')) * PA_PER_MPA;
  }

  static double metres(String option, String typed) {
    try {
      return Measure.length(typed).m();
    } catch (MistypedException e) {
      throw CommandFailure.wrongInput(option + ": " + e.getMessage());
    }
  }
}
